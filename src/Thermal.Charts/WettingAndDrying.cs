using ScottPlot;
using SkiaSharp;
using Thermal.Assessments;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>Twelve months of wetting and drying inside a build-up: water held at the end of each month.</summary>
public static class WettingAndDrying
{
    /// <summary>Water on an upright face from which it may begin to run down, g/m²; from memory, 50 to 250.</summary>
    public const double RunOffFromGPerM2 = 50;

    /// <summary>Water on an upright face at which it runs down for certain, g/m²; from memory, 50 to 250.</summary>
    public const double RunOffCertainGPerM2 = 250;

    // Less would be written as 0.0.
    private const double LeastWrittenGPerM2 = 0.05;

    private const float LeftPx = 60, RightPx = 136;

    /// <summary>Draws it; the row of months begins with the driest, so that one winter stands together.</summary>
    /// <param name="name">Name of the build-up.</param>
    /// <param name="year">Its twelve months.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, 240 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small.</exception>
    public static Picture Draw(string name, YearDamp year, Palette palette, UnitSet units, int width = 640, int height = 300)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 240);
        Figures figures = Figures.In(units);
        int[] order = Order(year);
        string caption = Caption(year, figures);
        string altText = string.Concat(
            $"{Grammar.Capital(name)}: water held at the end of each month at all faces together: ",
            string.Join(", ", order.Select(month => $"{Grammar.Month(month + 1)} {figures.GramsPerArea(year.HeldGPerM2[month])}")), ". ", caption);
        return new Picture(width, height, altText, $"{Grammar.Capital(name)}: {CutWords.Lowered(caption)} {Limits(figures)}", canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            DrawMonths(sheet, SKRect.Create(width, height), name, year, order, figures);
        });
    }

    private static void DrawMonths(Sheet sheet, SKRect area, string name, YearDamp year, int[] order, Figures figures)
    {
        double[] held = [.. order.Select(month => Shown(year.HeldGPerM2[month], figures))];
        double[] wettest = [.. order.Select(month => Shown(year.WettestFaceGPerM2[month], figures))];
        double from = Shown(RunOffFromGPerM2, figures), certain = Shown(RunOffCertainGPerM2, figures);
        double most = Math.Max(held.Max() * 1.08, from * 1.25);
        AxisScale up = AxisScale.Rounded($"water held, {figures.Unit(Words.Shown.WaterPerArea)}", 0, most, 5);
        // Three letters need this much a month; one letter is enough where the row tells the order.
        int letters = (area.Width - LeftPx - RightPx) / 12.2 >= 27 ? 3 : 1;
        AxisScale across = AxisScale.Bare("end of month", 0.4, 12.6) with { Ticks = [.. order.Select((month, i) => (i + 1.0, Grammar.ShortMonth(month + 1)[..letters]))] };
        using var frame = new Frame(sheet, area, across, up, new PixelPadding(LeftPx, RightPx, 48, 62));
        AddBars(frame, held, 0.74, sheet.Palette.Water[1], sheet.Palette.Water[3]);
        AddBars(frame, wettest, 0.36, sheet.Palette.Water[3], sheet.Palette.Water[4]);
        frame.Render($"{Grammar.Capital(name)}: twelve months of wetting and drying");
        List<LineLabel> limits = [Limit(sheet, frame, from, $"may run down\nfrom {figures.GramsPerArea(RunOffFromGPerM2)}")];
        if (certain <= up.High)
            limits.Add(Limit(sheet, frame, certain, $"runs down for sure\nat {figures.GramsPerArea(RunOffCertainGPerM2)}"));
        LineLabel.Draw(sheet, frame.Data, limits);
        DrawIce(sheet, frame, year, order, held);
        if (!IsAnyHeld(year))
            sheet.TextWithin(frame.Data, "nothing settles in any month", frame.Data.MidX, frame.Data.Bottom - 14, Lettering.Value, sheet.Palette.Ink);
        else
            DrawKey(sheet, frame);
    }

    private static void AddBars(Frame frame, double[] values, double size, string fill, string rim)
    {
        var bars = frame.Plot.Add.Bars((Bar[])[.. values.Select((value, i) => new Bar
        {
            Position = i + 1,
            Value = value,
            Size = size,
            FillColor = Frame.Shade(fill),
            LineColor = Frame.Shade(rim),
            LineWidth = value > 0 ? 1 : 0,
        })]);
        bars.Horizontal = false;
    }

    private static LineLabel Limit(Sheet sheet, Frame frame, double value, string text)
    {
        float y = frame.UpPx(value);
        // A seam of the ground's colour keeps the dashes apart from the bars they cross.
        sheet.Line(frame.Data.Left, y, frame.Data.Right, y, sheet.Palette.Card, 4, 0.75f);
        sheet.DashedLine([new SKPoint(frame.Data.Left, y), new SKPoint(frame.Data.Right, y)], sheet.Palette.Ink, 1.4f, 7, 4);
        return new LineLabel(text, new SKPoint(frame.Data.Right, y));
    }

    private static void DrawIce(Sheet sheet, Frame frame, YearDamp year, int[] order, double[] held)
    {
        for (int i = 0; i < order.Length; i++)
            if (year.IceMonths.Contains(order[i] + 1))
                sheet.Text("ice", frame.AcrossPx(i + 1), frame.UpPx(held[i]) - 5, Lettering.Small, sheet.Palette.Ink, SKTextAlign.Center);
    }

    private static void DrawKey(Sheet sheet, Frame frame)
    {
        float x = frame.Data.Right + 14, y = frame.Data.Bottom + 14;
        sheet.Area(SKRect.Create(x, y - 10, 12, 12), sheet.Palette.Water[1]);
        sheet.Box(SKRect.Create(x, y - 10, 12, 12), sheet.Palette.Water[3]);
        sheet.Text("all faces", x + 18, y, Lettering.Small);
        sheet.Area(SKRect.Create(x + 3, y + 8, 6, 12), sheet.Palette.Water[3]);
        sheet.Text("wettest face", x + 18, y + 18, Lettering.Small);
    }

    // The driest month comes first, the last of several.
    private static int[] Order(YearDamp year)
    {
        int first = Enumerable.Range(0, 12).MinBy(month => (year.HeldGPerM2[month], -month));
        return [.. Enumerable.Range(0, 12).Select(i => (first + i) % 12)];
    }

    private static bool IsAnyHeld(YearDamp year) => year.PeakGPerM2 >= LeastWrittenGPerM2;

    private static double Shown(double gPerM2, Figures figures) => figures.Convert(Words.Shown.WaterPerArea, gPerM2 / 1000);

    private static string Limits(Figures figures) =>
        $"Water may run down an upright face from about {figures.GramsPerArea(RunOffFromGPerM2)} and does for sure at {figures.GramsPerArea(RunOffCertainGPerM2)} (both from memory).";

    private static string Caption(YearDamp year, Figures figures)
    {
        if (!IsAnyHeld(year))
            return "Nothing settles in any month.";
        string most = $"At most {figures.GramsPerArea(year.PeakGPerM2)} are held";
        if (year.WetFromMonth is not { } wet)
            return $"{most}, too little to run down.";
        string peak = $"{most}, wet from {Grammar.Month(wet)}";
        return year.DryInMonth is { } dry
            ? $"{peak}, dry again in {Grammar.Month(dry)}."
            : year.GainPerYearGPerM2 > 0
                ? $"{most} in the first year and {figures.GramsPerArea(year.GainPerYearGPerM2)} more each year: it never dries."
                : $"{peak}: it never dries.";
    }
}
