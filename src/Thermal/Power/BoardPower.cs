namespace Thermal.Power;

/// <summary>Battery, what charges it and what draws from it. Immutable.</summary>
public sealed record BoardPower
{
    /// <summary>The battery.</summary>
    public required Battery Battery { get; init; }
    /// <summary>Solar panels.</summary>
    public IReadOnlyList<SolarPanel> Panels { get; init; } = [];
    /// <summary>Charge current while driving, A at 12.8 V, 0 to 300.</summary>
    public double AlternatorA { get; init => field = Guard.InRange(value, 0, 300, "A", nameof(AlternatorA)); }
    /// <summary>Charge current on shore power, A at 12.8 V, 0 to 300.</summary>
    public double ShoreChargerA { get; init => field = Guard.InRange(value, 0, 300, "A", nameof(ShoreChargerA)); }
    /// <summary>Loads beside heater, fans and pads.</summary>
    public IReadOnlyList<Load> Loads { get; init; } = [];
}
