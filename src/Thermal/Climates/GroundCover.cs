namespace Thermal.Climates;

/// <summary>What lies on the ground round a parked vehicle, as the share of sun it throws back in each month.</summary>
public static class GroundCover
{
    /// <summary>Months up to this mean count as snowy, °C. Source: OURS, a rule of thumb; dry cold places have less snow.</summary>
    public const double SnowUpToMeanC = 0;

    /// <summary>The same ground all year.</summary>
    /// <param name="groundFraction">Share of sun thrown back (albedo), fraction, 0 to 1.</param>
    /// <returns>Twelve fractions, January first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public static IReadOnlyList<double> EvenFraction(double groundFraction) =>
        [.. Enumerable.Repeat(Guard.InRange(groundFraction, 0, 1, "(a fraction)"), Place.MonthCount)];

    /// <summary>Lying snow in frosty months, bare ground in the others.</summary>
    /// <param name="monthMeansC">Mean temperature of the twelve months, °C, January first.</param>
    /// <returns>Twelve fractions, January first.</returns>
    /// <exception cref="ArgumentException">Not twelve.</exception>
    public static IReadOnlyList<double> SnowInFrostFraction(IReadOnlyList<double> monthMeansC) => monthMeansC.Count == Place.MonthCount
        ? [.. monthMeansC.Select(meanC => meanC <= SnowUpToMeanC ? SurfaceAspect.SnowFraction : SurfaceAspect.BareGroundFraction)]
        : throw new ArgumentException($"Twelve months are wanted, but {monthMeansC.Count} were given.", nameof(monthMeansC));
}
