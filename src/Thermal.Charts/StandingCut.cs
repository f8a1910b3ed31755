using SkiaSharp;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The cut through a side: layers stand beside one another with the outside at its side, the lane of degrees to spare below.</summary>
internal sealed class StandingCut
{
    // Two rows of temperatures fit over strips of this width; a row of the cut holds one plate.
    private const float LeastLayerPx = 24, RowPx = 25, LeastRestPx = 120, LeastCutPx = 112;
    private const float Edge = 16, BoxLeft = 58, HeaderPx = 18, LanePx = 128, LaneGapPx = 44, Foot = 34;
    // A rib needs this much of its panel to be told from a line. Source: OURS.
    private const float LeastCutWithRibPx = 180;

    private readonly BuildUpCut cut;
    private readonly Figures figures;
    private readonly DepthScale depths;
    private readonly int width;
    private readonly string leftWords, rightWords;
    private readonly float boxRight, bottom, top;
    private readonly bool isHeaderInTwoRows;

    internal StandingCut(BuildUpCut cut, Figures figures, int width, int height)
    {
        this.cut = cut;
        this.figures = figures;
        this.width = Math.Max(width, (int)(BoxLeft + Edge + LeastLayerPx * cut.Layers.Count + LeastRestPx));
        boxRight = this.width - Edge - 20;
        string inside = CutWords.Inside(cut, figures), outside = CutWords.Outside(cut, figures);
        (leftWords, rightWords) = IsOutsideLeft ? (outside, inside) : (inside, outside);
        isHeaderInTwoRows = Lettering.Value.WidthOf(leftWords) + Lettering.Value.WidthOf(rightWords) + 24 > this.width - 2 * Edge;
        top = 106 + (isHeaderInTwoRows ? HeaderPx : 0);
        float leastCutPx = LeastPx(cut), foot = Foot + (cut.Rib is null ? 0 : CutWords.RowPx);
        Height = Math.Max(height, (int)(top + leastCutPx + LaneGapPx + LanePx + foot));
        bottom = Height - foot - LanePx - LaneGapPx;
        depths = new DepthScale(cut.Layers, boxRight - BoxLeft, LeastLayerPx);
    }

    // The names keep clear of the rib at the lower end.
    private static float LeastPx(BuildUpCut cut) => cut.Rib is not { } rib
        ? Math.Max(RowPx * cut.Layers.Count + 10, LeastCutPx)
        : Math.Max((RowPx * cut.Layers.Count + 10 + RibInCut.TakesPx(rib, 0)) / (1 - (float)(rib.WidthM / rib.SpacingM)), LeastCutWithRibPx);

    internal int Height { get; }

    internal int Width => width;

    private bool IsOutsideLeft => cut.Attitude == Attitude.OutsideLeft;

    internal void Draw(Sheet sheet)
    {
        sheet.Ground(width, Height);
        sheet.Text(Lettering.Title.Fitting(Grammar.Capital(cut.Name), width - 2 * Edge), Edge, 24, Lettering.Title);
        sheet.Text(leftWords, Edge, 50, Lettering.Value);
        sheet.Text(rightWords, width - Edge, isHeaderInTwoRows ? 50 + HeaderPx : 50, Lettering.Value, align: SKTextAlign.Right);
        DrawTemperatures(sheet);
        DrawLayers(sheet);
        DrawNames(sheet);
        var lane = SKRect.Create(BoxLeft, bottom + LaneGapPx, boxRight - BoxLeft, LanePx);
        sheet.Text($"{CutWords.LaneTitleStart} {CutWords.LaneTitleEnd(figures)}", Edge, lane.Top - 12, Lettering.Value);
        SpareLane.Lying(sheet, cut, figures, lane, FaceX);
        CutWords.DrawFootnote(sheet, cut, figures, depths, Edge, width - Edge, Height - 10);
    }

    private float FaceX(int face) => IsOutsideLeft ? boxRight - (float)depths.FacePx(face) : BoxLeft + (float)depths.FacePx(face);

    private float DepthX(double depthM) => IsOutsideLeft ? boxRight - (float)depths.DepthPx(depthM) : BoxLeft + (float)depths.DepthPx(depthM);

    private void DrawLayers(Sheet sheet)
    {
        for (int i = 0; i < cut.Layers.Count; i++)
        {
            float left = Math.Min(FaceX(i), FaceX(i + 1));
            var box = SKRect.Create(left, top, Math.Abs(FaceX(i) - FaceX(i + 1)), bottom - top);
            Texture.Draw(sheet, box, cut.Layers[i].Group, isLyingFlat: false);
            if (cut.Layers[i].BattenFraction > 0)
                DrawBatten(sheet, box, cut.Layers[i].BattenFraction);
            sheet.Line(box.Left, box.Top, box.Left, box.Bottom, sheet.Palette.Ink, 1, 0.35f);
            if (depths.IsStretched[i])
                CutWords.DrawBreak(sheet, box.MidX, box.Bottom, isLyingFlat: false);
        }
        if (cut.Rib is { } rib)
            RibInCut.Draw(sheet, rib, bottom - top, isLyingFlat: false, (beforePx, depthM) => new SKPoint(DepthX(depthM), bottom - beforePx));
        sheet.Box(new SKRect(BoxLeft, top, boxRight, bottom), sheet.Palette.Ink, 1, 0.45f);
    }

    private static void DrawBatten(Sheet sheet, SKRect box, double fraction)
    {
        float batten = box.Height * (float)fraction;
        var wood = SKRect.Create(box.Left, box.Bottom - 8 - batten, box.Width, batten);
        Texture.Draw(sheet, wood, Materials.MaterialGroup.Wood, isLyingFlat: true);
        sheet.Box(wood, sheet.Palette.Ink, 1, 0.45f);
    }

    // Plates step down from left to right, a row for each layer, so that none meets another however thin the layers are.
    private void DrawNames(Sheet sheet)
    {
        int count = cut.Layers.Count;
        float row = Math.Min(40, (bottom - top - 6 - RibInCut.TakesPx(cut.Rib, bottom - top)) / count);
        for (int place = 0; place < count; place++)
        {
            int i = IsOutsideLeft ? count - 1 - place : place;
            CutLayer layer = cut.Layers[i];
            string thickness = figures.Thickness(layer.ThicknessM);
            float middle = (FaceX(i) + FaceX(i + 1)) / 2;
            string name = Sheet.FittingPlate(layer.Name, thickness, Math.Max(middle - BoxLeft, boxRight - middle) - 14);
            float plate = Sheet.PlateWidth(name, thickness), y = top + 4 + row * (place + 0.5f);
            if (Math.Abs(FaceX(i) - FaceX(i + 1)) >= plate + 8)
            {
                sheet.Plate(name, thickness, middle - plate / 2, y);
                continue;
            }
            bool isRoomAtRight = middle + 9 + plate <= boxRight - 3;
            sheet.Dot(middle, y, 3.5f, sheet.Palette.Ink);
            sheet.Plate(name, thickness, isRoomAtRight ? middle + 9 : middle - 9 - plate, y);
        }
    }

    private void DrawTemperatures(Sheet sheet)
    {
        sheet.Text(figures.Unit(Shown.Temperature), Edge, top - 22, Lettering.Small, sheet.Palette.Muted);
        float lastRight = float.NegativeInfinity;
        bool wasHigh = false;
        foreach (int face in Enumerable.Range(0, cut.Layers.Count + 1).OrderBy(FaceX))
        {
            string text = figures.Number(Shown.Temperature, cut.TemperaturesAtFacesC[face]);
            float half = Lettering.Value.WidthOf(text) / 2, x = FaceX(face);
            bool isHigh = !wasHigh && x - half < lastRight + 8;
            float baseline = top - (isHigh ? 30 : 13);
            sheet.Line(x, baseline + 4, x, top, sheet.Palette.Ink);
            sheet.Text(text, x, baseline, Lettering.Value, align: SKTextAlign.Center);
            wasHigh = isHigh;
            lastRight = isHigh ? lastRight : x + half;
        }
    }
}
