using SkiaSharp;
using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>A trip's temperatures by the hour: as felt in the living space, what is wanted, outside, the coldest inner surface, the roof's lining.</summary>
public static class TripTemperatures
{
    /// <summary>Draws it; a trip over a fortnight by days, with bands from the lowest to the highest of each.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 320 or more; below 560 a key stands above the plot.</param>
    /// <param name="height">Height, px, 280 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small, or a trip without hours.</exception>
    public static Picture Draw(TripResult found, Palette palette, UnitSet units, int width = 640, int height = 380)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, TripPlot.LeastWidthPx);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 280);
        Figures figures = Figures.In(units);
        TripTime time = new(found);
        string caption = Caption(found, figures);
        return new Picture(width, height, $"{TripPictureWords.Title(found, "temperatures")}. {TripPictureWords.Legs(found)} {caption}", caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            TripLine[] lines = Lines(found, palette, figures);
            AxisScale up = AxisScale.Rounded($"temperature, {figures.Unit(Shown.Temperature)}{(time.IsByDay ? "; days: mean, lowest to highest" : "")}", lines.Min(line => line.Known.DefaultIfEmpty(figures.Convert(Shown.Temperature, 0)).Min()), lines.Max(line => line.Known.DefaultIfEmpty(figures.Convert(Shown.Temperature, 0)).Max()));
            using TripPlot plot = new(sheet, SKRect.Create(width, height), time, up, lines);
            plot.Ground(TripPictureWords.Title(found, "temperatures"));
            double freezing = figures.Convert(Shown.Temperature, 0);
            if (up.Low < freezing && up.High > freezing)
                sheet.Line(plot.Data.Left, plot.Frame.UpPx(freezing), plot.Data.Right, plot.Frame.UpPx(freezing), palette.Muted, 1.2f);
            plot.Lines();
        });
    }

    private static TripLine[] Lines(TripResult found, Palette palette, Figures figures)
    {
        TripHours hours = found.Hours;
        RoomHours living = hours.Rooms.First(room => room.Zone == found.Asked.Case.Vehicle.Living.Name);
        IReadOnlyList<double> Degrees(IReadOnlyList<double> celsius) => TripPictureWords.Converted(celsius, Shown.Temperature, figures);
        List<TripLine> lines =
        [
            new("outside air", Degrees(hours.OutsideC), palette.Muted, 1.6f, HasBand: true),
            new("coldest inner surface", Degrees(living.ColdestC), palette.Heat[3], 1.4f),
        ];
        if (hours.Panels.FirstOrDefault(panel => panel.Panel.Contains("roof", StringComparison.OrdinalIgnoreCase) && !panel.Panel.Contains("cab", StringComparison.OrdinalIgnoreCase)) is { } roof)
            lines.Add(new($"lining, {Grammar.The(roof.Panel)["the ".Length..]}", Degrees(roof.InnerC), palette.Heat[2], 1.4f, IsDashed: true));
        lines.Add(new("wanted", Degrees(hours.WantedC), palette.Ink, 1.2f, IsDashed: true));
        lines.Add(new("living space, as felt", Degrees(hours.OperativeC), palette.Ink, 2.4f, HasBand: true));
        return [.. lines];
    }

    private static string Caption(TripResult found, Figures figures)
    {
        TripHours hours = found.Hours;
        string home = found.Comfort is { CoolestC: { } coolest, HottestC: { } hottest } ? $" With people in, the living space feels like {figures.Range(Shown.Temperature, coolest, hottest)}." : "";
        string cold = found.Comfort.ColdHoursCount >= 1 ? $" For {figures.Hours(found.Comfort.ColdHoursCount)} it is colder than wanted." : "";
        return $"Outside {figures.Range(Shown.Temperature, hours.OutsideC.Min(), hours.OutsideC.Max())}.{home}{cold}";
    }
}
