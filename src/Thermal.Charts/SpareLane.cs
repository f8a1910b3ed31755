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
        DrawLabels(line, worst);
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

    private void DrawLabels(SKPoint[] line, SKPoint worst)
    {
        string stop = CutWords.AirStops(cut), verdict = CutWords.Verdict(cut, figures, cut.WorstFace);
        if (isUpright)
            DrawLabelsUpright(line, worst, stop, verdict);
        else
            DrawLabelsLying(line, worst, stop, verdict);
    }

    private void DrawLabelsUpright(SKPoint[] line, SKPoint worst, string stop, string verdict)
    {
        float outward = Math.Sign(facePx(cut.Layers.Count) - facePx(0));
        SKPoint end = line[^1];
        string[] stops = StopRows(stop);
        float spaceOutside = Math.Abs(facePx(cut.Layers.Count) - end.Y);
        // Towards the outside if all rows fit there, else back towards the room, at the edge that the line is not at.
        bool isOutside = spaceOutside >= 6 + 17 * (stops.Length + 1);
        float side = isOutside ? outward : -outward, clearX = end.X < box.MidX ? box.Right : box.Left;
        float Row(int row) => end.Y + side * (16 + 17 * row) + 4;
        // Rows run away from the end; the words of the first line stay above those of the second.
        string[] ordered = side > 0 ? stops : [.. stops.Reverse()];
        for (int row = 0; row < ordered.Length; row++)
            sheet.TextWithin(box, ordered[row], isOutside ? end.X : clearX, Row(row), Lettering.Small, sheet.Palette.Muted);
        bool isWorstAtEnd = cut.WorstFace == cut.LastReachedFace;
        sheet.TextWithin(box, verdict, isOutside || !isWorstAtEnd ? worst.X : clearX, isWorstAtEnd ? Row(stops.Length) : worst.Y - side * 16 + 4, Lettering.Value, sheet.Palette.Ink);
        if (line.Length > 1 && cut.WorstFace != 0)
            DrawInnerFaceUpright(line[0], outward);
    }

    private string[] StopRows(string stop)
    {
        float most = box.Width - 10;
        int cutAt = stop.IndexOf(" at ", StringComparison.Ordinal) + 3;
        return Lettering.Small.WidthOf(stop) <= most || cutAt < 3
            ? [Lettering.Small.Fitting(stop, most)]
            : [stop[..cutAt], Lettering.Small.Fitting(stop[(cutAt + 1)..], most)];
    }

    // Below the lane of a roof; in that of a floor, whose scale stands above, beside the line.
    private void DrawInnerFaceUpright(SKPoint inner, float outward)
    {
        float half = Lettering.Small.WidthOf(InnerFace()) / 2;
        float x = outward < 0 ? inner.X : inner.X - 2 * half - 16 > box.Left ? inner.X - half - 12 : inner.X + half + 12;
        sheet.TextWithin(box, InnerFace(), x, outward < 0 ? inner.Y + 18 : inner.Y + 16, Lettering.Small, sheet.Palette.Muted);
    }

    private void DrawLabelsLying(SKPoint[] line, SKPoint worst, string stop, string verdict)
    {
        float outward = Math.Sign(facePx(cut.Layers.Count) - facePx(0));
        bool isWorstAtEnd = cut.WorstFace == cut.LastReachedFace;
        float verdictX = isWorstAtEnd ? Beside(worst.X, Lettering.Value.WidthOf(verdict), outward) : worst.X;
        // Above a place to spare and below a wet one, unless the text would leave the lane.
        float verdictY = worst.Y >= box.MidY || worst.Y - 24 < box.Top ? worst.Y + 17 : worst.Y - 10, stopY = box.Top + 14;
        if (isWorstAtEnd && Math.Abs(verdictY - stopY) < 18)
            stopY = verdictY + 18;
        sheet.TextWithin(box, verdict, verdictX, verdictY, Lettering.Value, sheet.Palette.Ink);
        if (cut.LastReachedFace < cut.Layers.Count)
            sheet.TextWithin(box, stop, Beside(line[^1].X, Lettering.Small.WidthOf(stop), outward), stopY, Lettering.Small, sheet.Palette.Muted);
        if (line.Length > 1 && cut.WorstFace != 0)
            sheet.TextWithin(box, InnerFace(), line[0].X, line[0].Y - 22 < box.Top ? line[0].Y + 19 : line[0].Y - 9, Lettering.Small, sheet.Palette.Muted);
    }

    // Beyond the end of the room's air if the text fits there, else on the room's side of it.
    private float Beside(float endX, float textWidth, float outward)
    {
        float beyond = endX + outward * (10 + textWidth / 2);
        return beyond - textWidth / 2 > box.Left + 4 && beyond + textWidth / 2 < box.Right - 4 ? beyond : endX - outward * (10 + textWidth / 2);
    }

    private string InnerFace() => $"lining {figures.Signed(Words.Shown.Difference, cut.SpareAtFaceK(0)!.Value)}";
}
