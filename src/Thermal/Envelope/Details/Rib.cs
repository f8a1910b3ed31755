using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>A rib, pillar or roof bow of folded sheet or of a profile, standing on the inner face of the outermost layer and reaching into the build-up.</summary>
/// <remarks>
/// A hat has two feet on the skin, two webs and a crown; a Z and a C have one foot on the skin, one web and one flange towards the room
/// (Z: on the other side of the web than the foot; C: on the same side); a box is a closed tube; a plate is a single web.
/// What the build-up has further inside than the rib's depth runs over it unbroken.
/// </remarks>
public sealed record Rib : LineDetail
{
    /// <summary>Its section.</summary>
    public required RibShape Shape { get; init; }
    /// <summary>What the sheet or profile is of.</summary>
    public required Material Material { get; init; }
    /// <summary>Thickness of the sheet t, m, 0.0003 to 0.02.</summary>
    public required double SheetM { get; init => field = Guard.InRange(value, 0.0003, 0.02, "m", nameof(SheetM)); }
    /// <summary>Depth from the skin to the inner face of crown or flange, m, 0.003 to 0.3.</summary>
    public required double DepthM { get; init => field = Guard.InRange(value, 0.003, 0.3, "m", nameof(DepthM)); }
    /// <summary>Width of the crown of a hat, of the inner flange of a Z or C, or of a box, over all, m, 0.003 to 0.4; a plate has none.</summary>
    public double CrownM { get; init => field = Guard.InRange(value, 0, 0.4, "m", nameof(CrownM)); }
    /// <summary>Width of each foot on the skin, beyond the web, m, 0 to 0.2; box and plate have none.</summary>
    public double FootM { get; init => field = Guard.InRange(value, 0, 0.2, "m", nameof(FootM)); }
    /// <summary>What fills a hat or a box; null where it is hollow.</summary>
    public Material? Filling { get; init; }
    /// <summary>Emissivity of the metal inside a hollow rib, fraction, 0.01 to 1; null takes the material's.</summary>
    public double? InnerEmissivityFraction { get; init => field = value is { } e ? Guard.InRange(e, 0.01, 1, "(fraction)", nameof(InnerEmissivityFraction)) : null; }
    /// <summary>A strip or a batten between its crown and what lies over it; null for none.</summary>
    public OverRib? Over { get; init; }
    /// <summary>True where lining and insulation stop beside it, so that its crown faces the room.</summary>
    public bool IsBare { get; init; }

    /// <inheritdoc/>
    public override Rib WithConductivity(Extreme extreme) => this with
    {
        Material = Moved(Material, extreme),
        Filling = Filling is { } filling ? Moved(filling, extreme) : null,
        Over = Over is { } over ? over with { Material = Moved(over.Material, extreme) } : null,
    };
}

/// <summary>Sections of ribs.</summary>
public enum RibShape
{
    /// <summary>Top hat: two feet, two webs, a crown.</summary>
    Hat,
    /// <summary>Foot and flange on opposite sides of the web.</summary>
    Zed,
    /// <summary>Foot and flange on the same side of the web.</summary>
    Channel,
    /// <summary>Closed tube or profile.</summary>
    Box,
    /// <summary>A single web on edge.</summary>
    Plate,
}
