using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>Weather read from a file, and what was done to it on the way.</summary>
/// <param name="Weather">The weather.</param>
/// <param name="Layout">Which layout the file had.</param>
/// <param name="Remarks">What was filled, moved, split or computed.</param>
public sealed record WeatherReading(Weather Weather, WeatherLayout Layout, IReadOnlyList<WeatherRemark> Remarks);

/// <summary>Layouts of weather files that are known.</summary>
public enum WeatherLayout
{
    /// <summary>Our own columns, described in climates/README.md.</summary>
    OwnColumns,
    /// <summary>Typical year in the TMY3 column layout.</summary>
    Tmy3,
    /// <summary>Typical year of the European photovoltaic service.</summary>
    EuropeanService,
}
