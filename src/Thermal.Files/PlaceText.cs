using System.Globalization;
using System.Text;
using Thermal.Climates;

namespace Thermal.Files;

/// <summary>Writes a place as a file that <see cref="PlaceFile"/> reads; what was estimated is left out.</summary>
public static class PlaceText
{
    private const string Columns = "month,mean_c,min_c,max_c,relative_humidity_percent,vapour_pressure_pa,wind_m_s,global_kwh_m2_day,day_mean_sd_k";

    /// <summary>The whole file: header lines, then the table of twelve months.</summary>
    /// <param name="place">The place. Reading gives it back to the digits written: 0.01 K, 0.1 % humidity, 1 Pa, 0.01 m/s, 0.001 kWh/m² a day.</param>
    public static string Of(Place place)
    {
        var text = new StringBuilder();
        Line(text, "name", place.Name);
        Line(text, "country", place.Country);
        Line(text, "latitude_deg", Number(place.LatitudeDeg, "0.####"));
        Line(text, "longitude_deg", Number(place.LongitudeDeg, "0.####"));
        Line(text, "altitude_m", Number(place.AltitudeM, "0.#"));
        Line(text, "source", place.Source);
        Line(text, "period", place.Period);
        Line(text, "licence", place.Licence);
        foreach (DesignTemperature design in place.Designs)
            if (design.Kind != DesignKind.Estimated && KeyOf(design.Measure) is { } key)
                Line(text, key, $"{Number(design.TemperatureC, "0.0#")}, {design.Kind.ToString().ToLowerInvariant()}, {(design.PlusMinusK > 0 ? Number(design.PlusMinusK, "0.0#") : "")}, {design.Note}");
        text.Append(Columns).Append('\n');
        for (int i = 0; i < place.Months.Count; i++)
            text.Append(Row(i + 1, place.Months[i])).Append('\n');
        return text.ToString();
    }

    private static string Row(int month, MonthNormals normals) => string.Join(',',
        month.ToString(CultureInfo.InvariantCulture),
        normals.MeanIsEstimated ? "" : Number(normals.MeanC, "0.0#"),
        Number(normals.MinC, "0.0#"),
        Number(normals.MaxC, "0.0#"),
        normals.HumidityIsEstimated ? "" : Number(normals.RelativeHumidityFraction * 100, "0.0"),
        Number(normals.MeasuredVapourPressurePa, "0"),
        Number(normals.WindMPerS, "0.0#"),
        Number(normals.GlobalIrradianceWPerM2 * 24 / 1000, "0.000"),
        Number(normals.DayMeanSdK, "0.0#"));

    private static string Number(double? value, string form) => value?.ToString(form, CultureInfo.InvariantCulture) ?? "";

    // A name with a line break would end its line.
    private static void Line(StringBuilder text, string key, string value) => text.Append("# ").Append(key).Append(": ").Append(value.ReplaceLineEndings(" ")).Append('\n');

    // The design temperature of a measure of its own has keys of its own, which a file made from hours never needs.
    private static string? KeyOf(DesignMeasure measure) => measure switch
    {
        DesignMeasure.HoursAt996 => "design_99_6_c",
        DesignMeasure.HoursAt99 => "design_99_c",
        DesignMeasure.TwoDayMean => "design_two_day_c",
        DesignMeasure.YearlyLowest => "design_yearly_lowest_c",
        _ => null,
    };
}
