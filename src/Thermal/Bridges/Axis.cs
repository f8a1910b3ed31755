namespace Thermal.Bridges;

/// <summary>One direction of a grid: its lines, and the one-dimensional shares of which both schemes multiply their conductances.</summary>
internal sealed class Axis
{
    private Axis(double[] linesM, int[] block, int vertexCount)
    {
        int n = linesM.Length - 1;
        (LinesM, Block, VertexCount) = (linesM, block, vertexCount);
        (Along, LowShare, HighShare, HatOverlap) = (new double[n], new double[n], new double[n], new double[n]);
        (HalfLow, HalfHigh, FluxOverlap, Measure, Face) = (new double[n], new double[n], new double[n], new double[n], new double[n + 1]);
    }

    /// <summary>Grid lines, m.</summary>
    internal double[] LinesM { get; }
    /// <summary>Block of each cell.</summary>
    internal int[] Block { get; }
    /// <summary>Vertices across: one more than cells, or one where nothing varies.</summary>
    internal int VertexCount { get; }
    internal int CellCount => Block.Length;
    /// <summary>Conductance of a cell between its two lines, per λ and cross share.</summary>
    internal double[] Along { get; }
    /// <summary>Share of a cell's measure lumped at its lower line, by the hat function of that line.</summary>
    internal double[] LowShare { get; }
    internal double[] HighShare { get; }
    /// <summary>∫ of the product of both hat functions over a cell, or less: what lumping adds, per squared difference.</summary>
    internal double[] HatOverlap { get; }
    /// <summary>Resistance of a cell from its lower face to where its temperature stands, times λ and cross measure.</summary>
    internal double[] HalfLow { get; }
    internal double[] HalfHigh { get; }
    /// <summary>The same as <see cref="HatOverlap"/> of the flux functions of both faces, in the measure of resistance.</summary>
    internal double[] FluxOverlap { get; }
    /// <summary>Length of a cell; area of the ring about the axis in a round section.</summary>
    internal double[] Measure { get; }
    /// <summary>Measure of a surface that stands on a line: 1, or the circle's circumference.</summary>
    internal double[] Face { get; }

    /// <summary>Cells of a block, from the first to before the last.</summary>
    internal (int From, int To) Cells(int block)
    {
        int from = Array.IndexOf(Block, block);
        return (from, Array.LastIndexOf(Block, block) + 1);
    }

    internal double Share(int cell, int side) => side == 0 ? LowShare[cell] : HighShare[cell];

    /// <summary>Along a straight line.</summary>
    internal static Axis Straight(double[] linesM, int[] block)
    {
        Axis axis = new(linesM, block, linesM.Length);
        for (int i = 0; i < axis.CellCount; i++)
        {
            double d = linesM[i + 1] - linesM[i];
            axis.Along[i] = 1 / d;
            axis.LowShare[i] = axis.HighShare[i] = axis.HalfLow[i] = axis.HalfHigh[i] = d / 2;
            axis.HatOverlap[i] = axis.FluxOverlap[i] = d / 6;
            axis.Measure[i] = d;
        }
        Array.Fill(axis.Face, 1);
        return axis;
    }

    /// <summary>One metre deep, with nothing varying along it.</summary>
    internal static Axis Deep()
    {
        Axis axis = new([0, 1], [0], 1);
        axis.LowShare[0] = axis.Measure[0] = 1;
        Array.Fill(axis.Face, 1);
        return axis;
    }

    /// <summary>Along the radius of a round section: hat functions linear in ln r (in r at the axis), fluxes r·q linear in r², so that cylinder shells are exact in both.</summary>
    internal static Axis Radial(double[] linesM, int[] block)
    {
        Axis axis = new(linesM, block, linesM.Length);
        for (int i = 0; i < axis.CellCount; i++)
        {
            double a = linesM[i], b = linesM[i + 1], ring = (b - a) * (b + a), log = a > 0 ? Math.Log(b / a) : double.NaN;
            axis.Along[i] = a > 0 ? Math.Tau / log : Math.PI;
            axis.HighShare[i] = a > 0 ? Math.Tau * (b * b / 2 - ring / (4 * log)) : Math.Tau * b * b / 3;
            axis.LowShare[i] = Math.PI * ring - axis.HighShare[i];
            axis.HalfHigh[i] = a > 0 ? (0.5 - a * a * log / ring) / Math.Tau : 0.5 / Math.Tau;
            axis.HalfLow[i] = a > 0 ? log / Math.Tau - axis.HalfHigh[i] : 0;
            // Below the true integrals, for r is at least a in the one and at most b in the other.
            axis.HatOverlap[i] = Math.Tau * (a > 0 ? a * a * log / 6 : b * b / 12);
            axis.FluxOverlap[i] = (a > 0 ? ring / (12 * b * b) : 0.25) / Math.Tau;
            axis.Measure[i] = Math.PI * ring;
        }
        for (int i = 0; i <= axis.CellCount; i++) axis.Face[i] = Math.Tau * linesM[i];
        return axis;
    }
}
