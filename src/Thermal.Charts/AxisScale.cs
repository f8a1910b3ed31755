namespace Thermal.Charts;

/// <summary>One axis: its words with the unit, its ends and its ticks, all in the unit shown.</summary>
/// <param name="Title">What is measured, with its unit.</param>
/// <param name="Low">Left or lower end.</param>
/// <param name="High">Right or upper end; above Low.</param>
/// <param name="Ticks">Where a tick stands and what is written there.</param>
internal sealed record AxisScale(string Title, double Low, double High, IReadOnlyList<(double At, string Label)> Ticks)
{
    /// <summary>An axis over a span, its ends moved out to round numbers.</summary>
    internal static AxisScale Rounded(string title, double low, double high, int mostParts = 6)
    {
        double step = NiceNumbers.Step(high > low ? high - low : 1, mostParts);
        double from = Math.Floor(low / step + 1e-9) * step, to = Math.Ceiling(high / step - 1e-9) * step;
        return Of(title, from, to > from ? to : from + step, step);
    }

    /// <summary>An axis whose ends stay where they are, with ticks at round numbers.</summary>
    internal static AxisScale Exact(string title, double low, double high, int mostParts = 6) =>
        Of(title, low, high, NiceNumbers.Step(high - low, mostParts));

    /// <summary>An axis without ticks of its own.</summary>
    internal static AxisScale Bare(string title, double low, double high) => new(title, low, high, []);

    private static AxisScale Of(string title, double low, double high, double step) =>
        new(title, low, high, [.. NiceNumbers.Multiples(low, high, step).Select(at => (at, NiceNumbers.Written(at, step)))]);
}
