using SkiaSharp;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>The words in the lane of spare degrees: the verdict at the worst face, where room air stops, and the lining.</summary>
internal sealed class SpareLabels(Sheet sheet, BuildUpCut cut, Figures figures, SKRect box, Func<int, float> facePx)
{
    /// <summary>Writes the labels beside the line of spare degrees.</summary>
    /// <param name="line">The line at the faces that room air gets to, room first, px.</param>
    /// <param name="isUpright">True where depth runs upright.</param>
    internal void Draw(SKPoint[] line, bool isUpright)
    {
        SKPoint worst = line[cut.WorstFace];
        string stop = CutWords.AirStops(cut), verdict = CutWords.Verdict(cut, figures, cut.WorstFace);
        if (isUpright)
            DrawUpright(line, worst, stop, verdict);
        else
            DrawLying(line, worst, stop, verdict);
    }

    private void DrawUpright(SKPoint[] line, SKPoint worst, string stop, string verdict)
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
            DrawInnerFace(line[0], outward);
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
    private void DrawInnerFace(SKPoint inner, float outward)
    {
        float half = Lettering.Small.WidthOf(InnerFace()) / 2;
        float x = outward < 0 ? inner.X : inner.X - 2 * half - 16 > box.Left ? inner.X - half - 12 : inner.X + half + 12;
        sheet.TextWithin(box, InnerFace(), x, outward < 0 ? inner.Y + 18 : inner.Y + 16, Lettering.Small, sheet.Palette.Muted);
    }

    private void DrawLying(SKPoint[] line, SKPoint worst, string stop, string verdict)
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

    private string InnerFace() => $"lining {figures.Signed(Shown.Difference, cut.SpareAtFaceK(0)!.Value)}";
}
