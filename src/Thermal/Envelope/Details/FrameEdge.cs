using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>The edge where a window, roof light or hatch is set into the panel: its frame against skin, foam and lining.</summary>
/// <remarks>
/// The frame is taken as a block with the resistance that gives the opening's own frame U; what the section adds is the loss along the skin,
/// its folded lip and the gap between foam and frame.
/// </remarks>
public sealed record FrameEdge : LineDetail
{
    /// <summary>Depth of the frame through the panel, m, 0.005 to 0.2.</summary>
    public required double FrameDepthM { get; init => field = Guard.InRange(value, 0.005, 0.2, "m", nameof(FrameDepthM)); }
    /// <summary>Width of the frame beside the panel, m, 0.01 to 0.2.</summary>
    public required double FrameWidthM { get; init => field = Guard.InRange(value, 0.01, 0.2, "m", nameof(FrameWidthM)); }
    /// <summary>Depth of the skin's lip folded inwards along the cut-out, from the skin's inner face, m, 0 to 0.2; 0 for a plain cut.</summary>
    public double LipM { get; init => field = Guard.InRange(value, 0, 0.2, "m", nameof(LipM)); }
    /// <summary>Air gap between the cut insulation and lip or frame, m, 0 to 0.1; 0 where the foam meets it.</summary>
    public double GapM { get; init => field = Guard.InRange(value, 0, 0.1, "m", nameof(GapM)); }

    /// <inheritdoc/>
    public override FrameEdge WithConductivity(Extreme extreme) => this;
}
