using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Yaml;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Files.VehicleKeys;

/// <summary>Whether described details can stand where the file puts them.</summary>
internal static class DetailCheck
{
    /// <summary>Adds a problem for each detail, corners aside, that does not fit the build-up it stands in.</summary>
    /// <param name="spot">The panel.</param>
    /// <param name="surface">The panel as read.</param>
    internal static void Fit(Spot spot, Surface surface)
    {
        for (int i = 0; i < surface.Ribs.Count; i++)
            if (surface.Ribs[i] is { Detail: not (null or Corner) } rib)
                Tell(spot.At("ribs").At(i, rib.Name), rib.Detail, DetailFit.Problems(rib.Detail, surface.Stack, rib.SpacingM));
        for (int i = 0; i < surface.Bolts.Count; i++)
            if (surface.Bolts[i] is { Detail: { } detail } bolt)
                Tell(spot.At("bolts").At(i, bolt.Name), detail, DetailFit.Problems(detail, surface.Stack, null));
        for (int i = 0; i < surface.Openings.Count; i++)
            if (surface.Openings[i] is { Edge: { } edge } opening)
                Tell(spot.At("openings").At(i, opening.Name), edge, DetailFit.Problems(edge, surface.Stack, null, opening: opening));
    }

    /// <summary>Adds a problem for each corner that does not meet another outer panel of its room, or does not fit the two.</summary>
    /// <param name="spot">The list of panels.</param>
    /// <param name="surfaces">The panels as read.</param>
    internal static void Corners(Spot spot, IReadOnlyList<Surface> surfaces)
    {
        for (int i = 0; i < surfaces.Count; i++)
            for (int j = 0; j < surfaces[i].Ribs.Count; j++)
                if (surfaces[i].Ribs[j] is { Detail: Corner corner } rib)
                    Meet(spot.At(i, surfaces[i].Name).At("ribs").At(j, rib.Name), corner, surfaces[i], surfaces);
    }

    private static void Meet(Spot spot, Corner corner, Surface panel, IReadOnlyList<Surface> surfaces)
    {
        Surface? other = surfaces.FirstOrDefault(surface => surface.Name == corner.Other);
        string? fault =
            other is null ? $"there is no panel \"{corner.Other}\"; {Offer.Of(corner.Other, surfaces.Where(surface => surface != panel).Select(surface => surface.Name), "the panels are")}"
            : other == panel ? "a corner lies between two panels, and this is the same one; write the name of the other"
            : other.Zone != panel.Zone ? $"the panel {corner.Other} belongs to another room; a corner lies between two panels of one room"
            : other.Outside == OuterSide.OtherZone || panel.Outside == OuterSide.OtherZone ? "a corner lies between two panels that both have the outside behind them, and a partition has a room there; leave this corner out"
            : null;
        if (fault is null)
            Tell(spot, corner, DetailFit.Problems(corner, panel.Stack, null, other!.Stack));
        else
            spot.At("with").Problem(fault);
    }

    private static void Tell(Spot spot, Detail detail, IReadOnlyList<DetailProblem> problems)
    {
        foreach (DetailProblem problem in problems)
        {
            string key = KeyOf(problem, detail);
            Spot owner = detail is FrameEdge or DoorEdge && problem.Fault != DetailFault.FrameTooOpen ? spot.At("edge") : spot;
            owner.At(key).Problem(DetailProblems.Of(problem, detail, Figures.Metric));
        }
    }

    // Where the number stands that a person would change first; the detail itself where that key is not written.
    private static string KeyOf(DetailProblem problem, Detail detail) => problem.Fault switch
    {
        DetailFault.DeeperThanWall => detail is FrameEdge ? "lip" : detail is Bolt ? "head_thickness" : "depth",
        DetailFault.StripTooThick => "over",
        DetailFault.WiderThanSpacing => "spacing",
        DetailFault.SheetTooThick => "sheet",
        DetailFault.TooManyLayersOver => "layers_over",
        DetailFault.HeadNarrowerThanShank => detail is Bolt bolt && problem.GivenM == bolt.HeadM ? "head" : "outer_head",
        DetailFault.HeadWithoutThickness => "head_thickness",
        DetailFault.FrameTooOpen => "frame_u",
        _ => "", // Of the whole; the rest cannot be written.
    };
}
