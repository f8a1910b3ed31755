using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>What the top of a weather file tells.</summary>
internal sealed record WeatherSite
{
    internal required string Name { get; init; }
    internal required double LatitudeDeg { get; init; }
    internal required double LongitudeDeg { get; init; }
    internal required double AltitudeM { get; init; }
    internal required double UtcOffsetH { get; init; }
    internal required WeatherKind Kind { get; init; }
    internal required string Source { get; init; }

    /// <summary>How far the clock of the stamps is ahead of universal time, h.</summary>
    internal required double ClockAheadH { get; init; }

    /// <summary>Where in its step a stamp stands: 0 at the start, 0.5 in the middle, 1 at the end.</summary>
    internal required double StampFraction { get; init; }

    /// <summary>True where air, humidity, wind and pressure are those at the end of the step and not in its middle.</summary>
    internal bool AirIsAtEnd { get; init; }

    /// <summary>What the writer of the file already said was estimated.</summary>
    internal IReadOnlyList<WeatherGap> Gaps { get; init; } = [];
}
