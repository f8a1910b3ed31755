using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>A rib, pillar or frame edge with a given linear thermal transmittance.</summary>
public sealed record LinearBridge
{
    /// <summary>What the builder calls it, such as roof bow.</summary>
    public required string Name { get; init; }
    /// <summary>Linear thermal transmittance ψ, found with the loss films and bare dimensions, W/(m·K), -1 to 5.</summary>
    public required Bounded PsiWPerMK { get; init => field = Guard.InRange(value, -1, 5, "W/(m·K)", nameof(PsiWPerMK)); }
    /// <summary>Total length in the surface, m, 0 to 500.</summary>
    public required double LengthM { get; init => field = Guard.InRange(value, 0, 500, "m", nameof(LengthM)); }
    /// <summary>Distance between neighbours, m, where they repeat; for the picture and the wall's U with ribs.</summary>
    public double? SpacingM { get; init; }
    /// <summary>Temperature factor of the coldest inner point beside it, fraction of the difference, 0 to 1; null where not known.</summary>
    public double? ColdestFactor { get; init => field = value is { } factor ? Guard.InRange(factor, 0, 1, "(factor)", nameof(ColdestFactor)) : null; }
    /// <summary>The build-up the value was found for, as <see cref="Stack.Signature"/>; null where the file does not say.</summary>
    public string? GivenFor { get; init; }
}

/// <summary>A bolt, screw or other point with a given point thermal transmittance.</summary>
public sealed record PointBridge
{
    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>Point thermal transmittance χ, W/K, -1 to 5.</summary>
    public required Bounded ChiWPerK { get; init => field = Guard.InRange(value, -1, 5, "W/K", nameof(ChiWPerK)); }
    /// <summary>How many there are, 0 to 10 000.</summary>
    public required int Count { get; init => field = (int)Guard.InRange(value, 0, 10_000, "points", nameof(Count)); }
    /// <summary>Temperature factor of the coldest inner point, fraction, 0 to 1; null where not known.</summary>
    public double? ColdestFactor { get; init => field = value is { } factor ? Guard.InRange(factor, 0, 1, "(factor)", nameof(ColdestFactor)) : null; }
    /// <summary>The build-up the value was found for; null where the file does not say.</summary>
    public string? GivenFor { get; init; }
}
