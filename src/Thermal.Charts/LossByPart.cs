using ScottPlot;
using SkiaSharp;
using Thermal.Assessments;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>Where the heat goes on one night: the parts ranked, each with its watts and its share.</summary>
public static class LossByPart
{
    private const int MostBars = 14;
    private const float Edge = 16, RowPx = 24, Top = 58, NamesPx = 230;

    /// <summary>Draws it. More than fourteen parts are drawn as the thirteen largest and the rest together.</summary>
    /// <param name="night">The night; its parts add up to its loss.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px; more parts take more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width below 480 px.</exception>
    public static Picture Draw(Night night, Palette palette, UnitSet units, int width = 640, int height = 120)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        Figures figures = Figures.In(units);
        IReadOnlyList<(string Name, double LossW)> bars = Ranked(night.Losses);
        double totalW = night.Losses.Sum(part => part.LossW);
        int tall = Math.Max(height, (int)(Top + RowPx * bars.Count + 20));
        string caption = Caption(night, bars, totalW, figures);
        string altText = $"{caption} {string.Join("; ", bars.Select(bar => $"{bar.Name} {Figure(bar.LossW, totalW, figures)}"))}.";
        return new Picture(width, tall, altText, caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, tall);
            DrawBars(sheet, SKRect.Create(width, tall), bars, totalW, Title(night, totalW, figures), figures);
        });
    }

    private static void DrawBars(Sheet sheet, SKRect area, IReadOnlyList<(string Name, double LossW)> bars, double totalW, string title, Figures figures)
    {
        double[] shown = [.. bars.Select(bar => figures.Convert(Shown.Power, bar.LossW))];
        double low = Math.Min(0, shown.Min()), high = Math.Max(shown.Max(), 1);
        AxisScale across = AxisScale.Bare("", low, high), up = AxisScale.Bare($"heat lost, {figures.Unit(Shown.Power)} and share of all", -bars.Count + 0.5, 0.5);
        float figuresPx = bars.Max(bar => Lettering.Value.WidthOf(Figure(bar.LossW, totalW, figures))) + 8 + Edge;
        using var frame = new Frame(sheet, area, across, up, new PixelPadding(NamesPx, figuresPx, area.Height - Top - RowPx * bars.Count, Top));
        var drawn = frame.Plot.Add.Bars((Bar[])[.. shown.Select((value, i) => new Bar
        {
            Position = -i,
            Value = value,
            Size = 0.66,
            Orientation = Orientation.Horizontal,
            FillColor = Frame.Shade(value < 0 ? sheet.Palette.Line : sheet.Palette.Heat[2]),
            LineColor = Frame.Shade(sheet.Palette.Heat[3]),
            LineWidth = 1,
        })]);
        drawn.Horizontal = true;
        frame.HideAcross();
        frame.Render(title);
        sheet.Line(frame.AcrossPx(0), frame.Data.Top, frame.AcrossPx(0), frame.Data.Bottom, sheet.Palette.Ink);
        for (int i = 0; i < bars.Count; i++)
        {
            float y = frame.UpPx(-i) + 4.5f;
            sheet.Text(Lettering.Label.Fitting(bars[i].Name, NamesPx - Edge - 8), NamesPx - 8, y, Lettering.Label, align: SKTextAlign.Right);
            sheet.Text(Figure(bars[i].LossW, totalW, figures), Math.Max(frame.AcrossPx(shown[i]), frame.AcrossPx(0)) + 8, y, Lettering.Value);
        }
    }

    private static IReadOnlyList<(string Name, double LossW)> Ranked(IReadOnlyList<LossPart> parts)
    {
        (string Name, double LossW)[] ranked = [.. parts.Select(part => (NameAmong(parts, part), part.LossW)).OrderByDescending(part => part.LossW)];
        return ranked.Length <= MostBars
            ? ranked
            : [.. ranked[..(MostBars - 1)], ($"{ranked.Length - MostBars + 1} smaller parts together", ranked[(MostBars - 1)..].Sum(part => part.LossW))];
    }

    // Ribs of the left and the right side may bear one name: the panel tells them apart.
    private static string NameAmong(IReadOnlyList<LossPart> parts, LossPart part) => Grammar.Capital(
        part.Panel is { } panel && parts.Count(other => other.Name == part.Name) > 1 ? $"{panel}, {part.Name}" : part.Name);

    private static string Figure(double lossW, double totalW, Figures figures) =>
        totalW > 0 ? $"{figures.Power(lossW)} · {figures.Percent(lossW / totalW)}" : figures.Power(lossW);

    private static string Title(Night night, double totalW, Figures figures) =>
        $"Where the heat goes at {figures.Temperature(night.Conditions.OutsideC)}: {figures.Power(totalW)} in all";

    private static string Caption(Night night, IReadOnlyList<(string Name, double LossW)> bars, double totalW, Figures figures) => totalW > 0
        ? $"At {figures.Temperature(night.Conditions.OutsideC)} outside {figures.Power(totalW)} leave the vehicle; most by {CutWords.Lowered(bars[0].Name)}: {Figure(bars[0].LossW, totalW, figures)}."
        : $"At {figures.Temperature(night.Conditions.OutsideC)} outside the vehicle loses no heat: {figures.Power(totalW)} in all.";
}
