namespace Thermal.Bridges;

/// <summary>One solve on one grid, and the next grid after it.</summary>
internal sealed class Refinement
{
    // Chosen by us: the share of the gap whose lines are halved in one round.
    private const double MarkedShare = 0.8;

    // A power this small beside what the surfaces could pass is rounding: the environment is alone with its pieces.
    private const double RoundingShare = 1e-13;

    private readonly EnergyGap _gap;
    private readonly bool[] _isAlone;

    internal Refinement(Grid grid)
    {
        Grid = grid;
        VertexScheme vertices = new(grid);
        Lattice cells = CellScheme.Of(grid);
        double[][] atVertices = LatticeSolve.Fields(vertices.Lattice), inCells = LatticeSolve.Fields(cells);
        HasJump = vertices.HasJump;
        UpperWPerK = vertices.Lattice.PowerWPerK(atVertices);
        LowerWPerK = cells.PowerWPerK(inCells);
        _isAlone = [.. Enumerable.Range(0, EnvironmentCount).Select(e => !(UpperWPerK[e * EnvironmentCount + e] > RoundingShare * cells.Ties.Where(tie => tie.Environment == e).Sum(tie => tie.WPerK)))];
        _gap = new(grid, EnvironmentCount);
        _gap.Add(atVertices, cells, inCells, [.. _isAlone.Select((alone, e) => alone ? 0 : 1 / UpperWPerK[e * EnvironmentCount + e])]);
        for (int i = 0; i < UpperWPerK.Length; i++)
        {
            UpperWPerK[i] -= _gap.HatWPerK[i];
            LowerWPerK[i] += _gap.FluxWPerK[i];
        }
        double[][] mixed = [.. atVertices.Select(field => (double[])field.Clone())];
        SurfaceMix.Into(mixed, grid, inCells);
        Fields = EnvironmentCount > 0 ? [.. mixed, Rest(mixed, vertices.Lattice)] : [];
        BalancedFields = EnvironmentCount > 0 ? [.. atVertices, Rest(atVertices, vertices.Lattice)] : [];
        SurfaceVertices = vertices.SurfaceVertices;
    }

    internal Grid Grid { get; }
    internal bool HasJump { get; }
    /// <summary>Power matrices that bound the true one from above and from below, n × n, W/K.</summary>
    internal double[] UpperWPerK { get; }
    internal double[] LowerWPerK { get; }
    /// <summary>Weight of each environment at each vertex.</summary>
    internal double[][] Fields { get; }
    /// <summary>The same of the vertex scheme alone: what flows to a vertex leaves it.</summary>
    internal double[][] BalancedFields { get; }
    internal int[][] SurfaceVertices { get; }

    private int EnvironmentCount => Grid.Blocks.Environments.Length;

    /// <summary>Bound of the error of each environment's own flow, as a fraction of it: the largest.</summary>
    internal double ErrorFraction() => Worst((_, halfSpan) => halfSpan);

    /// <summary>
    /// Bound of the change of the flow were every cell halved: the fields of this grid are fields of that one, where lumping adds a quarter;
    /// so that grid's answer lies between bounds that are wider than these by a quarter of what lumping added here.
    /// </summary>
    internal double DoublingFraction() => Worst((e, halfSpan) => halfSpan + Math.Max(_gap.HatWPerK[e], _gap.FluxWPerK[e]) / 4);

    private double Worst(Func<int, double, double> boundWPerK)
    {
        if (HasJump) return double.PositiveInfinity;
        double worst = 0;
        for (int e = 0; e < EnvironmentCount && EnvironmentCount > 1; e++)
        {
            if (_isAlone[e]) continue;
            int own = e * EnvironmentCount + e;
            worst = Math.Max(worst, boundWPerK(own, (UpperWPerK[own] - LowerWPerK[own]) / 2) / ((UpperWPerK[own] + LowerWPerK[own]) / 2));
        }
        return worst;
    }

    /// <summary>
    /// Vertices and weights whose change judges a round: the lowest and highest weight of every environment on the surfaces of every environment;
    /// where a jump leaves those fixed, the weights at all vertices of the first grid, which are vertices of every later one.
    /// </summary>
    internal (int Vertex, double Weight)[] Watched(double[][] startM)
    {
        if (HasJump)
            return [.. from x in startM[0] from y in startM[1] from z in Grid.Dimensions == 3 ? startM[2] : [0]
                       let vertex = Grid.Vertex(Line(0, x), Line(1, y), Grid.Dimensions == 3 ? Line(2, z) : 0)
                       from field in Fields select (vertex, field[vertex])];
        return [.. from surface in SurfaceVertices
                   from field in Fields
                   from vertex in new[] { surface.MinBy(vertex => field[vertex]), surface.MaxBy(vertex => field[vertex]) }
                   select (vertex, field[vertex])];
    }

    private int Line(int axis, double atM) => Array.BinarySearch(Grid.Axes[axis].LinesM, atM);

    /// <summary>The grid with those lines halved that hold most of the gap; all lines where a jump's endless gap would draw them to one corner.</summary>
    /// <param name="unsteady">Vertices whose temperatures still change too much: the lines beside them are halved too.</param>
    internal double[][] Next(IEnumerable<int> unsteady)
    {
        bool[][] marked = HasJump ? [.. Grid.Axes.Select(axis => axis.Block.Select(_ => true).ToArray())] : Marked(_gap.ByLine);
        foreach (int vertex in unsteady)
        {
            int[] at = [vertex % Grid.X.VertexCount, vertex / Grid.X.VertexCount % Grid.Y.VertexCount, vertex / (Grid.X.VertexCount * Grid.Y.VertexCount)];
            for (int axis = 0; axis < Grid.Dimensions; axis++)
                for (int line = Math.Max(0, at[axis] - 1); line < Math.Min(at[axis] + 1, marked[axis].Length); line++) marked[axis][line] = true;
        }
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

    private static double[] Rest(double[][] fields, Lattice vertices)
    {
        double[] rest = new double[vertices.Count];
        for (int vertex = 0; vertex < rest.Length; vertex++)
        {
            double sum = 0;
            foreach (double[] field in fields) sum += field[vertex];
            rest[vertex] = vertices.State[vertex] == Lattice.Empty ? 0 : 1 - sum;
        }
        return rest;
    }
}
