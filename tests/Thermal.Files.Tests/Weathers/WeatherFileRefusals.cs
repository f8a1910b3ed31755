using System.Globalization;
using Thermal.Files.Weathers;

namespace Thermal.Files.Tests.Weathers;

/// <summary>Every fault of a weather file is named with its line, its column and what to write instead.</summary>
public sealed class WeatherFileRefusals
{
    private static readonly string[] Own =
    [
        "# name: Upper Pass", "# latitude_deg: 46.5", "# longitude_deg: 8.1", "# altitude_m: 1200", "# utc_offset_h: 1", "# stamp: start",
        "time,air_c,relative_humidity_percent,wind_m_s",
        .. Enumerable.Range(0, 12).Select(hour => $"2025-01-31T{hour:00}:00,-3.5,80,1.2"),
    ];

    private static readonly string[] Tmy3 =
    [
        "1,\"UPPER PASS\",XX,1.0,46.5,8.1,1200", "Date (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),RHum (%),Pressure (mbar),Wspd (m/s)",
        .. Enumerable.Range(1, 12).Select(hour => $"01/31/1997,{hour:00}:00,-4.0,80,880,2.0"),
    ];

    private static readonly string[] European =
    [
        "Latitude (decimal degrees): 46.500", "Longitude (decimal degrees): 8.100", "Elevation (m): 1200.0", "Irradiance Time Offset (h): 0.1761", "month,year", "1,2018",
        "time(UTC),T2m,RH,WS10m,SP", .. Enumerable.Range(0, 12).Select(hour => $"20180131:{hour:00}00,-4,80,1.5,88000"), "", "T2m: air",
    ];

    [Fact]
    public void The_texts_that_the_faults_below_are_put_into_are_right() => Assert.All([Own, Tmy3, European], lines => Assert.Empty(WeatherFile.Read(string.Join('\n', lines), "good.csv").Problems));

    [Theory]
    [InlineData(1, "# nane: Upper Pass", 1, 3, "header", "did you mean 'name'?")]
    [InlineData(2, "# latitude_deg: 465", 2, 17, "latitude_deg", "north is positive")]
    [InlineData(2, "# latitude_deg: 46,5", 2, 17, "latitude_deg", "decimal point")]
    [InlineData(5, "# utc_offset_h: UTC+1", 5, 17, "utc_offset_h", "is not a number")]
    [InlineData(6, "# stamp: begin", 6, 10, "stamp", "start, middle, end")]
    [InlineData(6, "# note: x", 1, 1, "stamp", "start | middle | end")]
    [InlineData(6, "# stamp: start\n# kind: real year", 7, 9, "kind", "typical")]
    [InlineData(6, "# stamp: start\n# stamp: end", 7, 3, "stamp", "first in line 6")]
    [InlineData(7, "time,airc,relative_humidity_percent,wind_m_s", 7, 6, "column", "did you mean 'air_c'?")]
    [InlineData(7, "time,air_c,air_f,wind_m_s", 7, 12, "column", "tells again")]
    [InlineData(7, "time,air_c,global_w_m2,wind_m_s", 7, 1, "table", "vapour_pressure_pa")]
    [InlineData(7, "sky_c,air_c,relative_humidity_percent,wind_m_s", 7, 1, "table", "no column 'time'")]
    [InlineData(7, "time;air_c;wind_m_s", 7, 1, "table", "save it with commas")]
    [InlineData(9, "2025-01-31T01:00,-3,5,80,1.2", 9, 1, "row", "5 cells")]
    [InlineData(9, "31.1.2025 1:00,-3.5,80,1.2", 9, 1, "time", "2025-01-31T05:30")]
    [InlineData(9, "2025-01-31T01:00Z,-3.5,80,1.2", 9, 1, "time", "utc_offset_h")]
    [InlineData(9, "2025-01-31T01:00,−3.5,80,1.2", 9, 18, "air_c", "plain minus")]
    [InlineData(9, "2025-01-31T01:00,-35000,80,1.2", 9, 18, "air_c", "degrees Celsius")]
    [InlineData(9, "2025-01-31T01:00,269.6,80,1.2", 9, 18, "air_c", "degrees Celsius")]
    [InlineData(9, "2025-01-31T01:00,-3.5,800,1.2", 9, 23, "relative_humidity_percent", "76")]
    [InlineData(9, "2025-01-31T01:00,-3.5,80,120", 9, 26, "wind_m_s", "metres a second")]
    [InlineData(9, "2025-01-31T00:00,-3.5,80,1.2", 9, 1, "time", "twice, first in line 8")]
    [InlineData(9, "2025-01-30T23:00,-3.5,80,1.2", 9, 1, "time", "order of time")]
    [InlineData(9, "2025-01-31T01:20,-3.5,80,1.2", 9, 1, "time", "equal steps")]
    [InlineData(19, "2025-01-31T23:00,-3.5,80,1.2", 19, 1, "time", "from 2025-01-31 11:00 to 2025-01-31 22:00")]
    [InlineData(8, "2025-01-31T00:00,,80,1.2", 8, 1, "air_c", "from 2025-01-31 00:00 to 2025-01-31 00:00")]
    public void A_fault_of_our_own_columns_is_named_where_it_stands(int line, string written, int faultLine, int column, string where, string says) =>
        Named(Own, line, written, faultLine, column, where, says);

    [Theory]
    [InlineData(1, "1,UPPER PASS,XX,1.0,46.5,8.1", 1, 1, "station", "6 cells")]
    [InlineData(1, "1,\"UPPER PASS\",XX,1.0,46500,8.1,1200", 1, 23, "latitude", "north is positive")]
    [InlineData(2, "Date (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),RHum (%),Pressure (mbar),Wind", 2, 1, "table", "Wspd (m/s)")]
    [InlineData(4, "31/01/1997,02:00,-4.0,80,880,2.0", 4, 1, "date", "01/31/1997")]
    [InlineData(4, "01/31/1997,25:00,-4.0,80,880,2.0", 4, 12, "time", "24:00")]
    [InlineData(4, "01/31/1997,02:00,-400,80,880,2.0", 4, 18, "Dry-bulb (C)", "degrees Celsius")]
    [InlineData(4, "01/31/1997,02:00,-4.0,80,88000,2.0", 4, 26, "Pressure (mbar)", "millibars")]
    public void A_fault_of_TMY3_is_named_where_it_stands(int line, string written, int faultLine, int column, string where, string says) =>
        Named(Tmy3, line, written, faultLine, column, where, says);

    [Theory]
    [InlineData(1, "Latitude: 46.5", 1, 1, "latitude", "Latitude (decimal degrees): 46.8")]
    [InlineData(2, "Longitude (decimal degrees): 8100", 2, 30, "longitude", "east is positive")]
    [InlineData(7, "time(UTC),T2m,RH,SP,x", 7, 1, "table", "WS10m")]
    [InlineData(9, "20180131-0100,-4,80,1.5,88000", 9, 1, "time(UTC)", "20180131:0500")]
    [InlineData(9, "x20180131:0100,-4,80,1.5,88000", 9, 1, "time(UTC)", "20180131:0500")]
    [InlineData(9, "20180131:0100,-4,80,1.5,880", 9, 25, "SP", "100 Pa")]
    public void A_fault_of_the_European_layout_is_named_where_it_stands(int line, string written, int faultLine, int column, string where, string says) =>
        Named(European, line, written, faultLine, column, where, says);

    [Theory]
    [InlineData("relative_humidity_percent", "0.8", "not 0.76"), InlineData("vapour_pressure_pa", "3.7", "hectopascal")]
    [InlineData("dew_point_c", "1", "check the units"), InlineData("vapour_pressure_pa", "900", "check the units")]
    public void Humidity_of_another_unit_is_named(string column, string cell, string says)
    {
        string text = string.Join('\n', Own).Replace("relative_humidity_percent", column, StringComparison.Ordinal).Replace(",80,", $",{cell},", StringComparison.Ordinal);
        Assert.Contains(WeatherFile.Read(text, "bad.csv").Problems, problem => problem.Where == column && problem.What.Contains(says, StringComparison.Ordinal));
    }

    /// <summary>Twelve days of light as strong as half of that above the air would be, in steps of an hour.</summary>
    private static string Light(double factor, int laterH) => string.Join('\n', Own[..7]).Replace("relative_humidity_percent", "relative_humidity_percent,global_w_m2", StringComparison.Ordinal) + "\n"
        + string.Join('\n', from day in Enumerable.Range(10, 12) from hour in Enumerable.Range(0, 24)
            let light = factor * Math.Max(0, 300 * Math.Cos((hour + 0.5 - 12.5 - laterH) * Math.PI / 9)) * (Math.Abs(hour + 0.5 - 12.5 - laterH) < 4.5 ? 1 : 0)
            select string.Create(CultureInfo.InvariantCulture, $"2025-02-{day}T{hour:00}:00,-3.5,80,{light:0.####},1.2"));

    [Theory]
    [InlineData(1, 0, ""), InlineData(0.001, 0, "kilowatts"), InlineData(5, 0, "times the sun above the air"), InlineData(1, -6, "before noon"), InlineData(1, 4, "after noon")]
    public void Sun_of_another_unit_or_another_zone_is_named(double factor, int laterH, string says)
    {
        Reading<WeatherReading> reading = WeatherFile.Read(Light(factor, laterH), "sun.csv");
        if (says.Length == 0) Assert.Empty(reading.Problems);
        else Assert.Contains(says, Assert.Single(reading.Problems).What, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_are_named_at_once_in_the_order_of_their_lines()
    {
        string text = string.Join('\n', Own).Replace("46.5", "north", StringComparison.Ordinal).Replace("# stamp: start", "# stamp: then", StringComparison.Ordinal).Replace("T03:00,-3.5", "T03:00,x", StringComparison.Ordinal);
        Assert.Equal([(2, "latitude_deg"), (6, "stamp"), (11, "air_c")], WeatherFile.Read(text, "many.csv").Problems.Select(problem => (problem.Line, problem.Where)));
    }

    [Fact]
    public void Beyond_fifty_problems_the_rest_is_counted()
    {
        string text = string.Join('\n', Own[..7]) + "\n" + string.Join('\n', Enumerable.Range(0, 90).Select(minute => $"2025-01-31T{minute / 60:00}:{minute % 60:00},x,80,1"));
        IReadOnlyList<Problem> problems = WeatherFile.Read(text, "many.csv").Problems;
        Assert.Equal(51, problems.Count);
        Assert.Contains("40 more problems", problems[50].What, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_layout_says_which_three_are_known()
    {
        string says = Assert.Single(WeatherFile.Read("a,b\n1,2\n", "unknown.csv").Problems).What;
        Assert.All(["our own columns", "TMY3", "European"], known => Assert.Contains(known, says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "is empty"), InlineData(" \n\n", "is empty"), InlineData("PK\0\0", "not a text file"), InlineData("# name: x", "has no table")]
    public void What_holds_no_weather_is_said(string text, string says) =>
        Assert.Contains(WeatherFile.Read(text, "blank.csv").Problems, problem => problem.What.Contains(says, StringComparison.Ordinal) || problem.Where == "table");

    [Fact]
    public void A_text_beyond_the_limit_is_one_problem() =>
        Assert.Contains("64000000", Assert.Single(WeatherFile.Read(new string('#', WeatherFile.LongestCharacterCount + 1), "long.csv").Problems).What, StringComparison.Ordinal);

    private static void Named(string[] good, int line, string written, int faultLine, int column, string where, string says)
    {
        Reading<WeatherReading> reading = WeatherFile.Read(string.Join('\n', good.Select((text, i) => i + 1 == line ? written : text)), "bad.csv");
        Assert.Null(reading.Value);
        Assert.Contains(reading.Problems, problem => (problem.File, problem.Line, problem.Column, problem.Where) == ("bad.csv", faultLine, column, where) && problem.What.Contains(says, StringComparison.Ordinal));
    }
}
