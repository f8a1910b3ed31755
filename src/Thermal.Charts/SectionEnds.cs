namespace Thermal.Charts;

/// <summary>The broken edges of a section where it goes on: across the construction, not across the room.</summary>
internal static class SectionEnds
{
    internal static void Draw(Sheet sheet, SectionCells cells, SectionLayout layout)
    {
        SectionView view = layout.View;
        double airM = SectionLayout.AirPx / view.PxPerM, toYM = view.FromYM + (view.IsLying ? view.Box.Height : view.Box.Width) / view.PxPerM;
        if (layout.IsCroppedLow)
            Across(view.FromXM);
        if (layout.IsCroppedHigh)
            Across(view.ToXM);
        if (layout.IsCroppedDeep)
        {
            int row = Index(cells.YsM, toYM - airM);
            double[] there = [.. Enumerable.Range(0, cells.Across).Where(i => cells.Pieces[i + row * cells.Across] is not null).SelectMany(i => new[] { cells.XsM[i], cells.XsM[i + 1] })];
            BrokenEdge.Draw(sheet, view.At(Math.Max(view.FromXM, there.Min() - airM), toYM), view.At(Math.Min(view.ToXM, there.Max() + airM), toYM));
        }

        void Across(double xM)
        {
            int column = Index(cells.XsM, xM);
            double[] there = [.. Enumerable.Range(0, cells.YsM.Length - 1).Where(j => cells.Pieces[column + j * cells.Across] is not null).SelectMany(j => new[] { cells.YsM[j], cells.YsM[j + 1] })];
            BrokenEdge.Draw(sheet, view.At(xM, Math.Max(view.FromYM, there.Min() - airM)), view.At(xM, Math.Min(toYM, there.Max() + airM)));
        }
    }

    // The cell that holds a place; at a line the one before it.
    private static int Index(double[] linesM, double atM) => Math.Max(0, Enumerable.Range(0, linesM.Length - 1).Last(i => i == 0 || linesM[i] < atM - 1e-9));
}
