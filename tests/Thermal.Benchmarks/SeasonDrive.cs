using Thermal.Climates;
using Thermal.Files;

namespace Thermal.Benchmarks;

/// <summary>Outside and heat of a heating season, October to April, hour by hour with straight lines between: the same for our stepper and for a general integrator.</summary>
internal sealed class SeasonDrive
{
    internal const double StepS = 600, StartC = 10, HourS = 3600;
    // Enough for about 18 °C in the library van.
    private const double HeatWPerK = 70, HeldC = 18;
    private const int FirstHour = 273 * 24, DayCount = 31 + 30 + 31 + 31 + 28 + 31 + 30;

    internal SeasonDrive()
    {
        Weather year = GeneratedWeather.Typical(PlaceLibrary.BuiltIn.Find("Davos")!);
        (OutsideC, HeatW) = (new double[HourCount + 1], new double[HourCount + 1]);
        for (int i = 0; i <= HourCount; i++)
        {
            OutsideC[i] = year.AirC[(FirstHour + i) % year.Count];
            HeatW[i] = HeatWPerK * Math.Max(0, HeldC - OutsideC[i]);
        }
    }

    internal int HourCount => 24 * DayCount;

    /// <summary>At each full hour, °C.</summary>
    internal double[] OutsideC { get; }
    /// <summary>At each full hour, W.</summary>
    internal double[] HeatW { get; }

    /// <summary>One of them between the hours.</summary>
    internal static double At(double[] hourly, double timeS)
    {
        int hour = Math.Min((int)(timeS / HourS), hourly.Length - 2);
        return hourly[hour] + (timeS / HourS - hour) * (hourly[hour + 1] - hourly[hour]);
    }
}
