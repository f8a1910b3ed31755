using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.Moisture;
using Thermal.Ventilation;

namespace Thermal.Assessments;

/// <summary>What a person should know of an assessment, worst first.</summary>
internal static class FindingList
{
    /// <summary>Carbon dioxide that counts as stale, ppm. Source: OURS.</summary>
    private const double StalePpm = 2000;
    /// <summary>Starts a night from which a heater cycles. Source: OURS.</summary>
    private const double CyclingStarts = 20;
    /// <summary>Temperature below which winter diesel may wax, °C; from memory.</summary>
    private const double WinterDieselC = -20;
    /// <summary>Boiling point of n-butane, °C. Source: TRADE.</summary>
    private const double ButaneBoilsC = -0.5;
    /// <summary>Limit ratio of the combined method. Source: ISO-6946, 6.7.2.</summary>
    private const double LargestLimitRatio = 1.5;

    internal static IReadOnlyList<Finding> Of(Assessment found) =>
        [.. Heat(found).Concat(Air(found)).Concat(Damp(found)).Concat(Data(found)).OrderBy(finding => finding.Kind)];

    private static IEnumerable<Finding> Heat(Assessment found)
    {
        Case asked = found.Case;
        HeatingAnswer heating = found.Heating;
        if (!heating.IsEnough) yield return new(FindingKind.HeaterTooSmall, asked.Heater.Name, heating.NeedW.Value - heating.HighestOutputW);
        if (asked.Heater.Fuel == Fuel.Diesel && asked.ColdNight.OutsideC < WinterDieselC) yield return new(FindingKind.DieselWaxes, asked.Heater.Name, asked.ColdNight.OutsideC);
        if (asked.Heater.Fuel == Fuel.Butane || asked.Habits.CookerFuel == Fuel.Butane)
            if (asked.ColdNight.OutsideC < ButaneBoilsC) yield return new(FindingKind.ButaneDoesNotBoil, "gas bottle outside", asked.ColdNight.OutsideC);
        if (asked.BatteryAh is { } battery && heating.Cold.ChargeAh.Value > battery) yield return new(FindingKind.BatteryTooSmall, "battery", heating.Cold.ChargeAh.Value);
        if (heating.Mild.StartsCount > CyclingStarts) yield return new(FindingKind.HeaterCycles, asked.Heater.Name, heating.Mild.StartsCount);
        foreach (TankAnswer tank in found.Tanks)
            if (tank.HoursToZeroH < asked.Habits.NightH && !tank.PadIsEnough) yield return new(FindingKind.TankFreezes, tank.Name, tank.HoursToZeroH.Value);
    }

    private static IEnumerable<Finding> Air(Assessment found)
    {
        Case asked = found.Case;
        Zone living = asked.Vehicle.Living;
        if (found.ColdNight.CarbonDioxideAtDawnPpm > StalePpm) yield return new(FindingKind.StaleAir, living.Name, found.ColdNight.CarbonDioxideAtDawnPpm);
        SafetyVents safe = SafetyVents.For(living.FloorAreaM2, asked.Habits.CookerFuel is not null and not Fuel.Electricity);
        double high = living.Vents.Where(vent => vent.IsHigh).Sum(vent => vent.FreeAreaM2), low = living.Vents.Where(vent => !vent.IsHigh).Sum(vent => vent.FreeAreaM2);
        double missing = Math.Max(0, safe.HighM2 - high) + Math.Max(0, safe.LowM2 - low);
        if (missing > 1e-9) yield return new(FindingKind.VentsTooSmall, living.Name, missing);
        if (found.AirNeededMild.AirM3PerH is null) yield return new(FindingKind.NotByVentilating, living.Name);
    }

    private static IEnumerable<Finding> Damp(Assessment found)
    {
        foreach (BuildUpDamp damp in found.BuildUps)
        {
            if (damp.Verdict == DampVerdict.StaysWet) yield return new(FindingKind.StaysWet, damp.Name, damp.Year!.PeakGPerM2);
            if (damp.TrappedLayer is { } layer) yield return new(FindingKind.WaterTrapped, $"{damp.Name}, {layer}");
        }
        foreach (BridgeAnswer bridge in found.Bridges)
            if (bridge.ToSpareK < 0 && !IsBesideGlass(bridge))
                yield return new(bridge.IsFrost ? FindingKind.BridgeFrosts : FindingKind.BridgeDrips, $"{bridge.Panel}, {bridge.Name}", -bridge.ToSpareK.Value);
        // One for each panel, its worst place: the list of all stands in the assessment.
        foreach (MouldAnswer mould in found.Mould.DistinctBy(mould => mould.Panel))
            if (mould.CanGrow) yield return new(FindingKind.Mould, mould.Name, mould.SurfaceHumidityFraction);
    }

    /// <summary>Single glass gets wet before its edge does, and that is told of the covers.</summary>
    private static bool IsBesideGlass(BridgeAnswer bridge) => bridge.Solved?.Place.Opening?.Glazing is not null;

    private static IEnumerable<Finding> Data(Assessment found)
    {
        foreach (BridgeAnswer bridge in found.Bridges)
            if (bridge.Solved is { Loss: var section } && !section.IsConverged)
                yield return new(FindingKind.DetailNotConverged, $"{bridge.Panel}, {bridge.Name}", section.DoublingChangeFraction);
        foreach (PanelAnswer panel in found.Panels)
        {
            string? signature = panel.Surface.Ribs.Count + panel.Surface.Bolts.Count == 0 ? null : panel.Surface.Stack.Signature;
            IEnumerable<(string Name, string? GivenFor)> bridges = panel.Surface.Ribs.Where(rib => rib.Detail is null).Select(rib => (rib.Name, rib.GivenFor))
                .Concat(panel.Surface.Bolts.Where(bolt => bolt.Detail is null).Select(bolt => (bolt.Name, bolt.GivenFor)));
            foreach ((string name, string? givenFor) in bridges)
                if (givenFor is null) yield return new(FindingKind.BridgeWithoutBuildUp, $"{panel.Surface.Name}, {name}");
                else if (givenFor != signature) yield return new(FindingKind.StaleBridge, $"{panel.Surface.Name}, {name}");
            if (panel.Transmittance.LimitRatio > LargestLimitRatio) yield return new(FindingKind.LimitsFarApart, panel.Surface.Name, panel.Transmittance.LimitRatio);
            if (panel.Surface.WidthM is null) yield return new(FindingKind.AreaAlone, panel.Surface.Name);
        }
        if (found.Case.Place is not { } place) yield break;
        if (place.Design is { Kind: DesignKind.Estimated } design && found.Case.ColdNight.OutsideC == design.TemperatureC)
            yield return new(FindingKind.DesignEstimated, place.Name, design.PlusMinusK);
        if (place.Months.Any(month => month.HumidityIsEstimated)) yield return new(FindingKind.HumidityEstimated, place.Name);
    }
}
