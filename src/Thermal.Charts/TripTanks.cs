using SkiaSharp;
using Thermal.Trips;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>A trip's tanks by the hour: water temperature, and below it the share that is ice.</summary>
public static class TripTanks
{
    /// <summary>Draws it.</summary>
    /// <param name="found">The trip; it has one tank or more.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 320 or more; below 560 keys stand above the plots.</param>
    /// <param name="height">Height, px, 380 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small, no tanks, or a trip without hours.</exception>
    public static Picture Draw(TripResult found, Palette palette, UnitSet units, int width = 640, int height = 440)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, TripPlot.LeastWidthPx);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 380);
        ArgumentOutOfRangeException.ThrowIfLessThan(found.Hours.Tanks.Count, 1, "tanks of the trip");
        Figures figures = Figures.In(units);
        TripTime time = new(found);
        string caption = string.Join(" ", found.Tanks.Select(tank => Words.Sentences.Grammar.Capital(tank.Name) + $": {figures.Temperature(tank.LowestC)} at the coldest, {figures.Percent(tank.MostIceFraction)} ice at most."));
        return new Picture(width, height, $"{TripPictureWords.Title(found, "tanks")}. {TripPictureWords.Legs(found)} {caption}", caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            float first = height * 0.58f;
            DrawWarmth(sheet, SKRect.Create(width, first), time, found, figures);
            DrawIce(sheet, new SKRect(0, first, width, height), time, found, figures);
        });
    }

    private static void DrawWarmth(Sheet sheet, SKRect area, TripTime time, TripResult found, Figures figures)
    {
        TripLine[] lines = Lines(sheet, found, tank => TripPictureWords.Converted(tank.WaterC, Shown.Temperature, figures));
        double freezing = figures.Convert(Shown.Temperature, 0);
        double low = Math.Min(freezing, lines.Min(line => line.Values.Min())), high = Math.Max(figures.Convert(Shown.Temperature, 5), lines.Max(line => line.Values.Max()));
        using TripPlot plot = new(sheet, area, time, AxisScale.Rounded($"water, {figures.Unit(Shown.Temperature)}", low, high, 5), lines, isLast: false);
        plot.Ground(TripPictureWords.Title(found, "tanks"));
        plot.Mark(freezing, "freezes");
        plot.Lines();
    }

    private static void DrawIce(Sheet sheet, SKRect area, TripTime time, TripResult found, Figures figures)
    {
        TripLine[] lines = Lines(sheet, found, tank => TripPictureWords.Converted(tank.IceFraction, Shown.Percent, figures));
        using TripPlot plot = new(sheet, area, time, AxisScale.Rounded($"share of ice, {figures.Unit(Shown.Percent)}", 0, 100, 4), lines, isFirst: false);
        plot.Ground("");
        plot.Lines();
    }

    // Told apart by lightness, weight and dashes.
    private static TripLine[] Lines(Sheet sheet, TripResult found, Func<TankHours, IReadOnlyList<double>> of) =>
        [.. found.Hours.Tanks.Select((tank, i) => new TripLine(tank.Name, of(tank), sheet.Palette.Water[i % 2 == 0 ? 3 : 4], i < 2 ? 2.2f : 1.4f, IsDashed: i % 2 == 1, HasBand: true))];
}
