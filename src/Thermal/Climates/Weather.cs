namespace Thermal.Climates;

/// <summary>Weather in equal steps at one place. Immutable.</summary>
/// <remarks>
/// Step i covers the time from Start + i·Step to Start + (i + 1)·Step. Sun is the mean over the step; temperature, vapour pressure, wind and sky are
/// those at its middle. Times are universal time; the local standard time is <see cref="UtcOffsetH"/> ahead. A typical year is put together from months of
/// different years and carries the year its maker or ours gave it.
/// </remarks>
public sealed record Weather
{
    /// <summary>Shortest and longest step, s: a minute and three hours.</summary>
    public const double ShortestStepS = 60, LongestStepS = 10_800;

    /// <summary>What people call the place.</summary>
    public required string Name { get; init; }
    /// <summary>Latitude, degrees, north positive, −90 to 90.</summary>
    public required double LatitudeDeg { get; init => field = Guard.InRange(value, -90, 90, "degrees", nameof(LatitudeDeg)); }
    /// <summary>Longitude, degrees, east positive, −180 to 180.</summary>
    public required double LongitudeDeg { get; init => field = Guard.InRange(value, -180, 180, "degrees", nameof(LongitudeDeg)); }
    /// <summary>Height above the sea, m, −430 to 6000.</summary>
    public required double AltitudeM { get; init => field = Guard.InRange(value, Place.LowestAltitudeM, Place.HighestAltitudeM, "m", nameof(AltitudeM)); }
    /// <summary>Local standard time ahead of universal time, h, −12 to 14.</summary>
    public required double UtcOffsetH { get; init => field = Guard.InRange(value, -12, 14, "h", nameof(UtcOffsetH)); }
    /// <summary>Where the hours come from.</summary>
    public required WeatherKind Kind { get; init; }
    /// <summary>Who measured, modelled or generated it, with the terms of the data.</summary>
    public required string Source { get; init; }
    /// <summary>Start of the first step, universal time.</summary>
    public required DateTime StartUtc { get; init => field = value.Kind == DateTimeKind.Utc ? value : throw new ArgumentException("Universal time is wanted.", nameof(StartUtc)); }
    /// <summary>Length of a step, s, 60 to 10 800.</summary>
    public required double StepS { get; init => field = Guard.InRange(value, ShortestStepS, LongestStepS, "s", nameof(StepS)); }

    /// <summary>Air temperature at the middle of each step, °C.</summary>
    public required IReadOnlyList<double> AirC { get; init; }
    /// <summary>Vapour pressure there, Pa; from relative humidity over liquid water at every temperature.</summary>
    public required IReadOnlyList<double> VapourPa { get; init; }
    /// <summary>Wind at 10 m in the open, m/s.</summary>
    public required IReadOnlyList<double> WindMPerS { get; init; }
    /// <summary>Sun and sky light on the flat, mean over the step, W/m²; null where the data have no sun.</summary>
    public IReadOnlyList<double>? GlobalWPerM2 { get; init; }
    /// <summary>Beam on a face turned to the sun, mean over the step, W/m²; null without sun.</summary>
    public IReadOnlyList<double>? BeamNormalWPerM2 { get; init; }
    /// <summary>Sky light on the flat, mean over the step, W/m²; null without sun.</summary>
    public IReadOnlyList<double>? DiffuseWPerM2 { get; init; }
    /// <summary>Radiant temperature of the sky, °C; null where neither measured nor found yet.</summary>
    public IReadOnlyList<double>? SkyC { get; init; }
    /// <summary>Air pressure, Pa; null takes the standard atmosphere at the altitude.</summary>
    public IReadOnlyList<double>? PressurePa { get; init; }

    /// <summary>What the data lacked and was estimated or assumed.</summary>
    public IReadOnlyList<WeatherGap> Gaps { get; init; } = [];

    /// <summary>Number of steps.</summary>
    public int Count => AirC.Count;

    /// <summary>Middle of a step, universal time.</summary>
    public DateTime MiddleUtc(int step) => StartUtc.AddSeconds((step + 0.5) * StepS);

    /// <summary>Middle of a step, local standard time.</summary>
    public DateTime MiddleLocal(int step) => DateTime.SpecifyKind(MiddleUtc(step).AddHours(UtcOffsetH), DateTimeKind.Unspecified);
}

/// <summary>Where weather comes from.</summary>
public enum WeatherKind
{
    /// <summary>Measured, or modelled for real dates.</summary>
    Real,
    /// <summary>Months of different years put together as an ordinary year.</summary>
    TypicalYear,
    /// <summary>Generated from monthly normals.</summary>
    Generated,
    /// <summary>Generated to reach the design temperature.</summary>
    ColdSpell,
    /// <summary>The same at every hour.</summary>
    Steady,
}

/// <summary>What weather lacked.</summary>
public enum WeatherGap
{
    /// <summary>Spread of day means estimated from monthly means: the coldest hours may be 2.5 K too cold to 6 K too warm.</summary>
    SpreadEstimated,
    /// <summary>Sun estimated from the daily range of temperature: 0.8 to 1.2 of the true.</summary>
    SunEstimated,
    /// <summary>Wind taken as 3 m/s on average.</summary>
    WindAssumed,
    /// <summary>Humidity estimated from the daily lowest temperature.</summary>
    HumidityEstimated,
    /// <summary>Sky temperature computed, not measured.</summary>
    SkyComputed,
}
