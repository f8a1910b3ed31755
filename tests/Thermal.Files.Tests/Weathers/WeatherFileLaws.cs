using CsCheck;
using Thermal.Air;
using Thermal.Climates;
using Thermal.Files.Weathers;

namespace Thermal.Files.Tests.Weathers;

/// <summary>Weather written and read is the same, and whatever happens to a file, it is weather or it is problems.</summary>
public sealed class WeatherFileLaws
{
    private static readonly Gen<double?[]> Row =
        from air in Gen.Double[-40, 40]
        from humidity in Gen.Double[0.1, 1]
        from wind in Gen.Double[0, 18]
        select new double?[] { air, humidity * SaturationPressure.OverWaterPa(air), wind };

    private static readonly Gen<Weather> Any =
        from minutes in OneOf(1, 5, 10, 15, 20, 30, 60, 120, 180)
        from rows in Row.Array[2, 60]
        from sun in Gen.Bool
        from sky in Gen.Bool
        from pressure in Gen.Bool
        from offset in OneOf(-9, -3.5, 0.0, 1, 5.75, 12)
        from latitude in Gen.Double[-89, 89]
        from start in Gen.Int[0, 1_000_000]
        from kind in Gen.Enum<WeatherKind>()
        select new Weather
        {
            Name = "Anywhere, up there",
            LatitudeDeg = Math.Round(latitude, 6),
            LongitudeDeg = -12.25,
            AltitudeM = 431.5,
            UtcOffsetH = offset,
            Kind = kind,
            Source = "invented: for a test",
            StartUtc = new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddMinutes(start),
            StepS = 60 * minutes,
            AirC = Column(rows, 0),
            VapourPa = Column(rows, 1),
            WindMPerS = Column(rows, 2),
            GlobalWPerM2 = sun ? Column(rows, 2) : null,
            BeamNormalWPerM2 = sun ? Column(rows, 2) : null,
            DiffuseWPerM2 = sun ? Column(rows, 2) : null,
            // Light of a day or more without a sky would have its sky computed on reading.
            SkyC = sky || sun ? Column(rows, 0) : null,
            PressurePa = pressure ? [.. rows.Select(_ => 95_012.0)] : null,
            Gaps = sky ? [WeatherGap.SkyComputed, WeatherGap.SpreadEstimated] : [],
        };

    private static readonly string[] Texts =
    [
        "1,\"UPPER PASS\",XX,1.0,46.5,8.1,1200\nDate (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),Dry-bulb (C),RHum (%),Pressure (mbar),Wspd (m/s)\n"
            + string.Join('\n', Enumerable.Range(1, 24).Select(hour => $"01/31/1997,{hour:00}:00,0,0,0,-4.0,80,880,2.0")) + "\n",
        "Latitude (decimal degrees): 46.500\nLongitude (decimal degrees): 8.100\nElevation (m): 1200.0\nIrradiance Time Offset (h): 0.1761\nmonth,year\n1,2018\ntime(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\n"
            + string.Join('\n', Enumerable.Range(0, 24).Select(hour => $"20180131:{hour:00}00,-4,80,0.0,-0.0,0.0,250,1.5,200,88000")) + "\n\nT2m: air\n",
        "# name: Upper Pass\n# latitude_deg: 46.5\n# longitude_deg: 8.1\n# altitude_m: 1200\n# utc_offset_h: 1\n# stamp: start\ntime,air_c,relative_humidity_percent,wind_m_s,global_w_m2\n"
            + string.Join('\n', Enumerable.Range(0, 24).Select(hour => $"2025-01-31T{hour:00}:00,-3,80,1,0")) + "\n",
    ];

    private static readonly Gen<string> Splinter = OneOf(
        "", ",", "\n", "#", ":", "\0", "-", "−5", "1,5", "NaN", "∞", "1e9", "1000000", "\uFFFD", "\uD800", "\r", ";", "# name: x\n", "24:00", "02/29/1997", "0001-01-01T00:00", "9999-12-31T23:59", "99999999:9999", "'", "\"", "time", "air_c,", "# ", "\u2028");

    private static readonly Gen<string> Damaged =
        from text in OneOf(Texts)
        from cuts in Gen.Select(Gen.Int[0, 2000], Gen.Int[0, 60], Splinter).Array[1, 8]
        select cuts.Aggregate(text, Cut);

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static string Cut(string text, (int At, int Length, string Splinter) cut)
    {
        int at = text.Length == 0 ? 0 : cut.At % text.Length;
        return text[..at] + cut.Splinter + text[Math.Min(text.Length, at + cut.Length)..];
    }

    private static double[] Column(double?[][] rows, int column) => [.. rows.Select(row => row[column]!.Value)];

    [Fact]
    public void Weather_written_and_read_is_the_same_to_the_digits_written() => Any.Sample(weather =>
    {
        string text = WeatherFile.Write(weather);
        Reading<WeatherReading> reading = WeatherFile.Read(text, "any.csv");
        Assert.Empty(reading.Problems);
        Weather again = reading.Value!.Weather;
        Assert.Equal(text, WeatherFile.Write(again));
        Assert.Equal((weather.Name, weather.LatitudeDeg, weather.LongitudeDeg, weather.AltitudeM, weather.UtcOffsetH, weather.Kind), (again.Name, again.LatitudeDeg, again.LongitudeDeg, again.AltitudeM, again.UtcOffsetH, again.Kind));
        Assert.Equal((weather.StartUtc, weather.StepS, weather.Count, weather.Source), (again.StartUtc, again.StepS, again.Count, again.Source));
        Assert.Equal(weather.Gaps, again.Gaps.Take(weather.Gaps.Count));
        Close(weather.AirC, again.AirC, 0.0051);
        // Vapour is written downwards to 0.01 Pa, and to saturation at the written temperature: 10 % a kelvin at −40 °C, 0.005 K.
        Close(weather.VapourPa, again.VapourPa, 0.011, 0.0006);
        Close(weather.WindMPerS, again.WindMPerS, 0.0051);
        Close(weather.GlobalWPerM2, again.GlobalWPerM2, 0.051);
        Close(weather.BeamNormalWPerM2, again.BeamNormalWPerM2, 0.051);
        Close(weather.DiffuseWPerM2, again.DiffuseWPerM2, 0.051);
        Close(weather.PressurePa, again.PressurePa, 0.51);
        if (weather.SkyC is not null) Close(weather.SkyC, again.SkyC, 0.0051);
    }, iter: 1000);

    [Fact]
    public void A_damaged_file_is_weather_or_problems_and_never_an_exception() => Damaged.Sample(text =>
    {
        Reading<WeatherReading> reading = WeatherFile.Read(text, "damaged.csv");
        int lines = text.ReplaceLineEndings("\n").Split('\n').Length;
        return reading.Value is null != (reading.Problems.Count == 0)
            && reading.Problems.Count <= WeatherFile.MostProblemCount + 1
            && reading.Problems.All(problem => problem.Line >= 1 && problem.Line <= lines && problem.Column >= 1 && problem.What.Length > 0 && problem.File == "damaged.csv")
            && (reading.Value is null || IsFinite(reading.Value.Weather));
    }, iter: 20_000);

    [Fact]
    public void Any_letters_at_all_are_problems() => Gen.String.Sample(text => WeatherFile.Read(text, "any.csv").Problems.Count > 0, iter: 2000);

    private static bool IsFinite(Weather weather) => new[] { weather.AirC, weather.VapourPa, weather.WindMPerS, weather.GlobalWPerM2, weather.BeamNormalWPerM2, weather.DiffuseWPerM2, weather.SkyC, weather.PressurePa }
        .All(series => series is null || (series.Count == weather.Count && series.All(double.IsFinite)));

    private static void Close(IReadOnlyList<double>? one, IReadOnlyList<double>? other, double off, double offFraction = 0)
    {
        Assert.Equal(one?.Count, other?.Count);
        for (int i = 0; i < one?.Count; i++) Assert.Equal(one[i], other![i], off + offFraction * Math.Abs(one[i]));
    }
}
