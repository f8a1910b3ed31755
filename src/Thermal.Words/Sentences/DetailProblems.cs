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
            DetailFault.DeeperThanWall => $"this {name} is {given} deep, but the build-up inside the skin is only {limit}; make it shallower or the layers thicker",
            DetailFault.StripTooThick => $"what lies over this {name} is {given} thick, but only {limit} are left between it and the room; make it thinner, the {name} shallower or the layers thicker",
            DetailFault.WiderThanSpacing => $"this {name} is {given} wide, but the next one stands {limit} away; check its width and the spacing",
            DetailFault.SheetTooThick => $"the sheet of this {name} is {given} thick, but its depth and width leave room for {limit}; check the three",
            DetailFault.CrownUnfit => detail is Rib { Shape: RibShape.Plate }
                ? "a plate is a single web and has no crown; leave the crown out"
                : $"this {name} is {given} wide towards the room, but needs {limit}; make it wider",
            DetailFault.TooManyLayersOver => $"more layers are counted over the head of this {name} than the build-up has inside the skin; count them from the room",
            DetailFault.HeadNarrowerThanShank => $"the head of this {name} is {given} wide, narrower than its shank of {limit}; check head and diameter",
            DetailFault.CrossesVentilatedLayer => $"the build-up has an air gap open to the outside, which this {name} would cross: that cannot be computed; close the gap, leave out what lies outside it, or give a figure found elsewhere",
            _ => throw new ArgumentOutOfRangeException(nameof(problem), problem.Fault, "There is no sentence for this fault."),
        };
    }
}
