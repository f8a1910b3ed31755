using SkiaSharp;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The cut through a roof or a floor: layers lie one above the other, the lane of degrees to spare beside them.</summary>
internal sealed class LyingCut
{
    // Least height of a layer: its plate and its temperature need this much. The rest lets thick layers keep their scale.
    private const float LeastLayerPx = 25, LeastRestPx = 90;
    private const float Top = 82, Foot = 54, Edge = 16, RowPx = 17;

    private readonly BuildUpCut cut;
    private readonly Figures figures;
    private readonly DepthScale depths;
    private readonly int width;
    private readonly float bottom;
    private readonly string[] insideRows;

    internal LyingCut(BuildUpCut cut, Figures figures, int width, int height)
    {
        this.cut = cut;
        this.figures = figures;
        this.width = width;
        insideRows = Lettering.Value.WidthOf(CutWords.Inside(cut, figures)) + 12 <= LaneLeft - Edge
            ? [CutWords.Inside(cut, figures)]
            : [CutWords.InsideAir(cut, figures), CutWords.InsideDewPoint(cut, figures)];
        float foot = Foot + (IsRoomBelow ? RowPx * (insideRows.Length - 1) : 0) + (cut.Rib is null ? 0 : CutWords.RowPx);
        Height = Math.Max(height, (int)(Top + foot + LeastLayerPx * cut.Layers.Count + LeastRestPx));
        bottom = Height - foot;
        depths = new DepthScale(cut.Layers, bottom - Top, LeastLayerPx);
    }

    internal int Height { get; }

    private float BoxRight => MathF.Round(width * 0.50f);

    private float LaneLeft => MathF.Round(width * 0.64f);

    private bool IsRoomBelow => cut.Attitude == Attitude.Roof;

    internal void Draw(Sheet sheet)
    {
        sheet.Ground(width, Height);
        sheet.Text(Lettering.Title.Fitting(Grammar.Capital(cut.Name), width - 2 * Edge), Edge, 24, Lettering.Title);
        DrawSides(sheet);
        DrawLayers(sheet);
        DrawNames(sheet);
        DrawTemperatures(sheet);
        var lane = SKRect.Create(LaneLeft, Top, width - Edge - LaneLeft, bottom - Top);
        sheet.Text(CutWords.LaneTitleStart, LaneLeft, 42, Lettering.Value);
        sheet.Text(CutWords.LaneTitleEnd(figures), LaneLeft, 57, Lettering.Value);
        SpareLane.Upright(sheet, cut, figures, lane, FaceY);
        CutWords.DrawFootnote(sheet, cut, figures, depths, Edge, width - Edge, Height - 12);
    }

    // The room's words take two rows where one would run into the lane.
    private void DrawSides(Sheet sheet)
    {
        float above = insideRows.Length == 1 || IsRoomBelow ? 60 : 46, below = bottom + 22;
        sheet.Text(CutWords.Outside(cut, figures), Edge, IsRoomBelow ? above : below, Lettering.Value);
        for (int row = 0; row < insideRows.Length; row++)
            sheet.Text(insideRows[row], Edge, (IsRoomBelow ? below : above) + row * RowPx, Lettering.Value);
    }

    private float FaceY(int face) => IsRoomBelow ? bottom - (float)depths.FacePx(face) : Top + (float)depths.FacePx(face);

    private float DepthY(double depthM) => IsRoomBelow ? bottom - (float)depths.DepthPx(depthM) : Top + (float)depths.DepthPx(depthM);

    private void DrawLayers(Sheet sheet)
    {
        for (int i = 0; i < cut.Layers.Count; i++)
        {
            CutLayer layer = cut.Layers[i];
            float top = Math.Min(FaceY(i), FaceY(i + 1));
            var box = SKRect.Create(Edge, top, BoxRight - Edge, Math.Abs(FaceY(i) - FaceY(i + 1)));
            Texture.Draw(sheet, box, layer.Group, isLyingFlat: true);
            if (layer.BattenFraction > 0)
                DrawBatten(sheet, box, layer.BattenFraction);
            sheet.Line(box.Left, box.Top, box.Right, box.Top, sheet.Palette.Ink, 1, 0.35f);
            if (depths.IsStretched[i])
                CutWords.DrawBreak(sheet, box.Right, box.MidY, isLyingFlat: true);
        }
        if (cut.Rib is { } rib)
            RibInCut.Draw(sheet, rib, BoxRight - Edge, isLyingFlat: true, (beforePx, depthM) => new SKPoint(BoxRight - beforePx, DepthY(depthM)));
        sheet.Box(new SKRect(Edge, Top, BoxRight, bottom), sheet.Palette.Ink, 1, 0.45f);
    }

    // A name ends before the rib that crosses its layer.
    private void DrawNames(Sheet sheet)
    {
        for (int i = 0; i < cut.Layers.Count; i++)
        {
            string thickness = figures.Thickness(cut.Layers[i].ThicknessM);
            float mostPx = BoxRight - Edge - Math.Max(24, RibInCut.Crosses(cut.Rib, cut.Layers, i) ? RibInCut.TakesPx(cut.Rib, BoxRight - Edge) : 0);
            sheet.Plate(Sheet.FittingPlate(cut.Layers[i].Name, thickness, mostPx), thickness, Edge + 8, (FaceY(i) + FaceY(i + 1)) / 2);
        }
    }

    // The batten takes its share of the width, near the right end where no plate covers it.
    private static void DrawBatten(Sheet sheet, SKRect box, double fraction)
    {
        float batten = box.Width * (float)fraction;
        var wood = SKRect.Create(box.Right - 14 - batten, box.Top, batten, box.Height);
        Texture.Draw(sheet, wood, Materials.MaterialGroup.Wood, isLyingFlat: false);
        sheet.Box(wood, sheet.Palette.Ink, 1, 0.45f);
    }

    private void DrawTemperatures(Sheet sheet)
    {
        for (int face = 0; face <= cut.Layers.Count; face++)
        {
            float y = FaceY(face);
            sheet.Line(BoxRight, y, BoxRight + 9, y, sheet.Palette.Ink);
            sheet.Text(figures.Temperature(cut.TemperaturesAtFacesC[face]), BoxRight + 14, y + 4.5f, Lettering.Value);
        }
    }
}
