using SkiaSharp;
using Thermal.Materials;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>Draws a rib into a cut whose length stands for the distance from one rib to the next.</summary>
internal static class RibInCut
{
    internal const float EdgePx = 12;
    // Sheets are drawn no thinner than this, px. Source: OURS.
    private const float LeastPx = 2.2f;
    // A rib that takes more of its spacing leaves no place for the names. Source: OURS.
    private const double MostFraction = 0.3;

    internal static bool Fits(CutRib rib, IReadOnlyList<CutLayer> layers) =>
        rib.WidthM <= MostFraction * rib.SpacingM && layers.All(layer => layer.BattenFraction == 0);

    /// <summary>What it takes of the length of the cut, edge included, px; 0 without a rib.</summary>
    internal static float TakesPx(CutRib? rib, float lengthPx) => rib is null ? 0 : (float)(rib.WidthM / rib.SpacingM) * lengthPx + 2 * EdgePx;

    /// <summary>True where it stands in a layer.</summary>
    internal static bool Crosses(CutRib? rib, IReadOnlyList<CutLayer> layers, int layer)
    {
        double innerM = layers.Take(layer).Sum(one => one.ThicknessM), outerM = innerM + layers[layer].ThicknessM;
        return rib is not null && rib.Parts.Any(part => part.InnerM < outerM - 1e-9 && part.OuterM > innerM + 1e-9);
    }

    /// <param name="sheet">Where to draw.</param>
    /// <param name="rib">The rib.</param>
    /// <param name="lengthPx">Length of the cut along the panel, px.</param>
    /// <param name="isLyingFlat">True where the panel runs from left to right.</param>
    /// <param name="place">From px before the end of the cut and depth, m, to the sheet.</param>
    internal static void Draw(Sheet sheet, CutRib rib, float lengthPx, bool isLyingFlat, Func<float, double, SKPoint> place)
    {
        double endM = rib.Parts.Max(part => part.ToM);
        foreach (CutPart part in rib.Parts)
        {
            SKPoint one = place(Before(part.ToM), part.InnerM), other = place(Before(part.FromM), part.OuterM);
            var box = new SKRect(Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Max(one.X, other.X), Math.Max(one.Y, other.Y));
            if (part.Group == MaterialGroup.Metal)
            {
                sheet.Area(SKRect.Inflate(box, Math.Max(0, LeastPx - box.Width) / 2, Math.Max(0, LeastPx - box.Height) / 2), sheet.Palette.Metal);
                continue;
            }
            // Fibres and grain of a filling or a batten run across those of the layers.
            Texture.Draw(sheet, box, part.Group, !isLyingFlat);
            sheet.Box(box, sheet.Palette.Ink, 1, 0.45f);
        }

        float Before(double alongM) => EdgePx + (float)((endM - alongM) / rib.SpacingM) * lengthPx;
    }

    internal static string Words(CutRib rib, Figures figures) => $"{CutWords.Lowered(rib.Name)} every {figures.Thickness(rib.SpacingM)}, their width to a smaller scale than their depth";
}
