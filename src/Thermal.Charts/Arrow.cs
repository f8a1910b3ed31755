using SkiaSharp;

namespace Thermal.Charts;

/// <summary>A small open arrow head in the middle of a line.</summary>
internal static class Arrow
{
    // Shorter lines take no arrow; the head's length and half its width, px.
    private const float ShortestPx = 24, LongPx = 5, HalfPx = 2.8f;

    /// <returns>Three points; none where the line is too short.</returns>
    internal static SKPoint[] In(IReadOnlyList<SKPoint> line)
    {
        float whole = 0;
        for (int i = 1; i < line.Count; i++)
            whole += SKPoint.Distance(line[i - 1], line[i]);
        if (whole < ShortestPx)
            return [];
        float left = whole / 2;
        for (int i = 1; i < line.Count; i++)
        {
            float length = SKPoint.Distance(line[i - 1], line[i]);
            if (length >= left && length > 0)
            {
                SKPoint along = new((line[i].X - line[i - 1].X) / length, (line[i].Y - line[i - 1].Y) / length);
                SKPoint tip = new(line[i - 1].X + along.X * left, line[i - 1].Y + along.Y * left);
                SKPoint tail = new(tip.X - along.X * LongPx, tip.Y - along.Y * LongPx);
                return [new(tail.X - along.Y * HalfPx, tail.Y + along.X * HalfPx), tip, new(tail.X + along.Y * HalfPx, tail.Y - along.X * HalfPx)];
            }
            left -= length;
        }
        return [];
    }
}
