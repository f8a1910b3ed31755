using System.Globalization;

namespace Thermal.Samples.TripPage;

/// <summary>A table of a page for readers.</summary>
internal sealed class MarkdownTable(params string[] titles)
{
    private readonly List<string> lines = [$"| {string.Join(" | ", titles)} |", $"|{string.Concat(titles.Select(_ => "---|"))}"];

    internal MarkdownTable Row(params string[] cells)
    {
        lines.Add($"| {string.Join(" | ", cells)} |");
        return this;
    }

    internal string Text => string.Join('\n', lines) + "\n";

    /// <summary>A number with a true minus sign and never a minus zero.</summary>
    internal static string Number(double value, int decimals)
    {
        string text = Math.Abs(value).ToString("F" + decimals, CultureInfo.InvariantCulture);
        return value < 0 && text.Any(letter => letter is not ('0' or '.')) ? "−" + text : text;
    }
}
