using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.People;

namespace Thermal.Cli.Json;

/// <summary>What was asked, as JSON.</summary>
internal static class CaseJson
{
    internal static void Write(JsonText json, Case assessed)
    {
        Vehicle vehicle = assessed.Vehicle;
        json.Text("description", vehicle.Description)
            .Number("length_m", vehicle.LengthM)
            .Number("width_m", vehicle.WidthM)
            .Number("height_m", vehicle.HeightM)
            .Number("furnishings_j_per_m2k", vehicle.FurnishingsJPerM2K)
            .Bounded("wind_pressure_factor", vehicle.WindPressureFactor)
            .Objects("zones", vehicle.Zones, Zone)
            .Objects("links", vehicle.Links, (inner, link) => inner
                .Text("from", link.From).Text("to", link.To).Number("area_m2", link.AreaM2).Choice<LinkState>("state", link.State)
                .Bounded("resistance_m2k_per_w", link.ResistanceM2KPerW).Bounded("air_m3_per_m2h", link.AirM3PerM2H))
            .Object("heater", inner => HeatingJson.Class(inner, assessed.Heater))
            .Truth("heater_on_fresh_air", assessed.HeaterOnFreshAir)
            .Number("warm_up_h", assessed.WarmUpH)
            .Number("battery_ah", assessed.BatteryAh)
            .Object("habits", inner => Habits(inner, assessed.Habits))
            .Objects("tanks", assessed.Tanks, (inner, tank) => inner
                .Text("name", tank.Name).Number("water_l", tank.WaterL).Number("area_m2", tank.AreaM2)
                .Number("insulation_m2k_per_w", tank.InsulationM2KPerW).Text("zone", tank.Zone).Number("pad_w", tank.PadW));
        if (assessed.Place is { } place)
            json.Object("place", inner => PlaceJson.Write(inner, place));
        else
            json.Text("place", null);
    }

    private static void Zone(JsonText json, Zone zone) => json
        .Text("name", zone.Name)
        .Choice<ZoneKind>("kind", zone.Kind)
        .Number("volume_m3", zone.VolumeM3)
        .Number("floor_area_m2", zone.FloorAreaM2)
        .Number("height_m", zone.HeightM)
        .Bounded("leak_each_m2", zone.LeakEachM2)
        .Number("air_changes_per_h", zone.AirChangesPerH)
        .Objects("vents", zone.Vents, (inner, vent) => inner
            .Text("name", vent.Name).Number("free_area_m2", vent.FreeAreaM2).Truth("is_high", vent.IsHigh));

    private static void Habits(JsonText json, Habits habits) => json
        .Number("sleepers_count", habits.SleepersCount)
        .Number("set_point_c", habits.SetPointC)
        .Number("night_h", habits.NightH)
        .Number("at_home_h", habits.AtHomeH)
        .Number("meals_per_day", habits.MealsPerDay)
        .Bounded("steam_per_meal_g", habits.SteamPerMealG)
        .Number("flame_per_meal_kwh", habits.FlamePerMealKWh)
        .Choice("cooker_fuel", habits.CookerFuel)
        .Number("showers_per_day", habits.ShowersPerDay)
        .Bounded("vapour_per_shower_g", habits.VapourPerShowerG)
        .Number("water_per_shower_l", habits.WaterPerShowerL)
        .Number("drying_per_day_g", habits.DryingPerDayG)
        .Number("pets_g_per_h", habits.PetsGPerH)
        .Number("fan_at_night_m3_per_h", habits.FanAtNightM3PerH)
        .Number("fan_current_a", habits.FanCurrentA)
        .Number("humidity_aim_fraction", habits.HumidityAimFraction)
        .Choice<HumidityRule>("humidity", habits.Humidity)
        .Number("fixed_humidity_fraction", habits.FixedHumidityFraction)
        .Number("humidity_class", habits.HumidityClass)
        .Numbers("nights_lived_in_fraction", habits.NightsLivedInFraction);
}
