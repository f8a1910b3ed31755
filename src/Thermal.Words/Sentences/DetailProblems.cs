using Thermal.Envelope.Details;

namespace Thermal.Words.Sentences;

/// <summary>Why a detail does not fit the build-up it stands in, with what to change.</summary>
public static class DetailProblems
{
    /// <summary>One sentence without a capital and a full stop, to stand behind the place of the fault.</summary>
    /// <param name="problem">What does not fit.</param>
    /// <param name="detail">The detail.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(DetailProblem problem, Detail detail, Figures figures)
    {
        string name = DetailNames.Of(detail), given = figures.Thickness(problem.GivenM), limit = figures.Thickness(problem.LimitM);
        return problem.Fault switch
        {
            DetailFault.DeeperThanWall => TooDeep(detail, given, limit),
            DetailFault.StripTooThick => $"what lies over this {name} is {given} thick, but only {limit} are left between it and the room; make it thinner, the {name} shallower or the layers thicker",
            DetailFault.WiderThanSpacing => $"this {name} is {given} wide, but the next one stands {limit} away; check its width and the spacing",
            DetailFault.SheetTooThick => $"the sheet of this {name} is {given} thick, but its other sizes leave room for {limit}; check them all",
            DetailFault.CrownUnfit => detail is Rib { Shape: RibShape.Plate }
                ? "a plate is a single web and has no crown; leave the crown out"
                : $"this {name} is {given} wide towards the room, but needs {limit}; make it wider",
            DetailFault.FootUnfit => $"a {name} has no feet; leave the foot out",
            DetailFault.NothingToFill => $"a {name} encloses no hollow, so nothing can fill it; leave the filling out",
            DetailFault.TooManyLayersOver => $"more layers are counted over the head of this {name} than the build-up has inside the skin; count them from the room",
            DetailFault.HeadNarrowerThanShank => $"a head of this {name} is {given} wide, narrower than its shank of {limit}; check heads and diameter",
            DetailFault.HeadWithoutThickness => $"this {name} has a head wider than its shank but without thickness; make the head some millimetres thick, or leave it out",
            DetailFault.AngleUnfit => "the metal angle in this corner lacks thickness, leg or material; make all three known, or leave the angle out",
            DetailFault.FrameTooOpen => "this frame_u lets through more than a flat frame with its films can (5.8 W/(m²·K)); make it lower, or give the edge a figure found elsewhere",
            DetailFault.CrossesVentilatedLayer => $"an air gap open to the outside lies where this {name} would cross it, which cannot be computed; close the gap, leave out what lies outside it, or give a figure found elsewhere",
            _ => throw new ArgumentOutOfRangeException(nameof(problem), problem.Fault, "There is no sentence for this fault."),
        };
    }

    private static string TooDeep(Detail detail, string given, string limit) => detail switch
    {
        FrameEdge => $"the lip of the skin is {given} deep, but the build-up inside the skin is only {limit}; make it shallower or the layers thicker",
        DoorEdge => $"post and edge of the leaf are {given} deep, but panel and leaf leave only {limit} inside their skins; make them shallower, or panel and leaf thicker",
        Bolt => $"the head of this bolt is {given} thick, but only {limit} are left between the layers over it and the skin; make it thinner or count fewer layers over it",
        _ => $"this {DetailNames.Of(detail)} is {given} deep, but the build-up inside the skin is only {limit}; make it shallower or the layers thicker",
    };
}
