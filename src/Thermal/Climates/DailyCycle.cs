namespace Thermal.Climates;

/// <summary>How the air temperature swings within an ordinary day.</summary>
public static class DailyCycle
{
    /// <summary>Lowest value of the shape, shortly before half past five. Source: ERBS-1983, evaluated.</summary>
    public const double LowestFactor = -0.46558;

    /// <summary>Standard deviation of the shape over a day. Source: ERBS-1983, evaluated.</summary>
    public const double SdFactor = 0.343;

    // The four waves have a range of 0.976 at half hours; the shape is scaled to a range of 1.
    private const double RawRange = 0.976204;

    /// <summary>Difference from the day's mean at a solar hour, as a factor of the day's range.</summary>
    /// <param name="solarTimeH">Solar time t, h, any number; 12 at noon.</param>
    /// <remarks>Four cosines of 2π(t − 1)/24, scaled to range 1. Source: ERBS-1983.</remarks>
    public static double Factor(double solarTimeH)
    {
        double x = 2 * Math.PI * (solarTimeH - 1) / 24;
        return (0.4632 * Math.Cos(x - 3.805) + 0.0984 * Math.Cos(2 * x - 0.360)
            + 0.0168 * Math.Cos(3 * x - 0.822) + 0.0138 * Math.Cos(4 * x - 3.513)) / RawRange;
    }

    /// <summary>Mean range within a day, K, from monthly means of the daily lowest and highest, which hold the change from day to day too.</summary>
    /// <param name="lowestC">Mean daily lowest, °C.</param>
    /// <param name="highestC">Mean daily highest, °C.</param>
    /// <param name="dayMeanSdK">Standard deviation of the day means, K.</param>
    /// <remarks>A = max(t_x − t_n − 0.8·σ·√(2(1 − φ)), 0.2·(t_x − t_n)): on 72 station-months −0.6 K off on average, 1.1 K root mean square. Source: OURS.</remarks>
    public static double RangeK(double lowestC, double highestC, double dayMeanSdK)
    {
        double range = highestC - lowestC;
        return Math.Max(range - 0.8 * dayMeanSdK * Math.Sqrt(2 * (1 - GeneratedWeather.DayToDayFactor)), 0.2 * range);
    }
}
