namespace Thermal.Climates;

/// <summary>Share of a day's sun that falls at one hour.</summary>
public static class HourShare
{
    private const double RadPerDeg = Math.PI / 180;

    /// <summary>Share of the day's global light per hour, r_t, at an hour angle; 0 outside the day.</summary>
    /// <param name="hourAngleDeg">Hour angle ω, degrees, −180 to 180.</param>
    /// <param name="sunsetDeg">Hour angle of sunset ω_s, degrees, 0 to 180.</param>
    /// <remarks>Source: CPR-1979 (Collares-Pereira and Rabl).</remarks>
    public static double OfGlobalFraction(double hourAngleDeg, double sunsetDeg)
    {
        double turned = (sunsetDeg - 60) * RadPerDeg;
        double a = 0.409 + 0.5016 * Math.Sin(turned), b = 0.6609 - 0.4767 * Math.Sin(turned);
        return Math.Max(0, a + b * Math.Cos(hourAngleDeg * RadPerDeg)) * OfDiffuseFraction(hourAngleDeg, sunsetDeg);
    }

    /// <summary>Share of the day's sky light per hour, r_d, which is that of the sun above the air; 0 outside the day.</summary>
    /// <param name="hourAngleDeg">Hour angle ω, degrees, −180 to 180.</param>
    /// <param name="sunsetDeg">Hour angle of sunset ω_s, degrees, 0 to 180.</param>
    /// <remarks>Source: CPR-1979, quoting Liu and Jordan (1960).</remarks>
    public static double OfDiffuseFraction(double hourAngleDeg, double sunsetDeg)
    {
        if (!(Math.Abs(Guard.InRange(hourAngleDeg, -180, 180, "°")) < Guard.InRange(sunsetDeg, 0, 180, "°"))) return 0;
        (double sin, double cos) = Math.SinCos(sunsetDeg * RadPerDeg);
        return Math.PI / 24 * (Math.Cos(hourAngleDeg * RadPerDeg) - cos) / (sin - sunsetDeg * RadPerDeg * cos);
    }
}
