namespace Thermal.Envelope;

/// <summary>A whole vehicle: its rooms, panels and what joins them. Immutable.</summary>
public sealed record Vehicle
{
    /// <summary>Name.</summary>
    public required string Name { get; init; }
    /// <summary>One or two sentences of what it is.</summary>
    public string Description { get; init; } = "";
    /// <summary>Length of the living space, bare shell, m; null where panels were given one by one.</summary>
    public double? LengthM { get; init; }
    /// <summary>Width, bare shell, m.</summary>
    public double? WidthM { get; init; }
    /// <summary>Height, bare shell, m.</summary>
    public double? HeightM { get; init; }
    /// <summary>Rooms; exactly one is the living space.</summary>
    public required IReadOnlyList<Zone> Zones { get; init; }
    /// <summary>Passages between rooms.</summary>
    public IReadOnlyList<ZoneLink> Links { get; init; } = [];
    /// <summary>Panels.</summary>
    public required IReadOnlyList<Surface> Surfaces { get; init; }
    /// <summary>Heat stored by furniture and stores beside the linings, J/K per m² of floor.</summary>
    /// <remarks>Source: OURS, 25 kJ/(K·m²).</remarks>
    public double FurnishingsJPerM2K { get; init => field = Guard.InRange(value, 0, 500_000, "J/(K·m²)", nameof(FurnishingsJPerM2K)); } = 25_000;
    /// <summary>Difference of wind pressure between the two sides of a parked vehicle, as a factor of the dynamic pressure, 0 to 2.</summary>
    public Materials.Bounded WindPressureFactor { get; init => field = Guard.InRange(value, 0, 2, "(factor)", nameof(WindPressureFactor)); } = new(0.3, 0.45, 0.6, "OURS", "wind pressure across a parked vehicle, 0.3 to 0.6");

    /// <summary>Share of the sun that the paint takes up: white 0.25, light 0.4, middle 0.6, dark 0.9, fraction.</summary>
    public Materials.Bounded PaintSunFraction { get; init => field = Guard.InRange(value, 0.05, 0.98, "(fraction)", nameof(PaintSunFraction)); } = new(0.2, 0.4, 0.9, "OURS", "paint of unknown colour, taken as light");

    /// <summary>The living space.</summary>
    public Zone Living => Zones.First(zone => zone.Kind == ZoneKind.Living);
}
