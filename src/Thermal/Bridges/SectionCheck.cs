namespace Thermal.Bridges;

/// <summary>What is wrong with a section.</summary>
internal static class SectionCheck
{
    // Limits chosen by us.
    // A micrometre, as layers may have, less the digits that are lost between two coordinates.
    private const double ThinnestM = 0.999e-6, LargestM = 1000, LargestRatio = 1e5, MostBlocks = 2e6;

    /// <summary>Every problem; those of places are looked for only where all numbers are sound, because nothing can be placed by unsound ones.</summary>
    internal static IReadOnlyList<SectionProblem> Of(Section section)
    {
        List<SectionProblem> problems = [.. Numbers(section)];
        if (problems.Exists(problem => problem.Fault is SectionFault.NoPieces or SectionFault.NoThickness or SectionFault.NegativeRadius)) return problems;
        problems.AddRange(PlaceCheck.Of(section));
        return problems;
    }

    private static IEnumerable<SectionProblem> Numbers(Section section)
    {
        if (section.Pieces.Count == 0 || BlockCount(section) > MostBlocks) yield return new(SectionFault.NoPieces, section.Name);
        foreach (Piece piece in section.Pieces)
        {
            if (!IsSound(piece.Where, section.Shape, ThinnestM, LargestM)) yield return new(SectionFault.NoThickness, piece.Name, Where: piece.Where);
            else if (section.Shape == SectionShape.Round && piece.Where.X0M < 0) yield return new(SectionFault.NegativeRadius, piece.Name, Where: piece.Where);
            if (!IsConductivity(piece)) yield return new(SectionFault.ConductivityOutOfRange, piece.Name, Where: piece.Where);
        }
        Piece[] sound = [.. section.Pieces.Where(IsConductivity).OrderBy(piece => piece.ConductivityWPerMK)];
        if (sound.Length > 0 && sound[^1].ConductivityWPerMK > LargestRatio * sound[0].ConductivityWPerMK)
            yield return new(SectionFault.ConductivityRatio, sound[^1].Name, sound[0].Name);
        foreach (Boundary boundary in section.Boundaries)
        {
            if (!IsSound(boundary.Where, section.Shape, ThinnestM, double.PositiveInfinity)) yield return new(SectionFault.NoThickness, boundary.Environment, Where: boundary.Where);
            if (!(boundary.SurfaceResistanceM2KPerW >= 0 && boundary.SurfaceResistanceM2KPerW <= 10))
                yield return new(SectionFault.ResistanceOutOfRange, boundary.Environment, Where: boundary.Where);
        }
    }

    private static bool IsConductivity(Piece piece) => piece.ConductivityWPerMK >= 0.001 && piece.ConductivityWPerMK <= 500;

    private static bool IsSound(Box box, SectionShape shape, double thinnestM, double largestM)
    {
        for (int axis = 0; axis < (shape == SectionShape.Solid ? 3 : 2); axis++)
        {
            (double low, double high) = Blocks.Ends(box, axis);
            if (!(high - low >= thinnestM && low >= -largestM && high <= largestM)) return false;
        }
        return true;
    }

    private static double BlockCount(Section section)
    {
        double count = 1;
        for (int axis = 0; axis < (section.Shape == SectionShape.Solid ? 3 : 2); axis++)
            count *= section.Pieces.SelectMany(piece => new[] { Blocks.Ends(piece.Where, axis).Low, Blocks.Ends(piece.Where, axis).High }).Distinct().Count();
        return count;
    }
}
