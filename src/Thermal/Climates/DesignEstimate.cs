namespace Thermal.Climates;

/// <summary>The winter design temperature of a place that has only monthly normals.</summary>
/// <remarks>
/// Fitted to the temperature that 99.6 % of the hours of six single years exceed: no bias there, 2.5 K root mean square,
/// worst +4.1 K (too mild) at the coldest site, a subarctic one. So it is always shown as ±3 K.
/// </remarks>
public static class DesignEstimate
{
    /// <summary>The uncertainty shown with every estimate, K. Source: OURS, rounded up from the fit's 2.5 K.</summary>
    public const double PlusMinusK = 3;

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
        if (months.Count != Place.MonthCount)
        {
            throw new ArgumentException($"{nameof(months)} must be {Place.MonthCount}, but {months.Count} were given.", nameof(months));
        }
        MonthNormals coldest = months.MinBy(month => month.MeanC)!;
        double lowestC = coldest.MinC ?? throw new ArgumentException("The coldest month has no mean daily lowest temperature.", nameof(months));
        return lowestC - SpreadsBelowLowestCount * SpreadOfMonthlyMeansK(coldest.MeanC, SampleSdK(months));
    }

    internal static double SampleSdK(IReadOnlyList<MonthNormals> months)
    {
        double mean = months.Average(month => month.MeanC);
        return Math.Sqrt(months.Sum(month => (month.MeanC - mean) * (month.MeanC - mean)) / (months.Count - 1));
    }
}
