using Thermal.Materials;

namespace Thermal.Moisture;

/// <summary>Mould index through time by temperature and humidity at a surface.</summary>
/// <remarks>
/// Grows above 0 °C while the humidity is at or above the critical one; falls in dry hours: fast for six hours, not until a day is over, slowly after.
/// Below 0 °C it stands still (chosen by us, the safe side: the source's tests were warmer). Pine, resawn surface, unless said. Figures come from
/// samples on which mould was sown: an index tells how likely growth is, not where a spot will be.
/// Source: HV-1999; classes of other materials by OJANEN-2010 (from memory).
/// </remarks>
public static class MouldIndex
{
    /// <summary>Warmest surface the model covers, °C. Source: HV-1999, its tests reach 40 °C; taken as it stands up to 50.</summary>
    public const double WarmestC = 50;

    private const double WeekH = 168, DayH = 24, FirstDropH = 6;
    // Per hour of the source: 0.032 a day in the first six hours, 0.016 a day after the first day.
    private const double FirstDropPerH = 0.00133, LateDropPerH = 0.000667;

    /// <summary>Humidity from which mould grows.</summary>
    /// <param name="surfaceC">Surface, °C, 0 to 50.</param>
    /// <param name="material">Class of the material.</param>
    /// <returns>Relative humidity, fraction; over water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>−0.00267·T³ + 0.160·T² − 3.13·T + 100 % up to 20 °C, 80 % above; never below the least of the class. Source: HV-1999, critical humidity; OJANEN-2010 for the least.</remarks>
    public static double CriticalHumidityFraction(double surfaceC, MouldClass material = MouldClass.VerySensitive)
    {
        double t = Guard.InRange(surfaceC, 0, WarmestC, "°C");
        double percent = t <= 20 ? ((-0.00267 * t + 0.160) * t - 3.13) * t + 100 : 80;
        return Math.Max(percent / 100, MouldCoefficients.Of(material).LeastHumidityFraction);
    }

    /// <summary>Time until first growth (index 1) on wood in a steady climate.</summary>
    /// <param name="surfaceC">Surface T, °C, 0.1 to 50.</param>
    /// <param name="humidityFraction">Relative humidity, fraction, 0.5 to 1.</param>
    /// <param name="isSpruce">True for spruce (W = 1), false for pine (W = 0).</param>
    /// <param name="isKilnDried">True for the outer surface as it left the kiln (SQ = 1), false for a resawn one (SQ = 0).</param>
    /// <returns>Time t_m, h; a figure also where it is too dry to grow at all.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>t_m = exp(−0.68·ln T − 13.9·ln RH + 0.14·W − 0.33·SQ + 66.02) weeks, RH in %. Source: HV-1999, response time of first growth.</remarks>
    public static double FirstGrowthH(double surfaceC, double humidityFraction, bool isSpruce = false, bool isKilnDried = false) =>
        WeekH * Math.Exp(-0.68 * Math.Log(Guard.InRange(surfaceC, 0.1, WarmestC, "°C")) - 13.9 * Math.Log(100 * Guard.InRange(humidityFraction, 0.5, 1, "(fraction)"))
            + (isSpruce ? 0.14 : 0) - (isKilnDried ? 0.33 : 0) + 66.02);

    /// <summary>Time until visible growth (index 3) on wood in a steady climate.</summary>
    /// <param name="surfaceC">Surface T, °C, 0.1 to 50.</param>
    /// <param name="humidityFraction">Relative humidity, fraction, 0.5 to 1.</param>
    /// <param name="isSpruce">True for spruce (W = 1), false for pine (W = 0).</param>
    /// <returns>Time t_v, h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>t_v = exp(−0.74·ln T − 12.72·ln RH + 0.06·W + 61.50) weeks. Source: HV-1999, response time of visible growth.</remarks>
    public static double VisibleGrowthH(double surfaceC, double humidityFraction, bool isSpruce = false) =>
        WeekH * Math.Exp(-0.74 * Math.Log(Guard.InRange(surfaceC, 0.1, WarmestC, "°C")) - 12.72 * Math.Log(100 * Guard.InRange(humidityFraction, 0.5, 1, "(fraction)"))
            + (isSpruce ? 0.06 : 0) + 61.50);

    /// <summary>Highest index a steady climate can lead to.</summary>
    /// <param name="surfaceC">Surface, °C, 0 to 50.</param>
    /// <param name="humidityFraction">Relative humidity, fraction, 0 to 1.</param>
    /// <param name="material">Class of the material.</param>
    /// <returns>Index, 0 or more; 0 below the critical humidity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>A + B·x − C·x², x = (RH_crit − RH)/(RH_crit − 100). Source: HV-1999 for wood; OJANEN-2010 for the others.</remarks>
    public static double HighestFactor(double surfaceC, double humidityFraction, MouldClass material = MouldClass.VerySensitive)
    {
        double critical = CriticalHumidityFraction(surfaceC, material), humidity = Guard.InRange(humidityFraction, 0, 1, "(fraction)");
        if (humidity < critical) return 0;
        MouldCoefficients of = MouldCoefficients.Of(material);
        // At 0 °C only saturated air lets anything grow: there is no way left from critical to saturated.
        double x = critical < 1 ? (humidity - critical) / (1 - critical) : 0;
        return of.ConstantFactor + of.LinearFactor * x - of.SquareFactor * x * x;
    }

    /// <summary>Moves the index on by a time of steady climate.</summary>
    /// <param name="before">Index and dry hours before; index 0 to 6.</param>
    /// <param name="surfaceC">Surface, °C, -90 to 100; above 50 as at 50.</param>
    /// <param name="humidityFraction">Relative humidity over water at the surface, fraction, 0 to 1; 1 where water stands on it.</param>
    /// <param name="hours">Time, h, 0 to 6.</param>
    /// <param name="material">Class of the material.</param>
    /// <returns>Index and dry hours after.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>
    /// dM/dt = k1·k2/t_m with k1 = 1 below index 1 and 2/(t_v/t_m − 1) from there (wood; fixed figures for the others),
    /// k2 = 1 − exp(2.3·(M − M_max)). Straight over the time given, which is short against growth. Source: HV-1999, growth and decline; OJANEN-2010.
    /// </remarks>
    public static MouldState Next(MouldState before, double surfaceC, double humidityFraction, double hours, MouldClass material)
    {
        double m = Guard.InRange(before.IndexFactor, 0, 6, "(index)"), h = Guard.InRange(hours, 0, 6, "h");
        double t = Math.Min(Guard.InRange(surfaceC, -90, 100, "°C"), WarmestC), humidity = Guard.InRange(humidityFraction, 0, 1, "(fraction)");
        MouldCoefficients of = MouldCoefficients.Of(material);
        if (t <= 0) return before;
        if (humidity < CriticalHumidityFraction(t, material)) return new(Math.Max(0, m - of.DeclineFactor * DropFactor(before.DryH, before.DryH + h)), before.DryH + h);
        double held = Math.Max(0, 1 - Math.Exp(2.3 * (m - HighestFactor(t, humidity, material)))), first = FirstGrowthH(Math.Max(t, 0.1), humidity);
        double speed = m < 1 ? of.FirstFactor : of.LaterFactor ?? 2 / (VisibleGrowthH(Math.Max(t, 0.1), humidity) / first - 1);
        return new(m + h * speed * held / first, 0);
    }

    /// <summary>Drop of the index on wood between two numbers of dry hours.</summary>
    private static double DropFactor(double fromH, double toH) =>
        FirstDropPerH * (Math.Min(toH, FirstDropH) - Math.Min(fromH, FirstDropH)) + LateDropPerH * (Math.Max(toH, DayH) - Math.Max(fromH, DayH));
}
