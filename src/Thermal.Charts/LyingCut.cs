using SkiaSharp;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The cut through a roof or a floor: layers lie one above the other, the lane of degrees to spare beside them.</summary>
internal sealed class LyingCut
{
    // Least height of a layer: its plate and its temperature need this much. The rest lets thick layers keep their scale.
    private const float LeastLayerPx = 25, LeastRestPx = 90;
    private const float Top = 82, Foot = 54, Edge = 16;

    private readonly BuildUpCut cut;
    private readonly Figures figures;
    private readonly DepthScale depths;
    private readonly int width;
    private readonly float bottom;

    internal LyingCut(BuildUpCut cut, Figures figures, int width, int height)
    {
        this.cut = cut;
        this.figures = figures;
        this.width = width;
        Height = Math.Max(height, (int)(Top + Foot + LeastLayerPx * cut.Layers.Count + LeastRestPx));
        bottom = Height - Foot;
        depths = new DepthScale(cut.Layers, bottom - Top, LeastLayerPx);
    }

    internal int Height { get; }

    private float BoxRight => MathF.Round(width * 0.50f);

    private float LaneLeft => MathF.Round(width * 0.64f);

    private bool IsRoomBelow => cut.Attitude == Attitude.Roof;

    internal void Draw(Sheet sheet)
    {
        sheet.Ground(width, Height);
        sheet.Text(Grammar.Capital(cut.Name), Edge, 24, Lettering.Title);
        sheet.Text(IsRoomBelow ? CutWords.Outside(cut, figures) : CutWords.Inside(cut, figures), Edge, 56, Lettering.Value);
        sheet.Text(IsRoomBelow ? CutWords.Inside(cut, figures) : CutWords.Outside(cut, figures), Edge, bottom + 22, Lettering.Value);
        DrawLayers(sheet);
        DrawTemperatures(sheet);
        var lane = SKRect.Create(LaneLeft, Top, width - Edge - LaneLeft, bottom - Top);
        sheet.Text(CutWords.LaneTitle(figures), LaneLeft, 56, Lettering.Value);
        SpareLane.Upright(sheet, cut, figures, lane, FaceY);
        CutWords.DrawFootnote(sheet, cut, figures, depths, Edge, Height - 12);
    }

    private float FaceY(int face) => IsRoomBelow ? bottom - (float)depths.FacePx(face) : Top + (float)depths.FacePx(face);

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
            sheet.Plate(layer.Name, figures.Thickness(layer.ThicknessM), Edge + 8, box.MidY);
            if (depths.IsStretched[i])
                CutWords.DrawBreak(sheet, box.Right, box.MidY, isLyingFlat: true);
        }
        sheet.Box(new SKRect(Edge, Top, BoxRight, bottom), sheet.Palette.Ink, 1, 0.45f);
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
