namespace Thermal.Bridges;

/// <summary>
/// Temperatures at the vertices of the grid. Its power is that of a field made of hat functions, each square of a slope or of a step across a film
/// replaced by its larger trapezoidal sum (convexity); by Dirichlet's principle no field dissipates less than the true one: an upper bound.
/// </summary>
internal sealed class VertexScheme
{
    private readonly Grid _grid;

    internal VertexScheme(Grid grid)
    {
        _grid = grid;
        Lattice = new(grid.X.VertexCount, grid.Y.VertexCount, grid.Z.VertexCount, grid.Blocks.Environments.Length);
        for (int k = 0, cell = 0; k < grid.Z.CellCount; k++)
            for (int j = 0; j < grid.Y.CellCount; j++)
                for (int i = 0; i < grid.X.CellCount; i++, cell++)
                    if (grid.ConductivitiesWPerMK[cell] > 0) AddCell(i, j, k, grid.ConductivitiesWPerMK[cell]);
        SurfaceVertices = AddFilms();
    }

    internal Lattice Lattice { get; }
    /// <summary>True where two environments with R_s 0 meet: the vertex there is left free, and no bound holds.</summary>
    internal bool HasJump { get; private set; }
    /// <summary>Vertices on the surfaces of each environment, ascending.</summary>
    internal int[][] SurfaceVertices { get; }

    private void AddCell(int i, int j, int k, double conductivity)
    {
        Axis x = _grid.X, y = _grid.Y, z = _grid.Z;
        (double alongX, double alongY, double alongZ) = (conductivity * x.Along[i], conductivity * y.Along[j], conductivity * z.Along[k]);
        for (int sz = 0; sz < _grid.Dimensions - 1; sz++)
            for (int sy = 0; sy < 2; sy++)
            {
                int vertex = _grid.Vertex(i, j + sy, k + sz);
                double shareY = y.Share(j, sy), shareZ = z.Share(k, sz);
                Lattice.State[vertex] = Lattice.State[vertex + 1] = Lattice.Free;
                Lattice.Edges[0][vertex] += alongX * shareY * shareZ;
                if (sy == 0)
                {
                    Lattice.Edges[1][vertex] += alongY * x.LowShare[i] * shareZ;
                    Lattice.Edges[1][vertex + 1] += alongY * x.HighShare[i] * shareZ;
                }
                if (sz > 0 || _grid.Dimensions == 2) continue;
                // Only a solid body has depth, and along its straight lines both halves of a cell are alike.
                double half = alongZ * x.LowShare[i] * shareY;
                Lattice.Edges[2][vertex] += half;
                Lattice.Edges[2][vertex + 1] += half;
            }
    }

    private int[][] AddFilms()
    {
        Blocks blocks = _grid.Blocks;
        bool[][] isSurface = [.. blocks.Environments.Select(_ => new bool[Lattice.Count])];
        HashSet<int> torn = [];
        foreach (SurfaceFace face in _grid.Surfaces())
        {
            int environment = blocks.EnvironmentOf[face.Boundary];
            double resistance = blocks.Section.Boundaries[face.Boundary].SurfaceResistanceM2KPerW;
            double measure = _grid.Axes[face.Axis].Face[(face.Axis == 0 ? face.I : face.Axis == 1 ? face.J : face.K) + face.Side];
            for (int corner = 0; corner < 1 << _grid.Dimensions; corner++)
            {
                int sx = corner & 1, sy = corner >> 1 & 1, sz = corner >> 2;
                if ((corner >> face.Axis & 1) != face.Side) continue;
                int vertex = _grid.Vertex(face.I + sx, face.J + sy, face.K + sz);
                isSurface[environment][vertex] = true;
                if (resistance > 0)
                {
                    double share = (face.Axis == 0 ? 1 : _grid.X.Share(face.I, sx)) * (face.Axis == 1 ? 1 : _grid.Y.Share(face.J, sy)) * (face.Axis == 2 ? 1 : _grid.Z.Share(face.K, sz));
                    Lattice.Ties.Add(new(vertex, environment, measure * share / resistance, face.Axis));
                }
                else if (Lattice.State[vertex] == Lattice.Free) Lattice.State[vertex] = -2 - environment;
                else if (Lattice.State[vertex] != -2 - environment) torn.Add(vertex);
            }
        }
        foreach (int vertex in torn) Lattice.State[vertex] = Lattice.Free;
        HasJump = torn.Count > 0;
        return [.. isSurface.Select(on => Enumerable.Range(0, on.Length).Where(vertex => on[vertex]).ToArray())];
    }
}
