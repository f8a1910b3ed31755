using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Materials;

namespace Thermal.Assessments;

/// <summary>A case with every uncertain figure at one end: runs that lose least and most heat, or take least and most damp.</summary>
public static class Extremes
{
    /// <summary>Wind of the run that loses least, as a factor of the night's. Source: OURS, 1 m/s beside 3.</summary>
    public const double CalmFactor = 1.0 / 3;
    /// <summary>Wind of the run that loses most. Source: OURS, 6 m/s beside 3.</summary>
    public const double WindyFactor = 2;
    /// <summary>Stored heat of furniture in the light and the heavy run. Source: OURS.</summary>
    public const double LightFactor = 0.6, HeavyFactor = 1.5;

    /// <summary>The run that loses least (<see cref="Extreme.Low"/>) or most heat.</summary>
    /// <param name="asked">The case with usual figures.</param>
    /// <param name="extreme">Which end.</param>
    /// <returns>A case whose described ribs, bolts and edges must be solved again: their conductivities have moved.</returns>
    /// <remarks>Conductivity, given ψ and χ, leaks, passages, wind and its pressure, covers, stored heat, all at the same end at once: wider than any likely mixture.</remarks>
    public static Case OfHeat(Case asked, Extreme extreme) => extreme == Extreme.Usual ? asked : asked with
    {
        Vehicle = asked.Vehicle with
        {
            Zones = [.. asked.Vehicle.Zones.Select(zone => zone with { LeakEachM2 = zone.LeakEachM2.MovedTo(extreme) })],
            Links = [.. asked.Vehicle.Links.Select(link => link with
            {
                AirM3PerM2H = link.AirM3PerM2H.MovedTo(extreme),
                ResistanceM2KPerW = link.ResistanceM2KPerW.MovedTo(Other(extreme)),
            })],
            Surfaces = [.. asked.Vehicle.Surfaces.Select(surface => OfHeat(surface, extreme))],
            FurnishingsJPerM2K = asked.Vehicle.FurnishingsJPerM2K * (extreme == Extreme.Low ? LightFactor : HeavyFactor),
            WindPressureFactor = asked.Vehicle.WindPressureFactor.MovedTo(extreme),
        },
        ColdNight = InWind(asked.ColdNight, extreme),
        MildNight = InWind(asked.MildNight, extreme),
    };

    /// <summary>The run with least or most damp: vapour and air behind linings at that end, leaks at the other.</summary>
    /// <param name="asked">The case with usual figures.</param>
    /// <param name="extreme">Which end.</param>
    public static Case OfDamp(Case asked, Extreme extreme) => extreme == Extreme.Usual ? asked : asked with
    {
        Vehicle = asked.Vehicle with
        {
            Zones = [.. asked.Vehicle.Zones.Select(zone => zone with { LeakEachM2 = zone.LeakEachM2.MovedTo(Other(extreme)) })],
            Surfaces = [.. asked.Vehicle.Surfaces.Select(surface => surface with { AirBehindLiningM3PerM2H = surface.AirBehindLiningM3PerM2H.MovedTo(extreme) })],
        },
    };

    private static Extreme Other(Extreme extreme) => extreme == Extreme.Low ? Extreme.High : Extreme.Low;

    private static NightConditions InWind(NightConditions night, Extreme extreme) =>
        night with { WindMPerS = Math.Min(NightConditions.HighestWindMPerS, night.WindMPerS * (extreme == Extreme.Low ? CalmFactor : WindyFactor)) };

    private static Surface OfHeat(Surface surface, Extreme extreme) => surface with
    {
        Stack = surface.Stack.WithConductivity(extreme),
        Ribs = [.. surface.Ribs.Select(rib => rib.Detail is { } detail
            ? rib with { Detail = detail.WithConductivity(extreme), PsiWPerMK = null, ColdestFactor = null, MouldFactor = null }
            : rib with { PsiWPerMK = rib.PsiWPerMK?.MovedTo(extreme) })],
        Bolts = [.. surface.Bolts.Select(bolt => bolt.Detail is { } detail
            ? bolt with { Detail = detail.WithConductivity(extreme), ChiWPerK = null, ColdestFactor = null, MouldFactor = null }
            : bolt with { ChiWPerK = bolt.ChiWPerK?.MovedTo(extreme) })],
        Openings = [.. surface.Openings.Select(opening => opening with
        {
            Leaf = opening.Leaf?.WithConductivity(extreme),
            Edge = opening.Edge?.WithConductivity(extreme),
            EdgePsiWPerMK = opening.Edge is null ? opening.EdgePsiWPerMK : 0,
            EdgeColdestFactor = opening.Edge is null ? opening.EdgeColdestFactor : null,
            EdgeMouldFactor = opening.Edge is null ? opening.EdgeMouldFactor : null,
            Coverings = [.. opening.Coverings.Select(covering => covering with { AddedResistanceM2KPerW = covering.AddedResistanceM2KPerW.MovedTo(Other(extreme)) })],
        })],
    };
}
