namespace Thermal.Bridges;

/// <summary>A grid of a section: three directions, and the material and surroundings of every cell.</summary>
internal sealed class Grid
{
    private readonly double[] _conductivities;

    internal Grid(Blocks blocks, double[][] linesM)
    {
        Blocks = blocks;
        Axes = [.. Enumerable.Range(0, 3).Select(axis => AxisOf(blocks, axis, linesM[axis]))];
        (X, Y, Z) = (Axes[0], Axes[1], Axes[2]);
        _conductivities = [.. Enumerable.Range(0, blocks.Total).Select(block => blocks.Piece(block) < 0 ? 0 : blocks.Section.Pieces[blocks.Piece(block)].ConductivityWPerMK)];
        IReadOnlyList<Boundary> boundaries = blocks.Section.Boundaries;
        Environments = [.. boundaries.Select(boundary => boundary.Environment).Distinct()];
        EnvironmentOf = [.. boundaries.Select(boundary => Array.IndexOf(Environments, boundary.Environment))];
        ResistanceM2KPerW = [.. boundaries.Select(boundary => boundary.SurfaceResistanceM2KPerW)];
    }

    internal Blocks Blocks { get; }
    internal Axis[] Axes { get; }
    internal Axis X { get; }
    internal Axis Y { get; }
    internal Axis Z { get; }
    internal string[] Environments { get; }
    /// <summary>Number of the environment of each boundary.</summary>
    internal int[] EnvironmentOf { get; }
    internal double[] ResistanceM2KPerW { get; }

    internal int CellCount => X.CellCount * Y.CellCount * Z.CellCount;
    internal int VertexCount => X.VertexCount * Y.VertexCount * Z.VertexCount;

    internal int Cell(int i, int j, int k) => i + X.CellCount * (j + Y.CellCount * k);

    internal int Vertex(int i, int j, int k) => i + X.VertexCount * (j + Y.VertexCount * k);

    internal int BlockOf(int i, int j, int k) => Blocks.Of(X.Block[i], Y.Block[j], Z.Block[k]);

    /// <summary>λ of a block, W/(m·K); 0 where there is no piece.</summary>
    internal double ConductivityWPerMK(int block) => _conductivities[block];

    /// <summary>What borders on the lower or upper face of a cell along an axis: <see cref="Blocks.Inside"/>, <see cref="Blocks.Cut"/> or a boundary.</summary>
    internal int Beside(int block, int axis, int at, int side)
    {
        int next = at + 2 * side - 1;
        int[] along = Axes[axis].Block;
        return next >= 0 && next < along.Length && along[next] == along[at] ? Blocks.Inside : Blocks.Face(block, 2 * axis + side);
    }

    private static Axis AxisOf(Blocks blocks, int axis, double[] linesM)
    {
        if (axis == 2 && blocks.Section.Shape != SectionShape.Solid) return Axis.Deep();
        int[] block = new int[linesM.Length - 1];
        double[] edges = blocks.Lines(axis);
        for (int i = 0, b = 0; i < block.Length; i++)
        {
            while (linesM[i] >= edges[b + 1]) b++;
            block[i] = b;
        }
        return axis == 0 && blocks.Section.Shape == SectionShape.Round ? Axis.Radial(linesM, block) : Axis.Straight(linesM, block);
    }
}
