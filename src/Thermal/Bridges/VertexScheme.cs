namespace Thermal.Bridges;

/// <summary>
/// Temperatures at the vertices of the grid. Its power is that of a field made of hat functions, each square of a slope or of a step across a film
/// replaced by its larger trapezoidal sum (convexity); by Dirichlet's principle no field dissipates less than the true one: an upper bound.
/// </summary>
internal sealed class VertexScheme
{
    private readonly Grid _grid;
    private readonly double[][] _edges;
    private readonly List<(int Vertex, int Environment, double WPerK)> _films = [];
    private const int Free = -1;

    internal VertexScheme(Grid grid)
    {
        _grid = grid;
        int n = grid.VertexCount;
        _edges = [new double[n], new double[n], grid.Z.VertexCount > 1 ? new double[n] : []];
        Node = new int[n];
        Array.Fill(Node, Free);
        SurfaceVertices = [.. grid.Environments.Select(_ => new SortedSet<int>())];
        bool[] used = new bool[n];
        HashSet<int> torn = [];
        for (int k = 0; k < grid.Z.CellCount; k++)
            for (int j = 0; j < grid.Y.CellCount; j++)
                for (int i = 0; i < grid.X.CellCount; i++)
                    if (grid.ConductivityWPerMK(grid.BlockOf(i, j, k)) > 0) AddCell([i, j, k], used, torn);
        foreach (int vertex in torn) Node[vertex] = Free;
        HasJump = torn.Count > 0;
        Network = Connect(used);
    }

    /// <summary>Node of each vertex; -1 where there is no piece, -2 - e where environment e fixes it.</summary>
    internal int[] Node { get; }
    internal Network Network { get; }
    /// <summary>True where two environments with R_s 0 meet: the vertex there is left free, and no bound holds.</summary>
    internal bool HasJump { get; }
    internal SortedSet<int>[] SurfaceVertices { get; }

    /// <summary>Values at all vertices for one environment at 1 K.</summary>
    internal double[] AtVertices(double[] nodesK, int environment) =>
        [.. Node.Select(node => node >= 0 ? nodesK[node] : node == -2 - environment ? 1 : 0)];

    private void AddCell(int[] at, bool[] used, HashSet<int> torn)
    {
        int block = _grid.BlockOf(at[0], at[1], at[2]), depth = _grid.Z.VertexCount > 1 ? 2 : 1;
        double conductivity = _grid.ConductivityWPerMK(block);
        for (int corner = 0; corner < 4 * depth; corner++)
        {
            int sx = corner & 1, sy = corner >> 1 & 1, sz = corner >> 2;
            int vertex = _grid.Vertex(at[0] + sx, at[1] + sy, at[2] + sz);
            double x = _grid.X.Share(at[0], sx), y = _grid.Y.Share(at[1], sy), z = _grid.Z.Share(at[2], sz);
            used[vertex] = true;
            if (sx == 0) _edges[0][vertex] += conductivity * _grid.X.Along[at[0]] * y * z;
            if (sy == 0) _edges[1][vertex] += conductivity * _grid.Y.Along[at[1]] * x * z;
            if (sz == 0 && depth == 2) _edges[2][vertex] += conductivity * _grid.Z.Along[at[2]] * x * y;
            AddFilm(block, 0, at[0], sx, vertex, y * z, torn);
            AddFilm(block, 1, at[1], sy, vertex, x * z, torn);
            if (depth == 2) AddFilm(block, 2, at[2], sz, vertex, x * y, torn);
        }
    }

    private void AddFilm(int block, int axis, int at, int side, int vertex, double crossShare, HashSet<int> torn)
    {
        int boundary = _grid.Beside(block, axis, at, side);
        if (boundary < 0) return;
        int environment = _grid.EnvironmentOf[boundary];
        double resistance = _grid.ResistanceM2KPerW[boundary];
        SurfaceVertices[environment].Add(vertex);
        if (resistance > 0) _films.Add((vertex, environment, _grid.Axes[axis].Face[at + side] * crossShare / resistance));
        else if (Node[vertex] == Free) Node[vertex] = -2 - environment;
        else if (Node[vertex] != -2 - environment) torn.Add(vertex);
    }

    private Network Connect(bool[] used)
    {
        Network network = new(_grid.Environments.Length);
        for (int vertex = 0; vertex < Node.Length; vertex++)
            if (used[vertex] && Node[vertex] == Free) Node[vertex] = network.NodeCount++;
        int[] strides = [1, _grid.X.VertexCount, _grid.X.VertexCount * _grid.Y.VertexCount];
        for (int vertex = 0; vertex < Node.Length; vertex++)
            for (int axis = 0; axis < 3; axis++)
                if (_edges[axis].Length > 0 && _edges[axis][vertex] > 0) network.Add(Node[vertex], Node[vertex + strides[axis]], _edges[axis][vertex]);
        foreach ((int vertex, int environment, double conductance) in _films) network.Add(Node[vertex], -2 - environment, conductance);
        return network;
    }
}
