using SkiaSharp;

namespace Thermal.Charts;

/// <summary>Finds places for labels that neither leave a box nor cover one another, and as little else as can be.</summary>
internal sealed class FreePlaces(SKRect box)
{
    private readonly List<SKRect> taken = [];
    private readonly List<SKPoint> busy = [];

    /// <summary>Keeps labels away from a line where it can.</summary>
    internal void Avoid(IReadOnlyList<SKPoint> line)
    {
        const float everyPx = 5;
        for (int i = 1; i < line.Count; i++)
        {
            int steps = Math.Min(400, (int)(SKPoint.Distance(line[i - 1], line[i]) / everyPx) + 1);
            for (int k = 0; k < steps; k++)
                busy.Add(new SKPoint(line[i - 1].X + (line[i].X - line[i - 1].X) * k / steps, line[i - 1].Y + (line[i].Y - line[i - 1].Y) * k / steps));
        }
    }

    /// <summary>Takes the best of some places for the middle of a label: earlier ones win where they are as good.</summary>
    /// <returns>The label's box; null where none is free.</returns>
    internal SKRect? Take(IEnumerable<SKPoint> middles, float width, float height)
    {
        SKRect? best = null;
        int least = int.MaxValue;
        foreach (SKPoint middle in middles)
        {
            SKRect place = SKRect.Create(middle.X - width / 2, middle.Y - height / 2, width, height);
            if (!box.Contains(place) || taken.Any(other => other.IntersectsWith(place)))
                continue;
            int covers = busy.Count(point => place.Contains(point));
            if (covers < least)
                (best, least) = (place, covers);
        }
        if (best is { } found)
            taken.Add(SKRect.Inflate(found, 3, 3));
        return best;
    }
}
