using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Trips;
using Thermal.Zones;

namespace Thermal.Cli.Json;

/// <summary>Where water settled on a trip, and what it did, as JSON.</summary>
internal static class TripWaterJson
{
    internal static void Wet(JsonText json, WetPlace place) => json
        .Text("name", place.Name)
        .Text("panel", place.Panel)
        .Choice<SurfaceKind>("kind", place.Kind)
        .Number("area_m2", place.AreaM2)
        .Number("most_g", place.MostG)
        .Local("most_at_local", place.MostAtLocal)
        .Number("most_frost_g", place.MostFrostG)
        .Number("melted_g", place.MeltedG)
        .Number("settled_g", place.SettledG)
        .Number("run_off_g", place.RunOffG)
        .Number("wet_hours_count", place.WetHoursCount)
        .Number("at_end_g", place.AtEndG)
        .Number("lowest_c", place.LowestC);

    internal static void BuildUp(JsonText json, BuildUpTrip buildUp) => json
        .Text("panel", buildUp.Panel)
        .Number("area_m2", buildUp.AreaM2)
        .Numbers("at_faces_g_per_m2", buildUp.AtFacesGPerM2)
        .Number("most_g_per_m2", buildUp.MostGPerM2)
        .Local("most_at_local", buildUp.MostAtLocal)
        .Number("most_face", buildUp.MostFace)
        .Number("at_end_g_per_m2", buildUp.AtEndGPerM2)
        .Number("by_air_g_per_m2", buildUp.ByAirGPerM2)
        .Number("by_diffusion_g_per_m2", buildUp.ByDiffusionGPerM2);

    internal static void Mould(JsonText json, MouldTrip mould) => json
        .Text("name", mould.Name)
        .Text("panel", mould.Panel)
        .Choice<MouldClass>("class", mould.Class)
        .Number("highest_factor", mould.HighestFactor)
        .Number("at_end_factor", mould.AtEndFactor)
        .Number("mean_humidity_fraction", mould.MeanHumidityFraction);

    internal static void Metal(JsonText json, WetMetal metal) => json
        .Text("name", metal.Name)
        .Text("panel", metal.Panel)
        .Number("wet_hours_count", metal.WetHoursCount)
        .Number("per_year_h", metal.PerYearH);

    internal static void Tank(JsonText json, TankTrip tank) => json
        .Text("name", tank.Name)
        .Number("lowest_c", tank.LowestC)
        .Local("freezes_at_local", tank.FreezesAtLocal)
        .Number("most_ice_fraction", tank.MostIceFraction)
        .Number("pad_wh", tank.PadWh)
        .Number("hold_w", tank.HoldW);

    internal static void Pipe(JsonText json, PipeTrip pipe) => json
        .Text("name", pipe.Name)
        .Number("lowest_c", pipe.LowestC)
        .Local("freezes_at_local", pipe.FreezesAtLocal)
        .Number("most_ice_fraction", pipe.MostIceFraction);
}
