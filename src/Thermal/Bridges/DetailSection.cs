using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>The section of a detail in its build-up: y runs from outside (0) inwards, x along the panel.</summary>
public static class DetailSection
{
    /// <summary>Name of the environment inside.</summary>
    public const string Room = "room";
    /// <summary>Name of the environment outside.</summary>
    public const string Outside = "outside";

    /// <summary>Draws it.</summary>
    /// <param name="detail">The detail; it must fit: see <see cref="DetailFit"/>.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="insideFilmM2KPerW">Inside film R_si, m²·K/W, 0 to 12: that of the loss, or that for mould.</param>
    /// <returns>
    /// Hats, boxes, plates, battens and grooves as the half to the right of their line of symmetry x = 0; a bolt as a round section; everything
    /// else whole. As wide as the spacing, or, where it stands alone, so wide that its ends no longer matter.
    /// </returns>
    /// <exception cref="ArgumentException">The detail does not fit, or the place lacks the other panel of a corner or the opening of an edge.</exception>
    /// <remarks>
    /// Layers have the resistance that the build-up's U counts; where battens stand in a layer, the place between them is drawn. Ends of the section let no heat through; sheets of metal that touch are one.
    /// Two neighbours of a shape without symmetry are taken to stand mirrored. Source: ISO-10211, cut-off planes; OURS for how wide.
    /// </remarks>
    public static Section Of(Detail detail, DetailPlace place, double insideFilmM2KPerW) => Draw(detail, place, insideFilmM2KPerW).Section;

    internal static DrawnDetail Draw(Detail detail, DetailPlace place, double insideFilmM2KPerW)
    {
        IReadOnlyList<DetailProblem> problems = DetailFit.Problems(detail, place.Stack, place.SpacingM, place.OtherStack, place.Opening);
        if (problems.Count > 0)
            throw new ArgumentException($"The detail does not fit its build-up: {string.Join("; ", problems.Select(Said))}.", nameof(detail));
        DrawnDetail drawn = detail switch
        {
            Rib rib => RibSection.Draw(rib, place, insideFilmM2KPerW),
            Batten batten => BattenSection.Draw(batten, place, insideFilmM2KPerW),
            Corrugation groove => CorrugationSection.Draw(groove, place, insideFilmM2KPerW),
            Corner corner => CornerSection.Draw(corner, place, insideFilmM2KPerW),
            FrameEdge edge => FrameEdgeSection.Draw(edge, place, insideFilmM2KPerW),
            DoorEdge door => DoorEdgeSection.Draw(door, place, insideFilmM2KPerW),
            Bolt bolt => BoltSection.Draw(bolt, place, insideFilmM2KPerW),
            _ => throw new ArgumentException("There is no section for this kind of detail.", nameof(detail)),
        };
        return drawn with { Section = drawn.Section with { Pieces = [.. drawn.Section.Pieces.Where(IsThere)] } };
    }

    // A foot, a lip or a head of less than a micrometre is none.
    private static bool IsThere(Piece piece) =>
        piece.Where.X1M - piece.Where.X0M >= WallColumn.LeastM && piece.Where.Y1M - piece.Where.Y0M >= WallColumn.LeastM;

    private static string Said(DetailProblem problem) => string.Create(System.Globalization.CultureInfo.InvariantCulture,
        $"{problem.Fault} ({problem.GivenM} m, limit {problem.LimitM} m)");
}
