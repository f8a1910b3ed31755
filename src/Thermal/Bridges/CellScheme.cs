namespace Thermal.Bridges;

/// <summary>
/// Temperatures in the cells of the grid, with half a cell of resistance to each face. Its flows are a field without sources, each square of a flux
/// replaced by its larger trapezoidal sum (convexity); by Thomson's principle no such field makes less of a given difference than the true one: a lower bound.
/// </summary>
internal static class CellScheme
{
    internal static Lattice Of(Grid grid)
    {
        Lattice lattice = new(grid.X.CellCount, grid.Y.CellCount, grid.Z.CellCount, grid.Blocks.Environments.Length);
        for (int k = 0, cell = 0; k < grid.Z.CellCount; k++)
            for (int j = 0; j < grid.Y.CellCount; j++)
                for (int i = 0; i < grid.X.CellCount; i++, cell++)
                {
                    if (!(grid.ConductivitiesWPerMK[cell] > 0)) continue;
                    lattice.State[cell] = Lattice.Free;
                    if (i + 1 < grid.X.CellCount) lattice.Edges[0][cell] = Between(grid, cell, grid.X, i, 1, grid.Y.Measure[j] * grid.Z.Measure[k]);
                    if (j + 1 < grid.Y.CellCount) lattice.Edges[1][cell] = Between(grid, cell, grid.Y, j, lattice.Strides[1], grid.X.Measure[i] * grid.Z.Measure[k]);
                    if (k + 1 < grid.Z.CellCount) lattice.Edges[2][cell] = Between(grid, cell, grid.Z, k, lattice.Strides[2], grid.X.Measure[i] * grid.Y.Measure[j]);
                }
        foreach (SurfaceFace face in grid.Surfaces()) lattice.Ties.Add(Film(grid, face));
        return lattice;
    }

    private static double Between(Grid grid, int cell, Axis axis, int at, int stride, double cross)
    {
        double next = grid.ConductivitiesWPerMK[cell + stride];
        return next > 0 ? cross / (axis.HalfHigh[at] / grid.ConductivitiesWPerMK[cell] + axis.HalfLow[at + 1] / next) : 0;
    }

    private static Tie Film(Grid grid, SurfaceFace face)
    {
        int cell = grid.Cell(face.I, face.J, face.K), at = face.Axis == 0 ? face.I : face.Axis == 1 ? face.J : face.K;
        Axis axis = grid.Axes[face.Axis];
        double cross = (face.Axis == 0 ? 1 : grid.X.Measure[face.I]) * (face.Axis == 1 ? 1 : grid.Y.Measure[face.J]) * (face.Axis == 2 ? 1 : grid.Z.Measure[face.K]);
        double half = (face.Side == 0 ? axis.HalfLow : axis.HalfHigh)[at] / grid.ConductivitiesWPerMK[cell];
        double film = grid.Blocks.Section.Boundaries[face.Boundary].SurfaceResistanceM2KPerW / axis.Face[at + face.Side];
        return new(cell, grid.Blocks.EnvironmentOf[face.Boundary], cross / (half + film), face.Axis);
    }
}
