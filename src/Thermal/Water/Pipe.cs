namespace Thermal.Water;

/// <summary>A pipe full of standing water. Immutable.</summary>
public sealed record Pipe
{
    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>Bore, m, 0.004 to 0.1.</summary>
    public required double BoreM { get; init => field = Guard.InRange(value, 0.004, 0.1, "m", nameof(BoreM)); }
    /// <summary>Outer diameter of the pipe, m, over the bore and up to 0.12.</summary>
    public required double OuterM { get; init => field = Guard.InRange(value, 0.004, 0.12, "m", nameof(OuterM)); }
    /// <summary>Length, m, 0.1 to 50.</summary>
    public double LengthM { get; init => field = Guard.InRange(value, 0.1, 50, "m", nameof(LengthM)); } = 1;
    /// <summary>Insulation round it, m, 0 to 0.1.</summary>
    public double InsulationM { get; init => field = Guard.InRange(value, 0, 0.1, "m", nameof(InsulationM)); }
    /// <summary>Its conductivity, W/(m·K), 0.01 to 1.</summary>
    public double InsulationWPerMK { get; init => field = Guard.InRange(value, 0.01, 1, "W/(m·K)", nameof(InsulationWPerMK)); } = 0.04;
    /// <summary>Zone it runs in; null when in the open under the floor.</summary>
    public string? Zone { get; init; }
}
