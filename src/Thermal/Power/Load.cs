namespace Thermal.Power;

/// <summary>Something that draws current beside heater, fans and pads. Immutable.</summary>
public sealed record Load
{
    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>Power while it runs, W, 0.1 to 5000; for a fridge with its compressor running.</summary>
    public required double PowerW { get; init => field = Guard.InRange(value, 0.1, 5000, "W", nameof(PowerW)); }
    /// <summary>When it runs.</summary>
    public LoadRhythm Rhythm { get; init; } = LoadRhythm.Always;
    /// <summary>Hours a day it runs, h, 0 to 24; for <see cref="LoadRhythm.Evenings"/>, before bedtime.</summary>
    public double HoursPerDay { get; init => field = Guard.InRange(value, 0, 24, "h", nameof(HoursPerDay)); } = 24;
    /// <summary>Zone its heat stays in; null where it goes outside.</summary>
    public string? Zone { get; init; }
}

/// <summary>When a load runs.</summary>
public enum LoadRhythm
{
    /// <summary>Day and night.</summary>
    Always,
    /// <summary>The hours before bedtime.</summary>
    Evenings,
    /// <summary>A compressor fridge: runs for a share of the time that rises with the room's temperature.</summary>
    Fridge,
}
