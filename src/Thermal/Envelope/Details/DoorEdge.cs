using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>The edge where a door leaf meets its post: hollow folded post, seal, folded edge of the leaf.</summary>
public sealed record DoorEdge : LineDetail
{
    /// <summary>What post and leaf edge are folded of.</summary>
    public required Material Material { get; init; }
    /// <summary>Thickness of that sheet, m, 0.0003 to 0.02.</summary>
    public required double SheetM { get; init => field = Guard.InRange(value, 0.0003, 0.02, "m", nameof(SheetM)); }
    /// <summary>Width of the post along the panel, m, 0.01 to 0.3.</summary>
    public required double PostM { get; init => field = Guard.InRange(value, 0.01, 0.3, "m", nameof(PostM)); }
    /// <summary>Depth of post and leaf edge through the panel from the skin inwards, m, 0.01 to 0.3.</summary>
    public required double DepthM { get; init => field = Guard.InRange(value, 0.01, 0.3, "m", nameof(DepthM)); }
    /// <summary>Width of the gap closed by the seal, m, 0.003 to 0.05.</summary>
    public required double SealM { get; init => field = Guard.InRange(value, 0.003, 0.05, "m", nameof(SealM)); }
    /// <summary>What fills the post; null where it is hollow.</summary>
    public Material? Filling { get; init; }

    /// <inheritdoc/>
    public override DoorEdge WithConductivity(Extreme extreme) => this with
    {
        Material = Moved(Material, extreme),
        Filling = Filling is { } filling ? Moved(filling, extreme) : null,
    };
}
