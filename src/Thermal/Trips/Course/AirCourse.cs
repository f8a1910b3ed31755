using Thermal.Air;
using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Trips.Heat;
using Thermal.Trips.Living;
using Thermal.Trips.Outdoors;
using Thermal.Ventilation;
using Thermal.Zones;

namespace Thermal.Trips.Course;

/// <summary>Air from outside and between rooms, step by step, with the fan and the windows that people open.</summary>
/// <remarks>
/// Parked, wind is the leg's share of that at 10 m; driving, the speed presses on the same leaks with the same factor: 4 to 8 air changes at 90 km/h,
/// within the measured 1 to 47. A heater on fresh air blows in while it runs. Passages are as the file says at night, and open by day and on the road.
/// </remarks>
internal sealed class AirCourse
{
    /// <summary>How far below its limit the fan runs on, fraction of relative humidity. Source: OURS.</summary>
    internal const double FanBandFraction = 0.05;
    /// <summary>Windows go open this far below the warmth that counts as hot, and shut twice as far below it, K. Source: OURS.</summary>
    internal const double OpensBelowHotK = 2;
    /// <summary>Windows stay shut where it is not at least this much warmer than the heater is asked for, K. Source: OURS.</summary>
    internal const double AboveWantedK = 1;
    /// <summary>Air changes with windows and roof light open, 1/h. Source: OURS; parked cars with one window open had 6.5.</summary>
    internal const double WindowsOpenPerH = 15;

    private readonly Case asked;
    private readonly Vehicle vehicle;
    private readonly int living;

    /// <param name="asked">The vehicle with its fan and heater.</param>
    internal AirCourse(Case asked)
    {
        (this.asked, vehicle, living) = (asked, asked.Vehicle, ZoneBalance.LivingIndex(asked.Vehicle));
        OutsideAirM3PerH = new double[vehicle.Zones.Count];
    }

    /// <summary>True while the fan runs.</summary>
    internal bool FanOn { get; private set; }
    /// <summary>True while windows stand open.</summary>
    internal bool WindowsOpen { get; private set; }
    /// <summary>Outside air of each room, m³/h.</summary>
    internal double[] OutsideAirM3PerH { get; }
    /// <summary>Air past the skin, m/s.</summary>
    internal double AirPastMPerS { get; private set; }

    /// <summary>Fills in the air of a step.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="habits">Habits on it.</param>
    /// <param name="doing">What people do.</param>
    /// <param name="outside">The outside.</param>
    /// <param name="heat">Temperatures at the begin of the step.</param>
    /// <param name="livingPa">Vapour pressure of the living space then, Pa.</param>
    /// <param name="hasCurrent">True where the battery can drive a fan.</param>
    /// <param name="heaterRan">True where the heater ran in the step before.</param>
    /// <param name="drive">Where to write it.</param>
    internal void Fill(Leg leg, TripHabits habits, Doings doing, OutdoorsNow outside, HeatState heat, double livingPa, bool hasCurrent, bool heaterRan, Drive drive)
    {
        AirPastMPerS = leg.SpeedMPerS ?? Math.Min(outside.WindMPerS * leg.WindShareFraction, 40);
        double density = MoistAir.DryAirDensityKgPerM3(outside.AirC, outside.VapourPa, outside.PressurePa);
        FanOn = asked.Fan is not null && hasCurrent && WantsFan(habits, doing, outside, livingPa / SaturationPressure.OverWaterPa(heat.AirC[living]), livingPa);
        WindowsOpen = habits.OpensWindowsWhenHot && doing.IsHome && !doing.IsDriving && WantsWindows(habits, doing, outside.AirC, heat);
        for (int z = 0; z < OutsideAirM3PerH.Length; z++)
        {
            Zone zone = vehicle.Zones[z];
            double flow = AirFlow.OfZoneM3PerH(zone, heat.AirC[z], outside.AirC, AirPastMPerS, vehicle.WindPressureFactor.Value, density, z == living && FanOn ? asked.Fan!.FlowM3PerH : 0);
            if (z == living && heaterRan && asked.HeaterOnFreshAir) flow += Balances.HeaterFreshAirM3PerH;
            if (z == living && WindowsOpen) flow += WindowsOpenPerH * zone.VolumeM3;
            OutsideAirM3PerH[z] = flow;
            drive.OutsideAirKgPerS[z] = flow / 3600 * density;
        }
        for (int i = 0; i < drive.LinkAirKgPerS.Length; i++)
        {
            ZoneLink link = vehicle.Links[i];
            drive.LinkOpen[i] = link.State == LinkState.Open || !doing.IsShut;
            double perM2 = link.State == LinkState.Closed && drive.LinkOpen[i] ? ZoneLink.OpenAirM3PerM2H.Value : link.AirM3PerM2H.Value;
            drive.LinkAirKgPerS[i] = perM2 * link.AreaM2 / 3600 * density;
        }
    }

    private bool WantsFan(TripHabits habits, Doings doing, OutdoorsNow outside, double humidityFraction, double livingPa) => habits.Fan switch
    {
        FanUse.AboveHumidity => outside.VapourPa < livingPa && humidityFraction > habits.FanAboveFraction - (FanOn ? FanBandFraction : 0),
        FanUse.WhenHome => doing.IsHome && !doing.IsDriving,
        FanUse.AtWetWork => doing.IsWetWork,
        _ => false,
    };

    private bool WantsWindows(TripHabits habits, Doings doing, double outsideC, HeatState heat)
    {
        double operativeC = heat.OperativeC(living), fromC = habits.HotC - OpensBelowHotK * (WindowsOpen ? 2 : 1);
        return outsideC < heat.AirC[living] && operativeC > fromC && !(operativeC <= doing.WantedC + AboveWantedK);
    }
}
