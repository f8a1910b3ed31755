using SkiaSharp;

namespace Thermal.Charts;

/// <summary>Names lines at their right ends, moved apart where lines end close together.</summary>
/// <param name="Text">What the line is.</param>
/// <param name="EndPx">Where the line ends on the sheet.</param>
internal sealed record LineLabel(string Text, SKPoint EndPx)
{
    private const float LinePx = 16;

    internal static void Draw(Sheet sheet, SKRect data, IReadOnlyList<LineLabel> labels)
    {
        LineLabel[] ordered = [.. labels.OrderBy(label => label.EndPx.Y)];
        float[] middles = Spread.Apart([.. ordered.Select(label => label.EndPx.Y)], [.. ordered.Select(Size)], data.Top, data.Bottom);
        for (int i = 0; i < ordered.Length; i++)
        {
            string[] lines = ordered[i].Text.Split('\n');
            float top = middles[i] - lines.Length * LinePx / 2;
            sheet.Line(ordered[i].EndPx.X, ordered[i].EndPx.Y, data.Right + 10, middles[i], sheet.Palette.Muted, 1, 0.6f);
            for (int k = 0; k < lines.Length; k++)
                sheet.Text(lines[k], data.Right + 14, top + k * LinePx + 12.5f, Lettering.Label);
        }
    }

    private static float Size(LineLabel label) => label.Text.Split('\n').Length * LinePx + 4;
}
