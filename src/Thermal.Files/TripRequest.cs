using Thermal.Trips;

namespace Thermal.Files;

/// <summary>What a trip file says: the journey, and the vehicle it is meant for. Immutable.</summary>
/// <param name="Trip">The journey.</param>
/// <param name="Vehicle">Name of a built-in vehicle, or path of a file: that in the trip file, put behind the trip file's folder; null where none is named.</param>
/// <param name="Air">Where the weather of each leg comes from, one for each.</param>
public sealed record TripRequest(Trip Trip, string? Vehicle, IReadOnlyList<LegAir> Air)
{
    /// <summary>The vehicle as the file names it.</summary>
    internal string? VehicleAsWritten { get; init; } = Vehicle;
}

/// <summary>Where the weather of a leg comes from: exactly one of place, file and steady air. Immutable.</summary>
public sealed record LegAir
{
    /// <summary>Name of a place, or a place file, as written.</summary>
    public string? Place { get; init; }
    /// <summary>A weather file, as written.</summary>
    public string? WeatherFile { get; init; }
    /// <summary>Air that never changes.</summary>
    public SteadyAir? Steady { get; init; }
    /// <summary>True for the place's coldest clear days instead of an ordinary year.</summary>
    public bool IsColdSpell { get; init; }
    /// <summary>Which of the many ordinary years of a place.</summary>
    public int Seed { get; init; } = Climates.GeneratedWeather.UsualSeed;
}

/// <summary>Air that never changes.</summary>
/// <param name="TemperatureC">Temperature, °C.</param>
/// <param name="HumidityFraction">Relative humidity over water, fraction.</param>
/// <param name="WindMPerS">Wind at 10 m in the open, m/s.</param>
public sealed record SteadyAir(double TemperatureC, double HumidityFraction, double WindMPerS);
