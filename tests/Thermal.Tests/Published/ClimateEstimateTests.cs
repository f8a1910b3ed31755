using Thermal.Climates;

namespace Thermal.Tests.Published;

/// <summary>The estimates for missing humidity and design temperature, against stations that have both.</summary>
public sealed class ClimateEstimateTests
{
    private const string ColdPool = "Samedan";

    public static TheoryData<string, double, double, double, double> HumidityOutsideTheColdPool =>
        Table("monthly-humidity.csv", row => (string)row[0] != ColdPool, row => ((string)row[0], (double)row[1], (double)row[2], (double)row[3], (double)row[4]));

    public static TheoryData<string, double, double, double, double[]> Design =>
        Table("design-estimate.csv", _ => true, row => ((string)row[0], (double)row[1], (double)row[2], (double)row[3], row[4..].Cast<double>().ToArray()));

    [Theory, MemberData(nameof(HumidityOutsideTheColdPool))]
    public void The_humidity_estimate_lies_within_its_stated_band(string station, double month, double meanC, double lowestC, double measuredPercent)
    {
        double points = 100 * HumidityEstimate.RelativeHumidityFraction(lowestC, meanC) - measuredPercent;
        // Half a point for figures rounded to whole per cent.
        Assert.True(points >= -100 * HumidityEstimate.TooDryByUpToFraction - 0.5 && points <= 100 * HumidityEstimate.TooMoistByUpToFraction + 0.5, $"{station}, month {month}: {points} points");
    }

    [Fact]
    public void On_a_cold_pool_valley_floor_the_humidity_estimate_is_10_to_24_points_too_dry_in_most_months()
    {
        double[] points = [.. PublishedTable.Rows("monthly-humidity.csv").Where(row => (string)row[0] == ColdPool)
            .Select(row => 100 * HumidityEstimate.RelativeHumidityFraction((double)row[3], (double)row[2]) - (double)row[4])];
        Assert.Equal(12, points.Length);
        // 10 of 12: April and May lie nearer to the measured humidity.
        Assert.Equal(10, points.Count(point => point is <= -9.5 and >= -24.5));
    }

    // Printed: t = -5, yearly spread 7.83 gives 2.12. Half the last digit of the result, and of the spread put in: 0.005 + 0.0664·0.005.
    [Fact]
    public void The_spread_of_a_cold_month_has_its_printed_value() => Assert.Equal(2.12, DesignEstimate.SpreadOfMonthlyMeansK(-5, 7.83), 0.0054);

    // 0.06 K: errors printed to 0.1 K, and half of that for monthly figures rounded to 0.1 °C.
    [Theory, MemberData(nameof(Design))]
    public void The_design_estimate_misses_the_quantile_of_a_real_year_by_the_printed_error(string place, double quantileC, double errorK, double lowestC, double[] meansC)
    {
        double coldestC = meansC.Min();
        MonthNormals[] months = [.. meansC.Select(meanC => new MonthNormals { MeanC = meanC, MinC = meanC == coldestC ? lowestC : meanC, RelativeHumidityFraction = 0.8 })];
        double missedByK = DesignEstimate.FromMonthsC(months) - quantileC;
        Assert.True(Math.Abs(missedByK - errorK) <= 0.06, $"{place}: {missedByK}");
    }

    private static TheoryData<string, double, double, double, T> Table<T>(string file, Func<object[], bool> isWanted, Func<object[], (string, double, double, double, T)> row)
    {
        TheoryData<string, double, double, double, T> data = [];
        foreach (object[] cells in PublishedTable.Rows(file).Where(isWanted))
        {
            var (a, b, c, d, e) = row(cells);
            data.Add(a, b, c, d, e);
        }
        return data;
    }
}
