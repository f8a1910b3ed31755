using SkiaSharp;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>Sun on the roof and the sides of a parked vehicle by month: a grid, darker where more falls, with the figure in every field.</summary>
public static class SunOnSides
{
    private const float LeftPx = 118, Edge = 16, TopPx = 62, RowPx = 34;
    private const int StepCount = 5;

    /// <summary>Draws it.</summary>
    /// <param name="grid">Rows and months.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small.</exception>
    /// <remarks>The height follows from the rows.</remarks>
    public static Picture Draw(SunGrid grid, Palette palette, UnitSet units, int width = 640)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        Figures figures = Figures.In(units);
        int height = (int)(TopPx + grid.Rows.Count * RowPx + 52);
        string caption = Caption(grid, figures);
        return new Picture(width, height, AltText(grid, figures, caption), caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            DrawGrid(sheet, width, grid, figures);
        });
    }

    private static void DrawGrid(Sheet sheet, int width, SunGrid grid, Figures figures)
    {
        float column = (width - LeftPx - Edge) / grid.Months.Count;
        double step = NiceNumbers.Step(Math.Max(figures.SunOnAxis(grid.MostWPerM2), 0.1), StepCount);
        sheet.Text(Lettering.Title.Fitting(grid.Title, width - 2 * Edge), Edge, 24, Lettering.Title);
        for (int month = 0; month < grid.Months.Count; month++)
            sheet.Text(MonthAxis.Letters(grid.Months[month], column * 12.2f), LeftPx + (month + 0.5f) * column, TopPx - 8, Lettering.Small, sheet.Palette.Muted, SKTextAlign.Center);
        for (int row = 0; row < grid.Rows.Count; row++)
        {
            float top = TopPx + row * RowPx;
            sheet.Text(Lettering.Label.Fitting(grid.Rows[row].Name, LeftPx - Edge - 6), Edge, top + RowPx / 2 + 4.5f, Lettering.Label);
            for (int month = 0; month < grid.Months.Count; month++)
                DrawField(sheet, SKRect.Create(LeftPx + month * column + 1, top + 1, column - 2, RowPx - 2), grid.Rows[row].MeansWPerM2[month], step, figures);
        }
        DrawKey(sheet, TopPx + grid.Rows.Count * RowPx + 14, step, figures);
    }

    private static void DrawField(Sheet sheet, SKRect field, double meanWPerM2, double step, Figures figures)
    {
        int shade = StepOf(figures.SunOnAxis(meanWPerM2), step);
        sheet.Area(field, sheet.Palette.Heat[shade]);
        sheet.Text(figures.SunNumber(meanWPerM2), field.MidX, field.MidY + 4.5f, Lettering.Small, shade >= 3 ? sheet.Palette.Card : sheet.Palette.Ink, SKTextAlign.Center);
    }

    private static int StepOf(double sun, double step) => Math.Min(StepCount - 1, (int)(sun / step));

    private static void DrawKey(Sheet sheet, float top, double step, Figures figures)
    {
        float x = Edge;
        for (int i = 0; i < StepCount; i++)
        {
            string text = i == 0 ? $"under {NiceNumbers.Written(step, step)}" : i == StepCount - 1 ? $"{NiceNumbers.Written(i * step, step)} and more" : $"{NiceNumbers.Written(i * step, step)} to {NiceNumbers.Written((i + 1) * step, step)}";
            sheet.Area(SKRect.Create(x, top, 14, 14), sheet.Palette.Heat[i]);
            sheet.Box(SKRect.Create(x, top, 14, 14), sheet.Palette.Muted, 1, 0.5f);
            sheet.Text(text, x + 19, top + 11.5f, Lettering.Small);
            x += 19 + Lettering.Small.WidthOf(text) + 14;
        }
        sheet.Text($"{figures.Unit(Shown.SunPerArea)} a day", Edge, top + 31, Lettering.Small, sheet.Palette.Muted);
    }

    private static string Caption(SunGrid grid, Figures figures)
    {
        int darkest = Enumerable.Range(0, grid.Months.Count).MinBy(month => grid.Rows[0].MeansWPerM2[month]);
        SunGridRow most = grid.Rows.MaxBy(row => row.MeansWPerM2[darkest])!;
        string best = ReferenceEquals(most, grid.Rows[0]) ? "more than any side" : $"less than the {most.Name} with {figures.SunPerDay(most.MeansWPerM2[darkest])}";
        return $"In {Grammar.Month(grid.Months[darkest])} the roof gets {figures.SunPerDay(grid.Rows[0].MeansWPerM2[darkest])}, {best}. {grid.Stand}";
    }

    private static string AltText(SunGrid grid, Figures figures, string caption) => string.Concat(
        $"{grid.Title}, {figures.Unit(Shown.SunPerArea)} a day: ",
        string.Join("; ", grid.Rows.Select(row => $"{row.Name}: {string.Join(", ", grid.Months.Select((month, i) => $"{Grammar.ShortMonth(month)} {figures.SunNumber(row.MeansWPerM2[i])}"))}")),
        $". {caption}");
}
