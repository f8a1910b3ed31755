using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Json;

/// <summary>An assessment as JSON: everything that was put in and everything that came out, so that every sum can be done again.</summary>
internal static class AssessmentJson
{
    internal static void Write(JsonText json, Assessment found, IReadOnlyList<AdviceItem> advice, Figures figures) => json
        .Text("vehicle", found.Case.Vehicle.Name)
        .Text("verdict", Verdict.Of(found, figures))
        .Objects("headlines", Headlines.Of(found, figures), (inner, headline) => inner
            .Text("title", headline.Title).Text("answer", headline.Answer).Text("detail", headline.Detail).Text("remark", headline.Remark))
        .Objects("findings", found.Findings, (inner, finding) => inner
            .Choice<FindingKind>("kind", finding.Kind).Text("where", finding.Where).Number("figure", finding.FigureInItsUnit)
            .Text("sentence", FindingSentence.Of(finding, found, advice, figures)))
        .Objects("advice", advice, (inner, item) => Tried(inner, item, figures))
        .Object("case", inner => CaseJson.Write(inner, found.Case))
        .Objects("panels", found.Panels, PanelJson.Write)
        .Objects("bridges", found.Bridges, (inner, bridge) => BridgeJson.Write(inner, bridge, BridgeWords.Answer(bridge, figures)))
        .Object("cold_night", inner => NightJson.Write(inner, found.ColdNight))
        .Object("mild_night", inner => NightJson.Write(inner, found.MildNight))
        .Object("heating", inner => HeatingJson.Write(inner, found.Heating))
        .Objects("build_ups", found.BuildUps, (inner, damp) => BuildUpJson.Write(inner, damp, figures))
        .Objects("covers", found.Covers, (inner, tried) => inner
            .Text("panel", tried.Panel).Text("opening", tried.Opening).Text("cover", tried.Cover).Truth("in_use", tried.InUse)
            .Number("glass_c", tried.GlassC).Number("to_spare_k", tried.ToSpareK).Number("glass_g", tried.GlassG).Number("elsewhere_g", tried.ElsewhereG)
            .Number("room_humidity_fraction", tried.RoomHumidityFraction).Number("loss_w", tried.LossW))
        .Objects("mould", found.Mould, (inner, mould) => inner
            .Text("name", mould.Name).Text("panel", mould.Panel).Number("worst_month", mould.WorstMonth).Number("surface_humidity_fraction", mould.SurfaceHumidityFraction)
            .Number("temperature_factor", mould.TemperatureFactor).Number("temperature_c", mould.TemperatureC).Truth("can_grow", mould.CanGrow))
        .Object("air_needed_cold", inner => Air(inner, found.AirNeededCold))
        .Object("air_needed_mild", inner => Air(inner, found.AirNeededMild))
        .Object("space", inner => inner
            .Number("headroom_m", found.Space.HeadroomM).Number("inner_width_m", found.Space.InnerWidthM)
            .Number("build_up_mass_kg", found.Space.BuildUpMassKg).Number("lining_mass_kg", found.Space.LiningMassKg))
        .Object("mean_k", inner => inner
            .Number("k_w_per_m2k", found.MeanK.MeanKWPerM2K).Number("area_m2", found.MeanK.MeanAreaM2))
        .Objects("tanks", found.Tanks, (inner, tank) => inner
            .Text("name", tank.Name).Number("surroundings_c", tank.SurroundingsC).Number("hours_to_zero_h", tank.HoursToZeroH)
            .Number("hours_to_ten_percent_ice_h", tank.HoursToTenPercentIceH).Number("hold_w", tank.HoldW).Truth("pad_is_enough", tank.PadIsEnough))
        .Texts("cautions", Cautions.Of(found.Case))
        .Texts("assumptions", Assumptions.Of(found, figures))
        .Texts("limits", Assumptions.Limits);

    private static void Tried(JsonText json, AdviceItem item, Figures figures) => json
        .Choice<Change>("change", item.Change)
        .Text("where", item.Where)
        .Number("water_avoided_g", item.WaterAvoidedG)
        .Number("loss_saved_w", item.LossSavedW)
        .Number("peak_avoided_g_per_m2", item.PeakAvoidedGPerM2)
        .Number("build_ups_dried_count", item.BuildUpsDriedCount)
        .Number("humidity_drop_fraction", item.HumidityDropFraction)
        .Number("headroom_lost_m", item.HeadroomLostM)
        .Text("sentence", AdviceSentence.Of(item, figures));

    private static void Air(JsonText json, AirNeeded air) => json
        .Number("air_m3_per_h", air.AirM3PerH).Number("heat_w", air.HeatW).Number("now_m3_per_h", air.NowM3PerH).Number("aim_fraction", air.AimFraction);
}
