using SkiaSharp;
using Thermal.Assessments;
using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>A trip's heat and charge: what the heater gives, the charge of the battery, and what is drawn and charged.</summary>
public static class TripEnergyPicture
{
    // What is left of a charge when nothing runs any more.
    private const double FlatBelowFraction = 0.005;

    /// <summary>Draws it; without a battery the heater alone.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 320 or more; below 560 keys stand above the plots.</param>
    /// <param name="height">Height with a battery, px, 480 or more; without one less is used.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small, or a trip without hours.</exception>
    public static Picture Draw(TripResult found, Palette palette, UnitSet units, int width = 640, int height = 560)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, TripPlot.LeastWidthPx);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 480);
        Figures figures = Figures.In(units);
        TripTime time = new(found);
        bool hasBattery = found.Hours.ChargeFraction.Count > 0;
        int tall = hasBattery ? height : height / 2;
        string caption = Caption(found, figures);
        return new Picture(width, tall, $"{TripPictureWords.Title(found, "heat and charge")}. {TripPictureWords.Legs(found)} {caption}", caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, tall);
            float first = hasBattery ? tall * 0.37f : tall, second = tall * 0.67f;
            DrawHeater(sheet, SKRect.Create(width, first), time, found, figures, isLast: !hasBattery);
            if (!hasBattery)
                return;
            DrawCharge(sheet, new SKRect(0, first, width, second), time, found, figures);
            DrawFlows(sheet, new SKRect(0, second, width, tall), time, found, figures);
        });
    }

    private static void DrawHeater(Sheet sheet, SKRect area, TripTime time, TripResult found, Figures figures, bool isLast)
    {
        IReadOnlyList<double> heat = TripPictureWords.Converted(found.Hours.HeaterW, Shown.HeaterPower, figures);
        double most = Math.Max(figures.Convert(Shown.HeaterPower, 500), time.Spans.Max(span => TripPlot.Mean(heat, span.From, span.To)));
        using TripPlot plot = new(sheet, area, time, AxisScale.Rounded($"heat from the heater, {figures.Unit(Shown.HeaterPower)}{time.Means}", 0, most, 4), [], isLast: isLast);
        plot.Ground(TripPictureWords.Title(found, "heat and charge"));
        plot.Steps(heat, sheet.Palette.Heat[2], sheet.Palette.Heat[3]);
    }

    private static void DrawCharge(Sheet sheet, SKRect area, TripTime time, TripResult found, Figures figures)
    {
        TripLine line = new("charge of the battery", TripPictureWords.Converted(found.Hours.ChargeFraction, Shown.Percent, figures), sheet.Palette.Ink, 2.2f, HasBand: true);
        using TripPlot plot = new(sheet, area, time, AxisScale.Rounded($"charge, {figures.Unit(Shown.Percent)} of what is usable", 0, 100, 4), [line], isFirst: false, isLast: false);
        plot.Ground("");
        plot.Lines();
        (int From, int To)? first = null;
        foreach ((int from, int to) in time.Spans.Where(span => Enumerable.Range(span.From, span.To - span.From).Any(i => found.Hours.ChargeFraction[i] < FlatBelowFraction)))
        {
            sheet.Line(plot.Frame.AcrossPx(from), plot.Data.Bottom - 2, plot.Frame.AcrossPx(to), plot.Data.Bottom - 2, sheet.Palette.Worse, 4);
            first ??= (from, to);
        }
        if (first is { } flat)
            sheet.TextWithin(plot.Data, "▼ flat", plot.Frame.AcrossPx(flat.From) + 22, plot.Data.Bottom - 9, Lettering.Value, sheet.Palette.Worse);
    }

    private static void DrawFlows(Sheet sheet, SKRect area, TripTime time, TripResult found, Figures figures)
    {
        double perPoint = time.IsByDay ? 24 : 1;
        IReadOnlyList<double> Flow(IReadOnlyList<double> amps, int sign) => TripPictureWords.Converted([.. amps.Select(a => sign * a * 3600 * perPoint)], Shown.Charge, figures);
        IReadOnlyList<double> charged = Flow(found.Hours.ChargedA, 1), drawn = Flow(found.Hours.DrawnA, -1);
        double high = Math.Max(1, time.Spans.Max(span => TripPlot.Mean(charged, span.From, span.To))), low = Math.Min(-1, time.Spans.Min(span => TripPlot.Mean(drawn, span.From, span.To)));
        using TripPlot plot = new(sheet, area, time, AxisScale.Rounded($"charged (above) and drawn (below), {figures.Unit(Shown.Charge)} in {(time.IsByDay ? "a day" : "an hour")}", low, high, 4), [], isFirst: false);
        plot.Ground("");
        plot.Steps(charged, sheet.Palette.Metal, sheet.Palette.Metal);
        plot.Steps(drawn, sheet.Palette.Heat[2], sheet.Palette.Heat[3]);
        sheet.Line(plot.Data.Left, plot.Frame.UpPx(0), plot.Data.Right, plot.Frame.UpPx(0), sheet.Palette.Ink);
    }

    private static string Caption(TripResult found, Figures figures)
    {
        Case asked = found.Asked.Case;
        TripEnergy energy = found.Energy;
        string fuel = $"{figures.FuelAmount(asked.Heater.Fuel, energy.HeatingFuelAmount + energy.HotWaterFuelAmount)} of {Names.Of(asked.Heater.Fuel)} for heat.";
        if (energy.LowestChargeFraction is not { } lowest)
            return fuel;
        string charged = $" {figures.Ah(energy.DrawnAh)} drawn; charged: {figures.Ah(energy.SunAh)} by sun, {figures.Ah(energy.AlternatorAh)} by the engine, {figures.Ah(energy.ShoreAh)} from shore.";
        return fuel + charged + (energy.FlatAtLocal is { } flat ? $" Flat from {TripTables.Moment(flat)}, {figures.Hours(energy.FlatHoursCount)} in all." : $" Lowest charge {figures.Percent(lowest)}.");
    }
}
