using Thermal.Numerics;

namespace Thermal.Climates;

/// <summary>Wind of a generated year.</summary>
internal static class YearWind
{
    /// <summary>Exponent of the Weibull spread. Source: OURS, 1.48 to 2.04 in six years.</summary>
    private const double Shape = 1.8;
    /// <summary>Share of an hour's departure that the next keeps. Source: OURS, 0.89 to 0.96 in six years.</summary>
    private const double HourToHourFactor = 0.9;

    internal static double[] HoursMPerS(YearPlan plan, RandomStream random)
    {
        double[] wind = new double[YearPlan.HourCount];
        random.FillChain(wind, HourToHourFactor);
        for (int hour = 0; hour < wind.Length; hour++) wind[hour] = Math.Pow(-Math.Log(Above(wind[hour])), 1 / Shape);
        for (int m = 0; m < Place.MonthCount; m++)
        {
            Span<double> month = wind.AsSpan(24 * plan.FirstDay(m), 24 * YearPlan.DaysIn(m));
            double mean = 0;
            foreach (double speed in month) mean += speed / month.Length;
            double factor = (plan.Place.Months[m].WindMPerS ?? GeneratedWeather.WindWithoutNormalMPerS) / mean;
            for (int i = 0; i < month.Length; i++) month[i] *= factor;
        }
        return wind;
    }

    /// <summary>Share of the normal distribution above x.</summary>
    /// <remarks>Rational approximation, 7.5e-8 off at most: far below what a wind is known to. Source: ABRAMOWITZ, 26.2.17 (from memory).</remarks>
    private static double Above(double x)
    {
        double t = 1 / (1 + 0.2316419 * Math.Abs(x));
        double tail = Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI) * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return x >= 0 ? tail : 1 - tail;
    }
}
