using Thermal.Climates;

namespace Thermal.Tests.Published;

/// <summary>The parts a year of hours is made of, against the printed values of their formulas.</summary>
public sealed class WeatherPartsTests
{
    public static TheoryData<double[]> Cycle => Rows("daily-cycle.csv");
    public static TheoryData<double[]> Clearness => Rows("day-clearness.csv");
    public static TheoryData<double[]> Diffuse => Rows("diffuse-shares.csv");

    [Theory, MemberData(nameof(Cycle))]
    public void The_daily_cycle_has_its_printed_shape(double[] row) => Assert.Equal(row[1], DailyCycle.Factor(row[0]), 0.0006);

    [Theory, MemberData(nameof(Clearness))]
    public void Clear_and_dull_days_are_spread_as_printed(double[] row) => Assert.Equal(row[2], DayClearness.QuantileRatio(row[0], row[1]), 0.0005);

    [Theory, MemberData(nameof(Diffuse))]
    public void Sky_light_has_its_printed_share(double[] row)
    {
        Assert.Equal(row[1], DiffuseShare.OfHourFraction(row[0]), 0.0005);
        Assert.Equal(row[2], DiffuseShare.OfDayFraction(row[0], 75), 0.0005);
        Assert.Equal(row[3], DiffuseShare.OfDayFraction(row[0], 100), 0.0005);
    }

    /// <summary>Printed for a sunset at 90° and an hour angle of 7.5°: a 0.6598, b 0.4226, r_t 0.1400, r_d 0.1298; half the last digit.</summary>
    [Fact]
    public void The_first_hour_after_noon_has_its_printed_share()
    {
        Assert.Equal(0.1400, HourShare.OfGlobalFraction(7.5, 90), 0.00005);
        Assert.Equal(0.1298, HourShare.OfDiffuseFraction(7.5, 90), 0.00005);
    }

    // The means that the script's quantiles come back with: 0.301, 0.400, 0.502, 0.599; half the last digit, and 1e-5 for 4000 steps of the integral.
    [Theory, InlineData(0.3, 0.301), InlineData(0.4, 0.400), InlineData(0.5, 0.502), InlineData(0.6, 0.599)]
    public void The_days_of_a_month_come_back_to_the_printed_mean(double month, double mean) =>
        Assert.Equal(mean, Enumerable.Range(0, 4000).Average(i => DayClearness.QuantileRatio(month, (i + 0.5) / 4000)), 0.00051);

    private static TheoryData<double[]> Rows(string file) => [.. PublishedTable.Rows(file).Select(row => row.Cast<double>().ToArray())];
}
