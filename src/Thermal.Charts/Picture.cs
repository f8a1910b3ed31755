using SkiaSharp;

namespace Thermal.Charts;

/// <summary>One finished picture: vector text for a page, pixels for a file, and the words for someone who cannot see it.</summary>
/// <remarks>Drawing equal content gives equal text and equal pixels, in any order and in any process of one platform.</remarks>
public sealed class Picture
{
    // Two pixels a point, so that letters stay sharp on paper and on dense screens.
    private const int PixelsPerPoint = 2;

    private readonly Action<SKCanvas> draw;
    private readonly Lazy<string> svg;

    internal Picture(int width, int height, string altText, string caption, Action<SKCanvas> draw)
    {
        EmbeddedFonts.Use();
        this.draw = draw;
        Width = width;
        Height = height;
        AltText = altText;
        Caption = caption;
        svg = new Lazy<string>(() => SvgText.Of(width, height, altText, draw));
    }

    /// <summary>Width as seen, CSS pixels.</summary>
    public int Width { get; }

    /// <summary>Height as seen, CSS pixels; more than asked for where the content needs it.</summary>
    public int Height { get; }

    /// <summary>The message with its numbers, for someone who cannot see the picture.</summary>
    public string AltText { get; }

    /// <summary>What a reader should take from the picture, one or two sentences to stand below it.</summary>
    public string Caption { get; }

    /// <summary>
    /// The picture as one svg element with real text: viewBox, role img and the alt text as aria-label; no XML line.
    /// Ids come from its content, so that different pictures share a page.
    /// </summary>
    public string Svg => svg.Value;

    /// <summary>The picture as a PNG file, two pixels per CSS pixel.</summary>
    public byte[] ToPng()
    {
        var info = new SKImageInfo(Width * PixelsPerPoint, Height * PixelsPerPoint);
        using SKSurface surface = SKSurface.Create(info);
        surface.Canvas.Scale(PixelsPerPoint);
        draw(surface.Canvas);
        using SKImage image = surface.Snapshot();
        using SKData data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
