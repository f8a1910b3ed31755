namespace Thermal.Bridges;

/// <summary>A solved section: what flows between its environments and how warm it is anywhere, for any temperatures of theirs.</summary>
public sealed class SolvedSection
{
    /// <summary>The section.</summary>
    public required Section Section { get; init; }
    /// <summary>Its environments, in the order they first stand in the section; every list below follows it.</summary>
    public required IReadOnlyList<string> Environments { get; init; }
    /// <summary>Thermal coupling coefficients L between environments, n × n by rows, symmetric, 0 on the diagonal; W/K, per metre in a plane section.</summary>
    public required IReadOnlyList<double> CouplingsWPerK { get; init; }
    /// <summary>How far each coefficient can be off, in the same order and unit: half the span between its lower and upper bound.</summary>
    public required IReadOnlyList<double> CouplingErrorsWPerK { get; init; }
    /// <summary>How much the flow changed when every cell was halved, fraction; the standard's criterion asks for less than 0.01.</summary>
    public required double DoublingChangeFraction { get; init; }
    /// <summary>Largest change of a coldest surface temperature in the last refinement, for 1 K between environments, K.</summary>
    public required double TemperatureChangeK { get; init; }
    /// <summary>True where the accuracy asked for was reached.</summary>
    public required bool IsConverged { get; init; }
    /// <summary>Cells of the last grid.</summary>
    public required int CellCount { get; init; }
    /// <summary>Rounds of refinement.</summary>
    public required int RoundsCount { get; init; }
    /// <summary>Grid lines in x, m, ascending.</summary>
    public required IReadOnlyList<double> XsM { get; init; }
    /// <summary>Grid lines in y, m, ascending.</summary>
    public required IReadOnlyList<double> YsM { get; init; }
    /// <summary>Grid lines in z, m, ascending; 0 and 1 for a plane section.</summary>
    public required IReadOnlyList<double> ZsM { get; init; }

    /// <summary>Coupling coefficient between two environments, W/K, per metre in a plane section.</summary>
    public double CouplingWPerK(string one, string other) => throw new NotImplementedException();

    /// <summary>Heat that leaves each environment into the section for given temperatures, W, per metre in a plane section; they add up to 0.</summary>
    /// <param name="temperaturesC">One for each environment, °C.</param>
    public IReadOnlyList<double> FlowsW(IReadOnlyList<double> temperaturesC) => throw new NotImplementedException();

    /// <summary>Temperature weighting factors at a point: shares of the environments in its temperature, adding up to 1.</summary>
    /// <param name="xM">x, m.</param>
    /// <param name="yM">y, m.</param>
    /// <param name="zM">z, m; only for a solid body.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point lies in no piece.</exception>
    /// <remarks>At corners of materials by conductivity weights. Source: ISO-10211, temperature weighting factors.</remarks>
    public IReadOnlyList<double> WeightsFraction(double xM, double yM, double zM = 0) => throw new NotImplementedException();

    /// <summary>Temperature at a point, °C.</summary>
    public double TemperatureC(IReadOnlyList<double> temperaturesC, double xM, double yM, double zM = 0) => throw new NotImplementedException();

    /// <summary>The point of an environment's surfaces with the lowest temperature for given temperatures.</summary>
    /// <param name="environment">Whose surfaces, such as room.</param>
    /// <param name="temperaturesC">One for each environment, °C.</param>
    public SurfacePoint Coldest(string environment, IReadOnlyList<double> temperaturesC) => throw new NotImplementedException();

    /// <summary>The warmest point likewise.</summary>
    public SurfacePoint Warmest(string environment, IReadOnlyList<double> temperaturesC) => throw new NotImplementedException();
}

/// <summary>A point on a surface.</summary>
/// <param name="XM">x, m.</param>
/// <param name="YM">y, m.</param>
/// <param name="ZM">z, m.</param>
/// <param name="TemperatureC">Its temperature, °C.</param>
/// <param name="WeightsFraction">Shares of the environments in it, adding up to 1.</param>
public sealed record SurfacePoint(double XM, double YM, double ZM, double TemperatureC, IReadOnlyList<double> WeightsFraction);
