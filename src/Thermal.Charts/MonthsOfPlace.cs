using ScottPlot;
using SkiaSharp;
using Thermal.Climates;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The twelve months of a place: daily lowest to highest temperature, and below it, each with an axis of its own, humidity and sun.</summary>
public static class MonthsOfPlace
{
    private const float LeftPx = 60, RightPx = 120;

    /// <summary>Draws it; what the place does not know is left out and said.</summary>
    /// <param name="place">The place.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, 480 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small.</exception>
    public static Picture Draw(Place place, Palette palette, UnitSet units, int width = 640, int height = 620)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 480);
        Figures figures = Figures.In(units);
        bool hasSun = place.Months.All(month => month.GlobalIrradianceWPerM2 is not null);
        float first = height * (hasSun ? 0.44f : 0.6f), other = (height - first) / (hasSun ? 2 : 1);
        string caption = Caption(place, hasSun, figures);
        return new Picture(width, height, AltText(place, figures, caption), caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            DrawTemperature(sheet, SKRect.Create(0, 0, width, first), place, figures);
            double[] humidity = [.. place.Months.Select(month => figures.Convert(Shown.Percent, month.RelativeHumidityFraction))];
            DrawBars(sheet, SKRect.Create(0, first, width, other), humidity, "Humidity of the outside air", $"relative humidity over water, {figures.Unit(Shown.Percent)}", 100, sheet.Palette.Water);
            if (hasSun)
                DrawBars(sheet, SKRect.Create(0, first + other, width, other), [.. place.Months.Select(month => figures.SunOnAxis(month.GlobalIrradianceWPerM2!.Value))],
                    "Sun on the flat", $"sun and sky light, {figures.Unit(Shown.SunPerArea)} a day", null, sheet.Palette.Heat);
        });
    }

    private static void DrawTemperature(Sheet sheet, SKRect area, Place place, Figures figures)
    {
        double Degrees(double celsius) => figures.Convert(Shown.Temperature, celsius);
        bool hasBand = place.Months.All(month => month.MinC is not null && month.MaxC is not null);
        double[] at = [.. Enumerable.Range(1, Place.MonthCount).Select(month => (double)month)];
        double[] means = [.. place.Months.Select(month => Degrees(month.MeanC))];
        double[] lows = hasBand ? [.. place.Months.Select(month => Degrees(month.MinC!.Value))] : means, highs = hasBand ? [.. place.Months.Select(month => Degrees(month.MaxC!.Value))] : means;
        AxisScale up = AxisScale.Rounded($"air temperature, {figures.Unit(Shown.Temperature)}", lows.Min(), highs.Max());
        using var frame = new Frame(sheet, area, MonthAxis.For(area.Width - LeftPx - RightPx), up, new PixelPadding(LeftPx, RightPx, 30, 60));
        if (hasBand)
            frame.Band(at, lows, highs, sheet.Palette.Heat[1]);
        frame.Line(at, means, sheet.Palette.Ink, 2.4f);
        frame.Render($"{place.Name}: the months");
        double freezing = Degrees(0);
        if (freezing > up.Low && freezing < up.High)
            sheet.DashedLine([frame.At(MonthAxis.Low, freezing), frame.At(MonthAxis.High, freezing)], sheet.Palette.Ink, 1.2f, 5, 4);
        List<LineLabel> labels = [new("mean", frame.At(12, means[^1]))];
        if (hasBand)
            labels.AddRange([new("daily highest", frame.At(12, highs[^1])), new("daily lowest", frame.At(12, lows[^1]))]);
        LineLabel.Draw(sheet, frame.Data, labels);
    }

    private static void DrawBars(Sheet sheet, SKRect area, double[] values, string title, string axis, double? top, IReadOnlyList<string> steps)
    {
        AxisScale up = AxisScale.Rounded(axis, 0, top ?? Math.Max(values.Max(), 0.1), 4);
        using var frame = new Frame(sheet, area, MonthAxis.For(area.Width - LeftPx - RightPx), up, new PixelPadding(LeftPx, RightPx, 30, 60));
        frame.Plot.Add.Bars((Bar[])[.. values.Select((value, i) => new Bar { Position = i + 1, Value = value, Size = 0.7, FillColor = Frame.Shade(steps[2]), LineColor = Frame.Shade(steps[3]), LineWidth = value > 0 ? 1 : 0 })]);
        frame.Render(title);
    }

    private static string Caption(Place place, bool hasSun, Figures figures)
    {
        string estimates = place.Months.Any(month => month.HumidityIsEstimated) ? " Humidity is estimated." : "";
        return $"{PlaceWords.Verdict(place, figures)}{(hasSun ? "" : " The sun of this place is not known.")}{estimates}";
    }

    private static string AltText(Place place, Figures figures, string caption) => string.Concat(
        $"{place.Name}, mean temperature, daily lowest and highest, humidity and sun by month: ",
        string.Join("; ", place.Months.Select((month, i) => string.Concat(
            $"{Grammar.Month(i + 1)} {figures.Temperature(month.MeanC)}",
            month is { MinC: { } lowC, MaxC: { } highC } ? $", {figures.Range(Shown.Temperature, lowC, highC)}" : "",
            $", {figures.Percent(month.RelativeHumidityFraction)}",
            month.GlobalIrradianceWPerM2 is { } sunWPerM2 ? $", {figures.SunPerDay(sunWPerM2)}" : ""))),
        $". {caption}");
}
