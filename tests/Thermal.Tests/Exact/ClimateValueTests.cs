using Thermal.Climates;

namespace Thermal.Tests.Exact;

/// <summary>What follows from a place by definition.</summary>
public sealed class ClimateValueTests
{
    private static readonly MonthNormals Frosty = new() { MeanC = -10, MinC = -20, MaxC = -5, RelativeHumidityFraction = 0.5 };

    // Saturation over water at -10 °C is printed as 285.6 Pa (over ice 259.3): half of it, to half the last digit.
    [Fact]
    public void Outside_vapour_pressure_in_frost_is_taken_over_water() => Assert.Equal(142.8, Frosty.VapourPressurePa, 0.025);

    [Fact]
    public void A_measured_vapour_pressure_goes_before_the_derived_one() =>
        Assert.Equal(150, (Frosty with { MeasuredVapourPressurePa = 150 }).VapourPressurePa);

    // Over water 124.6 Pa at -20 °C and 285.6 Pa at -10 °C, both printed to 0.1 Pa.
    [Fact]
    public void Missing_humidity_is_saturation_at_the_lowest_over_saturation_at_the_mean() =>
        Assert.Equal(124.6 / 285.6, HumidityEstimate.RelativeHumidityFraction(-20, -10), 4e-4);

    [Fact]
    public void A_month_whose_lowest_is_its_mean_is_saturated() => Assert.Equal(1, HumidityEstimate.RelativeHumidityFraction(7, 7));

    // Twelve equal months have no yearly spread: -20 - 3·(1.45 + 0.029·10) = -25.22.
    [Fact]
    public void The_design_estimate_of_twelve_equal_months_is_three_spreads_below_their_lowest() =>
        Assert.Equal(-25.22, DesignEstimate.FromMonthsC([.. Enumerable.Repeat(Frosty, 12)]), 1e-12);

    // A month that knows no daily range and spreads by 4 K: 0.4 % of its hours lie 2.652070 spreads below the mean (printed in any table of the normal distribution).
    [Fact]
    public void Twelve_equal_months_without_a_daily_range_are_one_normal_distribution()
    {
        MonthNormals even = Frosty with { MinC = -10, MaxC = -10, DayMeanSdK = 4 };
        Assert.Equal(-10 - 2.652070 * 4, DesignEstimate.FromSpreadC([.. Enumerable.Repeat(even, 12)]), 1e-5);
    }

    // The daily cycle alone, 10 K wide, has a standard deviation of 3.43 K.
    [Fact]
    public void Twelve_equal_months_of_equal_days_spread_by_their_daily_cycle()
    {
        MonthNormals even = Frosty with { MinC = -15, MaxC = -5, DayMeanSdK = 0 };
        Assert.Equal(-10 - 2.652070 * 3.43, DesignEstimate.FromSpreadC([.. Enumerable.Repeat(even, 12)]), 1e-5);
    }

    // Eleven months far too warm to matter: of January's hours 0.004·365/31 = 4.709677 % are colder, 1.673680 spreads below its mean.
    [Fact]
    public void One_cold_month_counts_by_its_days()
    {
        MonthNormals january = Frosty with { MinC = -10, MaxC = -10, DayMeanSdK = 4 }, warm = Frosty with { MeanC = 40, MinC = 40, MaxC = 40, DayMeanSdK = 1 };
        Assert.Equal(-10 - 1.673680 * 4, DesignEstimate.FromSpreadC([january, .. Enumerable.Repeat(warm, 11)]), 1e-5);
    }

    [Fact]
    public void Months_that_never_change_are_as_cold_as_the_coldest() =>
        Assert.Equal(-10, DesignEstimate.FromSpreadC([.. Enumerable.Repeat(Frosty with { MinC = -10, MaxC = -10, DayMeanSdK = 0 }, 12)]), 1e-8);

    // Printed shares of the normal distribution, and what lies outside the series.
    [Theory]
    [InlineData(0, 0.5), InlineData(-1, 0.158655253931457), InlineData(1, 0.841344746068543), InlineData(-1.959963984540054, 0.025), InlineData(-3, 0.00134989803163)]
    [InlineData(-9, 0), InlineData(9, 1), InlineData(double.NegativeInfinity, 0), InlineData(double.PositiveInfinity, 1)]
    public void Shares_of_the_normal_distribution_are_the_printed_ones(double deviations, double share) =>
        Assert.Equal(share, Numerics.NormalDistribution.ShareBelowFraction(deviations), 1e-14);

    [Fact]
    public void What_is_no_number_has_no_share() => Assert.True(double.IsNaN(Numerics.NormalDistribution.ShareBelowFraction(double.NaN)));

    // Printed: 2.3 times 2.12 K makes 4.9 K; half the last digit.
    [Fact]
    public void The_spread_of_day_means_has_its_printed_value() => Assert.Equal(4.9, DaySpread.EstimateK(-5, 7.83), 0.05);

    [Fact]
    public void A_place_lists_the_used_design_temperature_first_and_each_measure_once()
    {
        DesignTemperature used = new() { Measure = DesignMeasure.TwoDayMean, TemperatureC = -8, Kind = DesignKind.Computed, PlusMinusK = 0, Note = "n" };
        DesignTemperature lowest = used with { Measure = DesignMeasure.YearlyLowest, TemperatureC = -12 }, hours = used with { Measure = DesignMeasure.HoursAt996, TemperatureC = -9 };
        Place place = AnyPlace() with { Design = used, OtherDesigns = [lowest, hours] };
        Assert.Equal([used, hours, lowest], place.Designs);
        Assert.Equal(lowest, place.DesignOf(DesignMeasure.YearlyLowest));
        Assert.Null(place.DesignOf(DesignMeasure.HoursAt99));
        Assert.Equal([AnyPlace().Design], AnyPlace().Designs);
    }

    [Fact]
    public void The_design_night_is_clear_and_takes_the_temperature_and_height_of_the_place() => Assert.Equal(
        new NightConditions { OutsideC = -13, RelativeHumidityFraction = 0.85, WindMPerS = 3, SkyBelowAirK = 20, AltitudeM = 1200 },
        NightConditions.Design(AnyPlace()));

    [Fact]
    public void The_mild_night_is_damp_and_covered_at_six_degrees() => Assert.Equal(
        new NightConditions { OutsideC = 6, RelativeHumidityFraction = 0.9, WindMPerS = 3, SkyBelowAirK = 0, AltitudeM = 1200 },
        NightConditions.Mild(1200));

    internal static Place AnyPlace() => new()
    {
        Name = "Upper Pass",
        Country = "Nowhere",
        LatitudeDeg = 46,
        LongitudeDeg = 8,
        AltitudeM = 1200,
        Months = [.. Enumerable.Repeat(Frosty, 12)],
        Design = new() { TemperatureC = -13, Kind = DesignKind.Stated, PlusMinusK = 0, Note = "stated" },
        Source = "invented",
        Period = "none",
        Licence = "none",
    };
}
