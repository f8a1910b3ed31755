using ScottPlot;
using SkiaSharp;
using Thermal.Choices;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>What a strip over the ribs buys, thickness by thickness: how warm the coldest point gets, and below it how much heat it saves.</summary>
public static class StripChart
{
    private const float LabelsPx = 132, ColumnsPx = 56, RowPx = 20;

    /// <summary>Draws it.</summary>
    /// <param name="table">The strip in two or more thicknesses.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, 360 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small, or fewer than two thicknesses.</exception>
    public static Picture Draw(StripTable table, Palette palette, UnitSet units, int width = 640, int height = 420)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 360);
        ArgumentOutOfRangeException.ThrowIfLessThan(table.Rows.Count, 2);
        Figures figures = Figures.In(units);
        string caption = Caption(table, figures);
        return new Picture(width, height, AltText(table, figures, caption), caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            DrawPlots(sheet, width, height, table, figures);
        });
    }

    private static void DrawPlots(Sheet sheet, int width, int height, StripTable table, Figures figures)
    {
        IReadOnlyList<StripRow> rows = table.Rows;
        (string Title, Func<StripRow, string> Of)[] columns = [.. Columns(rows, figures)];
        float foot = columns.Length * RowPx + 24, each = (height - foot - 62) / 2;
        double[] strips = [.. rows.Select(row => figures.Convert(Shown.Thickness, row.StripM))];
        double margin = (strips[^1] - strips[0]) * 0.06;
        AxisScale across = AxisScale.Bare("", strips[0] - margin, strips[^1] + margin);
        using Frame warm = Plot(sheet, SKRect.Create(0, 0, width, 62 + each - 14), across, rows.Select(row => figures.Convert(Shown.Temperature, row.ColdestC)),
            $"coldest inner point, {figures.Unit(Shown.Temperature)}", strips, figures.Convert(Shown.Temperature, DewPointC(rows[0])));
        using Frame saved = Plot(sheet, SKRect.Create(0, each + 10, width, 48 + each), across, rows.Select(row => figures.Convert(Shown.Power, row.SavedW)),
            $"heat saved on the cold night, {figures.Unit(Shown.Power)}", strips, 0);
        warm.Render($"{Title(table)}: what a covering strip buys");
        saved.Render("");
        DrawDewPoint(sheet, warm, rows[0], figures);
        DrawKept(sheet, [warm, saved], rows, figures);
        for (int i = 0; i < rows.Count; i++)
        {
            SKPoint at = warm.At(strips[i], figures.Convert(Shown.Temperature, rows[i].ColdestC)), below = saved.At(strips[i], figures.Convert(Shown.Power, rows[i].SavedW));
            sheet.Dot(at.X, at.Y, rows[i].ToSpareK < 0 ? 5.5f : 4.5f, rows[i].ToSpareK < 0 ? sheet.Palette.Water[3] : sheet.Palette.Ink);
            sheet.Dot(below.X, below.Y, 4.5f, sheet.Palette.Ink);
        }
        DrawColumns(sheet, saved, strips, rows, columns);
    }

    private static Frame Plot(Sheet sheet, SKRect area, AxisScale across, IEnumerable<double> values, string title, double[] strips, double also)
    {
        double[] shown = [.. values];
        double low = Math.Min(shown.Min(), also), high = Math.Max(shown.Max(), also), pad = (high - low) * 0.1;
        // What is counted from nothing begins there.
        AxisScale up = AxisScale.Rounded(title, low == 0 ? 0 : low - pad, high + pad, 4);
        var frame = new Frame(sheet, area, across, up, new PixelPadding(LabelsPx, 24, 14, 62));
        frame.Line(strips, shown, sheet.Palette.Ink, 2.2f);
        return frame;
    }

    private static void DrawDewPoint(Sheet sheet, Frame frame, StripRow row, Figures figures)
    {
        float y = frame.UpPx(figures.Convert(Shown.Temperature, DewPointC(row)));
        sheet.DashedLine([new SKPoint(frame.Data.Left, y), new SKPoint(frame.Data.Right, y)], sheet.Palette.Ink, 1.8f, 9, 4);
        string text = $"dew point {figures.Temperature(DewPointC(row))}";
        sheet.TextWithin(frame.Data, text, frame.Data.Right, y - 6, Lettering.Small, sheet.Palette.Ink);
    }

    private static void DrawKept(Sheet sheet, Frame[] frames, IReadOnlyList<StripRow> rows, Figures figures)
    {
        if (rows.FirstOrDefault(row => row.IsKept) is not { } kept)
            return;
        foreach (Frame frame in frames)
        {
            float x = frame.AcrossPx(figures.Convert(Shown.Thickness, kept.StripM));
            sheet.DashedLine([new SKPoint(x, frame.Data.Top), new SKPoint(x, frame.Data.Bottom)], sheet.Palette.Muted, 1.4f, 5, 4);
        }
        string now = kept.StripM > 0 ? $"now {figures.Thickness(kept.StripM)}" : "now none";
        sheet.TextWithin(frames[1].Data, now, frames[1].AcrossPx(figures.Convert(Shown.Thickness, kept.StripM)), frames[1].Data.Top + 12, Lettering.Value, sheet.Palette.Ink);
    }

    private static IEnumerable<(string Title, Func<StripRow, string> Of)> Columns(IReadOnlyList<StripRow> rows, Figures figures)
    {
        yield return ($"strip, {figures.Unit(Shown.Thickness)}", row => figures.Number(Shown.Thickness, row.StripM));
        yield return ($"coldest, {figures.Unit(Shown.Temperature)}", row => figures.Number(Shown.Temperature, row.ColdestC));
        yield return ($"saved, {figures.Unit(Shown.Power)}", row => figures.Number(Shown.Power, row.SavedW));
        if (rows.Any(row => row.HeadroomLostM > 0))
            yield return ($"lining inwards, {figures.Unit(Shown.Thickness)}", row => figures.Number(Shown.Thickness, row.HeadroomLostM));
    }

    private static void DrawColumns(Sheet sheet, Frame frame, double[] strips, IReadOnlyList<StripRow> rows, (string Title, Func<StripRow, string> Of)[] columns)
    {
        float[] wanted = [.. strips.Select(frame.AcrossPx)];
        float column = Math.Min(ColumnsPx, frame.Data.Width / strips.Length);
        float[] middles = Spread.Apart(wanted, [.. strips.Select(_ => column)], frame.Data.Left, frame.Data.Right);
        for (int k = 0; k < columns.Length; k++)
        {
            float y = frame.Data.Bottom + 26 + k * RowPx;
            sheet.Text(columns[k].Title, 16, y, Lettering.Small, sheet.Palette.Muted);
            for (int i = 0; i < rows.Count; i++)
                sheet.Text(columns[k].Of(rows[i]), middles[i], y, k == 0 ? Lettering.Value : Lettering.Small, align: SKTextAlign.Center);
        }
        for (int i = 0; i < rows.Count; i++)
            sheet.Line(wanted[i], frame.Data.Bottom, middles[i], frame.Data.Bottom + 12, sheet.Palette.Muted);
    }

    // The dew point is the same in every row: the room's air does not change with a strip.
    private static double DewPointC(StripRow row) => row.ColdestC - row.ToSpareK;

    private static string Title(StripTable table) => $"{Grammar.Capital(table.Panel)}, {CutWords.Lowered(table.Rib)}";

    private static string Caption(StripTable table, Figures figures)
    {
        StripRow none = table.Rows[0], thick = table.Rows[^1];
        string start = $"{Title(table)}: {figures.Thickness(thick.StripM)} of {table.Material} over the crown lift the coldest point from {figures.Temperature(none.ColdestC)} to {figures.Temperature(thick.ColdestC)} and save {figures.Power(thick.SavedW)} on the cold night.";
        string dry = none.ToSpareK >= 0 ? $" Without a strip it stays {figures.Difference(none.ToSpareK)} above the dew point."
            : table.Rows.FirstOrDefault(row => row.ToSpareK >= 0) is { } first ? $" From {figures.Thickness(first.StripM)} on it stays above the dew point."
            : $" None of them lifts it above the dew point of {figures.Temperature(DewPointC(none))}.";
        return start + dry + (thick.HeadroomLostM > 0 ? $" The thickest moves the lining {figures.Thickness(thick.HeadroomLostM)} inwards." : "");
    }

    private static string AltText(StripTable table, Figures figures, string caption) => string.Concat(
        caption, " ",
        string.Join("; ", table.Rows.Select(row => $"{figures.Thickness(row.StripM)}: coldest {figures.Temperature(row.ColdestC)}, saves {figures.Power(row.SavedW)}, U with ribs {figures.Transmittance(row.UWithRibsWPerM2K)}")), ".");
}
