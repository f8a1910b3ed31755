namespace Thermal.Trips.Heat;

/// <summary>Air and furnishings of a room.</summary>
/// <param name="AirJPerK">Heat stored by its air, J/K.</param>
/// <param name="FurnishingJPerK">Heat stored by its furnishings, J/K: one store.</param>
/// <param name="FurnishingM2">Their faces, m².</param>
/// <param name="InnerM2">All faces of the room, furnishings too, m².</param>
internal readonly record struct Room(double AirJPerK, double FurnishingJPerK, double FurnishingM2, double InnerM2);

/// <summary>A passage between two rooms.</summary>
/// <param name="From">Index of one room.</param>
/// <param name="To">Index of the other.</param>
/// <param name="ClosedWPerK">Heat through its curtain or door with both films, W/K.</param>
internal readonly record struct Passage(int From, int To, double ClosedWPerK);
