namespace Thermal.Bridges;

/// <summary>The section cut along every edge of its pieces and boundaries: blocks of one material each, and what borders on their faces.</summary>
internal sealed class Blocks
{
    /// <summary>Lines closer than this are one, m: a tenth of the thinnest piece allowed.</summary>
    internal const double MergeM = 1e-7;
    /// <summary>What a face borders on, besides the numbers of boundaries: another block, nothing at the limits, nothing inside them.</summary>
    internal const int Inside = -1, Cut = -2, Leak = -3;

    private readonly double[][] _lines;
    private readonly int[] _pieces, _faces;

    internal Blocks(Section section)
    {
        IEnumerable<Box> boxes = section.Pieces.Select(piece => piece.Where).Concat(section.Boundaries.Select(boundary => boundary.Where));
        Section = section;
        Environments = [.. section.Boundaries.Select(boundary => boundary.Environment).Distinct()];
        EnvironmentOf = [.. section.Boundaries.Select(boundary => Array.IndexOf(Environments, boundary.Environment))];
        _lines = [.. Enumerable.Range(0, 3).Select(axis => Lines(section, boxes, axis))];
        _pieces = new int[Count(0) * Count(1) * Count(2)];
        Array.Fill(_pieces, -1);
        for (int p = 0; p < section.Pieces.Count; p++) Paint(p);
        _faces = new int[6 * _pieces.Length];
        for (int block = 0; block < _pieces.Length; block++)
            for (int face = 0; face < 6; face++) _faces[6 * block + face] = Beside(block, face);
    }

    internal Section Section { get; }
    internal string[] Environments { get; }
    /// <summary>Number of the environment of each boundary.</summary>
    internal int[] EnvironmentOf { get; }

    /// <summary>Edges along an axis, m.</summary>
    internal double[] Lines(int axis) => _lines[axis];

    internal int Count(int axis) => _lines[axis].Length - 1;

    internal int Total => _pieces.Length;

    internal int Of(int x, int y, int z) => x + Count(0) * (y + Count(1) * z);

    /// <summary>Number of the piece in a block; -1 where there is none.</summary>
    internal int Piece(int block) => _pieces[block];

    /// <summary>What borders on a face: 2·axis for the lower face, 2·axis + 1 for the upper.</summary>
    internal int Face(int block, int face) => _faces[6 * block + face];

    /// <summary>Neighbour across a face; -1 beyond the limits.</summary>
    internal int Neighbour(int block, int face)
    {
        int axis = face / 2, at = At(block, axis) + (face % 2 == 0 ? -1 : 1);
        int stride = axis == 0 ? 1 : axis == 1 ? Count(0) : Count(0) * Count(1);
        return at < 0 || at >= Count(axis) ? -1 : block + (face % 2 == 0 ? -stride : stride);
    }

    internal int At(int block, int axis) => axis switch
    {
        0 => block % Count(0),
        1 => block / Count(0) % Count(1),
        _ => block / (Count(0) * Count(1)),
    };

    /// <summary>Boundaries that claim the place just beyond a face.</summary>
    internal IEnumerable<int> Claims(int block, int face)
    {
        for (int b = 0; b < Section.Boundaries.Count; b++)
        {
            bool claims = true;
            for (int axis = 0; axis < 3 && claims; axis++)
            {
                if (axis == 2 && Section.Shape != SectionShape.Solid) continue;
                (double low, double high) = Ends(Section.Boundaries[b].Where, axis);
                double a = _lines[axis][At(block, axis)], c = _lines[axis][At(block, axis) + 1];
                claims = face / 2 != axis ? low <= a + MergeM && high >= c - MergeM
                    : face % 2 == 0 ? low < a - MergeM && high >= a - MergeM
                    : low <= c + MergeM && high > c + MergeM;
            }
            if (claims) yield return b;
        }
    }

    internal static (double Low, double High) Ends(Box box, int axis) => axis switch
    {
        0 => (box.X0M, box.X1M),
        1 => (box.Y0M, box.Y1M),
        _ => (box.Z0M, box.Z1M),
    };

    internal Box BoxOf(int block) => new(_lines[0][At(block, 0)], _lines[0][At(block, 0) + 1], _lines[1][At(block, 1)], _lines[1][At(block, 1) + 1],
        _lines[2][At(block, 2)], _lines[2][At(block, 2) + 1]);

    private int Beside(int block, int face)
    {
        int neighbour = Neighbour(block, face);
        if (neighbour >= 0 && _pieces[neighbour] >= 0) return Inside;
        if (Section.Shape != SectionShape.Solid && face >= 4) return Cut;
        // The axis of a round section is no surface.
        if (Section.Shape == SectionShape.Round && face == 0 && _lines[0][At(block, 0)] < MergeM) return Cut;
        foreach (int boundary in Claims(block, face)) return boundary;
        return neighbour < 0 ? Cut : Leak;
    }

    private void Paint(int piece)
    {
        (int x0, int x1) = Range(piece, 0);
        (int y0, int y1) = Range(piece, 1);
        (int z0, int z1) = Range(piece, 2);
        for (int z = z0; z < z1; z++)
            for (int y = y0; y < y1; y++)
                for (int x = x0; x < x1; x++) _pieces[Of(x, y, z)] = piece;
    }

    private (int From, int To) Range(int piece, int axis)
    {
        if (axis == 2 && Section.Shape != SectionShape.Solid) return (0, 1);
        (double low, double high) = Ends(Section.Pieces[piece].Where, axis);
        double[] lines = _lines[axis];
        int from = Array.FindIndex(lines, line => line >= low - MergeM), to = Array.FindLastIndex(lines, line => line <= high + MergeM);
        return (from, to);
    }

    private static double[] Lines(Section section, IEnumerable<Box> boxes, int axis)
    {
        if (axis == 2 && section.Shape != SectionShape.Solid) return [0, 1];
        double low = section.Pieces.Min(piece => Ends(piece.Where, axis).Low), high = section.Pieces.Max(piece => Ends(piece.Where, axis).High);
        List<double> lines = [];
        foreach (double line in boxes.SelectMany(box => new[] { Ends(box, axis).Low, Ends(box, axis).High }).Where(line => line >= low && line <= high).Order())
            if (lines.Count == 0 || line > lines[^1] + MergeM) lines.Add(line);
        return [.. lines];
    }
}
