using SkiaSharp;
using Thermal.Bridges;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>What the steps and lines of a section mean, with its scale: as many rows as the width needs.</summary>
internal sealed class SectionKey
{
    private const float RowPx = 21, MarkPx = 30, GapPx = 18;

    private readonly List<(float X, int Row, Entry Entry)> placed = [];

    internal SectionKey(SectionDrawing drawing, Figures figures, double pxPerM, bool isCropped, bool isFrost, float widthPx)
    {
        List<Entry> steps = [.. Enumerable.Range(0, drawing.Steps.Count).Select(step => StepOf(drawing.Steps, step, figures))];
        List<Entry> lines =
        [
            ScaleOf(figures, pxPerM),
            new("room's surface", MarkPx, (sheet, at) => SectionDrawing.Surface(sheet, Straight(at), DetailSection.Room)),
            new("outer surface", MarkPx, (sheet, at) => SectionDrawing.Surface(sheet, Straight(at), DetailSection.Outside)),
        ];
        if (drawing.HasCuts)
            lines.Add(new("no heat crosses", MarkPx, (sheet, at) => SectionDrawing.Surface(sheet, Straight(at), "")));
        if (isCropped)
            lines.Add(new("goes on", MarkPx, (sheet, at) => BrokenEdge.Draw(sheet, new SKPoint(at.X, at.Y), new SKPoint(at.X + MarkPx - 6, at.Y))));
        if (drawing.HasWays)
            lines.Add(new("way of the heat, as much between any two", MarkPx, (sheet, at) => SectionDrawing.Way(sheet, Straight(at))));
        if (drawing.HasDewLine)
            lines.Add(new("dew point of the room's air", MarkPx, (sheet, at) => SectionDrawing.DewLine(sheet, Straight(at))));
        if (drawing.Wet.Count > 0)
            lines.Add(new("surface below it: " + (isFrost ? "wet or frosted" : "wet"), MarkPx, (sheet, at) => sheet.Polyline(Straight(at), sheet.Palette.Water[3], 5)));
        if (drawing.HasSheets)
            lines.Add(new("sheet of metal", 18, (sheet, at) => sheet.Area(SKRect.Create(at.X, at.Y - 2, 12, 4), sheet.Palette.Metal)));
        Rows = Place(steps, 0, widthPx);
        Rows = Place(lines, Rows, widthPx);
    }

    internal int Rows { get; }

    internal float HeightPx => Rows * RowPx;

    internal void Draw(Sheet sheet, float left, float top)
    {
        foreach ((float x, int row, Entry entry) in placed)
        {
            float y = top + row * RowPx + RowPx / 2;
            entry.Mark(sheet, new SKPoint(left + x, y));
            sheet.Text(entry.Text, left + x + entry.MarkPx, y + 4.5f, Lettering.Small);
        }
    }

    private static SKPoint[] Straight(SKPoint at) => [at, new SKPoint(at.X + MarkPx - 6, at.Y)];

    private int Place(List<Entry> entries, int row, float widthPx)
    {
        float x = 0;
        foreach (Entry entry in entries)
        {
            float width = entry.MarkPx + Lettering.Small.WidthOf(entry.Text);
            if (x > 0 && x + width > widthPx)
                (x, row) = (0, row + 1);
            placed.Add((x, row, entry));
            x += width + GapPx;
        }
        return row + 1;
    }

    private static Entry StepOf(FieldSteps steps, int step, Figures figures)
    {
        double low = steps.Low + step * steps.Step;
        string unit = step == steps.Count - 1 ? $" {figures.Unit(Shown.Temperature)}" : "";
        return new($"{steps.Written(low)} to {steps.Written(low + steps.Step)}{unit}", 22, (sheet, at) =>
        {
            SKRect swatch = SKRect.Create(at.X, at.Y - 6, 16, 12);
            sheet.Area(swatch, steps.Colour(sheet.Palette, step));
            sheet.Box(swatch, sheet.Palette.Ink, 1, 0.45f);
        });
    }

    private static Entry ScaleOf(Figures figures, double pxPerM)
    {
        double shownPerM = figures.Convert(Shown.Thickness, 1), lengthM = NiceNumbers.AtMost(80 / pxPerM * shownPerM) / shownPerM;
        float bar = (float)(lengthM * pxPerM);
        return new(figures.Thickness(lengthM), bar + 8, (sheet, at) =>
        {
            sheet.Line(at.X, at.Y, at.X + bar, at.Y, sheet.Palette.Ink, 1.4f);
            sheet.Line(at.X, at.Y - 4, at.X, at.Y + 4, sheet.Palette.Ink, 1.4f);
            sheet.Line(at.X + bar, at.Y - 4, at.X + bar, at.Y + 4, sheet.Palette.Ink, 1.4f);
        });
    }

    private sealed record Entry(string Text, float MarkPx, Action<Sheet, SKPoint> Mark);
}
