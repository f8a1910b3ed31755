namespace Thermal.Moisture;

/// <summary>Hours in which metal counts as wet, so that it may rust.</summary>
public static class WetnessHours
{
    /// <summary>Humidity above which a hidden film of water lets metal rust, fraction. Source: ISO-9223, time of wetness.</summary>
    public const double AboveHumidityFraction = 0.8;

    /// <summary>Hours of a year, h: 365 days; exact, by definition.</summary>
    public const double YearH = 8760;

    /// <summary>True where metal counts as wet: above 80 % and above 0 °C.</summary>
    /// <param name="metalC">Metal, °C, -90 to 100.</param>
    /// <param name="humidityFraction">Relative humidity over water of the air at the metal, at the metal's temperature, fraction, 0 to 1; 1 where water stands on it.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>The standard counts with the air's own temperature and humidity; indoors the metal is colder than the air, and its own count. Source: ISO-9223, time of wetness.</remarks>
    public static bool IsWet(double metalC, double humidityFraction) =>
        Guard.InRange(metalC, -90, 100, "°C") > 0 & Guard.InRange(humidityFraction, 0, 1, "(fraction)") > AboveHumidityFraction;

    /// <summary>Hours of wetness scaled to a year of the like.</summary>
    /// <param name="wetH">Hours wet, h, 0 to <paramref name="countedH"/>.</param>
    /// <param name="countedH">Hours counted, h, over 0 to 1e6.</param>
    /// <returns>Hours of wetness a year, h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Proportion, a definition.</remarks>
    public static double PerYearH(double wetH, double countedH) =>
        Guard.InRange(wetH, 0, Guard.InRange(countedH, double.Epsilon, 1e6, "h"), "h") / countedH * YearH;
}
