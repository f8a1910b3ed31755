using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Thermal.Charts.Tests;

/// <summary>What stands in the vector text of a picture.</summary>
internal static partial class Drawn
{
    /// <summary>One text as placed: words, left end, baseline, length and size in px.</summary>
    internal sealed record Word(string Text, double Left, double Baseline, double Length, double Size)
    {
        public bool Meets(Word other) =>
            Left < other.Left + other.Length && other.Left < Left + Length && Baseline - Size * 0.7 < other.Baseline && other.Baseline - other.Size * 0.7 < Baseline;
    }

    internal static XElement Root(Picture picture) => XElement.Parse(picture.Svg);

    internal static IReadOnlyList<Word> Words(Picture picture) =>
    [
        .. Root(picture).Descendants().Where(element => element.Name.LocalName == "text").Select(text =>
        {
            (double right, double down) = Moved(text.Attribute("transform")?.Value);
            return new Word(text.Value.Trim(), Number(text, "x") + right, Number(text, "y") + down, Number(text, "textLength"), Number(text, "font-size"));
        }),
    ];

    private static (double Right, double Down) Moved(string? transform)
    {
        if (transform is null)
            return (0, 0);
        Match match = Translate().Match(transform);
        Assert.True(match.Success, $"Only shifted text is expected, not {transform}.");
        return (double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture));
    }

    [GeneratedRegex(@"^translate\(([-0-9.e]+)[ ,]+([-0-9.e]+)\)$")]
    private static partial Regex Translate();

    private static double Number(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, NumberStyles.Float, CultureInfo.InvariantCulture);
}
