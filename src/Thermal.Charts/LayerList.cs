using SkiaSharp;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>Numbers over the layers of a graph and the list that names them below it.</summary>
internal static class LayerList
{
    private const float LinePx = 19, NumberPx = 17;

    /// <summary>Height the list needs at a width, px.</summary>
    internal static int HeightPx(IReadOnlyList<string> entries, float widthPx) => (int)(Lines(entries, widthPx).Count * LinePx) + 8;

    internal static IReadOnlyList<string> WithThickness(BuildUpCut cut, Figures figures) =>
        [.. cut.Layers.Select(layer => $"{layer.Name} {figures.Thickness(layer.ThicknessM)}")];

    internal static void Draw(Sheet sheet, IReadOnlyList<string> entries, float left, float top, float widthPx)
    {
        int number = 1;
        float y = top + 14;
        foreach (IReadOnlyList<string> line in Lines(entries, widthPx))
        {
            float x = left;
            foreach (string entry in line)
            {
                sheet.Text($"{number++}", x, y, Lettering.Value);
                sheet.Text(entry, x + NumberPx, y, Lettering.Small, sheet.Palette.Muted);
                x += EntryPx(entry);
            }
            y += LinePx;
        }
    }

    /// <summary>Numbers the layers above the data, moved apart where layers are thin, each with a line to its layer.</summary>
    internal static void DrawNumbers(Sheet sheet, SKRect data, IReadOnlyList<float> facesPx)
    {
        float[] wanted = [.. Enumerable.Range(0, facesPx.Count - 1).Select(i => (facesPx[i] + facesPx[i + 1]) / 2)];
        float[] middles = Spread.Apart(wanted, [.. wanted.Select(_ => NumberPx)], data.Left, data.Right);
        for (int i = 0; i < wanted.Length; i++)
        {
            sheet.Line(middles[i], data.Top - 8, wanted[i], data.Top, sheet.Palette.Muted);
            sheet.Text($"{i + 1}", middles[i], data.Top - 12, Lettering.Value, align: SKTextAlign.Center);
        }
    }

    private static List<IReadOnlyList<string>> Lines(IReadOnlyList<string> entries, float widthPx)
    {
        List<IReadOnlyList<string>> lines = [];
        List<string> line = [];
        float used = 0;
        foreach (string whole in entries)
        {
            string entry = Lettering.Small.Fitting(whole, widthPx - NumberPx);
            float width = EntryPx(entry);
            if (line.Count > 0 && used + width > widthPx)
            {
                lines.Add(line);
                (line, used) = ([], 0);
            }
            line.Add(entry);
            used += width;
        }
        lines.Add(line);
        return lines;
    }

    private static float EntryPx(string entry) => NumberPx + Lettering.Small.WidthOf(entry) + 20;
}
