namespace Thermal.Power;

/// <summary>A solar panel on the vehicle. Immutable.</summary>
public sealed record SolarPanel
{
    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>Power under 1000 W/m² at 25 °C, W, 1 to 5000.</summary>
    public required double PeakW { get; init => field = Guard.InRange(value, 1, 5000, "W", nameof(PeakW)); }
    /// <summary>Angle between its face and straight up, degrees, 0 (flat on the roof) to 90.</summary>
    public double TiltDeg { get; init => field = Guard.InRange(value, 0, 90, "°", nameof(TiltDeg)); }
    /// <summary>Where it faces, degrees clockwise from the vehicle's nose, 0 to 360.</summary>
    public double FacingDeg { get; init => field = Guard.InRange(value, 0, 360, "°", nameof(FacingDeg)); }
    /// <summary>Share that reaches the battery after wiring, dirt, charge controller and mismatch, fraction.</summary>
    public Materials.Bounded SystemFraction { get; init => field = Guard.InRange(value, 0.1, 1, "(fraction)", nameof(SystemFraction)); } = new(0.65, 0.75, 0.85, "PRACTICE", "wiring, dirt, controller, flat mounting; from memory");
}
