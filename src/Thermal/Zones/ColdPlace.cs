namespace Thermal.Zones;

/// <summary>A place where room air meets something cold: a surface, or the cold side behind a lining. Its temperature follows from those on both sides.</summary>
/// <param name="Name">Where, in the builder's words.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Opening">The opening; null for opaque.</param>
/// <param name="Cover">The cover in place; null for none.</param>
/// <param name="Kind">Kind of place.</param>
/// <param name="InUse">True where it takes part in the balance; false for a state shown for comparison.</param>
/// <param name="Zone">Index of the zone whose air gets there.</param>
/// <param name="OtherZone">Index of the zone on its other side; -1 for the outside.</param>
/// <param name="AreaM2">Area, m²; 0 for the coldest line of a rib.</param>
/// <param name="InsideShareFraction">Its temperature as a share of the difference: outer side + share · (inner − outer), fraction.</param>
/// <param name="MouldShareFraction">The same with the films for mould, fraction.</param>
/// <param name="SkyShareRatio">How much colder than the air the outside acts, per kelvin that the sky is below the air.</param>
/// <param name="TransferKgPerS">Water carried there per unit of humidity ratio above saturation, kg/s.</param>
public sealed record ColdPlace(string Name, string Panel, string? Opening, string? Cover, SurfaceKind Kind, bool InUse, int Zone, int OtherZone,
    double AreaM2, double InsideShareFraction, double MouldShareFraction, double SkyShareRatio, double TransferKgPerS);
