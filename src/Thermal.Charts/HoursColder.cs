using ScottPlot;
using SkiaSharp;
using Thermal.Climates;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>How many hours are colder than a temperature, beside the temperatures a heater is sized for.</summary>
public static class HoursColder
{
    // The curve is shown up to this temperature, and over at least so many steps: below it heat is needed all day.
    private const double ShownUpToC = 5, LeastSteps = 240;
    private const int MostPoints = 600;

    /// <summary>Draws it.</summary>
    /// <param name="weather">A year, real, typical or generated.</param>
    /// <param name="designs">Design temperatures to mark; none is allowed.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, 280 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small.</exception>
    public static Picture Draw(Weather weather, IReadOnlyList<DesignTemperature> designs, Palette palette, UnitSet units, int width = 640, int height = 360)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 280);
        Figures figures = Figures.In(units);
        string caption = Caption(weather, designs, figures);
        return new Picture(width, height, AltText(weather, figures, caption), caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            DrawCurve(sheet, SKRect.Create(width, height), weather, designs, figures);
        });
    }

    private static void DrawCurve(Sheet sheet, SKRect area, Weather weather, IReadOnlyList<DesignTemperature> designs, Figures figures)
    {
        double Degrees(double celsius) => figures.Convert(Shown.Temperature, celsius);
        IReadOnlyList<double> orderedC = ColdHours.OrderedC(weather);
        double stepH = weather.StepS / 3600;
        int count = (int)Math.Min(orderedC.Count, Math.Max(LeastSteps, orderedC.Count(airC => airC < ShownUpToC)));
        int every = Math.Max(1, count / MostPoints);
        int[] taken = [.. Enumerable.Range(0, (count - 1) / every + 1).Select(i => i * every)];
        double[] hours = [.. taken.Select(i => i * stepH)], degrees = [.. taken.Select(i => Degrees(orderedC[i]))];
        double coldest = Math.Min(degrees[0], designs.Count > 0 ? designs.Min(design => Degrees(design.TemperatureC)) : degrees[0]);
        AxisScale across = AxisScale.Exact("hours of the year that are colder", 0, Math.Max(hours[^1], stepH));
        AxisScale up = AxisScale.Rounded($"air temperature, {figures.Unit(Shown.Temperature)}", coldest, degrees[^1]);
        using var frame = new Frame(sheet, area, across, up, new PixelPadding(56, designs.Count > 0 ? 168 : 24, 48, 62));
        frame.Band(hours, [.. hours.Select(_ => up.Low)], degrees, sheet.Palette.Heat[1], 0.8);
        frame.Line(hours, degrees, sheet.Palette.Ink, 2.4f);
        frame.Render($"{weather.Name}: hours colder than");
        foreach (DesignTemperature design in designs)
            sheet.DashedLine([frame.At(0, Degrees(design.TemperatureC)), frame.At(across.High, Degrees(design.TemperatureC))], sheet.Palette.Ink, 1.4f, 7, 4);
        foreach (double limitC in ColdHours.UsualLimitsC)
            DrawLimit(sheet, frame, orderedC, limitC, stepH, Degrees(limitC), figures);
        LineLabel.Draw(sheet, frame.Data, [.. designs.Select(design => new LineLabel($"{PlaceWords.Short(design.Measure)}\n{PlaceWords.WithSpan(design, figures)}", frame.At(across.High, Degrees(design.TemperatureC))))]);
    }

    private static void DrawLimit(Sheet sheet, Frame frame, IReadOnlyList<double> orderedC, double limitC, double stepH, double degrees, Figures figures)
    {
        double hours = orderedC.Count(airC => airC < limitC) * stepH;
        if (hours <= 0)
            return;
        SKPoint at = frame.At(hours, degrees);
        sheet.Dot(at.X, at.Y, 4, sheet.Palette.Ink);
        string text = $"{figures.Temperature(limitC)}: {figures.Hours(hours)}";
        sheet.TextWithin(frame.Data, text, at.X + 10 + Lettering.Value.WidthOf(text) / 2, at.Y + 16, Lettering.Value, sheet.Palette.Ink);
    }

    private static string Caption(Weather weather, IReadOnlyList<DesignTemperature> designs, Figures figures)
    {
        string frost = $"{Grammar.Capital(Hours(weather, 0, figures))} are colder than {figures.Temperature(0)} in this year, {WeatherWords.Of(weather.Kind)}.";
        string design = designs.Count == 0 ? "" : $" A heater is sized for {PlaceWords.WithSpan(designs[0], figures)}: {Hours(weather, designs[0].TemperatureC, figures)} of this year are colder.";
        string limit = weather.Kind == WeatherKind.Generated ? " " + WeatherWords.ColdHoursLimit(weather, figures) : "";
        return frost + design + limit;
    }

    private static string Hours(Weather weather, double limitC, Figures figures)
    {
        double hours = ColdHours.BelowH(weather, limitC);
        return hours > 0 ? figures.Hours(hours) : "no hours";
    }

    private static string AltText(Weather weather, Figures figures, string caption) => string.Concat(
        $"{weather.Name}: hours colder than ",
        string.Join(", ", ColdHours.UsualLimitsC.Select(limitC => $"{figures.Temperature(limitC)} {Hours(weather, limitC, figures)}")),
        $". {caption}");
}
