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
/// <param name="SunUptakeFraction">Share of the sun on its outer face that it takes up; 0 over the road and between rooms.</param>
/// <param name="SunThroughFraction">Share of the sun on it that passes into the room with no cover on; 0 for opaque.</param>
/// <param name="Layers">Its layers, inside to outside, for the damp inside; null for glass and frames.</param>
internal sealed record Part(string Name, int Surface, int Opening, SurfaceKind Kind, int Zone, int OtherZone, double AreaM2, double TiltDeg, double FacingDeg,
    double SunUptakeFraction, double SunThroughFraction, Stack? Layers)
{
    /// <summary>Its cells.</summary>
    internal required Chain Chain { get; init; }
    /// <summary>What its faces exchange heat with.</summary>
    internal required PartFilms Films { get; init; }
    /// <summary>Covers it can have, in the order of its opening; empty for opaque.</summary>
    internal IReadOnlyList<Covering> Coverings { get; init; } = [];
}

/// <summary>What the two faces of a part exchange heat with.</summary>
internal sealed record PartFilms
{
    /// <summary>Resistance of what stands against it inside, m²·K/W; 0 for nothing.</summary>
    internal double AgainstM2KPerW { get; init; }
    /// <summary>What lies outside.</summary>
    internal required OuterFilm Outer { get; init; }
    /// <summary>Outer film of still air, m²·K/W: over the road, or behind a well ventilated layer.</summary>
    internal double StillM2KPerW { get; init; }
    /// <summary>Resistance between the outer face and its film, of a slightly ventilated layer, m²·K/W.</summary>
    internal double VentilatedM2KPerW { get; init; }
    /// <summary>Lumped film inside, m²·K/W.</summary>
    internal required double LumpedInsideM2KPerW { get; init; }
    /// <summary>Lumped film outside where it does not follow the wind, m²·K/W; null where it does.</summary>
    internal double? LumpedOutsideM2KPerW { get; init; }
    /// <summary>How much larger its faces are than its area, factor: only for frames that are no flat blocks.</summary>
    internal double FaceFactor { get; init; } = 1;
}

/// <summary>What lies outside a part.</summary>
internal enum OuterFilm
{
    /// <summary>Wind, sky and ground.</summary>
    Weather,
    /// <summary>Sheltered air at the temperature outside; no sky.</summary>
    Still,
    /// <summary>Another room.</summary>
    Room,
}

/// <summary>A rib, bolt row or edge without mass: heat per kelvin between a room and what lies outside its panel.</summary>
/// <param name="Name">In the builder's words.</param>
/// <param name="Surface">Index of its panel.</param>
/// <param name="Opening">Index of the opening it edges; -1 for none.</param>
/// <param name="Zone">Room inside.</param>
/// <param name="OtherZone">Room outside; -1 for the outside.</param>
/// <param name="LossWPerK">ψ·l or χ·n, W/K.</param>
/// <param name="ColdestFactor">Its coldest inner line as a share of the difference; null where not known.</param>
internal sealed record Tie(string Name, int Surface, int Opening, int Zone, int OtherZone, double LossWPerK, double? ColdestFactor)
{
    /// <summary>Share of its heat taken from the air of the room, the rest from what the faces radiate: as in the lumped film, fraction.</summary>
    internal required double FromAirFraction { get; init; }
    /// <summary>True where its panel sees the sky.</summary>
    internal required bool SeesSky { get; init; }
}
