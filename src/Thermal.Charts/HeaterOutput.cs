using ScottPlot;
using SkiaSharp;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>Heat needed over the outside temperature with its range, across what the heater can give.</summary>
public static class HeaterOutput
{
    /// <summary>Draws it.</summary>
    /// <param name="need">What is lost and what the heater gives.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, 240 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small.</exception>
    public static Picture Draw(HeaterNeed need, Palette palette, UnitSet units, int width = 640, int height = 340)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 240);
        Figures figures = Figures.In(units);
        string caption = Caption(need, figures);
        return new Picture(width, height, AltText(need, figures, caption), caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            DrawNeed(sheet, SKRect.Create(width, height), need, figures);
        });
    }

    private static void DrawNeed(Sheet sheet, SKRect area, HeaterNeed need, Figures figures)
    {
        double Watts(double w) => figures.Convert(Shown.HeaterPower, w);
        double[] outside = [.. need.Points.Select(point => figures.Convert(Shown.Temperature, point.OutsideC))];
        double most = Math.Max(Math.Max(need.HighestOutputW, need.WarmUpW ?? 0), need.Points.Max(point => point.LossW.High));
        double margin = (outside[^1] - outside[0]) * 0.09;
        AxisScale across = AxisScale.Exact($"outside, {figures.Unit(Shown.Temperature)}", outside[0] - margin, outside[^1] + margin);
        AxisScale up = AxisScale.Rounded($"heat, {figures.Unit(Shown.HeaterPower)}", Math.Min(0, need.Points.Min(point => Watts(point.LossW.Low))), Watts(most) * 1.06);

        using var frame = new Frame(sheet, area, across, up, new PixelPadding(60, 168, 48, 62));
        float highest = frame.UpPx(Watts(need.HighestOutputW)), lowest = frame.UpPx(Watts(need.LowestOutputW));
        sheet.Area(new SKRect(frame.Data.Left, highest, frame.Data.Right, lowest), sheet.Palette.Line, 0.45f);
        frame.Band(outside, [.. need.Points.Select(p => Watts(p.LossW.Low))], [.. need.Points.Select(p => Watts(p.LossW.High))], sheet.Palette.Heat[2], 0.75);
        frame.Line(outside, need.Points.Select(p => Watts(p.LossW.Value)), sheet.Palette.Ink, 2.6f);
        frame.Render("Heat needed and what the heater gives");

        foreach (float y in (ReadOnlySpan<float>)[highest, lowest])
            sheet.Line(frame.Data.Left, y, frame.Data.Right, y, sheet.Palette.Ink, 1.4f);
        DrawNight(sheet, frame, figures, "cold night", need.ColdC, need);
        DrawNight(sheet, frame, figures, "mild night", need.MildC, need);
        if (need.WarmUpW is { } warmUpW)
            DrawWarmUp(sheet, frame, frame.At(figures.Convert(Shown.Temperature, need.ColdC), Watts(warmUpW)), $"to warm up: {figures.HeaterPower(warmUpW)}");
        LineLabel.Draw(sheet, frame.Data,
        [
            new LineLabel($"heater's highest\n{figures.HeaterPower(need.HighestOutputW)}", new SKPoint(frame.Data.Right, highest)),
            new LineLabel($"heater's lowest\n{figures.HeaterPower(need.LowestOutputW)}", new SKPoint(frame.Data.Right, lowest)),
            new LineLabel("needed, with its range", frame.At(outside[^1], Watts(need.Points[^1].LossW.Value))),
        ]);
    }

    // The cold night's words stand below its band, where the warm-up is not; the mild night's above, clear of the heater's lowest line.
    private static void DrawNight(Sheet sheet, Frame frame, Figures figures, string name, double outsideC, HeaterNeed need)
    {
        double Watts(double w) => figures.Convert(Shown.HeaterPower, w);
        Assessments.Between lossW = need.LossAt(outsideC);
        SKPoint at = frame.At(figures.Convert(Shown.Temperature, outsideC), Watts(lossW.Value));
        sheet.Dot(at.X, at.Y, 4.5f, sheet.Palette.Ink);
        float above = frame.UpPx(Watts(lossW.High)) - 8, lowestLine = frame.UpPx(Watts(need.LowestOutputW));
        if (lowestLine < above + 6 && lowestLine > above - Lettering.Value.Size - 4)
            above = lowestLine - 8;
        float baseline = outsideC == need.ColdC ? frame.UpPx(Watts(lossW.Low)) + 18 : above;
        sheet.TextWithin(frame.Data, $"{name}: {figures.HeaterPower(lossW.Value)}", at.X, baseline, Lettering.Value, sheet.Palette.Ink);
    }

    private static void DrawWarmUp(Sheet sheet, Frame frame, SKPoint at, string text)
    {
        sheet.Area([new SKPoint(at.X, at.Y - 6), new SKPoint(at.X + 6, at.Y + 5), new SKPoint(at.X - 6, at.Y + 5)], sheet.Palette.Ink);
        sheet.TextWithin(frame.Data, text, at.X + 14 + Lettering.Label.WidthOf(text) / 2, at.Y + 4.5f, Lettering.Label, sheet.Palette.Ink);
    }

    private static string Caption(HeaterNeed need, Figures figures)
    {
        double coldW = Math.Max(need.LossAt(need.ColdC).Value, need.WarmUpW ?? 0), mildW = need.LossAt(need.MildC).Value;
        string cold = coldW <= need.HighestOutputW
            ? $"On the cold night {figures.HeaterPower(coldW)} are needed and the heater gives {figures.HeaterPower(need.HighestOutputW)}: enough."
            : $"On the cold night {figures.HeaterPower(coldW)} are needed and the heater gives {figures.HeaterPower(need.HighestOutputW)}: {figures.HeaterPower(coldW - need.HighestOutputW)} are missing.";
        string mild = mildW >= need.LowestOutputW
            ? $"On the mild night {figures.HeaterPower(mildW)} are within its range."
            : $"On the mild night {figures.HeaterPower(mildW)} are below its lowest output of {figures.HeaterPower(need.LowestOutputW)}: it starts and stops.";
        return $"{cold} {mild}";
    }

    private static string AltText(HeaterNeed need, Figures figures, string caption) => string.Concat(
        "Heat needed over the outside temperature: ",
        string.Join("; ", need.Points.Select(p => $"at {figures.Temperature(p.OutsideC)} {figures.HeaterPower(p.LossW.Value)} ({figures.Range(Shown.HeaterPower, p.LossW.Low, p.LossW.High)})")),
        $". Heater: {need.Heater}, {figures.Range(Shown.HeaterPower, need.LowestOutputW, need.HighestOutputW)}. {caption}");
}
