using SkiaSharp;

namespace Thermal.Charts;

/// <summary>Cuts a line into dashes by length.</summary>
internal static class Dashes
{
    /// <param name="points">Corners of the line, px; two or more.</param>
    /// <param name="dash">Length drawn, px, above 0.</param>
    /// <param name="gap">Length left out, px, above 0.</param>
    internal static SKPath Of(IReadOnlyList<SKPoint> points, float dash, float gap)
    {
        var path = new SKPath();
        float left = dash;
        bool isDrawn = true;
        path.MoveTo(points[0]);
        for (int i = 1; i < points.Count; i++)
        {
            SKPoint from = points[i - 1], to = points[i];
            float length = SKPoint.Distance(from, to);
            float done = 0;
            while (length - done > left)
            {
                done += left;
                Advance(path, Between(from, to, done / length), isDrawn);
                isDrawn = !isDrawn;
                left = isDrawn ? dash : gap;
            }
            left -= length - done;
            Advance(path, to, isDrawn);
        }
        return path;
    }

    private static void Advance(SKPath path, SKPoint to, bool isDrawn)
    {
        if (isDrawn)
            path.LineTo(to);
        else
            path.MoveTo(to);
    }

    private static SKPoint Between(SKPoint from, SKPoint to, float part) =>
        new(from.X + (to.X - from.X) * part, from.Y + (to.Y - from.Y) * part);
}
