using Thermal.Numerics;

namespace Thermal.Climates;

/// <summary>The winter design temperature, exceeded by 99.6 % of the hours, of a place that has only monthly normals.</summary>
/// <remarks>
/// Two ways, tried on six single years. Where the spread of day means is the place's own in all twelve months, a mixture of twelve
/// normal distributions (<see cref="FromSpreadC"/>): +0.1 K on average, 0.5 K root mean square. With the spread estimated the mixture
/// misses by 3.0 K root mean square, more than a plain rule (<see cref="FromMonthsC"/>): no bias, 2.5 K root mean square, worst +4.1 K
/// (too mild) at the coldest site, a subarctic one. So the rule is used wherever a spread is missing.
/// </remarks>
public static class DesignEstimate
{
    /// <summary>The uncertainty shown with an estimate by the plain rule, K. Source: OURS, rounded up from the fit's 2.5 K.</summary>
    public const double PlusMinusK = 3;

    /// <summary>The uncertainty shown with an estimate from the place's own spread, K. Source: OURS, twice the trial's 0.5 K.</summary>
    public const double OwnSpreadPlusMinusK = 1;

    // Source: EKB-1983 (from memory): spread = 1.45 − 0.029·mean + 0.0664·yearly spread.
    private const double SpreadAtZeroK = 1.45, SpreadPerMeanRatio = 0.029, SpreadPerYearlyRatio = 0.0664;

    // Source: OURS, the fit to six years described above.
    private const double SpreadsBelowLowestCount = 3;

    /// <summary>How much one month's mean temperature differs from year to year, as a standard deviation σ_m.</summary>
    /// <param name="meanC">Long-term mean of that month t, °C, −60 to 50.</param>
    /// <param name="yearlySdK">Standard deviation of the twelve monthly means σ_yr, K, 0 to 60.</param>
    /// <returns>σ_m = 1.45 − 0.029·t + 0.0664·σ_yr, K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: EKB-1983, from memory.</remarks>
    public static double SpreadOfMonthlyMeansK(double meanC, double yearlySdK) =>
        SpreadAtZeroK - SpreadPerMeanRatio * Guard.InRange(meanC, MonthNormals.LowestC, MonthNormals.HighestC, "°C")
        + SpreadPerYearlyRatio * Guard.InRange(yearlySdK, 0, 60, "K");

    /// <summary>Mean daily lowest of the coldest month less three times the year-to-year spread of that month's mean.</summary>
    /// <param name="months">The twelve months of a place; the coldest by its mean must have its daily lowest.</param>
    /// <returns>Temperature, °C, ±3 K.</returns>
    /// <exception cref="ArgumentException">Not twelve months, or the coldest has no daily lowest.</exception>
    /// <remarks>Source: OURS, fit; spread by EKB-1983.</remarks>
    public static double FromMonthsC(IReadOnlyList<MonthNormals> months)
    {
        double yearlySdK = DaySpread.YearlySdK(months);
        MonthNormals coldest = months.MinBy(month => month.MeanC)!;
        double lowestC = coldest.MinC ?? throw new ArgumentException("The coldest month has no mean daily lowest temperature.", nameof(months));
        return lowestC - SpreadsBelowLowestCount * SpreadOfMonthlyMeansK(coldest.MeanC, yearlySdK);
    }

    /// <summary>True where every month has its own spread of day means and its daily lowest and highest: then <see cref="FromSpreadC"/> is the better way.</summary>
    /// <param name="months">The twelve months of a place.</param>
    public static bool HasOwnSpread(IReadOnlyList<MonthNormals> months) =>
        months.All(month => month.DayMeanSdK is not null && month.MinC is not null && month.MaxC is not null);

    /// <summary>The temperature that 99.6 % of the hours exceed when the hours of each month are spread normally about its mean.</summary>
    /// <param name="months">The twelve months of a place, each with its own spread of day means σ and its daily lowest and highest.</param>
    /// <returns>x in Σ N/365·Φ((x − t)/S) = 0.004 with S² = σ² + (0.343·A)², A the range of an ordinary day; °C, ±1 K.</returns>
    /// <exception cref="ArgumentException">Not twelve months, or one lacks what it needs.</exception>
    /// <remarks>The coldest year of a long record lies below it as far as the spread was taken within single years. Source: OURS, daily cycle by ERBS-1983.</remarks>
    public static double FromSpreadC(IReadOnlyList<MonthNormals> months)
    {
        if (months.Count != Place.MonthCount || !HasOwnSpread(months))
            throw new ArgumentException($"{nameof(months)} must be {Place.MonthCount}, each with its spread of day means and its daily lowest and highest.", nameof(months));
        double[] spreadsK = [.. months.Select(month => HourSpreadK(month.MinC!.Value, month.MaxC!.Value, month.DayMeanSdK!.Value))];
        // Ten of the widest spreads below the coldest mean no hour is left, above the warmest all of them.
        double farthestK = 10 * spreadsK.Max(), lowC = months.Min(month => month.MeanC) - farthestK, highC = months.Max(month => month.MeanC) + farthestK;
        while (highC - lowC > 1e-9)
        {
            double middleC = (lowC + highC) / 2;
            if (ColderFraction(middleC) < DesignConditions.ColderAt996Fraction) lowC = middleC;
            else highC = middleC;
        }
        return highC;

        double ColderFraction(double temperatureC)
        {
            double days = 0;
            for (int m = 0; m < months.Count; m++)
            {
                double aboveK = temperatureC - months[m].MeanC;
                days += YearPlan.DaysIn(m) * (spreadsK[m] > 0 ? NormalDistribution.ShareBelowFraction(aboveK / spreadsK[m]) : aboveK < 0 ? 0 : 1);
            }
            return days / YearPlan.DayCount;
        }
    }

    private static double HourSpreadK(double lowestC, double highestC, double dayMeanSdK)
    {
        double withinDayK = DailyCycle.SdFactor * DailyCycle.RangeK(lowestC, highestC, dayMeanSdK);
        return Math.Sqrt(dayMeanSdK * dayMeanSdK + withinDayK * withinDayK);
    }
}
