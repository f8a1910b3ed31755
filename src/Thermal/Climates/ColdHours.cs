namespace Thermal.Climates;

/// <summary>How long it is how cold.</summary>
public static class ColdHours
{
    /// <summary>The limits a list of cold hours is usually made for, °C. Source: OURS.</summary>
    public static IReadOnlyList<double> UsualLimitsC { get; } = [0, -5, -10, -15, -20];

    /// <summary>Time that is colder than a limit, h.</summary>
    /// <param name="weather">Weather of any length; a year gives hours of a year.</param>
    /// <param name="limitC">Limit, °C, −100 to 100; time at the limit itself does not count.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public static double BelowH(Weather weather, double limitC)
    {
        Guard.InRange(limitC, -100, 100, "°C");
        return weather.AirC.Count(airC => airC < limitC) * weather.StepS / 3600;
    }

    /// <summary>Temperatures of all steps, °C, coldest first: the step at place n has n steps colder than it.</summary>
    /// <param name="weather">Weather of any length.</param>
    public static IReadOnlyList<double> OrderedC(Weather weather) => [.. weather.AirC.Order()];
}
