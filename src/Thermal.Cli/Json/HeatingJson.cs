using Thermal.Assessments;
using Thermal.Heating;

namespace Thermal.Cli.Json;

/// <summary>Heater, fuel and current as JSON.</summary>
internal static class HeatingJson
{
    internal static void Write(JsonText json, HeatingAnswer heating) => json
        .Between("need_w", heating.NeedW)
        .Between("steady_w", heating.SteadyW)
        .Between("warm_up_w", heating.WarmUpW)
        .Truth("warm_up_decides", heating.WarmUpDecides)
        .Number("warm_up_h", heating.WarmUpH)
        .Number("highest_output_w", heating.HighestOutputW)
        .Number("lowest_output_w", heating.LowestOutputW)
        .Number("altitude_factor", heating.AltitudeFactor)
        .Truth("is_enough", heating.IsEnough)
        .Text("suggested", heating.Suggested?.Key)
        .Object("cold_night", inner => Night(inner, heating.Cold))
        .Object("mild_night", inner => Night(inner, heating.Mild))
        .Between("dawn_heater_off_c", heating.DawnHeaterOffC)
        .Objects("grades", heating.Grades, (inner, grade) => inner
            .Number("grade", grade.Grade).Number("outside_c", grade.OutsideC).Number("limit_h", grade.LimitH)
            .Number("reached_after_h", grade.ReachedAfterH).Truth("is_reached", grade.IsReached))
        .Object("hot_water", inner => inner
            .Number("heat_kwh_per_day", heating.HotWater.HeatKWhPerDay).Number("fuel_amount_per_day", heating.HotWater.FuelAmountPerDay));

    internal static void Class(JsonText json, HeaterClass heater) => json
        .Text("key", heater.Key)
        .Text("name", heater.Name)
        .Choice<Materials.Fuel>("fuel", heater.Fuel)
        .Number("lowest_w", heater.LowestW)
        .Number("highest_w", heater.HighestW)
        .Bounded("efficiency_fraction", heater.EfficiencyFraction)
        .Bounded("electric_lowest_w", heater.ElectricLowestW)
        .Bounded("electric_highest_w", heater.ElectricHighestW)
        .Bounded("start_wh", heater.StartWh)
        .Truth("heats_water", heater.HeatsWater);

    private static void Night(JsonText json, NightHeating night) => json
        .Between("heat_w", night.HeatW)
        .Number("output_fraction", night.OutputFraction)
        .Number("starts_count", night.StartsCount)
        .Number("at_lowest_output_c", night.AtLowestOutputC)
        .Between("fuel_amount", night.FuelAmount)
        .Between("charge_ah", night.ChargeAh);
}
