using ScottPlot;
using SkiaSharp;
using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>What more thickness of a layer buys: heat lost over the thicknesses sold, with headroom and damp at each.</summary>
public static class ThicknessCurve
{
    private const float ColumnsPx = 56;

    /// <summary>Draws it.</summary>
    /// <param name="table">The layer in two or more thicknesses.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, 260 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small, or fewer than two thicknesses.</exception>
    public static Picture Draw(ThicknessTable table, Palette palette, UnitSet units, int width = 640, int height = 340)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 260);
        ArgumentOutOfRangeException.ThrowIfLessThan(table.Rows.Count, 2);
        Figures figures = Figures.In(units);
        string caption = Caption(table, figures);
        return new Picture(width, height, AltText(table.Rows, figures, caption), caption, canvas =>
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
        double spread = Math.Max(losses.Max() - losses.Min(), Math.Abs(losses.Max()) * 0.02);
        AxisScale across = AxisScale.Bare("", sold[0] - margin, sold[^1] + margin);
        AxisScale up = AxisScale.Rounded($"heat lost on the cold night, {figures.Unit(Shown.Power)}", losses.Min() - spread * 0.1, losses.Max() + spread * 0.2);
        using var frame = new Frame(sheet, area, across, up, new PixelPadding(108, 24, 92, 62));
        frame.Line(sold, losses, sheet.Palette.Ink, 2.2f);
        frame.Render($"{Title(table)}: what more thickness buys");
        DrawCurrent(sheet, frame, current, figures.Thickness(table.KeptThicknessM));
        for (int i = 0; i < sold.Length; i++)
            DrawMark(sheet, frame.At(sold[i], losses[i]), choices[i].Verdict);
        DrawColumns(sheet, frame, sold, choices, figures);
        DrawKey(sheet, frame, choices);
    }

    private static void DrawCurrent(Sheet sheet, Frame frame, double current, string text)
    {
        float x = frame.AcrossPx(current);
        sheet.DashedLine([new SKPoint(x, frame.Data.Top), new SKPoint(x, frame.Data.Bottom)], sheet.Palette.Muted, 1.4f, 5, 4);
        sheet.TextWithin(frame.Data, $"now {text}", x, frame.Data.Top + 12, Lettering.Value, sheet.Palette.Ink);
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
        (string space, Func<ThicknessRow, double?> spaceM) = SpaceOf(choices);
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

    // A roof or a floor takes headroom, a side takes width; what does not change is not shown.
    private static (string Name, Func<ThicknessRow, double?> M) SpaceOf(IReadOnlyList<ThicknessRow> choices) =>
        choices[0].HeadroomM != choices[^1].HeadroomM ? ("headroom", row => row.HeadroomM)
        : choices[0].InnerWidthM != choices[^1].InnerWidthM ? ("inner width", row => row.InnerWidthM)
        : ("", _ => null);

    private static string Title(ThicknessTable table) => $"{Grammar.Capital(table.Panel)}, {CutWords.Lowered(table.Layer)}";

    private static string Caption(ThicknessTable table, Figures figures)
    {
        IReadOnlyList<ThicknessRow> choices = table.Rows;
        ThicknessRow thin = choices[0], thick = choices[^1];
        (string space, Func<ThicknessRow, double?> spaceM) = SpaceOf(choices);
        string takes = spaceM(thin) is { } most && spaceM(thick) is { } least ? $" and takes {figures.Thickness(most - least)} of {space}" : "";
        return $"{Title(table)}: {figures.Thickness(thick.ThicknessM)} instead of {figures.Thickness(thin.ThicknessM)} saves {figures.Power(thin.LossW - thick.LossW)} on the cold night{takes}; "
            + $"the last step, from {figures.Thickness(choices[^2].ThicknessM)}, saves {figures.Power(choices[^2].LossW - thick.LossW)}."
            + (choices.Any(row => row.BridgesStale) ? " The rib's figure was given for another thickness, so the others are only a guess." : "");
    }

    private static string AltText(IReadOnlyList<ThicknessRow> choices, Figures figures, string caption) => string.Concat(
        caption, " ",
        string.Join("; ", choices.Select(choice => $"{figures.Thickness(choice.ThicknessM)}: {figures.Power(choice.LossW)}, {Names.Of(choice.Verdict)}")), ".");
}
