namespace Thermal.Bridges;

/// <summary>What is wrong with the places of pieces and boundaries in a section of sound numbers.</summary>
internal static class PlaceCheck
{
    internal static IEnumerable<SectionProblem> Of(Section section)
    {
        Blocks blocks = new(section);
        return Pieces(section).Concat(Leaks(blocks)).Concat(Environments(blocks)).Concat(Afloat(blocks)).Concat(Jumps(blocks));
    }

    private static IEnumerable<SectionProblem> Pieces(Section section)
    {
        for (int p = 0; p < section.Pieces.Count; p++)
        {
            Piece piece = section.Pieces[p];
            bool touches = false;
            for (int earlier = 0; earlier < p; earlier++)
            {
                if (Common(piece.Where, section.Pieces[earlier].Where, section.Shape) is not { } common) continue;
                touches = true;
                if (!piece.IsInset) yield return new(SectionFault.Overlap, piece.Name, section.Pieces[earlier].Name, common);
            }
            if (piece.IsInset && !touches) yield return new(SectionFault.InsetOutside, piece.Name, Where: piece.Where);
        }
    }

    private static Box? Common(Box one, Box other, SectionShape shape)
    {
        Box common = new(Math.Max(one.X0M, other.X0M), Math.Min(one.X1M, other.X1M), Math.Max(one.Y0M, other.Y0M), Math.Min(one.Y1M, other.Y1M),
            Math.Max(one.Z0M, other.Z0M), Math.Min(one.Z1M, other.Z1M));
        for (int axis = 0; axis < (shape == SectionShape.Solid ? 3 : 2); axis++)
        {
            (double low, double high) = Blocks.Ends(common, axis);
            if (!(high - low > Blocks.MergeM)) return null;
        }
        return common;
    }

    private static IEnumerable<SectionProblem> Leaks(Blocks blocks) =>
        from block in Enumerable.Range(0, blocks.Total)
        where blocks.Piece(block) >= 0
        from face in Enumerable.Range(0, 6)
        where blocks.Face(block, face) == Blocks.Leak
        select new SectionProblem(SectionFault.Leak, NameOf(blocks, block), Where: FaceOf(blocks, block, face));

    private static IEnumerable<SectionProblem> Environments(Blocks blocks)
    {
        IReadOnlyList<Boundary> boundaries = blocks.Section.Boundaries;
        HashSet<string> touched = [];
        for (int block = 0; block < blocks.Total; block++)
        {
            for (int face = 0; face < 6 && blocks.Piece(block) >= 0; face++)
            {
                if (blocks.Face(block, face) < 0) continue;
                Boundary taken = boundaries[blocks.Face(block, face)];
                touched.Add(taken.Environment);
                foreach (int other in blocks.Claims(block, face).Skip(1))
                {
                    touched.Add(boundaries[other].Environment);
                    if (boundaries[other].Environment != taken.Environment || boundaries[other].SurfaceResistanceM2KPerW != taken.SurfaceResistanceM2KPerW)
                        yield return new(SectionFault.Overlap, taken.Environment, boundaries[other].Environment, FaceOf(blocks, block, face));
                }
            }
        }
        foreach (string environment in boundaries.Select(boundary => boundary.Environment).Distinct())
            if (!touched.Contains(environment)) yield return new(SectionFault.TouchesNothing, environment);
    }

    private static IEnumerable<SectionProblem> Afloat(Blocks blocks)
    {
        bool[] seen = new bool[blocks.Total];
        Stack<int> open = new();
        for (int start = 0; start < blocks.Total; start++)
        {
            if (seen[start] || blocks.Piece(start) < 0) continue;
            bool held = false;
            seen[start] = true;
            open.Push(start);
            while (open.TryPop(out int block))
                for (int face = 0; face < 6; face++)
                {
                    held |= blocks.Face(block, face) >= 0;
                    if (blocks.Face(block, face) != Blocks.Inside || seen[blocks.Neighbour(block, face)]) continue;
                    seen[blocks.Neighbour(block, face)] = true;
                    open.Push(blocks.Neighbour(block, face));
                }
            if (!held) yield return new(SectionFault.Afloat, NameOf(blocks, start), Where: blocks.BoxOf(start));
        }
    }

    private static IEnumerable<SectionProblem> Jumps(Blocks blocks) =>
        from jump in TornEdges.Of(blocks)
        select new SectionProblem(SectionFault.TemperatureJump, jump.One, jump.Other, jump.Where);

    private static string NameOf(Blocks blocks, int block) => blocks.Section.Pieces[blocks.Piece(block)].Name;

    private static Box FaceOf(Blocks blocks, int block, int face)
    {
        Box box = blocks.BoxOf(block);
        return face switch
        {
            0 => box with { X1M = box.X0M },
            1 => box with { X0M = box.X1M },
            2 => box with { Y1M = box.Y0M },
            3 => box with { Y0M = box.Y1M },
            4 => box with { Z1M = box.Z0M },
            _ => box with { Z0M = box.Z1M },
        };
    }
}
