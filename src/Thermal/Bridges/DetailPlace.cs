using Thermal.Envelope;
using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>Where a detail stands: the build-up it bridges and the films on both sides.</summary>
public sealed record DetailPlace
{
    /// <summary>Build-up of its panel, between ribs.</summary>
    public required Stack Stack { get; init; }
    /// <summary>Tilt of the panel, degrees, 0 (roof) to 180 (floor).</summary>
    public required double TiltDeg { get; init => field = Guard.InRange(value, 0, 180, "°", nameof(TiltDeg)); }
    /// <summary>Outside film R_se, m²·K/W, 0 to 10.</summary>
    public required double OutsideFilmM2KPerW { get; init => field = Guard.InRange(value, 0, 10, "m²·K/W", nameof(OutsideFilmM2KPerW)); }
    /// <summary>Distance to the neighbour, m; null for one alone.</summary>
    public double? SpacingM { get; init; }
    /// <summary>The other panel of a corner: its build-up; null elsewhere.</summary>
    public Stack? OtherStack { get; init; }
    /// <summary>Tilt of that panel, degrees.</summary>
    public double OtherTiltDeg { get; init; }
    /// <summary>Outside film of that panel, m²·K/W.</summary>
    public double OtherOutsideFilmM2KPerW { get; init; }
    /// <summary>The opening whose edge it is; null elsewhere.</summary>
    public Opening? Opening { get; init; }

    /// <summary>A place in an upright wall in the films of ISO 6946: R_si 0.13, R_se 0.04.</summary>
    /// <param name="stack">The build-up.</param>
    /// <param name="spacingM">Distance to the neighbour, m; null for one alone.</param>
    public static DetailPlace InWall(Stack stack, double? spacingM = null) => new() { Stack = stack, TiltDeg = 90, OutsideFilmM2KPerW = 0.04, SpacingM = spacingM };

    /// <summary>The place of a detail in a panel of a vehicle, in the panel's own films.</summary>
    /// <param name="vehicle">The vehicle: a corner looks for its other panel there.</param>
    /// <param name="surface">The panel.</param>
    /// <param name="detail">The detail.</param>
    /// <param name="windMPerS">Wind of the film outside, m/s, 0 to 40.</param>
    /// <param name="spacingM">Distance to the neighbour, m; null for one alone.</param>
    /// <param name="opening">The opening whose edge it is; null elsewhere.</param>
    /// <exception cref="ArgumentException">A corner names no panel of the vehicle.</exception>
    public static DetailPlace In(Vehicle vehicle, Surface surface, Detail detail, double windMPerS, double? spacingM = null, Opening? opening = null)
    {
        DetailPlace alone = new() { Stack = surface.Stack, TiltDeg = surface.TiltDeg, OutsideFilmM2KPerW = surface.OutsideFilmM2KPerW(windMPerS), SpacingM = spacingM, Opening = opening };
        return OtherPanel(vehicle, detail) is { } other
            ? alone with { OtherStack = other.Stack, OtherTiltDeg = other.TiltDeg, OtherOutsideFilmM2KPerW = other.OutsideFilmM2KPerW(windMPerS) }
            : alone;
    }

    /// <summary>The panel that a corner joins; null for other details.</summary>
    internal static Surface? OtherPanel(Vehicle vehicle, Detail detail) => detail is not Corner corner ? null
        : vehicle.Surfaces.FirstOrDefault(surface => surface.Name == corner.Other) ?? throw new ArgumentException($"A corner joins a panel called {corner.Other}, and there is none.", nameof(detail));
}
