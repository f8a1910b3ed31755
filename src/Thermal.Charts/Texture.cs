using SkiaSharp;
using Thermal.Materials;

namespace Thermal.Charts;

/// <summary>Ground and texture of a layer in a cut: each kind of material can be told apart without colour.</summary>
internal static class Texture
{
    private const float Faint = 0.22f;

    /// <param name="sheet">Where to draw.</param>
    /// <param name="box">The layer, px.</param>
    /// <param name="group">Kind of material.</param>
    /// <param name="isLyingFlat">True where the layer runs from left to right, false where it stands.</param>
    internal static void Draw(Sheet sheet, SKRect box, MaterialGroup group, bool isLyingFlat)
    {
        sheet.Area(box, Ground(sheet.Palette, group));
        Over(sheet, box, group, isLyingFlat);
    }

    /// <summary>The texture alone, over what is there.</summary>
    /// <inheritdoc cref="Draw"/>
    internal static void Over(Sheet sheet, SKRect box, MaterialGroup group, bool isLyingFlat)
    {
        sheet.Canvas.Save();
        sheet.Canvas.ClipRect(box);
        if (!isLyingFlat)
        {
            // Drawn lying, then turned: grain and fibres follow the layer.
            sheet.Canvas.Translate(box.Left, box.Bottom);
            sheet.Canvas.RotateDegrees(-90);
            box = SKRect.Create(box.Height, box.Width);
        }
        using SKPath path = PathOf(box, group);
        using SKPaint paint = Sheet.Stroke(sheet.Palette.Ink, 1, Faint);
        sheet.Canvas.DrawPath(path, paint);
        sheet.Canvas.Restore();
    }

    internal static string Ground(Palette palette, MaterialGroup group) => group switch
    {
        MaterialGroup.Wood => palette.Wood,
        MaterialGroup.Wool => palette.Wool,
        MaterialGroup.Foam => palette.Foam,
        MaterialGroup.Metal => palette.Metal,
        MaterialGroup.Covering => palette.Line,
        _ => palette.Card,
    };

    private static SKPath PathOf(SKRect box, MaterialGroup group) => group switch
    {
        MaterialGroup.Wood => Grain(box),
        MaterialGroup.Wool => Fibres(box),
        MaterialGroup.Foam => Cells(box),
        MaterialGroup.Plastic => Hatching(box, 9),
        MaterialGroup.Covering => Stitches(box),
        MaterialGroup.Film => Hatching(box, 4),
        MaterialGroup.Pane => Hatching(box, 26),
        _ => new SKPath(),
    };

    private static SKPath Grain(SKRect box)
    {
        var path = new SKPath();
        for (float y = box.Top + 4; y < box.Bottom; y += 5)
        {
            path.MoveTo(box.Left, y);
            path.LineTo(box.Right, y);
        }
        return path;
    }

    private static SKPath Fibres(SKRect box)
    {
        var path = new SKPath();
        for (float x = box.Left + 8; x < box.Right; x += 14)
        {
            path.MoveTo(x, box.Top);
            for (float y = box.Top; y < box.Bottom; y += 24)
            {
                path.QuadTo(x + 6, y + 6, x, y + 12);
                path.QuadTo(x - 6, y + 18, x, y + 24);
            }
        }
        return path;
    }

    // Small six-sided cells in staggered rows.
    private static SKPath Cells(SKRect box)
    {
        var path = new SKPath();
        int row = 0;
        for (float y = box.Top + 9; y < box.Bottom + 3; y += 14, row++)
            for (float x = box.Left + (row % 2 == 0 ? 9 : 17); x < box.Right; x += 16)
            {
                path.MoveTo(x - 3, y);
                path.LineTo(x - 1.5f, y - 2.6f);
                path.LineTo(x + 1.5f, y - 2.6f);
                path.LineTo(x + 3, y);
                path.LineTo(x + 1.5f, y + 2.6f);
                path.LineTo(x - 1.5f, y + 2.6f);
                path.Close();
            }
        return path;
    }

    private static SKPath Hatching(SKRect box, float step)
    {
        var path = new SKPath();
        for (float x = box.Left - box.Height; x < box.Right; x += step)
        {
            path.MoveTo(x, box.Bottom);
            path.LineTo(x + box.Height, box.Top);
        }
        return path;
    }

    private static SKPath Stitches(SKRect box)
    {
        var path = new SKPath();
        for (float y = box.Top + 5; y < box.Bottom; y += 6)
            for (float x = box.Left + 3; x < box.Right; x += 9)
            {
                path.MoveTo(x, y);
                path.LineTo(x + 4, y);
            }
        return path;
    }
}
