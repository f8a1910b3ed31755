using SkiaSharp;

namespace Thermal.Charts;

/// <summary>The sheet a picture is drawn on: text, plates, lines and areas in px from the upper left.</summary>
/// <remarks>Dashes are drawn piece by piece: a dash effect makes the vector backend complain on standard error.</remarks>
internal sealed class Sheet(SKCanvas canvas, Palette palette)
{
    internal SKCanvas Canvas { get; } = canvas;

    internal Palette Palette { get; } = palette;

    internal void Ground(int width, int height) => Area(SKRect.Create(width, height), Palette.Card);

    internal void Text(string text, float x, float baseline, Lettering lettering, string? colour = null, SKTextAlign align = SKTextAlign.Left)
    {
        using SKFont font = Lettering.Font(lettering.IsBold, lettering.Size);
        using SKPaint paint = Fill(colour ?? Palette.Ink);
        Canvas.DrawText(text, x, baseline, align, font, paint);
    }

    /// <summary>Text centred at a place, moved sideways where it would leave the box, on a plate of the ground's colour.</summary>
    internal void TextWithin(SKRect box, string text, float x, float baseline, Lettering lettering, string colour)
    {
        float width = lettering.WidthOf(text);
        float left = Math.Max(box.Left + 4, Math.Min(x - width / 2, box.Right - width - 4));
        Area(SKRect.Create(left - 3, baseline - lettering.Size, width + 6, lettering.Size + 4), Palette.Card, 0.8f);
        Text(text, left, baseline, lettering, colour);
    }

    /// <summary>Text on a plate of the picture's ground, so that no line or texture crosses it; see <see cref="FittingPlate"/>.</summary>
    internal void Plate(string strong, string plain, float x, float middle)
    {
        float width = PlateWidth(strong, plain);
        using SKPaint paint = Fill(Palette.Card, 0.9f);
        using SKPath path = RoundedBox(SKRect.Create(x, middle - 10, width, 20), 5);
        Canvas.DrawPath(path, paint);
        Text(strong, x + 7, middle + 4.5f, Lettering.Value);
        Text(plain, x + 7 + Lettering.Value.WidthOf(strong) + 5, middle + 4.5f, Lettering.Label, Palette.Muted);
    }

    /// <summary>The strong text, shortened where its plate would be wider than allowed.</summary>
    internal static string FittingPlate(string strong, string plain, float mostPx) =>
        Lettering.Value.Fitting(strong, mostPx - PlateWidth("", plain));

    internal static float PlateWidth(string strong, string plain) =>
        Lettering.Value.WidthOf(strong) + 5 + Lettering.Label.WidthOf(plain) + 14;

    internal void Line(float x1, float y1, float x2, float y2, string colour, float width = 1, float opacity = 1)
    {
        using SKPaint paint = Stroke(colour, width, opacity);
        Canvas.DrawLine(x1, y1, x2, y2, paint);
    }

    internal void Polyline(IReadOnlyList<SKPoint> points, string colour, float width = 1, float opacity = 1, bool isClosed = false)
    {
        using SKPath path = PathOf(points, isClosed);
        using SKPaint paint = Stroke(colour, width, opacity);
        Canvas.DrawPath(path, paint);
    }

    /// <summary>A line with a rim of the ground's colour, which keeps it apart from what it crosses.</summary>
    internal void RimmedLine(IReadOnlyList<SKPoint> points, string colour, float width)
    {
        Polyline(points, Palette.Card, width + 3);
        Polyline(points, colour, width);
    }

    internal void DashedLine(IReadOnlyList<SKPoint> points, string colour, float width, float dash = 6, float gap = 4)
    {
        using SKPath path = Dashes.Of(points, dash, gap);
        using SKPaint paint = Stroke(colour, width, 1);
        Canvas.DrawPath(path, paint);
    }

    internal void Area(SKRect box, string colour, float opacity = 1)
    {
        using SKPaint paint = Fill(colour, opacity);
        Canvas.DrawRect(box, paint);
    }

    internal void Area(IReadOnlyList<SKPoint> outline, string colour, float opacity = 1)
    {
        using SKPath path = PathOf(outline, isClosed: true);
        using SKPaint paint = Fill(colour, opacity);
        Canvas.DrawPath(path, paint);
    }

    /// <summary>Several outlines as one area; those that run the other way are holes.</summary>
    internal void Areas(IReadOnlyList<SKPoint[]> outlines, string colour)
    {
        if (outlines.Count == 0)
            return;
        using SKPath path = PathOf(outlines);
        using SKPaint paint = Fill(colour);
        Canvas.DrawPath(path, paint);
    }

    internal void Box(SKRect box, string colour, float width = 1, float opacity = 1)
    {
        using SKPaint paint = Stroke(colour, width, opacity);
        Canvas.DrawRect(box, paint);
    }

    internal void Dot(float x, float y, float radius, string colour)
    {
        using SKPaint rim = Fill(Palette.Card);
        using SKPaint paint = Fill(colour);
        Canvas.DrawCircle(x, y, radius + 2, rim);
        Canvas.DrawCircle(x, y, radius, paint);
    }

    internal static SKPath PathOf(IReadOnlyList<SKPoint> points, bool isClosed)
    {
        var path = new SKPath();
        path.MoveTo(points[0]);
        for (int i = 1; i < points.Count; i++)
            path.LineTo(points[i]);
        if (isClosed)
            path.Close();
        return path;
    }

    internal static SKPath PathOf(IReadOnlyList<SKPoint[]> outlines)
    {
        var path = new SKPath();
        foreach (SKPoint[] outline in outlines)
        {
            path.MoveTo(outline[0]);
            foreach (SKPoint point in outline.AsSpan(1))
                path.LineTo(point);
            path.Close();
        }
        return path;
    }

    internal static SKPaint Fill(string colour, float opacity = 1) =>
        new() { Color = Colour(colour, opacity), IsAntialias = true };

    internal static SKPaint Stroke(string colour, float width, float opacity) =>
        new() { Color = Colour(colour, opacity), IsAntialias = true, IsStroke = true, StrokeWidth = width, StrokeJoin = SKStrokeJoin.Round };

    private static SKColor Colour(string colour, float opacity) =>
        SKColor.Parse(colour).WithAlpha((byte)MathF.Round(255 * opacity));

    // Four short curves; the library's own rounded box becomes dozens of curves in vector text.
    private static SKPath RoundedBox(SKRect box, float radius)
    {
        var path = new SKPath();
        path.MoveTo(box.Left + radius, box.Top);
        path.LineTo(box.Right - radius, box.Top);
        path.QuadTo(box.Right, box.Top, box.Right, box.Top + radius);
        path.LineTo(box.Right, box.Bottom - radius);
        path.QuadTo(box.Right, box.Bottom, box.Right - radius, box.Bottom);
        path.LineTo(box.Left + radius, box.Bottom);
        path.QuadTo(box.Left, box.Bottom, box.Left, box.Bottom - radius);
        path.LineTo(box.Left, box.Top + radius);
        path.QuadTo(box.Left, box.Top, box.Left + radius, box.Top);
        path.Close();
        return path;
    }
}
