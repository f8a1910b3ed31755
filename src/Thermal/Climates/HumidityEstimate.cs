using Thermal.Air;

namespace Thermal.Climates;

/// <summary>Relative humidity of a month whose source gives none, from its temperatures.</summary>
/// <remarks>
/// The dew point of a month lies near its mean daily lowest temperature, because air that cools towards its dew point
/// overnight stops there. At four of the five stations it was compared with, the estimate lies from 6 points too dry to 10
/// points too moist; at the fifth, a cold-pool valley floor, it is 10 to 24 points too dry in most months.
/// Source: FAO-56, estimate of missing humidity (from memory).
/// </remarks>
public static class HumidityEstimate
{
    /// <summary>How far the estimate may lie below a measured month, fraction of relative humidity. Source: FAO-56, compared by us with four stations.</summary>
    public const double TooDryByUpToFraction = 0.06;

    /// <summary>How far the estimate may lie above a measured month, fraction of relative humidity. Source: FAO-56, compared by us with four stations.</summary>
    public const double TooMoistByUpToFraction = 0.10;

    /// <summary>Relative humidity over water, also below 0 °C: saturation at the daily lowest over saturation at the mean.</summary>
    /// <param name="minC">Mean of the daily lowest temperatures, °C, −60 to the mean.</param>
    /// <param name="meanC">Mean temperature of the month, °C, −60 to 50.</param>
    /// <returns>Fraction, above 0 to 1; 1 where both temperatures are equal.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    public static double RelativeHumidityFraction(double minC, double meanC)
    {
        Guard.InRange(meanC, MonthNormals.LowestC, MonthNormals.HighestC, "°C");
        Guard.InRange(minC, MonthNormals.LowestC, meanC, "°C");
        return SaturationPressure.OverWaterPa(minC) / SaturationPressure.OverWaterPa(meanC);
    }
}
