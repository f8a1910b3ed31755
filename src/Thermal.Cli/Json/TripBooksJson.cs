using Thermal.Trips;

namespace Thermal.Cli.Json;

/// <summary>What a trip adds up to, as JSON: heat, water, fuel and charge.</summary>
internal static class TripBooksJson
{
    internal static void Heat(JsonText json, HeatBook heat) => json
        .Number("heater_wh", heat.HeaterWh)
        .Number("people_wh", heat.PeopleWh)
        .Number("engine_wh", heat.EngineWh)
        .Number("sun_wh", heat.SunWh)
        .Number("water_wh", heat.WaterWh)
        .Objects("out", heat.Out, (inner, part) => inner.Text("name", part.Name).Number("heat_wh", part.Wh))
        .Number("stored_wh", heat.StoredWh)
        .Number("closure_wh", heat.ClosureWh);

    internal static void Water(JsonText json, WaterBook water) => json
        .Number("people_g", water.PeopleG)
        .Number("cooking_g", water.CookingG)
        .Number("showers_g", water.ShowersG)
        .Number("drying_g", water.DryingG)
        .Number("aired_g", water.AiredG)
        .Number("through_skin_g", water.ThroughSkinG)
        .Number("run_off_g", water.RunOffG)
        .Number("on_surfaces_g", water.OnSurfacesG)
        .Number("in_build_ups_g", water.InBuildUpsG)
        .Number("in_textiles_g", water.InTextilesG)
        .Number("in_air_g", water.InAirG)
        .Number("closure_g", water.ClosureG);

    internal static void Energy(JsonText json, TripEnergy energy) => json
        .Number("heating_fuel_amount", energy.HeatingFuelAmount)
        .Number("hot_water_fuel_amount", energy.HotWaterFuelAmount)
        .Number("cooking_fuel_amount", energy.CookingFuelAmount)
        .Number("starts_count", energy.StartsCount)
        .Number("drawn_ah", energy.DrawnAh)
        .Objects("draws", energy.Draws, (inner, draw) => inner.Text("name", draw.Name).Number("charge_ah", draw.Ah))
        .Number("sun_ah", energy.SunAh)
        .Number("alternator_ah", energy.AlternatorAh)
        .Number("shore_ah", energy.ShoreAh)
        .Number("refused_ah", energy.RefusedAh)
        .Number("lowest_charge_fraction", energy.LowestChargeFraction)
        .Local("flat_at_local", energy.FlatAtLocal)
        .Number("flat_hours_count", energy.FlatHoursCount)
        .Number("short_hours_count", energy.ShortHoursCount);

    internal static void Comfort(JsonText json, TripComfort comfort) => json
        .Number("home_hours_count", comfort.HomeHoursCount)
        .Number("cold_hours_count", comfort.ColdHoursCount)
        .Number("coolest_c", comfort.CoolestC)
        .Number("hot_hours_count", comfort.HotHoursCount)
        .Number("hottest_c", comfort.HottestC)
        .Number("warm_up_h", comfort.WarmUpH)
        .Number("highest_carbon_dioxide_ppm", comfort.HighestCarbonDioxidePpm)
        .Number("stuffy_hours_count", comfort.StuffyHoursCount)
        .Number("humid_hours_count", comfort.HumidHoursCount)
        .Number("coldest_surface_c", comfort.ColdestSurfaceC)
        .Text("coldest_surface", comfort.ColdestSurface);

    internal static void Headings(JsonText json, HeadingSpan span) => json
        .Number("worst_charge_fraction", span.WorstChargeFraction)
        .Number("best_charge_fraction", span.BestChargeFraction)
        .Number("most_fuel_amount", span.MostFuelAmount)
        .Number("least_fuel_amount", span.LeastFuelAmount)
        .Number("hottest_c", span.HottestC)
        .Number("worst_heading_deg", span.WorstHeadingDeg);
}
