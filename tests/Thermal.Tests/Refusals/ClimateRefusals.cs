using Thermal.Climates;
using Thermal.Tests.Exact;

namespace Thermal.Tests.Refusals;

/// <summary>A place that cannot be, is refused by the name of what is wrong.</summary>
public sealed class ClimateRefusals
{
    private static readonly Place Good = ClimateValueTests.AnyPlace();

    [Theory]
    [InlineData(double.NaN), InlineData(double.NegativeInfinity), InlineData(-4500), InlineData(255)]
    public void A_mean_that_is_no_temperature_of_a_month_is_refused(double meanC) =>
        Assert.Equal("MeanC", Assert.Throws<ArgumentOutOfRangeException>(() => Good.Months[0] with { MeanC = meanC }).ParamName);

    [Theory]
    [InlineData(double.NaN), InlineData(-0.1), InlineData(76), InlineData(0.0076)]
    public void A_humidity_in_per_cent_or_divided_twice_is_refused(double fraction)
    {
        Assert.Equal("RelativeHumidityFraction", Assert.Throws<ArgumentOutOfRangeException>(() => Good.Months[0] with { RelativeHumidityFraction = fraction }).ParamName);
        Assert.Equal("RelativeHumidityFraction", Assert.Throws<ArgumentOutOfRangeException>(() => NightConditions.Mild(0) with { RelativeHumidityFraction = fraction }).ParamName);
    }

    [Theory]
    [InlineData(double.NaN), InlineData(1.2e6), InlineData(-1200)]
    public void A_height_in_millimetres_or_below_all_ground_is_refused(double altitudeM)
    {
        Assert.Equal("AltitudeM", Assert.Throws<ArgumentOutOfRangeException>(() => Good with { AltitudeM = altitudeM }).ParamName);
        Assert.Equal("AltitudeM", Assert.Throws<ArgumentOutOfRangeException>(() => NightConditions.Mild(altitudeM)).ParamName);
    }

    [Fact]
    public void Eleven_months_are_no_year()
    {
        MonthNormals[] eleven = [.. Good.Months.Take(11)];
        Assert.Contains("11", Assert.Throws<ArgumentException>(() => Good with { Months = eleven }).Message, StringComparison.Ordinal);
        Assert.Contains("11", Assert.Throws<ArgumentException>(() => DesignEstimate.FromMonthsC(eleven)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(""), InlineData("  ")]
    public void A_place_says_where_its_figures_come_from(string nothing)
    {
        Assert.Equal("Source", Assert.Throws<ArgumentException>(() => Good with { Source = nothing }).ParamName);
        Assert.Equal("Period", Assert.Throws<ArgumentException>(() => Good with { Period = nothing }).ParamName);
        Assert.Equal("Licence", Assert.Throws<ArgumentException>(() => Good with { Licence = nothing }).ParamName);
    }

    [Fact]
    public void A_design_temperature_cannot_be_estimated_without_the_lowest_of_the_coldest_month() =>
        Assert.Throws<ArgumentException>(() => DesignEstimate.FromMonthsC([.. Good.Months.Select(month => month with { MinC = null })]));

    [Fact]
    public void A_design_temperature_from_the_spread_needs_the_spread_of_every_month_and_its_lowest_and_highest()
    {
        MonthNormals whole = Good.Months[0] with { DayMeanSdK = 4 };
        foreach (MonthNormals lacking in new[] { whole with { DayMeanSdK = null }, whole with { MinC = null }, whole with { MaxC = null } })
        {
            MonthNormals[] months = [lacking, .. Enumerable.Repeat(whole, 11)];
            Assert.False(DesignEstimate.HasOwnSpread(months));
            Assert.Throws<ArgumentException>(() => DesignEstimate.FromSpreadC(months));
        }
        Assert.Throws<ArgumentException>(() => DesignEstimate.FromSpreadC([.. Enumerable.Repeat(whole, 11)]));
        Assert.Throws<ArgumentException>(() => DaySpread.YearlySdK([.. Enumerable.Repeat(whole, 13)]));
    }

    [Theory]
    [InlineData(double.NaN, 8), InlineData(-5, double.NaN), InlineData(-5, -1), InlineData(80, 8)]
    public void A_spread_of_day_means_is_not_estimated_from_what_is_no_month(double meanC, double yearlySdK) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DaySpread.EstimateK(meanC, yearlySdK));

    [Fact]
    public void Two_design_temperatures_of_one_measure_are_refused() =>
        Assert.Contains("each measure once", Assert.Throws<ArgumentException>(() => Good with { OtherDesigns = [Good.Design, Good.Design] }).Message, StringComparison.Ordinal);

    [Fact]
    public void A_lowest_above_the_mean_gives_no_humidity() =>
        Assert.Equal("minC", Assert.Throws<ArgumentOutOfRangeException>(() => HumidityEstimate.RelativeHumidityFraction(5, 4)).ParamName);
}
