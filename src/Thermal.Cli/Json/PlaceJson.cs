using Thermal.Climates;

namespace Thermal.Cli.Json;

/// <summary>One place with its months as JSON.</summary>
internal static class PlaceJson
{
    internal static void Write(JsonText json, Place place) => json
        .Text("name", place.Name)
        .Text("country", place.Country)
        .Number("latitude_deg", place.LatitudeDeg)
        .Number("longitude_deg", place.LongitudeDeg)
        .Number("altitude_m", place.AltitudeM)
        .Number("design_c", place.Design.TemperatureC)
        .Choice<DesignKind>("design_kind", place.Design.Kind)
        .Number("design_plus_minus_k", place.Design.PlusMinusK)
        .Text("design_note", place.Design.Note)
        .Objects("designs", place.Designs, (inner, design) => inner
            .Choice<DesignMeasure>("measure", design.Measure)
            .Number("temperature_c", design.TemperatureC)
            .Choice<DesignKind>("kind", design.Kind)
            .Number("plus_minus_k", design.PlusMinusK)
            .Text("note", design.Note))
        .Text("source", place.Source)
        .Text("period", place.Period)
        .Text("licence", place.Licence)
        .Objects("months", place.Months, (inner, month) => inner
            .Number("mean_c", month.MeanC)
            .Truth("mean_is_estimated", month.MeanIsEstimated)
            .Number("relative_humidity_fraction", month.RelativeHumidityFraction)
            .Truth("humidity_is_estimated", month.HumidityIsEstimated)
            .Number("min_c", month.MinC)
            .Number("max_c", month.MaxC)
            .Number("measured_vapour_pressure_pa", month.MeasuredVapourPressurePa)
            .Number("wind_m_per_s", month.WindMPerS)
            .Number("global_irradiance_w_per_m2", month.GlobalIrradianceWPerM2)
            .Number("day_mean_sd_k", month.DayMeanSdK));
}
