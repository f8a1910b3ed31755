using Thermal.Materials;

namespace Thermal.Water;

/// <summary>A water tank and where it hangs.</summary>
public sealed record Tank
{
    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>Water in it, L, 1 to 1000.</summary>
    public required double WaterL { get; init => field = Guard.InRange(value, 1, 1000, "L", nameof(WaterL)); }
    /// <summary>Outer area, m², 0.05 to 20.</summary>
    public required double AreaM2 { get; init => field = Guard.InRange(value, 0.05, 20, "m²", nameof(AreaM2)); }
    /// <summary>Insulation round it, R without films, m²·K/W, 0 to 10.</summary>
    public double InsulationM2KPerW { get; init => field = Guard.InRange(value, 0, 10, "m²·K/W", nameof(InsulationM2KPerW)); }
    /// <summary>Zone it stands in; null when slung under the floor in the open.</summary>
    public string? Zone { get; init; }
    /// <summary>Warm room air led past it, m³/h, 0 to 100: only for a tank outside the living space.</summary>
    public double WarmAirM3PerH { get; init => field = Guard.InRange(value, 0, 100, "m³/h", nameof(WarmAirM3PerH)); }
    /// <summary>Heating pad, W, 0 to 1000.</summary>
    public double PadW { get; init => field = Guard.InRange(value, 0, 1000, "W", nameof(PadW)); }
    /// <summary>The pad's thermostat comes on below this, °C. Source: OURS, hold at +3 °C; pads on the market switch on at about 4 to 7 °C.</summary>
    public const double PadOnC = 3;
}
