using ScottPlot;
using SkiaSharp;
using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>What more thickness of a layer buys: heat lost over the thicknesses sold, with headroom and damp at each; below it what ribs leave of it, where there are any.</summary>
public static class ThicknessCurve
{
    private const float ColumnsPx = 56, AxisPx = 92, RibsPx = 168, RibLabelsPx = 116;

    /// <summary>Draws it.</summary>
    /// <param name="table">The layer in two or more thicknesses.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, 260 or more; the lines of U with and between ribs take more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small, or fewer than two thicknesses.</exception>
    public static Picture Draw(ThicknessTable table, Palette palette, UnitSet units, int width = 640, int height = 340)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 260);
        ArgumentOutOfRangeException.ThrowIfLessThan(table.Rows.Count, 2);
        Figures figures = Figures.In(units);
        string caption = ThicknessWords.Caption(table, figures);
        if (ThicknessWords.HasRibs(table.Rows))
            height += (int)RibsPx;
        return new Picture(width, height, ThicknessWords.AltText(table.Rows, figures, caption), caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            DrawCurve(sheet, SKRect.Create(width, height), table, figures);
        });
    }

    private static void DrawCurve(Sheet sheet, SKRect area, ThicknessTable table, Figures figures)
    {
        IReadOnlyList<ThicknessRow> choices = table.Rows;
        double[] sold = [.. choices.Select(choice => figures.Convert(Shown.Thickness, choice.ThicknessM))];
        double[] losses = [.. choices.Select(choice => figures.Convert(Shown.Power, choice.LossW))];
        double current = figures.Convert(Shown.Thickness, table.KeptThicknessM);
        double margin = (sold[^1] - sold[0]) * 0.06;
        AxisScale across = AxisScale.Bare("", sold[0] - margin, sold[^1] + margin);
        bool hasRibs = ThicknessWords.HasRibs(choices);
        float right = hasRibs ? RibLabelsPx : 24;
        using Frame frame = Plot(sheet, hasRibs ? area with { Bottom = area.Bottom - AxisPx - RibsPx + 14 } : area, across, $"heat lost on the cold night, {figures.Unit(Shown.Power)}",
            losses, new PixelPadding(108, right, hasRibs ? 14 : AxisPx, 62));
        frame.Line(sold, losses, sheet.Palette.Ink, 2.2f);
        frame.Render($"{ThicknessWords.Title(table)}: what more thickness buys");
        using Frame? ribs = hasRibs ? DrawRibs(sheet, area with { Top = area.Bottom - AxisPx - RibsPx }, across, sold, choices, figures) : null;
        DrawCurrent(sheet, frame, current, $"now {figures.Thickness(table.KeptThicknessM)}");
        for (int i = 0; i < sold.Length; i++)
            DrawMark(sheet, frame.At(sold[i], losses[i]), choices[i].Verdict);
        if (ribs is not null)
            DrawCurrent(sheet, ribs, current, "");
        DrawColumns(sheet, ribs ?? frame, sold, choices, figures);
        DrawKey(sheet, ribs ?? frame, choices);
    }

    // Under the heat, at the same thicknesses: more thickness lowers U between ribs further than U with them.
    private static Frame DrawRibs(Sheet sheet, SKRect area, AxisScale across, double[] sold, IReadOnlyList<ThicknessRow> choices, Figures figures)
    {
        double[] between = [.. choices.Select(choice => figures.Convert(Shown.Transmittance, choice.UWPerM2K))];
        double[] withRibs = [.. choices.Select(choice => figures.Convert(Shown.Transmittance, choice.UWithRibsWPerM2K))];
        Frame frame = Plot(sheet, area, across, $"U, {figures.Unit(Shown.Transmittance)}", [0, .. between, .. withRibs], new PixelPadding(108, RibLabelsPx, AxisPx, 62));
        frame.Line(sold, withRibs, sheet.Palette.Ink, 2.2f);
        frame.Render("");
        sheet.DashedLine([.. sold.Zip(between, frame.At)], sheet.Palette.Ink, 1.8f, 7, 3);
        LineLabel.Draw(sheet, frame.Data, [new("with ribs", frame.At(sold[^1], withRibs[^1])), new("between them", frame.At(sold[^1], between[^1]))]);
        return frame;
    }

    private static Frame Plot(Sheet sheet, SKRect area, AxisScale across, string title, double[] values, PixelPadding padding)
    {
        double low = values.Min(), high = values.Max(), spread = Math.Max(high - low, Math.Abs(high) * 0.02);
        // What is counted from nothing begins there.
        return new Frame(sheet, area, across, AxisScale.Rounded(title, low == 0 ? 0 : low - spread * 0.1, high + spread * (low == 0 ? 0.05 : 0.2)), padding);
    }

    private static void DrawCurrent(Sheet sheet, Frame frame, double current, string text)
    {
        float x = frame.AcrossPx(current);
        sheet.DashedLine([new SKPoint(x, frame.Data.Top), new SKPoint(x, frame.Data.Bottom)], sheet.Palette.Muted, 1.4f, 5, 4);
        if (text.Length > 0)
            sheet.TextWithin(frame.Data, text, x, frame.Data.Top + 12, Lettering.Value, sheet.Palette.Ink);
    }

    // Dry: a full dot. Wet but dries: a ring of water. Stays wet: a square of water.
    private static void DrawMark(Sheet sheet, SKPoint at, DampVerdict verdict)
    {
        switch (verdict)
        {
            case DampVerdict.Dry:
                sheet.Dot(at.X, at.Y, 4.5f, sheet.Palette.Ink);
                break;
            case DampVerdict.StaysWet:
                sheet.Area(SKRect.Create(at.X - 7, at.Y - 7, 14, 14), sheet.Palette.Card);
                sheet.Area(SKRect.Create(at.X - 5, at.Y - 5, 10, 10), sheet.Palette.Water[3]);
                break;
            default:
                sheet.Dot(at.X, at.Y, 5.5f, sheet.Palette.Water[3]);
                sheet.Dot(at.X, at.Y, 1, sheet.Palette.Card);
                break;
        }
    }

    // Below the axis a column for each thickness: its thickness, and the headroom it leaves.
    private static void DrawColumns(Sheet sheet, Frame frame, double[] sold, IReadOnlyList<ThicknessRow> choices, Figures figures)
    {
        (string space, Func<ThicknessRow, double?> spaceM) = ThicknessWords.SpaceOf(choices);
        float y = frame.Data.Bottom;
        sheet.Text($"sold, {figures.Unit(Shown.Thickness)}", 16, y + 26, Lettering.Small, sheet.Palette.Muted);
        if (space.Length > 0)
            sheet.Text($"{space}, {figures.Unit(Shown.Length)}", 16, y + 46, Lettering.Small, sheet.Palette.Muted);
        float[] wanted = [.. sold.Select(frame.AcrossPx)];
        float column = Math.Min(ColumnsPx, frame.Data.Width / sold.Length);
        float[] middles = Spread.Apart(wanted, [.. sold.Select(_ => column)], frame.Data.Left, frame.Data.Right);
        for (int i = 0; i < sold.Length; i++)
        {
            sheet.Line(wanted[i], y, middles[i], y + 12, sheet.Palette.Muted);
            sheet.Text(figures.Number(Shown.Thickness, choices[i].ThicknessM), middles[i], y + 26, Lettering.Value, align: SKTextAlign.Center);
            if (spaceM(choices[i]) is { } leftM)
                sheet.Text(figures.Number(Shown.Length, leftM), middles[i], y + 46, Lettering.Small, align: SKTextAlign.Center);
        }
    }

    private static void DrawKey(Sheet sheet, Frame frame, IReadOnlyList<ThicknessRow> choices)
    {
        float x = 16, y = frame.Data.Bottom + 76;
        foreach (DampVerdict verdict in choices.Select(choice => choice.Verdict).Distinct().Order())
        {
            DrawMark(sheet, new SKPoint(x + 6, y - 4), verdict);
            sheet.Text(Names.Of(verdict), x + 18, y, Lettering.Small);
            x += 18 + Lettering.Small.WidthOf(Names.Of(verdict)) + 22;
        }
    }
}
