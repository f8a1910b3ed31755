namespace Thermal.Bridges;

/// <summary>How closely a section is to be solved.</summary>
/// <param name="FlowFraction">Largest error of the flows between environments, fraction, 1e-5 to 0.1.</param>
/// <param name="TemperatureK">Largest change of the coldest surface temperatures in the last refinement for 1 K between environments, K, 1e-5 to 1.</param>
/// <param name="LargestCellCount">Cells at which it stops and says it did not get there.</param>
/// <remarks>Source: ISO-10211, criterion of subdivision: doubling changes the flow by less than 1 %.</remarks>
public sealed record Accuracy(double FlowFraction = 0.01, double TemperatureK = 0.02, int LargestCellCount = 2_000_000)
{
    /// <summary>The standard's one per cent.</summary>
    public static Accuracy OnePerCent { get; } = new();
}
