namespace Thermal.Zones;

/// <summary>One way heat takes from a zone to the outside or to another zone.</summary>
/// <param name="Name">Panel, opening or bridge, in the builder's words.</param>
/// <param name="Panel">The panel it belongs to.</param>
/// <param name="Kind">Kind of path.</param>
/// <param name="Zone">Index of the zone on the inner side.</param>
/// <param name="OtherZone">Index of the zone on the outer side; -1 for the outside.</param>
/// <param name="AreaM2">Area, m²; 0 for bridges.</param>
/// <param name="CoefficientWPerK">Heat per kelvin, W/K.</param>
/// <param name="SkyShareRatio">How much colder than the air the outside acts, per kelvin that the sky is below the air.</param>
public sealed record HeatPath(string Name, string Panel, PathKind Kind, int Zone, int OtherZone, double AreaM2, double CoefficientWPerK, double SkyShareRatio);

/// <summary>Kinds of heat path.</summary>
public enum PathKind
{
    /// <summary>Opaque panel.</summary>
    Panel,
    /// <summary>Window, roof light, door.</summary>
    Opening,
    /// <summary>Rib, edge, bolt.</summary>
    Bridge,
    /// <summary>Curtain or open passage between zones, without its air.</summary>
    Passage,
}
