using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>A solid batten or timber standing on the inner face of the outermost layer, in place of what the build-up has there.</summary>
public sealed record Batten : LineDetail
{
    /// <summary>What it is of.</summary>
    public required Material Material { get; init; }
    /// <summary>Width along the wall, m, 0.003 to 0.4.</summary>
    public required double WidthM { get; init => field = Guard.InRange(value, 0.003, 0.4, "m", nameof(WidthM)); }
    /// <summary>Depth from the outermost layer inwards, m, 0.003 to 0.3.</summary>
    public required double DepthM { get; init => field = Guard.InRange(value, 0.003, 0.3, "m", nameof(DepthM)); }
    /// <summary>A strip over it; null for none.</summary>
    public OverRib? Over { get; init; }

    /// <inheritdoc/>
    public override Batten WithConductivity(Extreme extreme) => this with
    {
        Material = Moved(Material, extreme),
        Over = Over is { } over ? over with { Material = Moved(over.Material, extreme) } : null,
    };
}
