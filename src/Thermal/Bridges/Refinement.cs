namespace Thermal.Bridges;

/// <summary>One solve on one grid, and the next grid after it.</summary>
internal sealed class Refinement
{
    // Chosen by us: the share of the gap whose lines are halved in one round.
    private const double MarkedShare = 0.8;

    private readonly CellScheme _cells;
    private readonly double[][] _inCells;

    internal Refinement(Grid grid)
    {
        Grid = grid;
        VertexScheme vertices = new(grid);
        _cells = new CellScheme(grid);
        double[][] atNodes = NetworkSolve.Fields(vertices.Network);
        _inCells = NetworkSolve.Fields(_cells.Network);
        HasJump = vertices.HasJump;
        UpperWPerK = vertices.Network.PowerWPerK(atNodes);
        LowerWPerK = _cells.Network.PowerWPerK(_inCells);
        int n = grid.Environments.Length;
        Fields = new double[n][];
        for (int e = 0; e < n - 1; e++) Fields[e] = vertices.AtVertices(atNodes[e], e);
        if (n > 0) Fields[n - 1] = Rest(Fields, grid.VertexCount);
        SurfaceVertices = [.. vertices.SurfaceVertices.Select(set => set.ToArray())];
    }

    internal Grid Grid { get; }
    internal bool HasJump { get; }
    /// <summary>Power matrices of both schemes, n × n, W/K.</summary>
    internal double[] UpperWPerK { get; }
    internal double[] LowerWPerK { get; }
    /// <summary>Weight of each environment at each vertex.</summary>
    internal double[][] Fields { get; }
    internal int[][] SurfaceVertices { get; }

    private int EnvironmentCount => Fields.Length;

    /// <summary>Bound of the error of each environment's own flow, as a fraction of it: the largest.</summary>
    internal double WorstFraction()
    {
        double worst = 0;
        for (int e = 0; e < EnvironmentCount && EnvironmentCount > 1; e++)
        {
            double upper = UpperWPerK[e * EnvironmentCount + e], lower = LowerWPerK[e * EnvironmentCount + e];
            worst = Math.Max(worst, (upper - lower) / (upper + lower));
        }
        return HasJump ? double.PositiveInfinity : worst;
    }

    /// <summary>
    /// Weights whose change judges a round: the lowest and highest of every environment on the surfaces of every environment;
    /// where a jump leaves those fixed, the weights at all vertices of the first grid, which are vertices of every later one.
    /// </summary>
    internal double[] Watched(double[][] startM)
    {
        if (HasJump)
            return [.. from x in startM[0] from y in startM[1] from z in Grid.Z.VertexCount > 1 ? startM[2] : [0]
                       from field in Fields select field[Grid.Vertex(Line(0, x), Line(1, y), Grid.Z.VertexCount > 1 ? Line(2, z) : 0)]];
        return [.. from surface in SurfaceVertices
                   from field in Fields
                   from extreme in new[] { surface.Min(vertex => field[vertex]), surface.Max(vertex => field[vertex]) }
                   select extreme];
    }

    private int Line(int axis, double atM) => Array.BinarySearch(Grid.Axes[axis].LinesM, atM);

    /// <summary>The grid with those lines halved that hold most of the gap; all lines where a jump's endless gap would draw them to one corner.</summary>
    internal double[][] Next()
    {
        if (HasJump) return [.. Grid.Axes.Select(axis => axis.VertexCount > 1 ? StartGrid.Halved(axis.LinesM, [.. axis.Block.Select(_ => true)]) : axis.LinesM)];
        double[][] gaps = [.. Grid.Axes.Select(axis => new double[axis.CellCount])];
        for (int e = 0; e < EnvironmentCount - 1; e++)
            EnergyGap.Add(Grid, _cells, Fields[e], _inCells[e], e, UpperWPerK[e * EnvironmentCount + e], gaps);
        bool[][] marked = Marked(gaps);
        return [.. Grid.Axes.Select((axis, a) => axis.VertexCount > 1 ? StartGrid.Halved(axis.LinesM, marked[a]) : axis.LinesM)];
    }

    private static bool[][] Marked(double[][] gaps)
    {
        double total = gaps.Sum(axis => axis.Sum()), sum = 0;
        bool[][] marked = [.. gaps.Select(axis => new bool[axis.Length])];
        foreach ((int axis, int at, double gap) in gaps.SelectMany((axis, a) => axis.Select((gap, i) => (a, i, gap))).OrderByDescending(line => line.gap))
        {
            if (sum >= MarkedShare * total && total > 0) break;
            marked[axis][at] = true;
            sum += gap;
        }
        return marked;
    }

    private static double[] Rest(double[][] fields, int count)
    {
        double[] rest = new double[count];
        for (int vertex = 0; vertex < count; vertex++)
        {
            double sum = 0;
            for (int e = 0; e < fields.Length - 1; e++) sum += fields[e][vertex];
            rest[vertex] = 1 - sum;
        }
        return rest;
    }
}
