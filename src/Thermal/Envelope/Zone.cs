using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>A room of the vehicle with air of its own.</summary>
public sealed record Zone
{
    /// <summary>Name; unique in the vehicle.</summary>
    public required string Name { get; init; }
    /// <summary>Living space (heated), cab or hold.</summary>
    public required ZoneKind Kind { get; init; }
    /// <summary>Air volume, finished inside, m³, 0.1 to 200.</summary>
    public required double VolumeM3 { get; init => field = Guard.InRange(value, 0.1, 200, "m³", nameof(VolumeM3)); }
    /// <summary>Floor area, bare, m², 0.1 to 100.</summary>
    public required double FloorAreaM2 { get; init => field = Guard.InRange(value, 0.1, 100, "m²", nameof(FloorAreaM2)); }
    /// <summary>Height between its low and high leaks, m, 0.2 to 4.</summary>
    public required double HeightM { get; init => field = Guard.InRange(value, 0.2, 4, "m", nameof(HeightM)); }
    /// <summary>Leak openings low down, and the same again high up, m², 0 to 0.5.</summary>
    public required Bounded LeakEachM2 { get; init => field = Guard.InRange(value, 0, 0.5, "m²", nameof(LeakEachM2)); }
    /// <summary>A stated air exchange with the outside that replaces leaks and vents, air changes per hour, 0 to 100; null to compute.</summary>
    public double? AirChangesPerH { get; init => field = value is { } changes ? Guard.InRange(changes, 0, 100, "1/h", nameof(AirChangesPerH)) : null; }
    /// <summary>Vents that stay open.</summary>
    public IReadOnlyList<Vent> Vents { get; init; } = [];
}

/// <summary>Kinds of zone.</summary>
public enum ZoneKind
{
    /// <summary>Kept at the wanted temperature.</summary>
    Living,
    /// <summary>Driver's cab.</summary>
    Cab,
    /// <summary>Unheated hold, garage, under the bed.</summary>
    Hold,
}

/// <summary>A fixed vent that stays open.</summary>
/// <param name="Name">What the builder calls it.</param>
/// <param name="FreeAreaM2">Free area, mesh and bars taken off, m², 0 to 0.2.</param>
/// <param name="IsHigh">High (roof, upper wall) or low (floor, lower wall).</param>
public sealed record Vent(string Name, double FreeAreaM2, bool IsHigh)
{
    /// <summary>Free area, mesh and bars taken off, m², 0 to 0.2.</summary>
    public double FreeAreaM2 { get; init => field = Guard.InRange(value, 0, 0.2, "m²", nameof(FreeAreaM2)); } = Guard.InRange(FreeAreaM2, 0, 0.2, "m²");
}

/// <summary>How two zones exchange air and heat beside their partitions: an open passage or a curtain.</summary>
public sealed record ZoneLink
{
    /// <summary>One zone.</summary>
    public required string From { get; init; }
    /// <summary>The other.</summary>
    public required string To { get; init; }
    /// <summary>Area of the passage, m², 0.01 to 20.</summary>
    public required double AreaM2 { get; init => field = Guard.InRange(value, 0.01, 20, "m²", nameof(AreaM2)); }
    /// <summary>Open, or a curtain or door across it at night.</summary>
    public required LinkState State { get; init; }
    /// <summary>Resistance of curtain or door, without films, m²·K/W, 0 to 5.</summary>
    public Bounded ResistanceM2KPerW { get; init => field = Guard.InRange(value, 0, 5, "m²·K/W", nameof(ResistanceM2KPerW)); } = new(0.03, 0.08, 0.2, "OURS", "curtain across the cab");
    /// <summary>Air exchanged through it, m³ per m² and hour, 0 to 2000.</summary>
    public required Bounded AirM3PerM2H { get; init => field = Guard.InRange(value, 0, 2000, "m³/(m²·h)", nameof(AirM3PerM2H)); }

    /// <summary>Air through an open passage, m³ per m² and hour: enough to make two zones nearly one.</summary>
    /// <remarks>Source: OURS; buoyancy through an open doorway at a few kelvin gives this order.</remarks>
    public static Bounded OpenAirM3PerM2H { get; } = new(150, 300, 600, "OURS", "open passage");

    /// <summary>Air past a curtain, m³ per m² and hour. Source: OURS.</summary>
    public static Bounded CurtainAirM3PerM2H { get; } = new(3, 10, 30, "OURS", "curtain with gaps at the edges");
}

/// <summary>State of a passage at night.</summary>
public enum LinkState
{
    /// <summary>Nothing across it.</summary>
    Open,
    /// <summary>Curtain, blind or door across it.</summary>
    Closed,
}
