using System.Globalization;
using Thermal.Choices;
using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Json;

/// <summary>A trip as JSON: everything that was asked and everything that came out, hour by hour.</summary>
internal static class TripJson
{
    internal static void Write(JsonText json, TripAnswer answer, Figures figures)
    {
        TripResult found = answer.Found;
        json.Text("vehicle", found.Asked.Case.Vehicle.Name)
            .Text("verdict", TripVerdict.Of(found, figures))
            .Objects("headlines", TripHeadlines.Of(found, figures), (inner, headline) => inner
                .Text("title", headline.Title).Text("answer", headline.Answer).Text("detail", headline.Detail).Text("remark", headline.Remark))
            .Objects("findings", found.Findings, (inner, finding) => inner
                .Choice<TripFindingKind>("kind", finding.Kind).Text("about", finding.About).Number("figure", finding.FigureInItsUnit).Local("at_local", finding.AtLocal)
                .Text("sentence", TripFindings.Of(finding, found, figures)))
            .Objects("changes", answer.Advice?.Items ?? [], (inner, item) => Tried(inner, item, found, figures))
            .Object("trip", inner => Asked(inner, found.Asked.Trip))
            .Object("case", inner => CaseJson.Write(inner, found.Asked.Case))
            .Objects("days", found.Days, Day)
            .Object("heat", inner => TripBooksJson.Heat(inner, found.Heat))
            .Object("water", inner => TripBooksJson.Water(inner, found.Water))
            .Object("energy", inner => TripBooksJson.Energy(inner, found.Energy))
            .Object("comfort", inner => TripBooksJson.Comfort(inner, found.Comfort))
            .Objects("wet", found.Wet, TripWaterJson.Wet)
            .Objects("build_ups", found.BuildUps, TripWaterJson.BuildUp)
            .Objects("mould", found.Mould, TripWaterJson.Mould)
            .Objects("metal", found.Metal, TripWaterJson.Metal)
            .Objects("tanks", found.Tanks, TripWaterJson.Tank)
            .Objects("pipes", found.Pipes, TripWaterJson.Pipe);
        if (found.OtherHeadings is { } span)
            json.Object("other_headings", inner => TripBooksJson.Headings(inner, span));
        else
            json.Text("other_headings", null);
        json.Object("hours", inner => TripHoursJson.Write(inner, found.Hours))
            .Texts("cautions", TripCautions.Of(found))
            .Texts("assumptions", TripAssumptions.Of(found, figures))
            .Texts("limits", TripAssumptions.Limits)
            .Text("csv", answer.Csv)
            .Texts("pictures", answer.Pictures);
    }

    private static void Tried(JsonText json, TripChangeItem item, TripResult found, Figures figures) => json
        .Choice<TripChange>("change", item.Change)
        .Text("where", item.Where)
        .Number("fuel_amount", item.FuelAmount)
        .Number("most_water_g", item.MostWaterG)
        .Number("run_off_g", item.RunOffG)
        .Number("wet_inside_g", item.WetInsideG)
        .Number("cold_hours_count", item.ColdHoursCount)
        .Number("flat_hours_count", item.FlatHoursCount)
        .Number("ice_fraction", item.IceFraction)
        .Number("hot_hours_count", item.HotHoursCount)
        .Number("helps_fraction", item.HelpsFraction)
        .Text("sentence", TripChangeWords.Of(item, found, figures));

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
