namespace Thermal.Bridges;

/// <summary>
/// Surface temperatures as the mean of both schemes. One conducts too well and the other too badly, so their errors have opposite signs and largely cancel:
/// over a web behind plywood the mean of 400 cells is as good as the vertices of 15 000. Only on flat surfaces, where the temperature runs smoothly
/// through a vertex from one face to the next; at corners of a surface the vertex scheme stands alone.
/// </summary>
/// <remarks>Source: OURS, found by trial.</remarks>
internal static class SurfaceMix
{
    // A vertex on no surface yet, and one where surfaces of different directions or environments meet.
    private const int None = 0, Corner = -1;

    /// <summary>Replaces the vertex scheme's weights on flat surfaces by the mean.</summary>
    /// <param name="atVertices">Fields of the vertex scheme, one for each environment but the last.</param>
    /// <param name="grid">The grid.</param>
    /// <param name="inCells">Fields of the cell scheme likewise.</param>
    internal static void Into(double[][] atVertices, Grid grid, double[][] inCells)
    {
        int count = grid.X.VertexCount * grid.Y.VertexCount * grid.Z.VertexCount;
        int[] kinds = new int[count], faces = new int[count];
        double[] shares = new double[count];
        double[][] sums = [.. atVertices.Select(_ => new double[count])];
        Span<double> weights = stackalloc double[atVertices.Length];
        foreach (SurfaceFace face in grid.Surfaces())
        {
            int environment = grid.Blocks.EnvironmentOf[face.Boundary], kind = 1 + face.Side + 2 * (face.Axis + 3 * environment);
            OnFace(grid, face, environment, inCells, weights);
            double share = 1;
            for (int axis = 0; axis < grid.Dimensions; axis++)
                if (axis != face.Axis) share /= Width(grid.Axes[axis], axis == 0 ? face.I : axis == 1 ? face.J : face.K);
            for (int corner = 0; corner < 1 << grid.Dimensions; corner++)
            {
                if ((corner >> face.Axis & 1) != face.Side) continue;
                int vertex = grid.Vertex(face.I + (corner & 1), face.J + (corner >> 1 & 1), face.K + (corner >> 2));
                kinds[vertex] = kinds[vertex] == None || kinds[vertex] == kind ? kind : Corner;
                faces[vertex]++;
                shares[vertex] += share;
                for (int e = 0; e < sums.Length; e++) sums[e][vertex] += share * weights[e];
            }
        }
        for (int vertex = 0; vertex < count; vertex++)
            if (kinds[vertex] > None && faces[vertex] == Expected(grid, vertex, (kinds[vertex] - 1) / 2 % 3))
                for (int e = 0; e < sums.Length; e++) atVertices[e][vertex] = (atVertices[e][vertex] + sums[e][vertex] / shares[vertex]) / 2;
    }

    private static double Width(Axis axis, int at) => axis.LinesM[at + 1] - axis.LinesM[at];

    // In the middle of a face: what the film leaves of the way from the environment to the cell.
    private static void OnFace(Grid grid, SurfaceFace face, int environment, double[][] inCells, Span<double> weights)
    {
        int cell = grid.Cell(face.I, face.J, face.K), at = face.Axis == 0 ? face.I : face.Axis == 1 ? face.J : face.K;
        Axis axis = grid.Axes[face.Axis];
        double half = (face.Side == 0 ? axis.HalfLow : axis.HalfHigh)[at] / grid.ConductivitiesWPerMK[cell];
        double film = grid.Blocks.Section.Boundaries[face.Boundary].SurfaceResistanceM2KPerW / axis.Face[at + face.Side];
        for (int e = 0; e < weights.Length; e++)
        {
            double air = e == environment ? 1 : 0;
            weights[e] = air - (air - inCells[e][cell]) * film / (half + film);
        }
    }

    // Faces round a vertex of an unbroken flat surface; a cut at the limits mirrors the rest.
    private static int Expected(Grid grid, int vertex, int normal)
    {
        int expected = 1;
        for (int axis = 0, rest = vertex; axis < grid.Dimensions; axis++)
        {
            int count = grid.Axes[axis].VertexCount, at = rest % count;
            rest /= count;
            if (axis != normal && at > 0 && at < count - 1) expected *= 2;
        }
        return expected;
    }
}
