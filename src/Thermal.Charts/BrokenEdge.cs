using SkiaSharp;

namespace Thermal.Charts;

/// <summary>The edge of a part that is drawn while the thing goes on: a zigzag with the ground beyond it.</summary>
internal static class BrokenEdge
{
    private const float TeethPx = 7, DeepPx = 3;

    internal static void Draw(Sheet sheet, SKPoint from, SKPoint to)
    {
        float length = SKPoint.Distance(from, to);
        int teeth = Math.Max(2, (int)(length / TeethPx)) / 2 * 2;
        SKPoint along = new((to.X - from.X) / length, (to.Y - from.Y) / length);
        SKPoint[] zigzag = [.. Enumerable.Range(0, teeth + 1).Select(k =>
        {
            float done = length * k / teeth, away = k % 2 == 0 ? -DeepPx : DeepPx;
            return new SKPoint(from.X + along.X * done - along.Y * away, from.Y + along.Y * done + along.X * away);
        })];
        sheet.Polyline(zigzag, sheet.Palette.Card, 5);
        sheet.Polyline(zigzag, sheet.Palette.Muted, 1.2f);
    }
}
