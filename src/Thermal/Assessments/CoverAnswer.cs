namespace Thermal.Assessments;

/// <summary>One opening with one state of its covers on the cold night, everything else kept: the whole balance is repeated for it.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Opening">The opening.</param>
/// <param name="Cover">The cover in place; null for none.</param>
/// <param name="InUse">True for the state the case uses at night.</param>
/// <param name="GlassC">Inner face of the glass, °C.</param>
/// <param name="ToSpareK">Degrees to spare before it gets wet, K.</param>
/// <param name="GlassG">Water settling on this glass in the night, g.</param>
/// <param name="ElsewhereG">Water settling everywhere else in the night, g.</param>
/// <param name="RoomHumidityFraction">Humidity of the room it opens from, fraction.</param>
/// <param name="LossW">Heat the living space needs, W.</param>
public sealed record CoverAnswer(string Panel, string Opening, string? Cover, bool InUse, double GlassC, double ToSpareK, double GlassG, double ElsewhereG,
    double RoomHumidityFraction, double LossW);
