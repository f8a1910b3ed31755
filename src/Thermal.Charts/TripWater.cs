using SkiaSharp;
using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>A trip's damp by the hour: humidity of the living space, and below it the water on glass and linings.</summary>
public static class TripWater
{
    // Damp air is felt from here, and linings begin to suffer after it.
    private const double HumidFraction = 0.7;

    /// <summary>Draws it.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 320 or more; below 560 keys stand above the plots.</param>
    /// <param name="height">Height, px, 380 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small, or a trip without hours.</exception>
    public static Picture Draw(TripResult found, Palette palette, UnitSet units, int width = 640, int height = 460)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, TripPlot.LeastWidthPx);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 380);
        Figures figures = Figures.In(units);
        TripTime time = new(found);
        string caption = Caption(found, figures);
        return new Picture(width, height, $"{TripPictureWords.Title(found, "damp")}. {TripPictureWords.Legs(found)} {caption}", caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            float first = height * 0.47f;
            DrawHumidity(sheet, SKRect.Create(width, first), time, found, figures);
            DrawWater(sheet, new SKRect(0, first, width, height), time, found, figures);
        });
    }

    private static void DrawHumidity(Sheet sheet, SKRect area, TripTime time, TripResult found, Figures figures)
    {
        RoomHours living = found.Hours.Rooms.First(room => room.Zone == found.Asked.Case.Vehicle.Living.Name);
        TripLine line = new("living space", TripPictureWords.Converted(living.HumidityFraction, Shown.Percent, figures), sheet.Palette.Water[3], 2, HasBand: true);
        // In the hour in which a pot boils in a cold room the air can be more than full.
        double most = Math.Max(100, line.Values.Max());
        using TripPlot plot = new(sheet, area, time, AxisScale.Rounded($"relative humidity, {figures.Unit(Shown.Percent)}{time.Means}", 0, most, 5), [line], isLast: false);
        plot.Ground(TripPictureWords.Title(found, "damp"));
        plot.Mark(figures.Convert(Shown.Percent, HumidFraction), figures.Percent(HumidFraction));
        plot.Lines();
    }

    private static void DrawWater(Sheet sheet, SKRect area, TripTime time, TripResult found, Figures figures)
    {
        IReadOnlyList<double> Grams(IReadOnlyList<double> grams) => TripPictureWords.Converted([.. grams.Select(g => g / 1000)], Shown.WaterMass, figures);
        TripHours hours = found.Hours;
        TripLine[] lines =
        [
            new("on glass, frost too", Grams(hours.OnGlassG), sheet.Palette.Water[3], 2),
            new("of it frost", Grams(hours.FrostOnGlassG), sheet.Palette.Water[4], 1.4f, IsDashed: true),
            new("on linings and ribs", Grams(hours.OnLiningsG), sheet.Palette.Ink, 1.4f),
        ];
        double most = Math.Max(10, lines.Max(line => line.Values.Max()));
        using TripPlot plot = new(sheet, area, time, AxisScale.Rounded($"water on surfaces, {figures.Unit(Shown.WaterMass)}{time.Means}", 0, most, 4), lines, isFirst: false);
        plot.Ground("");
        plot.Under(lines[0], sheet.Palette.Water[1]);
        plot.Lines();
    }

    private static string Caption(TripResult found, Figures figures)
    {
        TripHours hours = found.Hours;
        return $"At most {figures.Grams(hours.OnGlassG.Max())} on glass, {figures.Grams(hours.FrostOnGlassG.Max())} of it frost at most, and {figures.Grams(hours.OnLiningsG.Max())} on linings and ribs; {figures.Grams(found.Water.RunOffG)} run off. Over {figures.Percent(HumidFraction)} humidity for {figures.Hours(found.Comfort.HumidHoursCount)} with people in.";
    }
}
