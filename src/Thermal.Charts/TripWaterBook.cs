using SkiaSharp;
using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>Where a trip's water came from and where it went: two columns of equal height, each part as tall as its grams.</summary>
public static class TripWaterBook
{
    private const float TopPx = 84, BottomPx = 18, LineHeightPx = 16, GapPx = 6;
    // Less than this share of all is not written: it would be no line thick.
    private const double LeastFraction = 0.004, LeastG = 0.5, KilogramsFromG = 10_000;

    /// <summary>Draws it.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 320 or more.</param>
    /// <param name="height">Height, px, 320 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small.</exception>
    public static Picture Draw(TripResult found, Palette palette, UnitSet units, int width = 640, int height = 400)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, TripPlot.LeastWidthPx);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 320);
        Figures figures = Figures.In(units);
        (IReadOnlyList<(string Name, double WaterG)> from, IReadOnlyList<(string Name, double WaterG)> to) = Sides(found.Water);
        string caption = Caption(from, to, figures);
        return new Picture(width, height, $"{TripPictureWords.Title(found, "where the water goes")}. {caption}{Listed("From", from, figures)}{Listed("To", to, figures)}", caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            sheet.Text(Lettering.Title.Fitting(TripPictureWords.Title(found, "where the water goes"), width - 32), 16, 24, Lettering.Title);
            sheet.Text($"{Water(figures, from.Sum(part => part.WaterG))} in all", 16, 48, Lettering.Small, palette.Muted);
            float column = Math.Min(90, width * 0.095f), names = (width - 3 * column) / 2;
            DrawSide(sheet, from, new SKRect(names, TopPx, names + column, height - BottomPx), figures, "came from", isLeft: true);
            DrawSide(sheet, to, new SKRect(width - names - column, TopPx, width - names, height - BottomPx), figures, "went", isLeft: false);
        });
    }

    private static void DrawSide(Sheet sheet, IReadOnlyList<(string Name, double WaterG)> parts, SKRect box, Figures figures, string title, bool isLeft)
    {
        SKTextAlign align = isLeft ? SKTextAlign.Right : SKTextAlign.Left;
        float edge = isLeft ? box.Left : box.Right, away = isLeft ? -1 : 1, textX = edge + away * (GapPx + 6);
        sheet.Text(title, textX, box.Top - 12, Lettering.Value, align: align);
        double all = parts.Sum(part => part.WaterG);
        if (all <= 0)
        {
            sheet.Box(box, sheet.Palette.Line);
            return;
        }
        float y = box.Top;
        List<float> middles = [];
        for (int i = 0; i < parts.Count; i++)
        {
            float tall = (float)(parts[i].WaterG / all) * box.Height;
            SKRect part = new(box.Left, y, box.Right, y + tall);
            sheet.Area(part, sheet.Palette.Water[1 + i % 2]);
            sheet.Box(part, sheet.Palette.Water[3]);
            middles.Add(part.MidY);
            y += tall;
        }
        float[] places = Spread.Apart(middles, [.. parts.Select(_ => 2 * LineHeightPx + 4)], box.Top, box.Bottom);
        float most = isLeft ? box.Left - GapPx - 16 : sheet.Canvas.LocalClipBounds.Width - textX - 6;
        for (int i = 0; i < parts.Count; i++)
        {
            sheet.Line(edge, middles[i], edge + away * (GapPx + 4), places[i], sheet.Palette.Muted, 1, 0.6f);
            sheet.Text(Lettering.Label.Fitting(parts[i].Name, most), textX, places[i] - 3, Lettering.Label, align: align);
            sheet.Text(Water(figures, parts[i].WaterG), textX, places[i] - 3 + LineHeightPx, Lettering.Value, align: align);
        }
    }

    // What is below nothing stands on the other side under its opposite name.
    private static (IReadOnlyList<(string Name, double WaterG)> From, IReadOnlyList<(string Name, double WaterG)> To) Sides(WaterBook water)
    {
        (string Name, double WaterG)[] from = [("people", water.PeopleG), ("cooking", water.CookingG), ("showers", water.ShowersG), ("drying things", water.DryingG)];
        (string To, string From, double WaterG)[] ways =
        [
            ("out with the air", "from outside air", water.AiredG), ("through the skin", "in by the skin", water.ThroughSkinG), ("run off", "run off", water.RunOffG),
            ("left on surfaces", "dried off surfaces", water.OnSurfacesG), ("left in build-ups", "from build-ups", water.InBuildUpsG),
            ("in bedding, wood", "from bedding, wood", water.InTextilesG), ("left in the air", "from the air", water.InAirG),
        ];
        return (Worth([.. from, .. ways.Where(way => way.WaterG < 0).Select(way => (way.From, -way.WaterG))]), Worth([.. ways.Select(way => (way.To, way.WaterG))]));
    }

    private static IReadOnlyList<(string Name, double WaterG)> Worth(IReadOnlyList<(string Name, double WaterG)> parts)
    {
        double all = parts.Where(part => part.WaterG > 0).Sum(part => part.WaterG);
        return all < LeastG ? [] : [.. parts.Where(part => part.WaterG > LeastFraction * all).OrderByDescending(part => part.WaterG)];
    }

    // A season's water is kilograms.
    private static string Water(Figures figures, double waterG) => waterG >= KilogramsFromG ? figures.Mass(waterG / 1000) : figures.Grams(waterG);

    private static string Listed(string title, IReadOnlyList<(string Name, double WaterG)> parts, Figures figures) =>
        parts.Count == 0 ? "" : $" {title}: {string.Join("; ", parts.Select(part => $"{part.Name} {Water(figures, part.WaterG)}"))}.";

    private static string Caption(IReadOnlyList<(string Name, double WaterG)> from, IReadOnlyList<(string Name, double WaterG)> to, Figures figures) =>
        from.Count == 0 || to.Count == 0
            ? $"Next to no water came or went: {Water(figures, 0)}."
            : $"{Water(figures, from.Sum(part => part.WaterG))} of water come in all, most from {from[0].Name}; the largest part, {Water(figures, to[0].WaterG)}, is {(to[0].Name is "out with the air" or "through the skin" ? "gone " : "")}{to[0].Name}.";
}
