namespace Thermal.Bridges;

/// <summary>How closely a section is to be solved.</summary>
/// <param name="FlowFraction">Largest error of the flow of any environment alone 1 K warmer than the rest, fraction, 1e-5 to 0.1; a coupling between two is then off by at most this share of the geometric mean of their flows.</param>
/// <param name="TemperatureK">Largest change of the coldest surface temperatures in the last refinement for 1 K between environments, K, 1e-5 to 1.</param>
/// <param name="LargestCellCount">Cells at which it stops and says it did not get there, 1 to 20 million; the first grid is solved in any case.</param>
/// <remarks>Source: ISO-10211, criterion of subdivision: doubling changes the flow by less than 1 %.</remarks>
public sealed record Accuracy(double FlowFraction = 0.01, double TemperatureK = 0.02, int LargestCellCount = 2_000_000)
{
    /// <summary>The standard's one per cent.</summary>
    public static Accuracy OnePerCent { get; } = new();
}
