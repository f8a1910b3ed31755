namespace Thermal.Bridges;

/// <summary>A grid of a section: three directions, and the material and surroundings of every cell.</summary>
internal sealed class Grid
{
    internal Grid(Blocks blocks, double[][] linesM)
    {
        Blocks = blocks;
        Axes = [.. Enumerable.Range(0, 3).Select(axis => AxisOf(blocks, axis, linesM[axis]))];
        (X, Y, Z) = (Axes[0], Axes[1], Axes[2]);
        ConductivitiesWPerMK = new double[CellCount];
        for (int k = 0, cell = 0; k < Z.CellCount; k++)
            for (int j = 0; j < Y.CellCount; j++)
                for (int i = 0; i < X.CellCount; i++, cell++)
                {
                    int piece = blocks.Piece(blocks.Of(X.Block[i], Y.Block[j], Z.Block[k]));
                    if (piece >= 0) ConductivitiesWPerMK[cell] = blocks.Section.Pieces[piece].ConductivityWPerMK;
                }
    }

    internal Blocks Blocks { get; }
    internal Axis[] Axes { get; }
    internal Axis X { get; }
    internal Axis Y { get; }
    internal Axis Z { get; }
    /// <summary>λ of every cell, W/(m·K); 0 where there is no piece.</summary>
    internal double[] ConductivitiesWPerMK { get; }

    internal int CellCount => X.CellCount * Y.CellCount * Z.CellCount;
    /// <summary>Directions in which temperatures vary: 2 or 3.</summary>
    internal int Dimensions => Z.VertexCount > 1 ? 3 : 2;

    internal int Cell(int i, int j, int k) => i + X.CellCount * (j + Y.CellCount * k);

    internal int Vertex(int i, int j, int k) => i + X.VertexCount * (j + Y.VertexCount * k);

    /// <summary>Every face of a cell that borders on an environment.</summary>
    internal IEnumerable<SurfaceFace> Surfaces()
    {
        for (int block = 0; block < Blocks.Total; block++)
            for (int face = 0; face < 6 && Blocks.Piece(block) >= 0; face++)
            {
                if (Blocks.Face(block, face) < 0) continue;
                int axis = face / 2, side = face % 2;
                int[] from = new int[3], to = new int[3];
                for (int a = 0; a < 3; a++) (from[a], to[a]) = Axes[a].Cells(Blocks.At(block, a));
                if (side == 0) to[axis] = from[axis] + 1;
                else from[axis] = to[axis] - 1;
                for (int k = from[2]; k < to[2]; k++)
                    for (int j = from[1]; j < to[1]; j++)
                        for (int i = from[0]; i < to[0]; i++) yield return new(i, j, k, axis, side, Blocks.Face(block, face));
            }
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

/// <summary>The lower (0) or upper (1) face of a cell along an axis, and the boundary beyond it.</summary>
internal readonly record struct SurfaceFace(int I, int J, int K, int Axis, int Side, int Boundary);
