using System.Globalization;
using Thermal.Trips;

namespace Thermal.Cli.Json;

/// <summary>A trip as JSON: everything that was asked and everything that came out, hour by hour.</summary>
internal static class TripJson
{
    internal static void Asked(JsonText json, Trip trip) => json
        .Text("name", trip.Name)
        .Text("description", trip.Description)
        .Number("step_s", trip.StepS)
        .Number("start_c", trip.StartC)
        .Number("water_start_c", trip.WaterStartC)
        .Number("start_charge_fraction", trip.StartChargeFraction)
        .Object("habits", inner => Habits(inner, trip.Habits))
        .Objects("legs", trip.Legs, Leg);

    internal static void Day(JsonText json, TripDay day) => json
        .Text("date", day.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
        .Number("hours_count", day.HoursCount)
        .Number("outside_low_c", day.OutsideLowC)
        .Number("outside_high_c", day.OutsideHighC)
        .Number("operative_low_c", day.OperativeLowC)
        .Number("humidity_high_fraction", day.HumidityHighFraction)
        .Number("wettest_g", day.WettestG)
        .Number("heater_wh", day.HeaterWh)
        .Number("fuel_amount", day.FuelAmount)
        .Number("drawn_ah", day.DrawnAh)
        .Number("charged_ah", day.ChargedAh)
        .Number("charge_low_fraction", day.ChargeLowFraction)
        .Number("tank_low_c", day.TankLowC);

    private static void Leg(JsonText json, Leg leg)
    {
        json.Text("name", leg.Name)
            .Local("start_local", leg.StartLocal)
            .Local("end_local", leg.EndLocal)
            .Text("weather", leg.Weather.Name)
            .Choice<Climates.WeatherKind>("weather_kind", leg.Weather.Kind)
            .Number("speed_m_per_s", leg.SpeedMPerS)
            .Number("heading_deg", leg.HeadingDeg)
            .Number("horizon_deg", leg.HorizonDeg)
            .Number("wind_share_fraction", leg.WindShareFraction)
            .Truth("snow", leg.Snow)
            .Number("shore_w", leg.ShoreW);
        if (leg.Habits is { } habits)
            json.Object("habits", inner => Habits(inner, habits));
        else
            json.Text("habits", null);
    }

    private static void Habits(JsonText json, TripHabits habits) => json
        .Number("people_count", habits.PeopleCount)
        .Number("home_from_h", habits.HomeFromH)
        .Number("home_to_h", habits.HomeToH)
        .Number("bedtime_h", habits.BedtimeH)
        .Number("rising_h", habits.RisingH)
        .Number("day_c", habits.DayC)
        .Number("night_c", habits.NightC)
        .Number("away_c", habits.AwayC)
        .Number("driving_c", habits.DrivingC)
        .Number("engine_heat_w", habits.EngineHeatW)
        .Choice<CoverUse>("covers", habits.Covers)
        .Numbers("meals_at_h", habits.MealsAtH)
        .Numbers("showers_at_h", habits.ShowersAtH)
        .Number("drying_per_day_g", habits.DryingPerDayG)
        .Number("drying_from_h", habits.DryingFromH)
        .Choice<FanUse>("fan", habits.Fan)
        .Number("fan_above_fraction", habits.FanAboveFraction)
        .Number("hot_c", habits.HotC)
        .Truth("opens_windows_when_hot", habits.OpensWindowsWhenHot);
}
