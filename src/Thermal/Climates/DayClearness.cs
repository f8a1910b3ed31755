namespace Thermal.Climates;

/// <summary>How the clearness of single days is spread about a month's mean.</summary>
/// <remarks>Source: BENDT-1981, with HOLLANDS-1983 for the exponent.</remarks>
public static class DayClearness
{
    /// <summary>Clearness of the darkest day.</summary>
    public const double LowestRatio = 0.05;

    /// <summary>Range of monthly means for which the spread was found.</summary>
    public const double LowestMeanRatio = 0.1, HighestMeanRatio = 0.75;

    /// <summary>Clearness that a share of the days stays below.</summary>
    /// <param name="monthRatio">Mean clearness of the month K, 0.1 to 0.75.</param>
    /// <param name="shareFraction">Share of the days u, fraction, 0 to 1.</param>
    /// <returns>K_T(u) = ln((1 − u)·e^(γ·K_min) + u·e^(γ·K_max))/γ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    public static double QuantileRatio(double monthRatio, double shareFraction)
    {
        double k = Guard.InRange(monthRatio, LowestMeanRatio, HighestMeanRatio, "(ratio)"), u = Guard.InRange(shareFraction, 0, 1, "(fraction)");
        double highest = 0.6313 + 0.267 * k - 11.9 * Math.Pow(k - 0.75, 8);
        double xi = (highest - LowestRatio) / (highest - k);
        double g = -1.498 + (1.184 * xi - 27.182 * Math.Exp(-1.5 * xi)) / (highest - LowestRatio);
        return Math.Log((1 - u) * Math.Exp(g * LowestRatio) + u * Math.Exp(g * highest)) / g;
    }
}
