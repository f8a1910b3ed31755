using System.Globalization;
using System.Text;
using Thermal.Air;
using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>Writes weather in our own columns.</summary>
internal static class OwnText
{
    internal static string Of(Weather weather)
    {
        (string Name, int Digits, IReadOnlyList<double>? Values)[] all =
        [
            ("wind_m_s", 2, weather.WindMPerS), ("global_w_m2", 1, weather.GlobalWPerM2), ("beam_normal_w_m2", 1, weather.BeamNormalWPerM2),
            ("diffuse_w_m2", 1, weather.DiffuseWPerM2), ("sky_c", 2, weather.SkyC), ("pressure_pa", 0, weather.PressurePa),
        ];
        var columns = all.Where(column => column.Values is not null).ToArray();
        StringBuilder text = Header(weather);
        text.Append(OwnLayout.TimeColumn).Append(",air_c,vapour_pressure_pa");
        foreach (var column in columns) text.Append(',').Append(column.Name);
        text.Append('\n');
        DateTime start = weather.StartUtc.AddHours(weather.UtcOffsetH);
        string stamps = IsWhole(60) ? "yyyy-MM-dd'T'HH:mm" : IsWhole(1) ? "yyyy-MM-dd'T'HH:mm:ss" : "yyyy-MM-dd'T'HH:mm:ss.fff";
        for (int i = 0; i < weather.Count; i++)
        {
            double airC = Rounded(weather.AirC[i], 2);
            text.Append(start.AddSeconds(i * weather.StepS).ToString(stamps, CultureInfo.InvariantCulture))
                .Append(CultureInfo.InvariantCulture, $",{airC:0.##},{WrittenPa(weather.VapourPa[i], airC):0.##}");
            foreach (var column in columns) text.Append(',').Append(Rounded(column.Values![i], column.Digits).ToString("0.##", CultureInfo.InvariantCulture));
            text.Append('\n');
        }
        return text.ToString();

        bool IsWhole(int seconds) => weather.StepS % seconds == 0 && start.TimeOfDay.TotalSeconds % seconds == 0;
    }

    /// <summary>Adding nothing makes a negative nothing a plain one.</summary>
    private static double Rounded(double value, int digits) => Math.Round(value, digits) + 0.0;

    /// <summary>Downwards, and at most saturation at the written temperature: what is read again is never above saturation by rounding.</summary>
    private static double WrittenPa(double vapourPa, double airC) => Math.Floor(Math.Min(vapourPa, SaturationPressure.OverWaterPa(airC)) * 100 + 1e-6) / 100;

    private static StringBuilder Header(Weather weather)
    {
        StringBuilder text = new(weather.Count * 60 + 500);
        Line(OwnHeader.NameKey, OneLine(weather.Name));
        Line(OwnHeader.LatitudeKey, Number(weather.LatitudeDeg));
        Line(OwnHeader.LongitudeKey, Number(weather.LongitudeDeg));
        Line(OwnHeader.AltitudeKey, Number(weather.AltitudeM));
        Line(OwnHeader.OffsetKey, Number(weather.UtcOffsetH));
        Line(OwnHeader.StampKey, OwnHeader.Stamps[0].Word);
        Line(OwnHeader.SourceKey, OneLine(weather.Source));
        Line(OwnHeader.KindKey, OwnHeader.Kinds.First(kind => kind.Kind == weather.Kind).Word);
        if (weather.Gaps.Count > 0) Line(OwnHeader.EstimatedKey, string.Join(", ", weather.Gaps.Select(gap => OwnHeader.Estimates.First(known => known.Gap == gap).Word)));
        return text;

        void Line(string key, string value) => text.Append("# ").Append(key).Append(": ").Append(value).Append('\n');
    }

    private static string Number(double value) => value.ToString("0.##########", CultureInfo.InvariantCulture);

    private static string OneLine(string text) => text.ReplaceLineEndings(" ").Trim();
}
