using SkiaSharp;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>The lane beside a cut: degrees to spare before it drips, from the room to where its air is stopped. Blue is where it is wet.</summary>
internal sealed class SpareLane
{
    private readonly Sheet sheet;
    private readonly BuildUpCut cut;
    private readonly Figures figures;
    private readonly SKRect box;
    private readonly Func<int, float> facePx;
    private readonly bool isUpright;
    private readonly double lowest, highest, step;

    private SpareLane(Sheet sheet, BuildUpCut cut, Figures figures, SKRect box, Func<int, float> facePx, bool isUpright)
    {
        (this.sheet, this.cut, this.figures, this.box, this.facePx, this.isUpright) = (sheet, cut, figures, box, facePx, isUpright);
        double[] spares = [.. Enumerable.Range(0, cut.LastReachedFace + 1).Select(face => Shown(face))];
        double low = Math.Min(0, spares.Min()), high = Math.Max(0, spares.Max());
        double span = Math.Max(high - low, figures.Convert(Words.Shown.Difference, 6));
        step = NiceNumbers.Step(span, 5);
        // Room beyond both ends for the labels there.
        lowest = Math.Min(low - span * (isUpright ? 0.14 : 0.24), -step);
        highest = Math.Max(high + span * 0.14, step);
    }

    /// <summary>Beside lying layers: depth runs upright, degrees from left to right.</summary>
    internal static void Upright(Sheet sheet, BuildUpCut cut, Figures figures, SKRect box, Func<int, float> faceY) =>
        new SpareLane(sheet, cut, figures, box, faceY, isUpright: true).Draw();

    /// <summary>Below standing layers: depth runs from side to side, degrees upwards.</summary>
    internal static void Lying(Sheet sheet, BuildUpCut cut, Figures figures, SKRect box, Func<int, float> faceX) =>
        new SpareLane(sheet, cut, figures, box, faceX, isUpright: false).Draw();

    private double Shown(int face) => figures.Convert(Words.Shown.Difference, cut.SpareAtFaceK(face)!.Value);

    private float SparePx(double shown)
    {
        float part = (float)((shown - lowest) / (highest - lowest));
        return isUpright ? box.Left + part * box.Width : box.Bottom - part * box.Height;
    }

    private SKPoint At(float depthPx, float sparePx) => isUpright ? new SKPoint(sparePx, depthPx) : new SKPoint(depthPx, sparePx);

    private void Draw()
    {
        float zero = SparePx(0);
        SKRect wet = isUpright ? new SKRect(box.Left, box.Top, zero, box.Bottom) : new SKRect(box.Left, zero, box.Right, box.Bottom);
        sheet.Area(wet, sheet.Palette.Water[0]);
        DrawScale();
        DrawWater();
        SKPoint from = At(isUpright ? box.Top : box.Left, zero), to = At(isUpright ? box.Bottom : box.Right, zero);
        sheet.Line(from.X, from.Y, to.X, to.Y, sheet.Palette.Ink, 1, 0.7f);
        SKPoint[] line = [.. Enumerable.Range(0, cut.LastReachedFace + 1).Select(face => At(facePx(face), SparePx(Shown(face))))];
        if (line.Length > 1)
            sheet.RimmedLine(line, sheet.Palette.Ink, 2.4f);
        SKPoint worst = line[cut.WorstFace];
        sheet.Dot(worst.X, worst.Y, 5, Shown(cut.WorstFace) < 0 ? sheet.Palette.Water[3] : sheet.Palette.Ink);
        DrawEnd(line[^1]);
        new SpareLabels(sheet, cut, figures, box, facePx).Draw(line, isUpright);
    }

    private void DrawScale()
    {
        foreach (double value in NiceNumbers.Multiples(lowest, highest, step))
        {
            float px = SparePx(value);
            string text = (value > step / 2 ? "+" : "") + NiceNumbers.Written(value, step);
            if (isUpright)
            {
                sheet.Line(px, box.Top, px, box.Bottom, sheet.Palette.Line);
                sheet.Text(text, px, box.Top - 8, Lettering.Small, sheet.Palette.Muted, SKTextAlign.Center);
            }
            else
            {
                sheet.Line(box.Left, px, box.Right, px, sheet.Palette.Line);
                sheet.Text(text, box.Left - 8, px + 4.5f, Lettering.Small, sheet.Palette.Muted, SKTextAlign.Right);
            }
        }
    }

    // Between two faces the line is straight; the wet part begins and ends where it crosses zero.
    private void DrawWater()
    {
        List<SKPoint> run = [];
        for (int face = 0; face <= cut.LastReachedFace; face++)
        {
            double here = Shown(face);
            if (face > 0 && here * Shown(face - 1) < 0)
                run.Add(At(Crossing(face - 1), SparePx(0)));
            if (here <= 0)
            {
                if (run.Count == 0)
                    run.Add(At(facePx(face), SparePx(0)));
                run.Add(At(facePx(face), SparePx(here)));
            }
            if (here > 0 || face == cut.LastReachedFace)
                FillRun(run, facePx(face), here);
        }
    }

    private void FillRun(List<SKPoint> run, float endPx, double here)
    {
        if (run.Count > 0 && here <= 0)
            run.Add(At(endPx, SparePx(0)));
        if (run.Count > 2)
            sheet.Area(run, sheet.Palette.Water[2]);
        if (here > 0)
            run.Clear();
    }

    private float Crossing(int face)
    {
        double here = Shown(face), there = Shown(face + 1);
        return facePx(face) + (facePx(face + 1) - facePx(face)) * (float)(here / (here - there));
    }

    // A thin bar across the lane where the room's air is stopped.
    private void DrawEnd(SKPoint end)
    {
        if (cut.LastReachedFace == cut.Layers.Count)
            return;
        if (isUpright)
            sheet.Line(box.Left, end.Y, box.Right, end.Y, sheet.Palette.Ink, 1, 0.45f);
        else
            sheet.Line(end.X, box.Top, end.X, box.Bottom, sheet.Palette.Ink, 1, 0.45f);
    }
}
