using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Choices;

/// <summary>What helps most, found by trying a stated list of changes one at a time on the whole case.</summary>
public static class Advice
{
    /// <summary>Air a small fan draws in the trial, m³/h. Source: OURS.</summary>
    public const double TrialFanM3PerH = 40;
    /// <summary>Thickness added in the trial, m. Source: OURS.</summary>
    public const double TrialThicknessM = 0.01;
    /// <summary>Strip tried over described ribs, m. Source: OURS.</summary>
    public const double TrialStripM = 0.01;
    /// <summary>Vapour retarder tried behind the lining, s_d in m. Source: OURS.</summary>
    public const double TrialRetarderM = 10;
    /// <summary>Panels for which changes of their own are tried: the wettest and the ones that lose most. Source: OURS.</summary>
    public const int PanelsTried = 3;

    /// <summary>Tries the list.</summary>
    /// <param name="kept">The assessment to compare with.</param>
    /// <param name="cache">Sections of details solved before, such as those of the assessment; null starts an empty one.</param>
    /// <returns>Every trial with its effects, most build-ups dried first, then most water kept out of them over the year, then off cold surfaces, then watts saved. Trials that change nothing are left out.</returns>
    /// <remarks>
    /// A given ψ keeps its value in a thickness trial although it belongs to another build-up; described ribs are solved anew. A trial in which one
    /// no longer fits is left out. A strip is paid for with headroom where there is no room for it over the crown.
    /// </remarks>
    public static IReadOnlyList<AdviceItem> Of(Assessment kept, BridgeCache? cache = null)
    {
        BridgeCache known = cache ?? new();
        Case asked = kept.Case;
        List<AdviceItem> items = [];
        foreach (BuildUpDamp damp in kept.BuildUps.Where(damp => damp.Verdict != DampVerdict.Dry && damp.Name == damp.Panel)
            .OrderByDescending(damp => damp.Year?.PeakGPerM2 ?? damp.NightByDiffusionGPerM2 + damp.NightByAirGPerM2).Take(PanelsTried))
        {
            Surface surface = asked.Vehicle.Surfaces.First(s => s.Name == damp.Panel);
            if (surface.LiningFit is LiningFit.Loose or LiningFit.Slatted)
                Try(Change.TapeLining, damp.Panel, Changed.Panel(asked, damp.Panel, s => s with { LiningFit = LiningFit.Taped, AirBehindLiningM3PerM2H = LiningDefaults.AirBehindM3PerM2H(LiningFit.Taped) }));
            Try(Change.AddRetarder, damp.Panel, Changed.Panel(asked, damp.Panel, WithRetarder));
            if (MaterialLibrary.Find("elastomeric_foam") is { } foam && surface.Stack.Layers.Any(layer => layer is SolidLayer { Material.Group: MaterialGroup.Wool }))
                Try(Change.BondedFoam, damp.Panel, Changed.Panel(asked, damp.Panel, s => WithBondedFoam(s, foam)));
        }
        foreach (PanelAnswer panel in kept.Panels.OrderByDescending(panel => panel.LossW).Take(PanelsTried))
        {
            if (panel.Surface.Outside == OuterSide.OtherZone) continue;
            if (RibChoices.WithStrips(panel.Surface, TrialStripM) is { } covered) Try(Change.StripOverRibs, panel.Surface.Name, Changed.Panel(asked, panel.Surface.Name, _ => covered));
            if (Thicknesses.MainLayer(panel) is { } layer)
                Try(Change.MoreInsulation, panel.Surface.Name, Thicknesses.With(asked, panel.Surface.Name, layer, panel.Surface.Stack.Layers[layer].ThicknessM + TrialThicknessM));
        }
        if (asked.Habits.FanAtNightM3PerH < TrialFanM3PerH)
            Try(Change.RunFan, asked.Vehicle.Living.Name, asked with { Habits = asked.Habits with { FanAtNightM3PerH = TrialFanM3PerH } });
        if (asked.Habits.DryingPerDayG > 0) Try(Change.DryElsewhere, asked.Vehicle.Living.Name, asked with { Habits = asked.Habits with { DryingPerDayG = 0 } });
        if (asked.Vehicle.Surfaces.SelectMany(s => s.Openings).Any(Changed.NeedsOutsideCover)) Try(Change.CoverOutside, "all glass without an outside cover", Changed.CoveredOutside(asked));
        if (asked.Vehicle.Links.Any(link => link.State == LinkState.Open))
            Try(Change.CloseCurtain, "passage to the cab", Changed.CurtainsClosed(asked));
        return [.. items.OrderByDescending(item => item.BuildUpsDriedCount).ThenByDescending(item => item.PeakAvoidedGPerM2).ThenByDescending(item => item.WaterAvoidedG).ThenByDescending(item => item.LossSavedW)];

        void Try(Change change, string where, Case tried)
        {
            if (SolvedVehicle.Unfit(tried.Vehicle).Count > 0) return;
            Assessment found = Assess.UsualOf(tried, known);
            AdviceItem item = new(change, where, Water(kept) - Water(found), kept.ColdNight.LossW - found.ColdNight.LossW,
                Held(kept) - Held(found), StillWet(kept) - StillWet(found),
                Living(kept) - Living(found), (kept.Space.HeadroomM - found.Space.HeadroomM) ?? 0);
            if (Math.Abs(item.WaterAvoidedG) > 1 || Math.Abs(item.LossSavedW) > 1 || Math.Abs(item.PeakAvoidedGPerM2) > 1 || item.BuildUpsDriedCount != 0) items.Add(item);
        }
    }

    private static Surface WithRetarder(Surface surface)
    {
        Material? film = MaterialLibrary.Find("vapour_retarder");
        return film is null ? surface : surface with
        {
            Stack = new([surface.Stack.Layers[0], new SolidLayer
            {
                Name = "vapour retarder", Material = film with { FilmDiffusionThicknessM = Bounded.Stated(TrialRetarderM) }, ThicknessM = 0.0002,
            }, .. surface.Stack.Layers.Skip(1)]) { GapLevel = surface.Stack.GapLevel },
            Bolts = [.. surface.Bolts.Select(bolt => bolt.Detail is Bolt { LayersOver: > 0 } through ? bolt with { Detail = through with { LayersOver = through.LayersOver + 1 } } : bolt)],
        };
    }

    private static Surface WithBondedFoam(Surface surface, Material foam) => surface with
    {
        LiningFit = LiningFit.Bonded,
        AirBehindLiningM3PerM2H = LiningDefaults.AirBehindM3PerM2H(LiningFit.Bonded),
        Stack = new([.. surface.Stack.Layers.Select(layer => layer is SolidLayer { Material.Group: MaterialGroup.Wool } wool ? wool with { Material = foam, Name = foam.Name, IsBonded = true } : layer)]),
    };

    private static double Water(Assessment found) => found.ColdNight.Zones.Sum(zone => zone.SettlingGPerH) * found.Case.Habits.NightH;
    private static double Held(Assessment found) => found.BuildUps.Sum(damp => damp.Year?.PeakGPerM2 ?? 0);
    private static int StillWet(Assessment found) => found.BuildUps.Count(damp => damp.Verdict != DampVerdict.Dry);
    private static double Living(Assessment found) => found.ColdNight.Zones[0].RelativeHumidityFraction;
}
