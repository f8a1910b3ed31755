using Thermal.Bridges;

namespace Thermal.Charts;

/// <summary>A solved plane or round section cell by cell, whole: where only half was solved, its mirror image is put beside it.</summary>
internal sealed class SectionCells
{
    // Just beyond a face: less than the thinnest piece, more than the solver takes for one line, m.
    private const double BeyondM = 2e-7;

    private readonly Section section;
    private readonly bool isHalf;

    private SectionCells(Section section, bool isHalf, double[] xsM, double[] ysM, double[] temperatures)
    {
        (this.section, this.isHalf, XsM, YsM, TemperaturesC) = (section, isHalf, xsM, ysM, temperatures);
        Pieces = new Piece?[(xsM.Length - 1) * (ysM.Length - 1)];
        for (int cell = 0; cell < Pieces.Length; cell++)
            Pieces[cell] = PieceAt(Solved(MidXM(cell % Across)), MidYM(cell / Across));
    }

    internal double[] XsM { get; }
    internal double[] YsM { get; }
    /// <summary>At the grid points, x runs fastest, °C.</summary>
    internal double[] TemperaturesC { get; }
    /// <summary>What each cell holds; null for air of an environment.</summary>
    internal Piece?[] Pieces { get; }
    internal bool IsRound => section.Shape == SectionShape.Round;
    /// <summary>Cells in a row.</summary>
    internal int Across => XsM.Length - 1;

    internal double MidXM(int i) => (XsM[i] + XsM[i + 1]) / 2;

    internal double MidYM(int j) => (YsM[j] + YsM[j + 1]) / 2;

    /// <param name="solved">The section.</param>
    /// <param name="temperaturesC">Of its environments, °C.</param>
    /// <param name="isHalf">True where its lowest x is a line of symmetry.</param>
    internal static SectionCells Of(SolvedSection solved, IReadOnlyList<double> temperaturesC, bool isHalf)
    {
        double[] xs = [.. solved.XsM], ys = [.. solved.YsM], values = [.. solved.TemperaturesAtGridC(temperaturesC)];
        if (!isHalf)
            return new SectionCells(solved.Section, isHalf, xs, ys, values);
        int n = xs.Length, whole = 2 * n - 1;
        double[] mirrored = new double[whole * ys.Length];
        for (int k = 0; k < mirrored.Length; k++)
            mirrored[k] = values[k / whole * n + Math.Abs(k % whole - (n - 1))];
        return new SectionCells(solved.Section, isHalf, [.. xs.Skip(1).Reverse().Select(x => -x), .. xs], ys, mirrored);
    }

    /// <summary>The environment beyond an outer face of a cell; null where the face is a cut that lets no heat through.</summary>
    /// <param name="i">Column of the cell.</param>
    /// <param name="j">Row of the cell.</param>
    /// <param name="right">Which face: 1 to higher x, -1 to lower x, 0 for one up or down.</param>
    /// <param name="up">Likewise along y.</param>
    internal string? Beyond(int i, int j, int right, int up)
    {
        double x = right == 0 ? MidXM(i) : XsM[i + (right + 1) / 2] + right * BeyondM;
        double y = up == 0 ? MidYM(j) : YsM[j + (up + 1) / 2] + up * BeyondM;
        return section.Boundaries.FirstOrDefault(boundary => Holds(boundary.Where, Solved(x), y))?.Environment;
    }

    /// <summary>Where the solved half has what lies at a place.</summary>
    internal double Solved(double xM) => isHalf ? Math.Abs(xM) : xM;

    private Piece? PieceAt(double xM, double yM) => section.Pieces.LastOrDefault(piece => Holds(piece.Where, xM, yM));

    private static bool Holds(Box box, double xM, double yM) => xM >= box.X0M && xM <= box.X1M && yM >= box.Y0M && yM <= box.Y1M;
}
