using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>A bolt, rivet or screw that passes the build-up from the outside inwards; round, with round heads or washers.</summary>
public sealed record Bolt : PointDetail
{
    /// <summary>What it is of.</summary>
    public required Material Material { get; init; }
    /// <summary>Diameter of the shank, m, 0.001 to 0.05.</summary>
    public required double DiameterM { get; init => field = Guard.InRange(value, 0.001, 0.05, "m", nameof(DiameterM)); }
    /// <summary>Diameter of head or washer on the room's side, m, 0.001 to 0.2; as the shank for none.</summary>
    public required double HeadM { get; init => field = Guard.InRange(value, 0.001, 0.2, "m", nameof(HeadM)); }
    /// <summary>Thickness of head and washer on the room's side, m, 0 to 0.05; 0 for none.</summary>
    public double HeadThicknessM { get; init => field = Guard.InRange(value, 0, 0.05, "m", nameof(HeadThicknessM)); }
    /// <summary>Diameter of head or washer outside, m, 0.001 to 0.2; null for none.</summary>
    public double? OuterHeadM { get; init => field = value is { } head ? Guard.InRange(head, 0.001, 0.2, "m", nameof(OuterHeadM)) : null; }
    /// <summary>Layers, counted from the room, that lie unbroken over its head; 0 where the head shows in the room.</summary>
    public int LayersOver { get; init => field = (int)Guard.InRange(value, 0, 39, "layers", nameof(LayersOver)); }

    /// <inheritdoc/>
    public override Bolt WithConductivity(Extreme extreme) => this with { Material = Moved(Material, extreme) };
}
