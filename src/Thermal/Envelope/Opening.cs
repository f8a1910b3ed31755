using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>A window, roof light, door leaf or hatch in a surface: a glazing or a leaf with its own build-up.</summary>
public sealed record Opening
{
    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>Width of one, m, 0.05 to 5.</summary>
    public required double WidthM { get; init => field = Guard.InRange(value, 0.05, 5, "m", nameof(WidthM)); }
    /// <summary>Height of one, m, 0.05 to 5.</summary>
    public required double HeightM { get; init => field = Guard.InRange(value, 0.05, 5, "m", nameof(HeightM)); }
    /// <summary>How many alike, 1 to 50.</summary>
    public int Count { get; init => field = (int)Guard.InRange(value, 1, 50, "openings", nameof(Count)); } = 1;
    /// <summary>From the surface's left edge as seen from outside, m; null where not said.</summary>
    public double? FromLeftM { get; init; }
    /// <summary>From the surface's lower edge, m; null where not said.</summary>
    public double? FromBottomM { get; init; }
    /// <summary>Its glazing; null for a leaf.</summary>
    public Glazing? Glazing { get; init; }
    /// <summary>The build-up of its leaf, inside to outside; null for a glazing.</summary>
    public Stack? Leaf { get; init; }
    /// <summary>Share of the opening taken by the frame, fraction, 0 to 0.9.</summary>
    public double FrameFraction { get; init => field = Guard.InRange(value, 0, 0.9, "(fraction)", nameof(FrameFraction)); }
    /// <summary>Transmittance of the frame with films, W/(m²·K), 0.3 to 7.5: an inside film of 0.13 m²·K/W alone lets 7.7 through.</summary>
    public double FrameUWPerM2K { get; init => field = Guard.InRange(value, 0.3, 7.5, "W/(m²·K)", nameof(FrameUWPerM2K)); } = 5;
    /// <summary>ψ along the edge of the opening, given, or found from <see cref="Edge"/>; W/(m·K), -1 to 2.</summary>
    public double EdgePsiWPerMK { get; init => field = Guard.InRange(value, -1, 2, "W/(m·K)", nameof(EdgePsiWPerMK)); }
    /// <summary>How its edge meets the panel, described; null where ψ is given.</summary>
    public LineDetail? Edge { get; init; }
    /// <summary>Temperature factor of the coldest inner point along a described edge with the loss films and no cover, 0 to 1; null where not known, or not solved yet.</summary>
    public double? EdgeColdestFactor { get; init => field = value is { } factor ? Guard.InRange(factor, 0, 1, "(factor)", nameof(EdgeColdestFactor)) : null; }
    /// <summary>The same with the films for mould; null likewise.</summary>
    public double? EdgeMouldFactor { get; init => field = value is { } factor ? Guard.InRange(factor, 0, 1, "(factor)", nameof(EdgeMouldFactor)) : null; }
    /// <summary>Covers it can have.</summary>
    public IReadOnlyList<Covering> Coverings { get; init; } = [];
    /// <summary>Name of the cover that is on at night; null for none.</summary>
    public string? CoverAtNight { get; init; }

    /// <summary>Area of all of them, m².</summary>
    public double AreaM2 => WidthM * HeightM * Count;

    /// <summary>Length of the edges of all of them, m.</summary>
    public double PerimeterM => 2 * (WidthM + HeightM) * Count;

    /// <summary>Heat per kelvin along the edges of all of them, ψ·l, W/K.</summary>
    /// <exception cref="InvalidOperationException">A described edge that was not solved.</exception>
    public double EdgeLossWPerK => Edge is null || EdgeColdestFactor is not null ? EdgePsiWPerMK * PerimeterM
        : throw new InvalidOperationException($"The edge of {Name} is described but not solved: evaluate the vehicle first.");

    /// <summary>The cover that is on at night; null for none.</summary>
    public Covering? NightCovering => Coverings.FirstOrDefault(covering => covering.Name == CoverAtNight);
}

/// <summary>A curtain, screen, board or outside cover.</summary>
public sealed record Covering
{
    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>On the room's side of the glass, or outside.</summary>
    public required CoveringSide Side { get; init; }
    /// <summary>What it adds when in place, ΔR, its air layer included, m²·K/W, 0.01 to 3.</summary>
    public required Bounded AddedResistanceM2KPerW { get; init => field = Guard.InRange(value, 0.01, 3, "m²·K/W", nameof(AddedResistanceM2KPerW)); }
    /// <summary>Room air that passes its edges and meets the glass, m³ per m² of glass and hour, 0 to 100; only for an inside cover.</summary>
    public double EdgeLeakM3PerM2H { get; init => field = Guard.InRange(value, 0, 100, "m³/(m²·h)", nameof(EdgeLeakM3PerM2H)); } = 3;
}

/// <summary>Where a cover hangs.</summary>
public enum CoveringSide
{
    /// <summary>In the room.</summary>
    Inside,
    /// <summary>Over the glass, outside.</summary>
    Outside,
}
