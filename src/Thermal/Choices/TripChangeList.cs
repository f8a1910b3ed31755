using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.Power;
using Thermal.Trips;
using Thermal.Water;

namespace Thermal.Choices;

/// <summary>The changes that apply to a trip, each made on the whole case.</summary>
internal static class TripChangeList
{
    /// <summary>Nights cooler by, K; fan above; foam added, m; round tanks, m²·K/W; pads, W; sun, W; charge, Ah. Source: OURS.</summary>
    internal const double CoolerK = 2, FanAboveFraction = 0.6, AddedM = 0.02, WrapM2KPerW = 1, PadW = 60, SunW = 100, ChargeAh = 100;
    /// <summary>A small fan's current, A. Source: OURS.</summary>
    private const double SmallFanA = 0.2;

    /// <summary>All that apply.</summary>
    internal static IEnumerable<(TripChange Change, string Where, TripCase Tried)> Of(TripCase asked) => [.. Lived(asked), .. Built(asked), .. Fitted(asked)];

    private static IEnumerable<(TripChange, string, TripCase)> Lived(TripCase asked)
    {
        Case vehicle = asked.Case;
        string living = vehicle.Vehicle.Living.Name;
        Opening[] openings = [.. vehicle.Vehicle.Surfaces.SelectMany(surface => surface.Openings)];
        if (openings.Any(Changed.NeedsOutsideCover))
            yield return (TripChange.CoverOutside, Names(openings.Where(Changed.NeedsOutsideCover).Select(opening => opening.Name)),
                WithHabits(With(asked, Changed.CoveredOutside(vehicle)), habits => habits.Covers == CoverUse.Never ? habits with { Covers = CoverUse.Nights } : habits));
        if (openings.Any(opening => opening.NightCovering is not null) && AnyHabits(asked, habits => habits.Covers != CoverUse.Always))
            yield return (TripChange.CoversAlways, living, WithHabits(asked, habits => habits with { Covers = CoverUse.Always }));
        if (AnyHabits(asked, habits => habits.NightC >= CoolerK))
            yield return (TripChange.CoolerNights, living, WithHabits(asked, habits => habits.NightC >= CoolerK ? habits with { NightC = habits.NightC - CoolerK } : habits));
        if (AnyHabits(asked, habits => habits.Fan != FanUse.AboveHumidity || habits.FanAboveFraction > FanAboveFraction))
            yield return (TripChange.RunFan, living, WithHabits(vehicle.Fan is null ? With(asked, vehicle with { Fan = new() { FlowM3PerH = Advice.TrialFanM3PerH, CurrentA = SmallFanA } }) : asked,
                habits => habits with { Fan = FanUse.AboveHumidity, FanAboveFraction = FanAboveFraction }));
        if (AnyHabits(asked, habits => habits.DryingPerDayG > 0))
            yield return (TripChange.DryElsewhere, living, WithHabits(asked, habits => habits with { DryingPerDayG = 0 }));
        if (vehicle.Vehicle.Links.Any(link => link.State == LinkState.Open))
            yield return (TripChange.CloseCurtain, living, With(asked, Changed.CurtainsClosed(vehicle)));
    }

    private static IEnumerable<(TripChange, string, TripCase)> Built(TripCase asked)
    {
        if (Thicker(asked, surface => surface.Place == SurfacePlace.Roof) is { } roof) yield return (TripChange.MoreInRoof, roof.Where, roof.Tried);
        if (Thicker(asked, surface => surface.Place is SurfacePlace.Left or SurfacePlace.Right or SurfacePlace.Front or SurfacePlace.Rear) is { } walls)
            yield return (TripChange.MoreInWalls, walls.Where, walls.Tried);
        string living = asked.Case.Vehicle.Living.Name;
        Opening[] single = [.. asked.Case.Vehicle.Surfaces.Where(surface => surface.Zone == living).SelectMany(surface => surface.Openings).Where(IsSingle)];
        if (single.Length > 0)
            yield return (TripChange.DoubleGlazing, Names(single.Select(opening => opening.Name)), With(asked, asked.Case with
            {
                Vehicle = asked.Case.Vehicle with
                {
                    Surfaces = [.. asked.Case.Vehicle.Surfaces.Select(surface => surface.Zone == living ? surface with { Openings = [.. surface.Openings.Select(Doubled)] } : surface)],
                },
            }));
    }

    private static IEnumerable<(TripChange, string, TripCase)> Fitted(TripCase asked)
    {
        Case vehicle = asked.Case;
        string living = vehicle.Vehicle.Living.Name;
        Tank[] outside = [.. vehicle.Tanks.Where(tank => tank.Zone != living)];
        if (outside.Length > 0)
            yield return (TripChange.WrapTanks, Names(outside.Select(tank => tank.Name)), With(asked, vehicle with { Tanks = [.. vehicle.Tanks.Select(tank => tank.Zone == living ? tank : tank with { InsulationM2KPerW = Math.Min(10, tank.InsulationM2KPerW + WrapM2KPerW) })] }));
        if (outside.Any(tank => tank.PadW == 0))
            yield return (TripChange.PadTanks, Names(outside.Where(tank => tank.PadW == 0).Select(tank => tank.Name)), With(asked, vehicle with { Tanks = [.. vehicle.Tanks.Select(tank => tank.Zone == living || tank.PadW > 0 ? tank : tank with { PadW = PadW })] }));
        if (vehicle.Power is { } power)
        {
            SolarPanel more = new() { Name = "panel on trial", PeakW = SunW };
            yield return (TripChange.MoreSun, "roof", With(asked, vehicle with { Power = power with { Panels = [.. power.Panels, more] } }));
            yield return (TripChange.MoreBattery, "battery", With(asked, vehicle with { Power = power with { Battery = power.Battery with { UsableAh = power.Battery.UsableAh + ChargeAh } } }));
            if (power.Battery.Zone != living) yield return (TripChange.BatteryInside, living, With(asked, vehicle with { Power = power with { Battery = power.Battery with { Zone = living } } }));
        }
        HeaterClass[] kin = [.. HeaterLibrary.All.Where(heater => heater.Fuel == vehicle.Heater.Fuel && heater.HeatsWater == vehicle.Heater.HeatsWater)];
        if (kin.Where(heater => heater.HighestW < vehicle.Heater.HighestW).MaxBy(heater => heater.HighestW) is { } smaller)
            yield return (TripChange.SmallerHeater, smaller.Name, With(asked, vehicle with { Heater = smaller }));
        if (kin.Where(heater => heater.HighestW > vehicle.Heater.HighestW).MinBy(heater => heater.HighestW) is { } larger)
            yield return (TripChange.LargerHeater, larger.Name, With(asked, vehicle with { Heater = larger }));
    }

    private static TripCase With(TripCase asked, Case changed) => asked with { Case = changed };

    private static bool AnyHabits(TripCase asked, Func<TripHabits, bool> which) =>
        asked.Trip.Legs.Any(leg => which(leg.Habits ?? asked.Trip.Habits));

    private static TripCase WithHabits(TripCase asked, Func<TripHabits, TripHabits> change) => asked with
    {
        Trip = asked.Trip with
        {
            Habits = change(asked.Trip.Habits),
            Legs = [.. asked.Trip.Legs.Select(leg => leg.Habits is { } own ? leg with { Habits = change(own) } : leg)],
        },
    };

    private static (string Where, TripCase Tried)? Thicker(TripCase asked, Func<Surface, bool> which)
    {
        Case changed = asked.Case;
        List<string> names = [];
        foreach (Surface surface in asked.Case.Vehicle.Surfaces)
        {
            if (!which(surface) || surface.Outside == OuterSide.OtherZone || MainLayer(surface) is not { } layer) continue;
            changed = Thicknesses.With(changed, surface.Name, layer, surface.Stack.Layers[layer].ThicknessM + AddedM);
            names.Add(surface.Name);
        }
        return names.Count == 0 ? null : (Names(names), With(asked, changed));
    }

    /// <summary>The layer that insulates most; null where none has 0.1 m²·K/W.</summary>
    private static int? MainLayer(Surface surface)
    {
        int best = -1;
        double bestM2KPerW = 0.1;
        for (int i = 0; i < surface.Stack.Layers.Count; i++)
            if (surface.Stack.Layers[i] is SolidLayer layer && layer.ThicknessM / layer.Material.ConductivityWPerMK.Value > bestM2KPerW)
                (best, bestM2KPerW) = (i, layer.ThicknessM / layer.Material.ConductivityWPerMK.Value);
        return best < 0 ? null : best;
    }

    private static bool IsSingle(Opening opening) => opening.Glazing is { Panes.Count: 1 };

    private static Opening Doubled(Opening opening)
    {
        if (!IsSingle(opening)) return opening;
        Pane pane = new() { Material = MaterialLibrary.Find("acrylic")!, ThicknessM = 0.003 };
        return opening with { Glazing = new([pane, pane], [new() { ThicknessM = 0.02 }]) };
    }

    private static string Names(IEnumerable<string> names) => string.Join(", ", names);
}
