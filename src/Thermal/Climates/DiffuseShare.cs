namespace Thermal.Climates;

/// <summary>Share of the global light that is sky light, from clearness.</summary>
public static class DiffuseShare
{
    /// <summary>In an hour.</summary>
    /// <param name="clearnessRatio">Global light over that without air k_t, 0 to 1.2; above 0.8 the share is constant.</param>
    /// <returns>Fraction.</returns>
    /// <remarks>Source: ERBS-1982, hourly.</remarks>
    public static double OfHourFraction(double clearnessRatio)
    {
        double k = Guard.InRange(clearnessRatio, 0, 1.2, "(ratio)");
        return k <= 0.22 ? 1 - 0.09 * k
            : k <= 0.8 ? 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)))
            : 0.165;
    }

    /// <summary>Over a day.</summary>
    /// <param name="clearnessRatio">Clearness of the day K_T, 0 to 1.2.</param>
    /// <param name="sunsetDeg">Hour angle of sunset, degrees; below 81.4 counts as winter.</param>
    /// <returns>Fraction.</returns>
    /// <remarks>Source: ERBS-1982, daily (coefficients partly from memory).</remarks>
    public static double OfDayFraction(double clearnessRatio, double sunsetDeg)
    {
        double k = Guard.InRange(clearnessRatio, 0, 1.2, "(ratio)");
        return sunsetDeg < 81.4
            ? k < 0.715 ? 1 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) : 0.143
            : k < 0.722 ? 1 + k * (0.2832 + k * (-2.5557 + k * 0.8448)) : 0.175;
    }
}
