namespace Thermal.Climates;

/// <summary>Winter design conditions computed from hours.</summary>
public sealed record DesignConditions
{
    /// <summary>Shares of the time that are colder than the two design temperatures. Source: ASHRAE-F, climatic design information (from memory).</summary>
    public const double ColderAt996Fraction = 0.004, ColderAt99Fraction = 0.01;

    /// <summary>Temperature that 99.6 % of the hours exceed, °C.</summary>
    public required double HoursAt996C { get; init; }
    /// <summary>Temperature that 99 % of the hours exceed, °C.</summary>
    public required double HoursAt99C { get; init; }
    /// <summary>Coldest mean of 24 h, °C.</summary>
    public required double ColdestDayC { get; init; }
    /// <summary>Coldest mean of 48 h, °C.</summary>
    public required double ColdestTwoDaysC { get; init; }
    /// <summary>Coldest mean of 72 h, °C.</summary>
    public required double ColdestThreeDaysC { get; init; }
    /// <summary>Coldest step, °C.</summary>
    public required double ColdestC { get; init; }
    /// <summary>Middle of the coldest 72 h, universal time.</summary>
    public required DateTime ColdestThreeDaysUtc { get; init; }
    /// <summary>How many years the hours cover; percentiles of less than a whole year are not those of a place.</summary>
    public required double YearsRatio { get; init; }

    /// <summary>Finds them.</summary>
    /// <param name="weather">At least three days.</param>
    /// <exception cref="ArgumentException">Less than three days.</exception>
    /// <remarks>
    /// Quantiles by linear interpolation between ordered values; running means over whole steps nearest to the time. One typical year understates extremes by design.
    /// </remarks>
    public static DesignConditions Of(Weather weather)
    {
        int ofDay = (int)Math.Round(86_400 / weather.StepS);
        if (weather.Count < 3 * ofDay) throw new ArgumentException($"{weather.Name} has {weather.Count} steps: three days are needed.", nameof(weather));
        double[] ordered = [.. weather.AirC.Order()];
        (double threeDays, int from) = Coldest(weather.AirC, 3 * ofDay);
        return new()
        {
            HoursAt996C = Quantile(ordered, ColderAt996Fraction),
            HoursAt99C = Quantile(ordered, ColderAt99Fraction),
            ColdestDayC = Coldest(weather.AirC, ofDay).MeanC,
            ColdestTwoDaysC = Coldest(weather.AirC, 2 * ofDay).MeanC,
            ColdestThreeDaysC = threeDays,
            ColdestC = ordered[0],
            ColdestThreeDaysUtc = weather.StartUtc.AddSeconds((from + 1.5 * ofDay) * weather.StepS),
            YearsRatio = weather.Count * weather.StepS / (365.25 * 86_400),
        };
    }

    private static double Quantile(double[] ordered, double share)
    {
        double at = share * (ordered.Length - 1);
        int below = (int)at;
        return ordered[below] + (at - below) * (ordered[below + 1] - ordered[below]);
    }

    private static (double MeanC, int From) Coldest(IReadOnlyList<double> air, int steps)
    {
        double sum = 0;
        for (int i = 0; i < steps; i++) sum += air[i];
        (double least, int from) = (sum, 0);
        for (int i = steps; i < air.Count; i++)
        {
            sum += air[i] - air[i - steps];
            if (sum < least) (least, from) = (sum, i - steps + 1);
        }
        return (least / steps, from);
    }
}
