using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Zones;

namespace Thermal.Cli.Json;

/// <summary>One night as JSON.</summary>
internal static class NightJson
{
    internal static void Write(JsonText json, Night night) => json
        .Object("conditions", inner => Conditions(inner, night.Conditions))
        .Objects("zones", night.Zones, Zone)
        .Objects("losses", night.Losses, Loss)
        .Number("loss_w", night.LossW)
        .Between("loss_range_w", night.LossRangeW)
        .Between("humidity_range_fraction", night.HumidityRangeFraction)
        .Between("coldest_range_c", night.ColdestRangeC)
        .Number("vapour_source_g_per_h", night.VapourSourceGPerH)
        .Number("carbon_dioxide_at_dawn_ppm", night.CarbonDioxideAtDawnPpm)
        .Objects("surfaces", night.Surfaces, Surface);

    internal static void Conditions(JsonText json, NightConditions night) => json
        .Number("outside_c", night.OutsideC)
        .Number("relative_humidity_fraction", night.RelativeHumidityFraction)
        .Number("wind_m_per_s", night.WindMPerS)
        .Number("sky_below_air_k", night.SkyBelowAirK)
        .Number("altitude_m", night.AltitudeM);

    private static void Zone(JsonText json, ZoneNight zone) => json
        .Text("zone", zone.Zone)
        .Number("temperature_c", zone.TemperatureC)
        .Number("relative_humidity_fraction", zone.RelativeHumidityFraction)
        .Number("vapour_pressure_pa", zone.VapourPressurePa)
        .Number("dew_point_c", zone.DewPointC)
        .Number("outside_air_m3_per_h", zone.OutsideAirM3PerH)
        .Number("air_changes_per_h", zone.AirChangesPerH)
        .Number("settling_g_per_h", zone.SettlingGPerH);

    private static void Loss(JsonText json, LossPart loss) => json
        .Text("name", loss.Name)
        .Text("panel", loss.Panel)
        .Choice<LossKind>("kind", loss.Kind)
        .Text("zone", loss.Zone)
        .Number("area_m2", loss.AreaM2)
        .Number("coefficient_w_per_k", loss.CoefficientWPerK)
        .Number("difference_k", loss.DifferenceK)
        .Number("loss_w", loss.LossW);

    private static void Surface(JsonText json, SurfaceNight surface) => json
        .Text("name", surface.Name)
        .Text("panel", surface.Panel)
        .Text("opening", surface.Opening)
        .Choice<SurfaceKind>("kind", surface.Kind)
        .Text("cover", surface.Cover)
        .Truth("in_use", surface.InUse)
        .Text("zone", surface.Zone)
        .Number("area_m2", surface.AreaM2)
        .Number("temperature_c", surface.TemperatureC)
        .Number("surface_humidity_ratio", surface.SurfaceHumidityRatio)
        .Number("to_spare_k", surface.ToSpareK)
        .Truth("is_frost", surface.IsFrost)
        .Number("settling_g_per_h", surface.SettlingGPerH)
        .Number("settled_g", surface.SettledG);
}
