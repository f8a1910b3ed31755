using System.Globalization;
using Thermal.Air;
using Thermal.Climates;
using Thermal.Files.Weathers;

namespace Thermal.Files.Tests.Weathers;

/// <summary>Small samples of each layout, written for these tests, come out at the right time, in the right units.</summary>
public sealed class LayoutTests
{
    private const string OwnTop = "# name: Upper Pass\n# latitude_deg: 46.5\n# longitude_deg: 8.1\n# altitude_m: 1200\n# utc_offset_h: 1\n# stamp: start\n";

    private static WeatherReading Right(string text)
    {
        Reading<WeatherReading> reading = WeatherFile.Read(text, "sample.csv");
        Assert.Empty(reading.Problems);
        return reading.Value!;
    }

    private static Weather Own(string rows, string top = OwnTop) => Right(top + rows).Weather;

    private static string Tmy3(params string[] rows) =>
        "1,\"UPPER PASS\",XX,1.0,46.5,8.1,1200\nDate (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),Dry-bulb (C),Dry-bulb source,RHum (%),Pressure (mbar),Wspd (m/s)\n" + string.Join('\n', rows) + "\n";

    [Fact]
    public void Hours_named_by_their_ends_keep_their_sun_and_take_air_from_both_ends()
    {
        WeatherReading read = Right(Tmy3("01/31/1997,23:00,0,0,0,-4.0,A,80,880,2.0", "01/31/1997,24:00,0,0,0,-6.0,A,80,882,4.0", "02/01/2003,01:00,0,0,0,-7.0,A,90,882,4.0", "02/01/2003,02:00,60,0,60,-8.0,A,90,-9900,4.0", "02/01/2003,03:00,60,0,60,-8.0,A,90,884,4.0"));
        Weather year = read.Weather;
        Assert.Equal((WeatherLayout.Tmy3, WeatherKind.TypicalYear, 3600.0), (read.Layout, year.Kind, year.StepS));
        // The hour that ends at 23:00, an hour ahead of universal time, begins at 21:00.
        Assert.Equal(new DateTime(2025, 1, 31, 21, 0, 0, DateTimeKind.Utc), year.StartUtc);
        Assert.Equal([-4, -5, -6.5, -7.5, -8], year.AirC);
        Assert.Equal([0.0, 0, 0, 60, 60], year.GlobalWPerM2!);
        Assert.Equal([88_000.0, 88_100, 88_200, 88_250, 88_350], year.PressurePa!);
        // 1e-9: rounding. Humidity over water, also in frost; moved like the air.
        Assert.Equal(0.85 * SaturationPressure.OverWaterPa(-6.5), year.VapourPa[2], 1e-9);
        Assert.Equal([WeatherRemarkKind.MovedToMiddle, WeatherRemarkKind.YearsJoined, WeatherRemarkKind.GapFilled, WeatherRemarkKind.SkyMissing], read.Remarks.Select(remark => remark.Kind));
        Assert.Equal(["Pressure (mbar)"], read.Remarks[2].Columns);
    }

    [Fact]
    public void A_leap_day_of_a_typical_year_is_left_out_and_said()
    {
        WeatherReading read = Right(Tmy3([.. from day in new[] { "02/28/1996", "02/29/1996", "03/01/1997" } from hour in Enumerable.Range(1, 24) select $"{day},{hour:00}:00,0,0,0,1,A,80,880,2"]));
        Assert.Equal(48, read.Weather.Count);
        Assert.Equal(24, read.Remarks.Single(remark => remark.Kind == WeatherRemarkKind.LeapDayLeftOut).StepCount);
    }

    [Fact]
    public void The_European_layout_is_in_universal_time_about_its_stamps_and_ends_before_its_legend()
    {
        WeatherReading read = Right("Latitude (decimal degrees): 46.500\nLongitude (decimal degrees): 8.100\nElevation (m): 1200.0\nIrradiance Time Offset (h): 0.1761\nmonth,year\n1,2018\n2,2007\n"
            + "time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\n20180131:2200,-4,80,0.0,-0.0,0.0,250,1.5,200,88000\n20180131:2300,-5,80,0.0,-0.0,0.0,250,1.5,200,88000\n20070201:0000,-6,80,0.0,-0.0,0.0,300,1.5,200,88000\n"
            + "\nT2m: air, 2 m above the ground\nWD10m: (0 = N, 90 = E)\n");
        Weather year = read.Weather;
        Assert.Equal(WeatherLayout.EuropeanService, read.Layout);
        Assert.Equal(new DateTime(2025, 1, 31, 21, 30, 0, DateTimeKind.Utc), year.StartUtc);
        Assert.Equal(1, year.UtcOffsetH);
        Assert.Equal([-4.0, -5, -6], year.AirC);
        // 300 W/m² is the radiation of a black body at 269.70 K. Source of the constant: SI. 0.01: rounding of that.
        Assert.Equal(-3.45, year.SkyC![2], 0.01);
        Assert.Equal(0.1761, read.Remarks.Single(remark => remark.Kind == WeatherRemarkKind.SunIsLater).ShiftH);
    }

    [Theory]
    [InlineData("start", "2025-01-31T04:00"), InlineData("middle", "2025-01-31T03:55"), InlineData("end", "2025-01-31T03:50")]
    public void Our_own_stamps_stand_where_the_file_says(string stamp, string start)
    {
        Weather read = Own("wind_m_s,time,dew_point_c,air_f\n2,2025-01-31T05:00,-10,14\n3,2025-01-31 05:10,-10,23\n", OwnTop.Replace("start", stamp, StringComparison.Ordinal));
        Assert.Equal(DateTime.Parse(start, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal), read.StartUtc);
        Assert.Equal(600, read.StepS);
        // 14 °F and 23 °F are −10 °C and −5 °C; 1e-9: rounding. 285.6 Pa over water at −10 °C, to 0.05.
        Assert.Equal(-10, read.AirC[0], 1e-9);
        Assert.Equal(-5, read.AirC[1], 1e-9);
        Assert.Equal(285.6, read.VapourPa[1], 0.05);
        Assert.Equal((WeatherKind.Real, null, null, null), (read.Kind, read.GlobalWPerM2, read.SkyC, read.PressurePa));
    }

    [Fact]
    public void A_gap_of_six_hours_is_filled_and_named_and_one_cell_with_it()
    {
        WeatherReading read = Right(OwnTop + "time,air_c,relative_humidity_percent,wind_m_s\n2025-01-31T00:00,0,80,1\n2025-01-31T01:00,1,,1\n2025-01-31T02:00,2,80,1\n2025-01-31T09:00,9,80,8\n");
        Assert.Equal([0.0, 1, 2, 3, 4, 5, 6, 7, 8, 9], read.Weather.AirC.Select(airC => Math.Round(airC, 9)));
        WeatherRemark[] gaps = [.. read.Remarks.Where(remark => remark.Kind == WeatherRemarkKind.GapFilled)];
        Assert.Equal(["relative_humidity_percent", "air_c relative_humidity_percent wind_m_s"], gaps.Select(gap => string.Join(' ', gap.Columns)));
        Assert.Equal((6, new DateTime(2025, 1, 31, 3, 0, 0), new DateTime(2025, 1, 31, 9, 0, 0)), (gaps[1].StepCount, gaps[1].FromLocal, gaps[1].ToLocal));
    }

    [Fact]
    public void Humidity_above_saturation_is_taken_as_saturation_and_counted()
    {
        WeatherReading read = Right(OwnTop + "time,air_c,relative_humidity_percent,wind_m_s\n2025-01-31T00:00,0,101,1\n2025-01-31T01:00,0,100,1\n");
        Assert.Equal([610.5, 610.5], read.Weather.VapourPa);
        Assert.Equal(1, read.Remarks.Single(remark => remark.Kind == WeatherRemarkKind.HumidityCapped).StepCount);
    }

    [Theory]
    [InlineData("global_w_m2", WeatherRemarkKind.SunSplit), InlineData("global_w_m2,diffuse_w_m2", WeatherRemarkKind.SunCompleted), InlineData("global_w_m2,beam_normal_w_m2", WeatherRemarkKind.SunCompleted), InlineData("beam_normal_w_m2,diffuse_w_m2", WeatherRemarkKind.SunCompleted)]
    public void What_is_missing_of_the_light_is_completed_so_that_beam_and_sky_make_the_flat(string columns, WeatherRemarkKind kind)
    {
        string Cells(int hour) => string.Join(',', columns.Split(',').Select(column => hour is < 8 or > 16 ? "-2" : column == "diffuse_w_m2" ? "80" : column == "global_w_m2" ? "150" : "170"));
        WeatherReading read = Right(OwnTop + $"time,air_c,relative_humidity_percent,wind_m_s,{columns}\n" + string.Join('\n', Enumerable.Range(0, 24).Select(hour => $"2025-01-31T{hour:00}:00,-3,80,1,{Cells(hour)}")));
        Assert.Contains(kind, read.Remarks.Select(remark => remark.Kind));
        Assert.Contains(WeatherRemarkKind.SunBelowZero, read.Remarks.Select(remark => remark.Kind));
        Assert.Contains(WeatherGap.SkyComputed, read.Weather.Gaps);
        Weather day = read.Weather;
        for (int i = 10; i < 15; i++)
        {
            double up = Math.Sin(SunPosition.At(46.5, 8.1, day.MiddleUtc(i)).ElevationDeg * Math.PI / 180);
            // 0.5 %: the height of the sun is a mean within the hour there, that of its middle here.
            Assert.Equal(day.GlobalWPerM2![i], day.DiffuseWPerM2![i] + day.BeamNormalWPerM2![i] * up, 0.005 * day.GlobalWPerM2[i]);
            Assert.InRange(day.SkyC![i], -30, -3);
        }
        Assert.Equal(0, day.GlobalWPerM2![0]);
    }
}
