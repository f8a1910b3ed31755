namespace Thermal.Bridges;

/// <summary>A solved section: what flows between its environments and how warm it is anywhere, for any temperatures of theirs.</summary>
public sealed class SolvedSection
{
    private SolvedSection(Refinement last) => Last = last;

    private Refinement Last { get; }

    /// <summary>The answer after the last round.</summary>
    internal static SolvedSection Of(Refinement last, double changeK, int rounds, bool isConverged)
    {
        int n = last.Fields.Length;
        double[] couplings = new double[n * n], errors = new double[n * n];
        for (int e = 0; e < n; e++)
            for (int f = 0; f < n; f++)
            {
                if (e == f) continue;
                couplings[e * n + f] = -(last.UpperWPerK[e * n + f] + last.LowerWPerK[e * n + f]) / 2;
                errors[e * n + f] = last.HasJump ? double.PositiveInfinity : Math.Sqrt(Span(last, e) * Span(last, f)) / 2;
            }
        return new(last)
        {
            CouplingsWPerK = couplings,
            CouplingErrorsWPerK = errors,
            DoublingChangeFraction = last.DoublingFraction(),
            TemperatureChangeK = changeK,
            IsConverged = isConverged,
            RoundsCount = rounds,
        };
    }

    // Rounding alone can make the span of an exact answer negative.
    private static double Span(Refinement last, int e) => Math.Max(0, last.UpperWPerK[e * last.Fields.Length + e] - last.LowerWPerK[e * last.Fields.Length + e]);
    /// <summary>The section.</summary>
    public Section Section => Last.Grid.Blocks.Section;
    /// <summary>Its environments, in the order they first stand in the section; every list below follows it.</summary>
    public IReadOnlyList<string> Environments => Last.Grid.Blocks.Environments;
    /// <summary>Thermal coupling coefficients L between environments, n × n by rows, symmetric, 0 on the diagonal; W/K, per metre in a plane section.</summary>
    public IReadOnlyList<double> CouplingsWPerK { get; private init; } = [];
    /// <summary>How far each coefficient can be off, in the same order and unit: half the span between its lower and upper bound.</summary>
    public IReadOnlyList<double> CouplingErrorsWPerK { get; private init; } = [];
    /// <summary>Most by which the flow of any environment alone 1 K warmer than the rest would change were every cell halved, fraction: a bound, not a trial. The standard's criterion asks for less than 0.01.</summary>
    public double DoublingChangeFraction { get; private init; }
    /// <summary>Largest change of a coldest surface temperature in the last refinement, for 1 K between environments, K.</summary>
    public double TemperatureChangeK { get; private init; }
    /// <summary>True where the accuracy asked for was reached.</summary>
    public bool IsConverged { get; private init; }
    /// <summary>Cells of the last grid.</summary>
    public int CellCount => Last.Grid.CellCount;
    /// <summary>Rounds of refinement.</summary>
    public int RoundsCount { get; private init; }
    /// <summary>Grid lines in x, m, ascending.</summary>
    public IReadOnlyList<double> XsM => Last.Grid.X.LinesM;
    /// <summary>Grid lines in y, m, ascending.</summary>
    public IReadOnlyList<double> YsM => Last.Grid.Y.LinesM;
    /// <summary>Grid lines in z, m, ascending; 0 and 1 for a plane section.</summary>
    public IReadOnlyList<double> ZsM => Last.Grid.Z.LinesM;

    /// <summary>Coupling coefficient between two environments, W/K, per metre in a plane section.</summary>
    public double CouplingWPerK(string one, string other) => CouplingsWPerK[Number(one) * Environments.Count + Number(other)];

    /// <summary>Heat that leaves each environment into the section for given temperatures, W, per metre in a plane section; they add up to 0.</summary>
    /// <param name="temperaturesC">One for each environment, °C.</param>
    public IReadOnlyList<double> FlowsW(IReadOnlyList<double> temperaturesC)
    {
        int n = Checked(temperaturesC).Count;
        double[] flows = new double[n];
        for (int e = 0; e < n; e++)
            for (int f = 0; f < n; f++) flows[e] += CouplingsWPerK[e * n + f] * (temperaturesC[e] - temperaturesC[f]);
        return flows;
    }

    /// <summary>Temperature weighting factors at a point: shares of the environments in its temperature, adding up to 1.</summary>
    /// <param name="xM">x, m.</param>
    /// <param name="yM">y, m.</param>
    /// <param name="zM">z, m; only for a solid body.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point lies in no piece.</exception>
    /// <remarks>At corners of materials by conductivity weights. Source: ISO-10211, temperature weighting factors.</remarks>
    public IReadOnlyList<double> WeightsFraction(double xM, double yM, double zM = 0) => ReadOut.Weights(Last, xM, yM, zM);

    /// <summary>Temperature at a point, °C.</summary>
    public double TemperatureC(IReadOnlyList<double> temperaturesC, double xM, double yM, double zM = 0) =>
        Mixed(Checked(temperaturesC), WeightsFraction(xM, yM, zM));

    /// <summary>Temperatures at all points of the grid, °C: x runs fastest, then y, then z. A point that touches no piece has no meaning.</summary>
    /// <param name="temperaturesC">One for each environment, °C.</param>
    /// <remarks>Of the vertex scheme alone, so that heat which flows to a point also leaves it; on a surface they differ from <see cref="TemperatureC"/> by less than its error.</remarks>
    public IReadOnlyList<double> TemperaturesAtGridC(IReadOnlyList<double> temperaturesC)
    {
        double[] mixed = new double[Last.BalancedFields[0].Length];
        for (int e = 0; e < Checked(temperaturesC).Count; e++)
            for (int vertex = 0; vertex < mixed.Length; vertex++) mixed[vertex] += temperaturesC[e] * Last.BalancedFields[e][vertex];
        return mixed;
    }

    /// <summary>The point of an environment's surfaces with the lowest temperature for given temperatures.</summary>
    /// <param name="environment">Whose surfaces, such as room.</param>
    /// <param name="temperaturesC">One for each environment, °C.</param>
    public SurfacePoint Coldest(string environment, IReadOnlyList<double> temperaturesC) => Extreme(environment, Checked(temperaturesC), -1);

    /// <summary>The warmest point likewise.</summary>
    public SurfacePoint Warmest(string environment, IReadOnlyList<double> temperaturesC) => Extreme(environment, Checked(temperaturesC), 1);

    private SurfacePoint Extreme(string environment, IReadOnlyList<double> temperaturesC, int sign)
    {
        Grid grid = Last.Grid;
        (int at, double atC) = (-1, 0);
        foreach (int vertex in Last.SurfaceVertices[Number(environment)])
        {
            double temperatureC = 0;
            for (int e = 0; e < temperaturesC.Count; e++) temperatureC += temperaturesC[e] * Last.Fields[e][vertex];
            if (at < 0 || sign * temperatureC > sign * atC) (at, atC) = (vertex, temperatureC);
        }
        int nx = grid.X.VertexCount, ny = grid.Y.VertexCount;
        return new(grid.X.LinesM[at % nx], grid.Y.LinesM[at / nx % ny], grid.Z.LinesM[at / (nx * ny)], atC, [.. Last.Fields.Select(field => field[at])]);
    }

    private static double Mixed(IReadOnlyList<double> temperaturesC, IReadOnlyList<double> weights) =>
        temperaturesC.Zip(weights, (temperatureC, weight) => temperatureC * weight).Sum();

    private int Number(string environment)
    {
        int number = Array.IndexOf(Last.Grid.Blocks.Environments, environment);
        return number >= 0 ? number : throw new ArgumentException($"{Section.Name} has no environment {environment}.", nameof(environment));
    }

    private IReadOnlyList<double> Checked(IReadOnlyList<double> temperaturesC)
    {
        if (temperaturesC.Count != Environments.Count) throw new ArgumentException($"{Section.Name} has {Environments.Count} environments.", nameof(temperaturesC));
        foreach (double temperatureC in temperaturesC) Guard.InRange(temperatureC, -273.15, 1000, "°C");
        return temperaturesC;
    }
}

/// <summary>A point on a surface.</summary>
/// <param name="XM">x, m.</param>
/// <param name="YM">y, m.</param>
/// <param name="ZM">z, m.</param>
/// <param name="TemperatureC">Its temperature, °C.</param>
/// <param name="WeightsFraction">Shares of the environments in it, adding up to 1.</param>
public sealed record SurfacePoint(double XM, double YM, double ZM, double TemperatureC, IReadOnlyList<double> WeightsFraction);
