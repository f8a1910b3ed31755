using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>One layer of a floor, wall or roof. Immutable.</summary>
public abstract record StackLayer
{
    /// <summary>What the builder calls it; used in messages and reports.</summary>
    public required string Name { get; init; }

    /// <summary>Thickness d, m, 1e-6 to 1.</summary>
    public required double ThicknessM { get; init => field = Guard.InRange(value, 1e-6, 1, "m", nameof(ThicknessM)); }
}

/// <summary>A sheet of one material, or of a material with battens standing in it.</summary>
public sealed record SolidLayer : StackLayer
{
    /// <summary>The material, between the battens if there are any.</summary>
    public required Material Material { get; init; }

    /// <summary>Battens of another material in the same thickness; null for a plain sheet.</summary>
    public Battens? Battens { get; init; }

    /// <summary>True where it is glued or sprayed full-face to what is outside it, so that no room air passes it or gets behind it.</summary>
    public bool IsBonded { get; init; }

    /// <summary>Thermal resistance between battens R = d/λ, m²·K/W.</summary>
    public double ResistanceM2KPerW => ThicknessM / Material.ConductivityWPerMK.Value;

    /// <summary>Diffusion-equivalent air layer thickness s_d, m.</summary>
    public double DiffusionThicknessM => Material.DiffusionThicknessM(ThicknessM);
}

/// <summary>Battens that interrupt a layer: what they are of and how much of the area they take.</summary>
/// <remarks>Metal is refused: the combined method of ISO 6946 excludes metal that bridges insulation; give such a rib its ψ.</remarks>
public sealed record Battens
{
    /// <param name="material">Material, not a metal.</param>
    /// <param name="areaFraction">Share of the layer's area, fraction, 0.001 to 0.5.</param>
    /// <exception cref="ArgumentException">A metal: outside the scope of ISO 6946, 6.7.2.</exception>
    public Battens(Material material, double areaFraction)
    {
        if (material.IsMetal)
            throw new ArgumentException($"{material.Name} bridges the insulation: ISO 6946 excludes metal; give the rib its linear transmittance.", nameof(material));
        Material = material;
        AreaFraction = Guard.InRange(areaFraction, 0.001, 0.5, "(fraction)");
    }

    /// <summary>What the battens are of.</summary>
    public Material Material { get; init; }

    /// <summary>Share of the layer's area, fraction.</summary>
    public double AreaFraction { get; }
}

/// <summary>A layer of air, closed or ventilated to the outside.</summary>
public sealed record AirLayer : StackLayer
{
    /// <summary>Openings to the outside A_v: mm² per m length (upright) or per m² (flat), 0 to 100 000. Up to 500 counts as closed.</summary>
    public double OpeningsMm2 { get; init => field = Guard.InRange(value, 0, 100_000, "mm²", nameof(OpeningsMm2)); }

    /// <summary>Emissivity of the face towards the room, fraction, 0.01 to 1; null takes that of the neighbouring layer.</summary>
    public double? InnerEmissivityFraction { get; init => field = value is { } e ? Guard.InRange(e, 0.01, 1, "(fraction)", nameof(InnerEmissivityFraction)) : null; }

    /// <summary>Emissivity of the face towards the outside, fraction, 0.01 to 1; null takes that of the neighbouring layer.</summary>
    public double? OuterEmissivityFraction { get; init => field = value is { } e ? Guard.InRange(e, 0.01, 1, "(fraction)", nameof(OuterEmissivityFraction)) : null; }
}
