using Thermal.Climates;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The lower axis of a year by months, January first.</summary>
internal static class MonthAxis
{
    internal const double Low = 0.4, High = 12.6;

    // Three letters need this much a month; one letter is enough where the row tells the order.
    private const float ThreeLettersPx = 27;

    /// <summary>The axis for a plot of that width.</summary>
    internal static AxisScale For(float widthPx) => AxisScale.Bare("", Low, High) with { Ticks = [.. Enumerable.Range(1, Place.MonthCount).Select(month => ((double)month, Letters(month, widthPx)))] };

    /// <summary>A month's name where twelve of them share that width.</summary>
    internal static string Letters(int month, float widthPx) => Grammar.ShortMonth(month)[..(widthPx / (High - Low) >= ThreeLettersPx ? 3 : 1)];
}
