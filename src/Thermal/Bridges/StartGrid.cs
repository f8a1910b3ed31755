namespace Thermal.Bridges;

/// <summary>Grid lines to begin with, and lines with some of their intervals halved.</summary>
internal static class StartGrid
{
    // Chosen by us: neighbouring cells differ by less than this, so a sheet of 0.8 mm costs about ten lines in half a metre.
    private const double Growth = 2.5;

    // Chosen by us: no cell is halved below a tenth of the thinnest piece.
    private const double SmallestM = 2 * Blocks.MergeM;

    /// <summary>Every block one cell, then halved until neighbours are of like size.</summary>
    internal static double[][] Of(Blocks blocks) => [.. Enumerable.Range(0, 3).Select(axis =>
        axis == 2 && blocks.Section.Shape != SectionShape.Solid ? blocks.Lines(axis) : Graded(blocks.Lines(axis)))];

    /// <summary>The lines with every marked interval halved.</summary>
    internal static double[] Halved(double[] linesM, ReadOnlySpan<bool> marked)
    {
        List<double> lines = new(2 * linesM.Length);
        for (int i = 0; i < marked.Length; i++)
        {
            lines.Add(linesM[i]);
            if (marked[i] && linesM[i + 1] - linesM[i] > SmallestM) lines.Add((linesM[i] + linesM[i + 1]) / 2);
        }
        lines.Add(linesM[^1]);
        return [.. lines];
    }

    private static double[] Graded(double[] linesM)
    {
        bool[] marked = new bool[linesM.Length - 1];
        if (marked.Length == 1) return Halved(Halved(linesM, [true]), [true, true]);
        while (true)
        {
            marked = new bool[linesM.Length - 1];
            for (int i = 0; i < marked.Length; i++)
            {
                double d = linesM[i + 1] - linesM[i];
                marked[i] = i > 0 && d > Growth * (linesM[i] - linesM[i - 1]) || i + 1 < marked.Length && d > Growth * (linesM[i + 2] - linesM[i + 1]);
            }
            if (!marked.Contains(true)) return linesM;
            linesM = Halved(linesM, marked);
        }
    }
}
