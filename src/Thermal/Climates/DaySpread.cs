namespace Thermal.Climates;

/// <summary>How much the day means of a month differ, where the place's own figure is not known.</summary>
/// <remarks>
/// On 72 station-months of six single years the estimate is 1.4 K off root mean square. It is the weakest of all estimates from
/// monthly means: the coldest hours hang on it.
/// </remarks>
public static class DaySpread
{
    /// <summary>Standard deviation of the twelve monthly means σ_yr, K.</summary>
    /// <param name="months">The twelve months.</param>
    /// <exception cref="ArgumentException">Not twelve months.</exception>
    public static double YearlySdK(IReadOnlyList<MonthNormals> months)
    {
        if (months.Count != Place.MonthCount)
            throw new ArgumentException($"{nameof(months)} must be {Place.MonthCount}, but {months.Count} were given.", nameof(months));
        double meanC = months.Average(month => month.MeanC);
        return Math.Sqrt(months.Sum(month => (month.MeanC - meanC) * (month.MeanC - meanC)) / (months.Count - 1));
    }

    /// <summary>Estimated standard deviation of the day means of one month: 2.3·σ_m, at least 0.</summary>
    /// <param name="meanC">Long-term mean of that month, °C, −60 to 50.</param>
    /// <param name="yearlySdK">Standard deviation of the twelve monthly means, K, 0 to 60.</param>
    /// <returns>Spread, K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: EKB-1983 for σ_m, from memory; the factor by <see cref="GeneratedWeather.DaySpreadFactor"/>.</remarks>
    public static double EstimateK(double meanC, double yearlySdK) =>
        GeneratedWeather.DaySpreadFactor * Math.Max(0, DesignEstimate.SpreadOfMonthlyMeansK(meanC, yearlySdK));
}
