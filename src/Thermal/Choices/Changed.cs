using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Materials;

namespace Thermal.Choices;

/// <summary>Cases with one thing changed.</summary>
internal static class Changed
{
    internal static Case Panel(Case asked, string panel, Func<Surface, Surface> change) => asked with
    {
        Vehicle = asked.Vehicle with { Surfaces = [.. asked.Vehicle.Surfaces.Select(surface => surface.Name == panel ? change(surface) : surface)] },
    };

    internal static Case Openings(Case asked, Func<Opening, Opening> change) => asked with
    {
        Vehicle = asked.Vehicle with { Surfaces = [.. asked.Vehicle.Surfaces.Select(surface => surface with { Openings = [.. surface.Openings.Select(change)] })] },
    };

    private static readonly Bounded Screen = new(0.2, 0.3, 0.4, "TRADE", "outside cab cover, from memory");

    internal static bool NeedsOutsideCover(Opening opening) => opening.Glazing is not null && opening.NightCovering is not { Side: CoveringSide.Outside };

    /// <summary>Outside covers at night over all glass that has none.</summary>
    internal static Case CoveredOutside(Case asked) => Openings(asked, opening => NeedsOutsideCover(opening) ? opening with
    {
        Coverings = [.. opening.Coverings, new() { Name = "outside cover on trial", Side = CoveringSide.Outside, AddedResistanceM2KPerW = Screen }],
        CoverAtNight = "outside cover on trial",
    } : opening);

    /// <summary>A curtain across every passage that stands open at night.</summary>
    internal static Case CurtainsClosed(Case asked) => asked with
    {
        Vehicle = asked.Vehicle with { Links = [.. asked.Vehicle.Links.Select(link => link.State == LinkState.Closed ? link : link with { State = LinkState.Closed, AirM3PerM2H = ZoneLink.CurtainAirM3PerM2H })] },
    };
}
