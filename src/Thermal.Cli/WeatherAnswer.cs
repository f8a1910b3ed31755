using Thermal.Climates;
using Thermal.Files.Weathers;

namespace Thermal.Cli;

/// <summary>A weather file that was read, and what was found in it.</summary>
internal sealed record WeatherAnswer
{
    internal required string File { get; init; }
    internal required WeatherReading Reading { get; init; }
    /// <summary>Null where the hours cover less than three days.</summary>
    internal required DesignConditions? Conditions { get; init; }
    /// <summary>Null where the hours do not cover a year.</summary>
    internal required PlaceAnswer? Place { get; init; }
    /// <summary>Files that were written from it.</summary>
    internal required IReadOnlyList<string> Saved { get; init; }

    internal Weather Weather => Reading.Weather;

    internal static WeatherAnswer Of(string file, WeatherReading reading, PlaceStand stand, IReadOnlyList<string> saved)
    {
        Weather weather = reading.Weather;
        return new()
        {
            File = file,
            Reading = reading,
            Conditions = weather.Count * weather.StepS >= 3 * 86_400 ? DesignConditions.Of(weather) : null,
            Place = PlaceOfWeather.Covers(weather) ? PlaceAnswer.Of(PlaceOfWeather.Of(weather), weather, stand) with { Seed = null } : null,
            Saved = saved,
        };
    }
}
