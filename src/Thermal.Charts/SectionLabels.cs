using SkiaSharp;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>The words in a section: the coldest inner point, the dew point's line, then the other lines of equal temperature.</summary>
internal sealed class SectionLabels(Sheet sheet, Figures figures, FreePlaces places)
{
    private const float PlatePx = 18;

    internal void Draw(SectionView view, SKPoint coldest, SectionOnNight night, IReadOnlyList<SKPoint[]> dewLines, IReadOnlyList<(double Level, IReadOnlyList<SKPoint[]> Lines)> isotherms, FieldSteps steps)
    {
        string text = $"{night.ColdestName} {figures.Temperature(night.ColdestC)}";
        float half = Lettering.Value.WidthOf(text) / 2 + 16;
        // Between grooves that cool less than the plain floor the coldest point can lie beyond what is drawn: then the caption alone tells it.
        if (view.IsLying ? coldest.X >= view.Box.Left - 1 && coldest.X <= view.Box.Right + 1 : coldest.Y >= view.Box.Top - 1 && coldest.Y <= view.Box.Bottom + 1)
        {
            sheet.Dot(coldest.X, coldest.Y, 5, night.ColdestC < night.DewPointC ? sheet.Palette.Water[3] : sheet.Palette.Ink);
            places.Take([coldest], 12, 12);
            Place(Around(coldest, view.Inwards, half), text, Lettering.Value);
        }
        Place(Along(dewLines), $"dew point {figures.Temperature(night.DewPointC)}", Lettering.Value);
        foreach ((double level, IReadOnlyList<SKPoint[]> lines) in isotherms)
            Place(Along(lines), $"{steps.Written(level)} {figures.Unit(Shown.Temperature)}", Lettering.Small);
    }

    private void Place(IEnumerable<SKPoint> middles, string text, Lettering lettering)
    {
        float width = lettering.WidthOf(text) + 10;
        if (places.Take(middles, width, PlatePx) is not { } place)
            return;
        sheet.Area(place, sheet.Palette.Card, 0.95f);
        sheet.Text(text, place.Left + 5, place.MidY + 4.5f, lettering);
    }

    // In the room first, beside the point or straight below it; then into the wall, further and further.
    private static IEnumerable<SKPoint> Around(SKPoint point, SKPoint inwards, float half) =>
        from away in (float[])[19.5f, 24, 30, 0, -20, -32, -46, -60, -80]
        from side in (float[])[0, 0.5f, -0.5f, 1, -1]
        let along = new SKPoint(Math.Abs(inwards.Y), Math.Abs(inwards.X))
        let reach = inwards.X != 0 && away != 0 ? away + Math.Sign(away) * (half - 20) : away
        select new SKPoint(point.X + inwards.X * reach + along.X * side * half, point.Y + inwards.Y * reach + along.Y * side * 44);

    // Places along the longest line, from one end to the other.
    private static IEnumerable<SKPoint> Along(IReadOnlyList<SKPoint[]> lines)
    {
        const float everyPx = 6;
        foreach (SKPoint[] line in lines.OrderByDescending(Length))
            for (int i = 1; i < line.Length; i++)
            {
                int steps = Math.Min(300, (int)(SKPoint.Distance(line[i - 1], line[i]) / everyPx) + 1);
                for (int k = 0; k < steps; k++)
                    yield return new SKPoint(line[i - 1].X + (line[i].X - line[i - 1].X) * k / steps, line[i - 1].Y + (line[i].Y - line[i - 1].Y) * k / steps);
            }
    }

    private static float Length(SKPoint[] line) => line.Skip(1).Zip(line, SKPoint.Distance).Sum();
}
