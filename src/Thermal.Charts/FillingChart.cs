using SkiaSharp;
using Thermal.Choices;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>A hollow rib empty, filled and foamed: the coldest point of each against the dew point, with what it saves.</summary>
public static class FillingChart
{
    private const float Edge = 16, Top = 84, RowPx = 48, FootPx = 34;

    /// <summary>Draws it.</summary>
    /// <param name="table">The fillings, one or more.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width below 480 px, or no filling.</exception>
    public static Picture Draw(FillingTable table, Palette palette, UnitSet units, int width = 640)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(table.Rows.Count, 1);
        Figures figures = Figures.In(units);
        int height = (int)(Top + RowPx * table.Rows.Count + FootPx);
        string caption = Caption(table, figures);
        return new Picture(width, height, AltText(table, figures, caption), caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            sheet.Text(Lettering.Title.Fitting($"{Title(table)}: what a filling buys", width - 2 * Edge), Edge, 24, Lettering.Title);
            float left = MathF.Round(width * 0.6f);
            DrawScale(sheet, SKRect.Create(left, Top, width - 40 - left, RowPx * table.Rows.Count), table.Rows, figures);
            DrawWords(sheet, table.Rows, figures, left - Edge - 12);
        });
    }

    private static void DrawWords(Sheet sheet, IReadOnlyList<FillingRow> rows, Figures figures, float widthPx)
    {
        for (int i = 0; i < rows.Count; i++)
        {
            float y = Top + RowPx * (i + 0.5f);
            sheet.Text(Lettering.Value.Fitting(Name(rows[i]) + (rows[i].IsKept ? " (now)" : ""), widthPx), Edge, y - 4, Lettering.Value);
            sheet.Text(Lettering.Small.Fitting($"saves {figures.Power(rows[i].SavedW)}, U {figures.Transmittance(rows[i].UWithRibsWPerM2K)}", widthPx), Edge, y + 14, Lettering.Small, sheet.Palette.Muted);
            sheet.Line(Edge, Top + RowPx * i, Edge + widthPx, Top + RowPx * i, sheet.Palette.Line);
        }
    }

    private static void DrawScale(Sheet sheet, SKRect box, IReadOnlyList<FillingRow> rows, Figures figures)
    {
        double dewC = rows[0].ColdestC - rows[0].ToSpareK;
        double dew = figures.Convert(Shown.Temperature, dewC);
        double[] shown = [.. rows.Select(row => figures.Convert(Shown.Temperature, row.ColdestC))];
        double low = Math.Min(dew, shown.Min()), high = Math.Max(dew, shown.Max()), pad = Math.Max(high - low, 1) * 0.2;
        AxisScale scale = AxisScale.Rounded("", low - pad, high + pad, 3);
        float Px(double value) => box.Left + (float)((value - scale.Low) / (scale.High - scale.Low)) * box.Width;
        sheet.Area(box with { Right = Px(dew) }, sheet.Palette.Water[0]);
        sheet.Text($"coldest inner point, {figures.Unit(Shown.Temperature)}", box.Right + 24, box.Top - 28, Lettering.Small, sheet.Palette.Muted, SKTextAlign.Right);
        foreach ((double at, string label) in scale.Ticks)
        {
            sheet.Line(Px(at), box.Top, Px(at), box.Bottom, sheet.Palette.Line);
            sheet.Text(label, Px(at), box.Top - 8, Lettering.Small, sheet.Palette.Muted, SKTextAlign.Center);
        }
        sheet.DashedLine([new SKPoint(Px(dew), box.Top), new SKPoint(Px(dew), box.Bottom)], sheet.Palette.Ink, 1.8f, 9, 4);
        sheet.TextWithin(box with { Right = box.Right + 24 }, $"dew point {figures.Temperature(dewC)}", Px(dew), box.Bottom + 18, Lettering.Small, sheet.Palette.Ink);
        for (int i = 0; i < rows.Count; i++)
        {
            float x = Px(shown[i]), y = box.Top + RowPx * (i + 0.5f);
            sheet.Dot(x, y + 8, 5, rows[i].ToSpareK < 0 ? sheet.Palette.Water[3] : sheet.Palette.Ink);
            sheet.TextWithin(box with { Right = box.Right + 24 }, figures.Temperature(rows[i].ColdestC), x, y - 4, Lettering.Value, sheet.Palette.Ink);
        }
    }

    private static string Name(FillingRow row) => row.Filling is { } filling ? Grammar.Capital(filling) : "Empty";

    private static string Title(FillingTable table) => $"{Grammar.Capital(table.Panel)}, {CutWords.Lowered(table.Rib)}";

    private static string Caption(FillingTable table, Figures figures)
    {
        IReadOnlyList<FillingRow> rows = table.Rows;
        FillingRow empty = rows[0], best = rows.MaxBy(row => row.SavedW)!;
        if (rows.All(row => figures.Power(row.SavedW) == figures.Power(0) && figures.Temperature(row.ColdestC) == figures.Temperature(empty.ColdestC)))
            return $"{Title(table)}: no filling changes anything that shows: the coldest point stays at {figures.Temperature(empty.ColdestC)}, the metal carries the heat past it.";
        return best == empty
            ? $"{Title(table)}: no filling saves heat; empty, its coldest point is at {figures.Temperature(empty.ColdestC)}."
            : $"{Title(table)}: {CutWords.Lowered(Name(best))} inside saves {figures.Power(best.SavedW)} on the cold night and moves the coldest point from {figures.Temperature(empty.ColdestC)} to {figures.Temperature(best.ColdestC)}, "
                + (best.ToSpareK >= 0 ? $"{figures.Difference(best.ToSpareK)} above the dew point." : $"still {figures.Difference(-best.ToSpareK)} below the dew point.");
    }

    private static string AltText(FillingTable table, Figures figures, string caption) => string.Concat(
        caption, " ",
        string.Join("; ", table.Rows.Select(row => $"{Name(row)}: coldest {figures.Temperature(row.ColdestC)}, saves {figures.Power(row.SavedW)}, U with ribs {figures.Transmittance(row.UWithRibsWPerM2K)}")), ".");
}
