using SkiaSharp;
using Thermal.Bridges;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>Names the layers where a section goes on, each with a line to it: beside a lying section, below a standing one, above it where its corner is below.</summary>
internal sealed class SectionNames
{
    private const float RowPx = 18;

    private readonly SKRect box;
    private readonly bool isLying, isAbove;
    private readonly List<(string Name, string Thickness, SKPoint At)> layers = [];

    internal SectionNames(SectionCells cells, SectionView view, Figures figures, bool isAbove)
    {
        (box, isLying, this.isAbove) = (view.Box, view.IsLying, isAbove);
        double endM = isAbove ? view.ToXM : view.FarXM;
        int i = Enumerable.Range(0, cells.Across).Last(column => column == 0 || cells.XsM[column] < endM - 1e-9);
        double fromY = 0;
        for (int j = 0; j < cells.YsM.Length - 1; j++)
        {
            Piece? here = cells.Pieces[i + j * cells.Across];
            if (j == 0 || here != cells.Pieces[i + (j - 1) * cells.Across])
                fromY = cells.YsM[j];
            if (here is not null && (j == cells.YsM.Length - 2 || here != cells.Pieces[i + (j + 1) * cells.Across]))
                layers.Add((here.Name, figures.Thickness(cells.YsM[j + 1] - fromY), view.At(endM, (fromY + cells.YsM[j + 1]) / 2)));
        }
        layers.RemoveAll(layer => !SKRect.Inflate(box, 1, 1).Contains(layer.At));
    }

    /// <summary>What the names need below the section, px.</summary>
    internal float BelowPx => isLying || isAbove ? 0 : layers.Count * RowPx + 8;

    /// <summary>What they need above it, px.</summary>
    internal static float AbovePx(SectionOnNight night) => night.IsCornerBelow ? night.Solved.Place.Stack.Layers.Count * RowPx + 8 : 0;

    internal void Draw(Sheet sheet, float right)
    {
        if (isLying)
            DrawBeside(sheet, right);
        else
            DrawStepped(sheet, right);
    }

    private void DrawBeside(Sheet sheet, float right)
    {
        (string Name, string Thickness, SKPoint At)[] ordered = [.. layers.OrderBy(layer => layer.At.Y)];
        float[] middles = Spread.Apart([.. ordered.Select(layer => layer.At.Y)], [.. ordered.Select(_ => RowPx)], box.Top, box.Bottom);
        for (int k = 0; k < ordered.Length; k++)
        {
            sheet.Line(box.Right + 5, ordered[k].At.Y, box.Right + 18, middles[k], sheet.Palette.Muted);
            Write(sheet, ordered[k].Name, ordered[k].Thickness, box.Right + 22, middles[k] + 4.5f, right);
        }
    }

    // The layer furthest right has the row nearest to the section, so that no line crosses another. Long names begin further left, right of every line.
    private void DrawStepped(Sheet sheet, float right)
    {
        if (layers.Count == 0) return;
        float widest = layers.Max(layer => Lettering.Value.WidthOf(layer.Name) + 6 + Lettering.Label.WidthOf(layer.Thickness));
        float start = Math.Min(box.Right + 14, Math.Max(layers.Max(layer => layer.At.X) + 16, right - widest - 1));
        float away = isAbove ? -1 : 1, edge = isAbove ? box.Top : box.Bottom, y = edge + away * 16;
        foreach ((string name, string thickness, SKPoint at) in layers.OrderByDescending(layer => layer.At.X))
        {
            sheet.Polyline([new SKPoint(at.X, edge + away * 5), new SKPoint(at.X, y), new SKPoint(start - 4, y)], sheet.Palette.Muted);
            Write(sheet, name, thickness, start, y + 4.5f, right);
            y += away * RowPx;
        }
    }

    private static void Write(Sheet sheet, string name, string thickness, float x, float baseline, float right)
    {
        string fitted = Lettering.Value.Fitting(name, right - x - Lettering.Label.WidthOf(thickness) - 6);
        sheet.Text(fitted, x, baseline, Lettering.Value);
        sheet.Text(thickness, x + Lettering.Value.WidthOf(fitted) + 6, baseline, Lettering.Label, sheet.Palette.Muted);
    }
}
