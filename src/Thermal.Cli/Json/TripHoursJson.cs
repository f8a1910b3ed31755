using Thermal.Trips;

namespace Thermal.Cli.Json;

/// <summary>The hours of a trip as JSON: columns of one length, entry i for hour i.</summary>
internal static class TripHoursJson
{
    internal static void Write(JsonText json, TripHours hours) => json
        .Local("start_local", hours.StartLocal)
        .Number("count", hours.Count)
        .Numbers("legs", hours.Legs.Select(leg => (double)leg))
        .Numbers("outside_c", hours.OutsideC)
        .Numbers("sky_c", hours.SkyC)
        .Numbers("air_past_m_per_s", hours.AirPastMPerS)
        .Numbers("sun_on_flat_w_per_m2", hours.SunOnFlatWPerM2)
        .NumbersOrNull("wanted_c", hours.WantedC.Select(wantedC => double.IsNaN(wantedC) ? (double?)null : wantedC))
        .Numbers("operative_c", hours.OperativeC)
        .Numbers("carbon_dioxide_ppm", hours.CarbonDioxidePpm)
        .Numbers("heater_w", hours.HeaterW)
        .Numbers("starts_count", hours.StartsCount)
        .Numbers("fuel_amount", hours.FuelAmount)
        .Numbers("drawn_a", hours.DrawnA)
        .Numbers("charged_a", hours.ChargedA)
        .Numbers("charge_fraction", hours.ChargeFraction)
        .Numbers("battery_c", hours.BatteryC)
        .Numbers("on_glass_g", hours.OnGlassG)
        .Numbers("frost_on_glass_g", hours.FrostOnGlassG)
        .Numbers("on_linings_g", hours.OnLiningsG)
        .Numbers("in_build_ups_g", hours.InBuildUpsG)
        .Objects("rooms", hours.Rooms, (inner, room) => inner
            .Text("zone", room.Zone)
            .Numbers("air_c", room.AirC)
            .Numbers("humidity_fraction", room.HumidityFraction)
            .Numbers("vapour_pa", room.VapourPa)
            .Numbers("outside_air_m3_per_h", room.OutsideAirM3PerH)
            .Numbers("coldest_c", room.ColdestC))
        .Objects("panels", hours.Panels, (inner, panel) => inner
            .Text("panel", panel.Panel)
            .Numbers("inner_c", panel.InnerC)
            .Numbers("outer_c", panel.OuterC))
        .Objects("tanks", hours.Tanks, (inner, tank) => inner
            .Text("name", tank.Name)
            .Numbers("water_c", tank.WaterC)
            .Numbers("ice_fraction", tank.IceFraction)
            .Numbers("pad_w", tank.PadW));
}
