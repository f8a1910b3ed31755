namespace Thermal.Bridges;

/// <summary>
/// Temperatures in the cells of the grid, with half a cell of resistance to each face. Its flows are a field without sources, each square of a flux
/// replaced by its larger trapezoidal sum (convexity); by Thomson's principle no such field makes less of a given difference than the true one: a lower bound.
/// </summary>
internal sealed class CellScheme
{
    private readonly Grid _grid;

    internal CellScheme(Grid grid)
    {
        _grid = grid;
        Network = new(grid.Environments.Length);
        Node = new int[grid.CellCount];
        for (int k = 0, cell = 0; k < grid.Z.CellCount; k++)
            for (int j = 0; j < grid.Y.CellCount; j++)
                for (int i = 0; i < grid.X.CellCount; i++, cell++)
                    Node[cell] = grid.ConductivityWPerMK(grid.BlockOf(i, j, k)) > 0 ? Network.NodeCount++ : -1;
        for (int k = 0; k < grid.Z.CellCount; k++)
            for (int j = 0; j < grid.Y.CellCount; j++)
                for (int i = 0; i < grid.X.CellCount; i++)
                    if (Node[grid.Cell(i, j, k)] >= 0)
                        for (int face = 0; face < (grid.Z.VertexCount > 1 ? 6 : 4); face++) Connect([i, j, k], face);
    }

    /// <summary>Node of each cell; -1 where there is no piece.</summary>
    internal int[] Node { get; }
    internal Network Network { get; }

    /// <summary>What a cell's face leads to, a node or -2 - e for environment e, and how well, W/K; 0 at a cut.</summary>
    internal (int End, double WPerK) Beyond(ReadOnlySpan<int> at, int face)
    {
        int axis = face / 2, side = face % 2, block = _grid.BlockOf(at[0], at[1], at[2]), beside = _grid.Beside(block, axis, at[axis], side);
        if (beside == Blocks.Cut) return (-1, 0);
        Axis along = _grid.Axes[axis];
        double cross = (axis == 0 ? 1 : _grid.X.Measure[at[0]]) * (axis == 1 ? 1 : _grid.Y.Measure[at[1]]) * (axis == 2 ? 1 : _grid.Z.Measure[at[2]]);
        double half = (side == 0 ? along.HalfLow : along.HalfHigh)[at[axis]] / _grid.ConductivityWPerMK(block);
        if (beside >= 0) return (-2 - _grid.EnvironmentOf[beside], cross / (half + _grid.ResistanceM2KPerW[beside] / along.Face[at[axis] + side]));
        Span<int> next = [at[0], at[1], at[2]];
        next[axis] += 2 * side - 1;
        double rest = (side == 0 ? along.HalfHigh : along.HalfLow)[next[axis]] / _grid.ConductivityWPerMK(_grid.BlockOf(next[0], next[1], next[2]));
        return (Node[_grid.Cell(next[0], next[1], next[2])], cross / (half + rest));
    }

    private void Connect(ReadOnlySpan<int> at, int face)
    {
        (int end, double conductance) = Beyond(at, face);
        int node = Node[_grid.Cell(at[0], at[1], at[2])];
        // A pair of cells is met from both sides and taken once.
        if (conductance > 0 && (end < 0 || face % 2 == 1)) Network.Add(node, end, conductance);
    }
}
