using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>The one entrance: a case in, everything the tool has to say of it out.</summary>
public static class Assess
{
    /// <summary>Assesses a case: cold and mild night, heater, damp on surfaces and inside build-ups, months, space.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="cache">Sections of details solved before; null starts an empty one.</param>
    /// <returns>The assessment; equal input gives equal bits. Its case holds the vehicle with its details solved, still described.</returns>
    /// <exception cref="ArgumentException">A described detail does not fit its panel: <see cref="SolvedVehicle.Unfit"/> tells which.</exception>
    /// <exception cref="NotConvergedException">Air flows between zones did not settle.</exception>
    /// <remarks>
    /// Steady nights; operative temperature with lumped films; latent heat, sun and stored moisture left out.
    /// Described ribs, bolts and edges are solved in the wind of the cold night and serve the mild night and the months too.
    /// Ranges are runs with all uncertain figures at one end (<see cref="Extremes"/>). Source: ISO-6946, ISO-13788, EN-673 and OURS where a default says so.
    /// </remarks>
    public static Assessment Of(Case asked, BridgeCache? cache = null) 
    {
        BridgeCache known = cache ?? new();
        return Run(CaseRuns.Of(asked, known), known);
    }

    /// <summary>The usual run alone, for trials that compare usual figures: ranges hold its values only, and covers are not tried.</summary>
    internal static Assessment UsualOf(Case asked, BridgeCache? cache = null)
    {
        BridgeCache known = cache ?? new();
        return Run(CaseRuns.Alone(asked, known), known);
    }

    private static Assessment Run(CaseRuns cases, BridgeCache cache)
    {
        Case asked = cases.Usual;
        NightRuns cold = NightRuns.Of(cases, one => one.ColdNight), mild = NightRuns.Of(cases, one => one.MildNight, cold);
        Months? months = Months.Of(asked, Extreme.Usual, mild.Usual.Shell);
        Months? dry = cases.IsAlone ? months : Months.Of(cases.LeastDamp, Extreme.Low, mild.LeastDamp.Shell);
        Months? damp = cases.IsAlone ? months : Months.Of(cases.MostDamp, Extreme.High, mild.MostDamp.Shell);
        Assessment found = new()
        {
            Case = asked,
            ColdNight = NightAnswers.Of(asked, asked.ColdNight, cold),
            MildNight = NightAnswers.Of(asked, asked.MildNight, mild),
            Heating = HeatingAnswers.Of(cases, cold, mild),
            Panels = [.. asked.Vehicle.Surfaces.Select(surface => Panel(asked, surface, cold.Usual))],
            Bridges = BridgeAnswers.Of(asked, cold.Usual, cache),
            BuildUps = [.. DampAnswers.BuildUps(asked.Vehicle).Select(buildUp => DampAnswers.Of(buildUp.Name, buildUp.Surface, buildUp.Stack, asked, cold, months, dry, damp))],
            Covers = cases.IsAlone ? [] : CoverAnswers.Of(asked, cold.Usual),
            Mould = Months.Mould(asked, months),
            AirNeededCold = NightAnswers.AirNeeded(asked, cold.Usual),
            AirNeededMild = NightAnswers.AirNeeded(asked, mild.Usual),
            Space = SpaceAnswers.Space(asked.Vehicle),
            MeanK = SpaceAnswers.MeanK(asked.Vehicle, cold.Usual.Shell),
            Tanks = HeatingAnswers.Tanks(asked, cold.Usual),
            Findings = [],
        };
        return found with { Findings = FindingList.Of(found) };
    }

    private static PanelAnswer Panel(Case asked, Surface surface, ZoneState cold)
    {
        double wind = asked.ColdNight.WindMPerS;
        StackTransmittance found = PanelAnswer.Between(surface, wind);
        double loss = 0, coldest = double.MaxValue;
        foreach (HeatPath path in cold.Shell.PathSpan)
            if (path.Panel == surface.Name) loss += path.CoefficientWPerK * (cold.TemperaturesC[path.Zone] - Outer(path.OtherZone, path.SkyShareRatio));
        foreach (ColdPlace place in cold.Shell.PlaceSpan)
            if (place.Panel == surface.Name && place.InUse && place.Kind != SurfaceKind.BehindLining) coldest = Math.Min(coldest, cold.PlaceC(place));
        int zone = DampAnswers.IndexOf(asked.Vehicle, surface.Zone), other = surface.Outside == OuterSide.OtherZone ? DampAnswers.IndexOf(asked.Vehicle, surface.OtherZone!) : -1;
        return new()
        {
            Surface = surface,
            Transmittance = found,
            UWithRibsWPerM2K = PanelAnswer.WithRibsWPerM2K(surface, found),
            TemperaturesAtFacesC = FaceTemperatures.AtFacesC(found, cold.TemperaturesC[zone], Outer(other, Shell.SkyShareRatio(surface, wind))),
            LossW = loss,
            ColdestC = coldest,
        };

        double Outer(int index, double skyShare) => index >= 0 ? cold.TemperaturesC[index] : cold.Inputs.OutsideC - skyShare * cold.Inputs.SkyBelowAirK;
    }
}
