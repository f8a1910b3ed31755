using Thermal.Climates;

namespace Thermal.Words.Sentences;

/// <summary>What weather is and what it lacks, in words.</summary>
public static class WeatherWords
{
    /// <summary>Where weather comes from.</summary>
    public static string Of(WeatherKind kind) => kind switch
    {
        WeatherKind.Real => "measured or modelled for real dates",
        WeatherKind.TypicalYear => "an ordinary year put together from months of different years",
        WeatherKind.Generated => "generated from monthly means",
        WeatherKind.ColdSpell => "a cold spell made to reach the design temperature",
        WeatherKind.Steady => "the same at every hour",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no word for this value."),
    };

    /// <summary>What weather lacked and what stands in, one sentence.</summary>
    /// <param name="gap">What is lacking.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(WeatherGap gap, Figures figures) => gap switch
    {
        WeatherGap.SpreadEstimated => $"How much the days of a month differ is not known for this place and is estimated: the coldest hours may be {figures.Difference(2.5)} too cold to {figures.Difference(6)} too warm.",
        WeatherGap.SunEstimated => "Sun is estimated from the daily range of temperature: the true sun is 0.8 to 1.2 of it.",
        WeatherGap.WindAssumed => $"Wind is not known and taken as {figures.Write(Shown.WindSpeed, GeneratedWeather.WindWithoutNormalMPerS)} on average.",
        WeatherGap.HumidityEstimated => "Humidity is estimated from the daily lowest temperature.",
        WeatherGap.SkyComputed => "The sky's temperature is computed, not measured.",
        _ => throw new ArgumentOutOfRangeException(nameof(gap), gap, "There is no sentence for this value."),
    };

    /// <summary>What no generated year gives, whatever its place knows.</summary>
    public static string NeverCount { get; } = "Dew and fog must not be counted on a generated year: it has too few hours near saturation.";

    /// <summary>What a generated year can say of cold hours.</summary>
    /// <param name="weather">A generated year.</param>
    /// <param name="figures">Metric or US.</param>
    public static string ColdHoursLimit(Weather weather, Figures figures) => weather.Gaps.Contains(WeatherGap.SpreadEstimated)
        ? $"{Of(WeatherGap.SpreadEstimated, figures)} Size a heater by the design temperatures, not by this year."
        : $"One ordinary year, with the spread of day means of this place: its coldest hours are up to {figures.Difference(2.5)} too warm. Size a heater by the design temperatures.";
}
