namespace Thermal.Bridges;

/// <summary>Weights at any point, from those at the vertices.</summary>
internal static class ReadOut
{
    /// <summary>Shares of all environments at a point: linear between the vertices of its cell, exact at vertices.</summary>
    internal static double[] Weights(Refinement solved, double xM, double yM, double zM)
    {
        Grid grid = solved.Grid;
        double[] point = [xM, yM, zM];
        int depth = grid.Dimensions;
        int[] at = new int[3];
        if (!Find(grid, point, at, 0, depth)) throw new ArgumentOutOfRangeException(nameof(xM), xM, $"({xM}, {yM}, {zM}) m lies in no piece.");
        double[] weights = new double[solved.Fields.Length];
        for (int corner = 0; corner < 1 << depth; corner++)
        {
            double share = 1;
            Span<int> vertex = [at[0], at[1], at[2]];
            for (int axis = 0; axis < depth; axis++)
            {
                double[] lines = grid.Axes[axis].LinesM;
                double part = Math.Clamp((point[axis] - lines[at[axis]]) / (lines[at[axis] + 1] - lines[at[axis]]), 0, 1);
                int side = corner >> axis & 1;
                share *= side == 1 ? part : 1 - part;
                vertex[axis] += side;
            }
            // A share of nothing may belong to a vertex in no piece.
            if (share > 0)
                for (int e = 0; e < weights.Length; e++) weights[e] += share * solved.Fields[e][grid.Vertex(vertex[0], vertex[1], vertex[2])];
        }
        return weights;
    }

    // A point on a line belongs to the cells on both sides; any of them that holds a piece gives the same value.
    private static bool Find(Grid grid, double[] point, int[] at, int axis, int depth)
    {
        if (axis == depth) return grid.ConductivitiesWPerMK[grid.Cell(at[0], at[1], at[2])] > 0;
        double[] lines = grid.Axes[axis].LinesM;
        for (int i = 0; i + 1 < lines.Length; i++)
        {
            if (!(point[axis] >= lines[i] - Blocks.MergeM && point[axis] <= lines[i + 1] + Blocks.MergeM)) continue;
            at[axis] = i;
            if (Find(grid, point, at, axis + 1, depth)) return true;
        }
        return false;
    }
}
