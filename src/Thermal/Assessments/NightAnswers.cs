using Thermal.Air;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.People;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>Makes a <see cref="Night"/> of a balance.</summary>
internal static class NightAnswers
{
    internal static Night Of(Case asked, NightConditions conditions, NightRuns runs)
    {
        ZoneState state = runs.Usual;
        int living = ZoneBalance.LivingIndex(asked.Vehicle);
        return new()
        {
            Conditions = conditions,
            Zones = [.. Zones(state).OrderBy(zone => zone.Zone != asked.Vehicle.Living.Name)],
            Losses = Losses(state),
            LossW = state.HeaterW,
            LossRangeW = runs.HeaterW,
            HumidityRangeFraction = runs.OfDamp(run => run.VapourPa(living) / SaturationPressure.PairPa(run.TemperaturesC[living])),
            ColdestRangeC = runs.OfHeat(run => Coldest(run, living)),
            VapourSourceGPerH = BodyLoads.VapourGPerH(asked.Habits),
            Surfaces = Surfaces(state, asked.Habits.NightH),
            CarbonDioxideAtDawnPpm = BodyLoads.CarbonDioxideAtDawnPpm(asked.Habits, asked.Vehicle.Living.VolumeM3, state.OutsideAirM3PerH[living]),
        };
    }

    /// <summary>Coldest inner surface of a zone with the covers in use, °C.</summary>
    private static double Coldest(ZoneState state, int zone)
    {
        double coldest = double.MaxValue;
        foreach (ColdPlace place in state.Shell.Places)
            if (place.Zone == zone && place.InUse && place.Kind != SurfaceKind.BehindLining) coldest = Math.Min(coldest, state.PlaceC(place));
        return coldest;
    }

    private static IEnumerable<ZoneNight> Zones(ZoneState state)
    {
        for (int i = 0; i < state.Shell.Vehicle.Zones.Count; i++)
        {
            Zone zone = state.Shell.Vehicle.Zones[i];
            double vapour = state.VapourPa(i), settling = 0;
            foreach (ColdPlace place in state.Shell.Places)
                if (place.Zone == i && place.InUse) settling += state.SettlingKgPerS(place);
            yield return new()
            {
                Zone = zone.Name,
                TemperatureC = state.TemperaturesC[i],
                VapourPressurePa = vapour,
                RelativeHumidityFraction = vapour / SaturationPressure.PairPa(state.TemperaturesC[i]),
                DewPointC = DewPoint.OfPressureC(vapour),
                OutsideAirM3PerH = state.OutsideAirM3PerH[i],
                AirChangesPerH = state.OutsideAirM3PerH[i] / zone.VolumeM3,
                SettlingGPerH = settling * 3.6e6,
            };
        }
    }

    /// <summary>Heat to the outside, from whichever zone: what unheated zones take in they give off, so the parts add up to the heater's heat.</summary>
    internal static IReadOnlyList<LossPart> Losses(ZoneState state)
    {
        List<LossPart> parts = [];
        foreach (HeatPath path in state.Shell.Paths)
            if (path.OtherZone < 0)
                parts.Add(new()
                {
                    Name = path.Name,
                    Panel = path.Panel,
                    Kind = path.Kind switch { PathKind.Opening => LossKind.Opening, PathKind.Bridge => LossKind.Bridge, _ => LossKind.Panel },
                    Zone = state.Shell.Vehicle.Zones[path.Zone].Name,
                    AreaM2 = path.AreaM2,
                    CoefficientWPerK = path.CoefficientWPerK,
                    DifferenceK = state.TemperaturesC[path.Zone] - state.Inputs.OutsideC + path.SkyShareRatio * state.Inputs.SkyBelowAirK,
                });
        for (int i = 0; i < state.OutsideAirM3PerH.Count; i++)
            parts.Add(new()
            {
                Name = $"air exchange, {state.Shell.Vehicle.Zones[i].Name}",
                Kind = LossKind.Air,
                Zone = state.Shell.Vehicle.Zones[i].Name,
                AreaM2 = 0,
                CoefficientWPerK = ZoneBalance.AirWPerK(state.OutsideAirM3PerH[i], state.OutsideDensityKgPerM3),
                DifferenceK = state.TemperaturesC[i] - state.Inputs.OutsideC,
            });
        return parts;
    }

    private static List<SurfaceNight> Surfaces(ZoneState state, double nightH)
    {
        List<SurfaceNight> surfaces = [];
        foreach (ColdPlace place in state.Shell.Places)
        {
            if (place.Kind == SurfaceKind.BehindLining) continue;
            double temperature = state.PlaceC(place), vapour = state.VapourPa(place.Zone), settling = state.SettlingKgPerS(place) * 3.6e6;
            surfaces.Add(new()
            {
                Name = place.Name,
                Panel = place.Panel,
                Opening = place.Opening,
                Kind = place.Kind,
                Cover = place.Cover,
                InUse = place.InUse,
                Zone = state.Shell.Vehicle.Zones[place.Zone].Name,
                AreaM2 = place.AreaM2,
                TemperatureC = temperature,
                SurfaceHumidityRatio = vapour / SaturationPressure.PairPa(temperature),
                ToSpareK = temperature - DewPoint.OfPressureC(vapour),
                SettlingGPerH = settling,
                IsFrost = temperature < 0,
                SettledG = settling * nightH,
            });
        }
        return surfaces;
    }

    /// <summary>Outside air that keeps the humidity aimed at, with the cold surfaces helping at that humidity.</summary>
    internal static AirNeeded AirNeeded(Case asked, ZoneState state)
    {
        int living = ZoneBalance.LivingIndex(asked.Vehicle);
        double aim = asked.Habits.HumidityAimFraction, aimPa = aim * SaturationPressure.PairPa(state.Inputs.LivingC);
        ZoneState held = ZoneBalance.Solve(state.Shell, state.Inputs with { HeldVapourPa = aimPa });
        double ratio = held.HumidityRatiosKgPerKg[living], left = held.Inputs.VapourKgPerS;
        foreach (ColdPlace place in held.Shell.Places)
            if (place.Zone == living && place.InUse) left -= held.SettlingKgPerS(place);
        for (int i = 0; i < asked.Vehicle.Links.Count; i++)
        {
            ZoneLink link = asked.Vehicle.Links[i];
            if (link.From != asked.Vehicle.Living.Name && link.To != asked.Vehicle.Living.Name) continue;
            string other = link.From == asked.Vehicle.Living.Name ? link.To : link.From;
            double mass = link.AirM3PerM2H.Value * link.AreaM2 / 3600 * state.OutsideDensityKgPerM3;
            left -= mass * (ratio - held.HumidityRatiosKgPerKg[IndexOf(asked.Vehicle, other)]);
        }
        double now = state.OutsideAirM3PerH[living], gain = ratio - held.OutsideRatioKgPerKg;
        if (left <= 0) return new(0, 0, now, aim);
        if (gain <= 0) return new(null, null, now, aim);
        double air = left / gain / state.OutsideDensityKgPerM3 * 3600;
        return new(air, ZoneBalance.AirWPerK(air, state.OutsideDensityKgPerM3) * (state.Inputs.LivingC - state.Inputs.OutsideC), now, aim);
    }

    private static int IndexOf(Vehicle vehicle, string name) => vehicle.Zones.Select((zone, i) => (zone, i)).First(pair => pair.zone.Name == name).i;
}
