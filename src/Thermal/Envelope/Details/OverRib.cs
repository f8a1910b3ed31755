using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>A strip of foam or tape, or a batten, over the crown of a rib, in place of what the build-up has there.</summary>
public sealed record OverRib
{
    /// <summary>What it is of.</summary>
    public required Material Material { get; init; }
    /// <summary>Its thickness, m, 0.0005 to 0.1.</summary>
    public required double ThicknessM { get; init => field = Guard.InRange(value, 0.0005, 0.1, "m", nameof(ThicknessM)); }
    /// <summary>Its width, m, 0.003 to 0.4; null is as wide as the crown.</summary>
    public double? WidthM { get; init => field = value is { } width ? Guard.InRange(width, 0.003, 0.4, "m", nameof(WidthM)) : null; }
}
