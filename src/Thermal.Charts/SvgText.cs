using System.Globalization;
using System.Net;
using System.Security;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using SkiaSharp;

namespace Thermal.Charts;

/// <summary>Turns a drawing into an svg element that can stand in a page.</summary>
internal static partial class SvgText
{
    private const string FamiliesInOrder = "Inter, system-ui, sans-serif";

    internal static string Of(int width, int height, string altText, Action<SKCanvas> draw)
    {
        using var stream = new MemoryStream();
        using (SKCanvas canvas = SKSvgCanvas.Create(SKRect.Create(width, height), stream))
            draw(canvas);
        string svg = Encoding.UTF8.GetString(stream.ToArray()).ReplaceLineEndings("\n");
        svg = XmlLine().Replace(svg, "");
        // The library writes some colours by name; a page that swaps the palette's colours looks for their figures.
        svg = svg.Replace("\"white\"", "\"#FFFFFF\"", StringComparison.Ordinal).Replace("\"black\"", "\"#000000\"", StringComparison.Ordinal);
        svg = AttributeValue().Replace(svg, value => LongNumber().Replace(value.Value, Shortened));
        svg = TextElement().Replace(svg, Tidied);
        svg = BetweenLines().Replace(svg, "\n").Trim();
        svg = WithIdsOfContent(svg);
        string opening = string.Create(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"{width}\" height=\"{height}\" viewBox=\"0 0 {width} {height}\" role=\"img\" aria-label=\"{SecurityElement.Escape(altText)}\">");
        return OpeningTag().Replace(svg, _ => opening, 1);
    }

    // A hundredth of a pixel cannot be seen; single precision writes seven digits.
    private static string Shortened(Match number) =>
        double.Parse(number.Value, CultureInfo.InvariantCulture).ToString("0.##", CultureInfo.InvariantCulture);

    // The drawing library places every glyph by itself; one start and the length keep the text whole, smaller, and
    // as wide as drawn even where the reader's machine has another typeface.
    private static string Tidied(Match match)
    {
        string attributes = match.Groups["attributes"].Value;
        string text = WebUtility.HtmlDecode(match.Groups["text"].Value.Trim());
        bool isBold = attributes.Contains("font-weight", StringComparison.Ordinal);
        float size = float.Parse(FontSize().Match(attributes).Groups[1].Value, CultureInfo.InvariantCulture);
        using SKFont font = Lettering.Font(isBold, size);
        attributes = FontAttributes().Replace(attributes, "");
        attributes = XList().Replace(attributes, m => $" x=\"{m.Groups[1].Value}\"");
        attributes = YList().Replace(attributes, m => $" y=\"{m.Groups[1].Value}\"");
        string length = font.MeasureText(text).ToString("0.#", CultureInfo.InvariantCulture);
        string weight = isBold ? " font-weight=\"600\"" : "";
        return $"<text{attributes} font-family=\"{FamiliesInOrder}\"{weight} textLength=\"{length}\" lengthAdjust=\"spacingAndGlyphs\">{SecurityElement.Escape(text)}</text>";
    }

    // Ids of the drawing library count up through the process; here they are numbered within the picture, behind a
    // prefix taken from its content.
    private static string WithIdsOfContent(string svg)
    {
        var numbers = new Dictionary<string, int>();
        string numbered = Id().Replace(svg, m => $"@{Numbered(numbers, m.Value)}@");
        string prefix = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(numbered)))[..8];
        return NumberedId().Replace(numbered, m => $"p{prefix}-{m.Groups[1].Value}");
    }

    private static int Numbered(Dictionary<string, int> numbers, string id)
    {
        if (!numbers.TryGetValue(id, out int number))
            numbers[id] = number = numbers.Count + 1;
        return number;
    }

    [GeneratedRegex(@"^<\?xml[^>]*>\s*")]
    private static partial Regex XmlLine();

    [GeneratedRegex("=\"[^\"]*\"")]
    private static partial Regex AttributeValue();

    [GeneratedRegex(@"-?[0-9]+\.[0-9]{3,}(?![0-9e])")]
    private static partial Regex LongNumber();

    [GeneratedRegex("<svg[^>]*>")]
    private static partial Regex OpeningTag();

    [GeneratedRegex(@"<text(?<attributes>[^>]*)>(?<text>[^<]*)</text>")]
    private static partial Regex TextElement();

    [GeneratedRegex(@"\n\s*")]
    private static partial Regex BetweenLines();

    [GeneratedRegex(@" font-size=""([0-9.]+)""")]
    private static partial Regex FontSize();

    [GeneratedRegex(@" font-(weight|family)=""[^""]*""")]
    private static partial Regex FontAttributes();

    [GeneratedRegex(@" x=""([^,""]*)[^""]*""")]
    private static partial Regex XList();

    [GeneratedRegex(@" y=""([^,""]*)[^""]*""")]
    private static partial Regex YList();

    [GeneratedRegex(@"\b(cl|img|gradient|pattern|filter|mask)_[0-9a-f]+\b")]
    private static partial Regex Id();

    [GeneratedRegex("@([0-9]+)@")]
    private static partial Regex NumberedId();
}
