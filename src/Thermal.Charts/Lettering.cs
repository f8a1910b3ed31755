using SkiaSharp;

namespace Thermal.Charts;

/// <summary>The sizes and weights of the pictures' text; none below 11.5 px, the least that reads on paper and on a phone.</summary>
internal sealed record Lettering(bool IsBold, float Size)
{
    internal static readonly Lettering Title = new(true, 14);
    internal static readonly Lettering Value = new(true, 12.5f);
    internal static readonly Lettering Label = new(false, 12.5f);
    internal static readonly Lettering Small = new(false, 12);

    /// <summary>Width of a text, px.</summary>
    internal float WidthOf(string text)
    {
        using SKFont font = Font(IsBold, Size);
        return font.MeasureText(text);
    }

    /// <summary>The text, or as much of it as a width holds with an ellipsis; the alt text has it whole.</summary>
    internal string Fitting(string text, float widthPx)
    {
        if (WidthOf(text) <= widthPx)
            return text;
        int length = text.Length;
        while (length > 1 && WidthOf(text[..length].TrimEnd() + "…") > widthPx)
            length--;
        return text[..length].TrimEnd() + "…";
    }

    internal static SKFont Font(bool isBold, float size) =>
        new(isBold ? EmbeddedFonts.SemiBold : EmbeddedFonts.Regular, size)
        {
            // Positions between pixels, so that vector text and pixels agree.
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
            Edging = SKFontEdging.Antialias,
        };
}
