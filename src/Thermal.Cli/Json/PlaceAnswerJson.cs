using Thermal.Climates;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Json;

/// <summary>One place in full as JSON.</summary>
internal static class PlaceAnswerJson
{
    internal static void Write(JsonText top, PlaceAnswer found, IReadOnlyList<string> pictures, Figures figures) => top
        .Text("verdict", PlaceWords.Verdict(found.Place, figures))
        .Object("place", inner => PlaceJson.Write(inner, found.Place))
        .Objects("filled_months", found.Months, (inner, month) => inner
            .Number("day_mean_sd_k", month.DayMeanSdK)
            .Truth("day_mean_sd_is_estimated", month.DayMeanSdIsEstimated)
            .Number("vapour_pressure_pa", month.Normals.VapourPressurePa)
            .Truth("vapour_pressure_is_estimated", month.VapourPressureIsEstimated)
            .Number("wind_m_per_s", month.WindMPerS)
            .Truth("wind_is_assumed", month.WindIsAssumed)
            .Number("global_irradiance_w_per_m2", month.GlobalIrradianceWPerM2)
            .Truth("sun_is_estimated", month.SunIsEstimated))
        .Number("seed", found.Seed)
        .Objects("hours_colder", found.Year is null ? [] : ColdHours.UsualLimitsC, (inner, limitC) => inner.Number("limit_c", limitC).Number("below_h", ColdHours.BelowH(found.Year!, limitC)))
        .Texts("lacks", found.Year is not { } year ? [PlaceWords.NoHours(found.Place)!] : [.. year.Gaps.Select(gap => WeatherWords.Of(gap, figures)), WeatherWords.NeverCount])
        .Number("heading_deg", found.HeadingDeg)
        .Number("horizon_deg", found.HorizonDeg)
        .Numbers("ground_fraction", found.GroundFractions)
        .Objects("sun", found.Sun, (inner, month) => inner
            .Number("month", month.Month)
            .Number("roof_w_per_m2", month.RoofWPerM2)
            .Number("left_w_per_m2", month.LeftWPerM2)
            .Number("right_w_per_m2", month.RightWPerM2)
            .Number("front_w_per_m2", month.FrontWPerM2)
            .Number("rear_w_per_m2", month.RearWPerM2))
        .Objects("sun_any_heading", found.SunAnyHeading, (inner, month) => inner
            .Number("month", month.Month)
            .Number("roof_w_per_m2", month.RoofWPerM2)
            .Number("least_w_per_m2", month.LeastWPerM2)
            .Number("least_azimuth_deg", month.LeastAzimuthDeg)
            .Number("most_w_per_m2", month.MostWPerM2)
            .Number("most_azimuth_deg", month.MostAzimuthDeg))
        .Texts("pictures", pictures);
}
