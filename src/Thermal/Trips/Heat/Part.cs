using Thermal.Envelope;
using Thermal.Zones;

namespace Thermal.Trips.Heat;

/// <summary>An area with a face of its own.</summary>
/// <param name="Name">Where, in the builder's words.</param>
/// <param name="Surface">Index of its panel in the vehicle.</param>
/// <param name="Opening">Index of its opening in the panel; -1 for opaque.</param>
/// <param name="Kind">Kind of face: bare, behind, leaf, glass or frame.</param>
/// <param name="Zone">Index of the room inside.</param>
/// <param name="OtherZone">Index of the room outside; -1 for the outside.</param>
/// <param name="AreaM2">Area, m².</param>
/// <param name="TiltDeg">Tilt, degrees.</param>
/// <param name="FacingDeg">Facing from the nose, degrees.</param>
/// <param name="SunUptakeFraction">Share of the sun on its outer face that it takes up.</param>
/// <param name="SunThroughFraction">Share of the sun on it that passes into the room with no cover on; 0 for opaque.</param>
/// <param name="Layers">Its layers, inside to outside, for the damp inside; null for glass and frames.</param>
internal sealed record Part(string Name, int Surface, int Opening, SurfaceKind Kind, int Zone, int OtherZone, double AreaM2, double TiltDeg, double FacingDeg,
    double SunUptakeFraction, double SunThroughFraction, Stack? Layers);

/// <summary>A rib, bolt row or edge without mass: heat per kelvin between a room and what lies outside its panel.</summary>
/// <param name="Name">In the builder's words.</param>
/// <param name="Surface">Index of its panel.</param>
/// <param name="Opening">Index of the opening it edges; -1 for none.</param>
/// <param name="Zone">Room inside.</param>
/// <param name="OtherZone">Room outside; -1 for the outside.</param>
/// <param name="LossWPerK">ψ·l or χ·n, W/K.</param>
/// <param name="ColdestFactor">Its coldest inner line as a share of the difference; null where not known.</param>
internal sealed record Tie(string Name, int Surface, int Opening, int Zone, int OtherZone, double LossWPerK, double? ColdestFactor);
