using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>The corner where this panel meets another at a right angle, such as side and floor; outer skins join, inner layers butt.</summary>
/// <remarks>Counted with bare dimensions, skin to skin: its ψ is often negative, since those count the corner twice.</remarks>
public sealed record Corner : LineDetail
{
    /// <summary>Name of the other panel.</summary>
    public required string Other { get; init; }
    /// <summary>A metal angle or folded edge along the corner inside the skin: its thickness, m, 0.0003 to 0.02; null for none.</summary>
    public double? AngleSheetM { get; init => field = value is { } sheet ? Guard.InRange(sheet, 0.0003, 0.02, "m", nameof(AngleSheetM)) : null; }
    /// <summary>Length of each leg of that angle, m, 0.003 to 0.3; 0 without one.</summary>
    public double AngleLegM { get; init => field = Guard.InRange(value, 0, 0.3, "m", nameof(AngleLegM)); }
    /// <summary>What the angle is of; null for none.</summary>
    public Material? AngleMaterial { get; init; }

    /// <inheritdoc/>
    public override Corner WithConductivity(Extreme extreme) => this with { AngleMaterial = AngleMaterial is { } metal ? Moved(metal, extreme) : null };
}
