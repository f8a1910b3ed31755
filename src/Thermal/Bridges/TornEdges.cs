namespace Thermal.Bridges;

/// <summary>Corners where two environments that both fix their surface (R_s 0) meet.</summary>
internal static class TornEdges
{
    /// <summary>Each pair of environments once, with the first corner where they meet.</summary>
    internal static IEnumerable<(string One, string Other, Box Where)> Of(Blocks blocks)
    {
        IReadOnlyList<Boundary> boundaries = blocks.Section.Boundaries;
        if (!boundaries.Any(boundary => boundary.SurfaceResistanceM2KPerW == 0)) yield break;
        Dictionary<(int, int, int), string> fixedBy = [];
        HashSet<(string, string)> told = [];
        foreach ((int block, int face) in Fixed(blocks))
        {
            string environment = boundaries[blocks.Face(block, face)].Environment;
            foreach ((int x, int y, int z) in Corners(blocks, block, face))
            {
                if (!fixedBy.TryGetValue((x, y, z), out string? other)) fixedBy.Add((x, y, z), environment);
                else if (other != environment && told.Add((other, environment)))
                {
                    (double atX, double atY, double atZ) = (blocks.Lines(0)[x], blocks.Lines(1)[y], blocks.Lines(2)[z]);
                    yield return (other, environment, new(atX, atX, atY, atY, atZ, atZ));
                }
            }
        }
    }

    private static IEnumerable<(int Block, int Face)> Fixed(Blocks blocks) =>
        from block in Enumerable.Range(0, blocks.Total)
        where blocks.Piece(block) >= 0
        from face in Enumerable.Range(0, 6)
        where blocks.Face(block, face) >= 0 && blocks.Section.Boundaries[blocks.Face(block, face)].SurfaceResistanceM2KPerW == 0
        select (block, face);

    private static IEnumerable<(int X, int Y, int Z)> Corners(Blocks blocks, int block, int face)
    {
        bool solid = blocks.Section.Shape == SectionShape.Solid;
        for (int corner = 0; corner < (solid ? 8 : 4); corner++)
            if ((corner >> face / 2 & 1) == face % 2)
                yield return (blocks.At(block, 0) + (corner & 1), blocks.At(block, 1) + (corner >> 1 & 1), blocks.At(block, 2) + (corner >> 2));
    }
}
