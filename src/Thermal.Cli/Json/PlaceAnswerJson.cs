using System.Globalization;
using Thermal.Climates;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Json;

/// <summary>One place in full as JSON.</summary>
internal static class PlaceAnswerJson
{
    /// <summary>A place, a weather file, or both; keys of what is not there are null or empty.</summary>
    internal static void Write(JsonText top, PlaceAnswer? place, WeatherAnswer? file, IReadOnlyList<string> pictures, Figures figures)
    {
        if (place is not null)
            Place(top, place, figures);
        else
            top.Text("place", null);
        if (file is not null)
            File(top, file, figures);
        else
            top.Text("weather", null).Text("design_conditions", null);
        top.Texts("pictures", pictures);
    }

    private static void File(JsonText top, WeatherAnswer found, Figures figures)
    {
        Weather weather = found.Weather;
        top.Object("weather", inner => inner
            .Text("file", found.File)
            .Text("name", weather.Name)
            .Choice<Files.Weathers.WeatherLayout>("layout", found.Reading.Layout)
            .Choice<WeatherKind>("kind", weather.Kind)
            .Text("source", weather.Source)
            .Number("latitude_deg", weather.LatitudeDeg)
            .Number("longitude_deg", weather.LongitudeDeg)
            .Number("altitude_m", weather.AltitudeM)
            .Number("utc_offset_h", weather.UtcOffsetH)
            .Text("start_utc", weather.StartUtc.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture))
            .Number("step_s", weather.StepS)
            .Number("steps", weather.Count)
            .Texts("remarks", WeatherRemarkWords.All(found.Reading.Remarks, figures))
            .Texts("saved", found.Saved));
        if (found.Conditions is not { } conditions)
        {
            top.Text("design_conditions", null);
            return;
        }
        top.Object("design_conditions", inner => inner
            .Number("exceeded_by_99_6_percent_c", conditions.HoursAt996C)
            .Number("exceeded_by_99_percent_c", conditions.HoursAt99C)
            .Number("coldest_24_h_c", conditions.ColdestDayC)
            .Number("coldest_48_h_c", conditions.ColdestTwoDaysC)
            .Number("coldest_72_h_c", conditions.ColdestThreeDaysC)
            .Number("coldest_step_c", conditions.ColdestC)
            .Text("coldest_72_h_middle_utc", conditions.ColdestThreeDaysUtc.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture))
            .Number("years", conditions.YearsRatio));
    }

    private static void Place(JsonText top, PlaceAnswer found, Figures figures) => top
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
        .Texts("lacks", found.Year is not { } year ? [PlaceWords.NoHours(found.Place)!] : [.. year.Gaps.Select(gap => WeatherWords.Of(gap, figures)), .. year.Kind == WeatherKind.Generated ? (string[])[WeatherWords.NeverCount] : []])
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
            .Number("most_azimuth_deg", month.MostAzimuthDeg));
}
