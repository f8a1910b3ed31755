namespace Thermal.Bridges;

/// <summary>
/// Where the two schemes differ: the part of either energy that comes from a flux changing along a cell or a slope changing across it. Halving the cell
/// in that direction takes three quarters of it away. Gathered by columns, rows and slabs, because a grid can only be halved along whole lines.
/// </summary>
/// <remarks>Source: OURS, after the hypercircle of Prager and Synge.</remarks>
internal sealed class EnergyGap
{
    private readonly Grid _grid;
    private readonly CellScheme _cells;
    private readonly double[] _atVertices, _inCells;
    private readonly int _environment;
    private readonly double _scale;

    private EnergyGap(Grid grid, CellScheme cells, double[] atVertices, double[] inCells, int environment, double scale, double[][] gaps) =>
        (_grid, _cells, _atVertices, _inCells, _environment, _scale, Gaps) = (grid, cells, atVertices, inCells, environment, scale, gaps);

    private double[][] Gaps { get; }

    /// <summary>Adds the gap of one environment's field, as a fraction of its power, to those of the columns, rows and slabs.</summary>
    internal static void Add(Grid grid, CellScheme cells, double[] atVertices, double[] inCells, int environment, double powerWPerK, double[][] gaps)
    {
        EnergyGap gap = new(grid, cells, atVertices, inCells, environment, 1 / powerWPerK, gaps);
        int[] at = new int[3];
        for (at[2] = 0; at[2] < grid.Z.CellCount; at[2]++)
            for (at[1] = 0; at[1] < grid.Y.CellCount; at[1]++)
                for (at[0] = 0; at[0] < grid.X.CellCount; at[0]++)
                    if (cells.Node[grid.Cell(at[0], at[1], at[2])] >= 0)
                        for (int axis = 0; axis < (grid.Z.VertexCount > 1 ? 3 : 2); axis++)
                        {
                            gap.AddFluxes(at, axis);
                            gap.AddSlopes(at, axis);
                        }
    }

    private void AddFluxes(int[] at, int axis)
    {
        double own = _inCells[_cells.Node[_grid.Cell(at[0], at[1], at[2])]];
        (int lowEnd, double low) = _cells.Beyond(at, 2 * axis);
        (int highEnd, double high) = _cells.Beyond(at, 2 * axis + 1);
        double change = low * (At(lowEnd) - own) + high * (At(highEnd) - own);
        Axis along = _grid.Axes[axis];
        double cross = 1;
        for (int other = 0; other < 3; other++)
            if (other != axis) cross *= _grid.Axes[other].Measure[at[other]];
        double resistance = (along.HalfLow[at[axis]] + along.HalfHigh[at[axis]]) / (cross * _grid.ConductivityWPerMK(_grid.BlockOf(at[0], at[1], at[2])));
        Gaps[axis][at[axis]] += _scale * resistance * change * change / 4;
    }

    private double At(int end) => end >= 0 ? _inCells[end] : end == -2 - _environment ? 1 : 0;

    private void AddSlopes(int[] at, int axis)
    {
        double along = _grid.ConductivityWPerMK(_grid.BlockOf(at[0], at[1], at[2])) * _grid.Axes[axis].Along[at[axis]];
        for (int across = 0; across < (_grid.Z.VertexCount > 1 ? 3 : 2); across++)
        {
            if (across == axis) continue;
            int third = 3 - axis - across;
            Axis width = _grid.Axes[across], depth = _grid.Axes[third];
            double low = width.LowShare[at[across]], high = width.HighShare[at[across]], share = low * high / (low + high);
            for (int side = 0; side < (depth.VertexCount > 1 ? 2 : 1); side++)
            {
                double bend = Slope(at, axis, across, third, 0, side) - Slope(at, axis, across, third, 1, side);
                Gaps[across][at[across]] += _scale * along * share * depth.Share(at[third], side) * bend * bend;
            }
        }
    }

    private double Slope(int[] at, int axis, int across, int third, int acrossSide, int thirdSide)
    {
        Span<int> vertex = [at[0], at[1], at[2]];
        vertex[across] += acrossSide;
        vertex[third] += thirdSide;
        double low = _atVertices[_grid.Vertex(vertex[0], vertex[1], vertex[2])];
        vertex[axis]++;
        return _atVertices[_grid.Vertex(vertex[0], vertex[1], vertex[2])] - low;
    }
}
