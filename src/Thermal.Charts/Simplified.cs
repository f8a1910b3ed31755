using SkiaSharp;

namespace Thermal.Charts;

/// <summary>A line with the points left out that nobody would miss.</summary>
internal static class Simplified
{
    /// <summary>Keeps both ends and what lies further from the line without it than allowed.</summary>
    /// <param name="points">The line; closed where both ends are the same.</param>
    /// <param name="tolerancePx">Greatest distance left out, px.</param>
    internal static SKPoint[] Line(IReadOnlyList<SKPoint> points, float tolerancePx)
    {
        if (points.Count < 3)
            return [.. points];
        bool[] isKept = new bool[points.Count];
        isKept[0] = isKept[^1] = true;
        Stack<(int From, int To)> open = new([(0, points.Count - 1)]);
        while (open.TryPop(out (int From, int To) part))
        {
            (int farthest, float distance) = (0, tolerancePx);
            for (int i = part.From + 1; i < part.To; i++)
                if (Distance(points[i], points[part.From], points[part.To]) is float there && there > distance)
                    (farthest, distance) = (i, there);
            if (farthest == 0)
                continue;
            isKept[farthest] = true;
            open.Push((part.From, farthest));
            open.Push((farthest, part.To));
        }
        return [.. points.Where((_, i) => isKept[i])];
    }

    private static float Distance(SKPoint point, SKPoint from, SKPoint to)
    {
        SKPoint along = to - from, away = point - from;
        float length = along.LengthSquared;
        float part = length > 0 ? Math.Clamp((along.X * away.X + along.Y * away.Y) / length, 0, 1) : 0;
        return SKPoint.Distance(point, new SKPoint(from.X + along.X * part, from.Y + along.Y * part));
    }
}
