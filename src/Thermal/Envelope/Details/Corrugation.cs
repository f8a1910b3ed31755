using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>Grooves pressed outwards into the floor pan (or a skin): the build-up lies on the ridges, the grooves hang below them.</summary>
public sealed record Corrugation : LineDetail
{
    /// <summary>Depth of a groove below the ridges, m, 0.002 to 0.05.</summary>
    public required double DepthM { get; init => field = Guard.InRange(value, 0.002, 0.05, "m", nameof(DepthM)); }
    /// <summary>Width of a groove inside, m, 0.005 to 0.3.</summary>
    public required double GrooveM { get; init => field = Guard.InRange(value, 0.005, 0.3, "m", nameof(GrooveM)); }
    /// <summary>What fills the grooves; null where they hold air.</summary>
    public Material? Filling { get; init; }

    /// <inheritdoc/>
    public override Corrugation WithConductivity(Extreme extreme) => this with { Filling = Filling is { } filling ? Moved(filling, extreme) : null };
}
