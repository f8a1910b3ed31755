using Thermal.Air;
using Thermal.Envelope;

namespace Thermal.Trips.Heat;

/// <summary>A vehicle as chains of cells between its rooms and the outside: found once, stepped through time by <see cref="HeatStepper"/>. Immutable.</summary>
/// <remarks>
/// Every area with a face of its own is a <see cref="Part"/>: bare lining, lining behind each thing that stands against it, door leaf,
/// glass, frame. Each is one chain of cells with capacity and conduction. Ribs, bolts and edges are ties without mass, beside the chains.
/// Each room has air, a radiant node that all its faces see, and furnishings: one store whose faces are twice the floor. What stands
/// against a panel resists and stores nothing of its own; covers too.
/// </remarks>
internal sealed class Body
{
    /// <summary>Faces of furnishings per m² of floor, factor. Source: OURS.</summary>
    internal const double FurnishingFaceFactor = 2;
    /// <summary>Temperature at which the air of the rooms is weighed, °C. Source: OURS, between cold and warm rooms; 3.5 % for 10 K.</summary>
    internal const double AirWeighedAtC = 10;
    /// <summary>Wind with which the combined resistance of battens is found, m/s: that of the design night.</summary>
    internal const double BattenWindMPerS = 3;

    /// <summary>Finds it.</summary>
    /// <param name="vehicle">A vehicle whose described ribs, bolts and edges are solved.</param>
    /// <param name="films">How faces exchange heat with rooms and outside.</param>
    /// <param name="airPressurePa">Air pressure at the start, Pa, 30 000 to 120 000.</param>
    /// <param name="cellS">Time heat takes across one cell, s, 1 to 100 000.</param>
    /// <exception cref="InvalidOperationException">A described rib, bolt or edge that was not solved.</exception>
    /// <exception cref="ArgumentException">A room that does not exist; openings larger than their panel; a build-up that holds no heat.</exception>
    internal static Body Of(Vehicle vehicle, FilmRule films, double airPressurePa, double cellS = ChainCut.UsualCellS)
    {
        BodyParts found = new(vehicle, Guard.InRange(cellS, 1, 100_000, "s"));
        return new()
        {
            Vehicle = vehicle,
            Films = films,
            Parts = [.. found.Parts],
            Ties = [.. found.Ties],
            Rooms = RoomsOf(vehicle, found.Parts, MoistAir.DryAirDensityKgPerM3(AirWeighedAtC, 0, airPressurePa)),
            Passages = [.. vehicle.Links.Select(link => new Passage(found.IndexOf(link.From), found.IndexOf(link.To),
                link.AreaM2 / (link.ResistanceM2KPerW.Value + 2 * SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal))))],
        };
    }

    /// <summary>The vehicle.</summary>
    internal required Vehicle Vehicle { get; init; }
    /// <summary>How faces exchange heat.</summary>
    internal required FilmRule Films { get; init; }
    /// <summary>Every area with a face of its own.</summary>
    internal required Part[] Parts { get; init; }
    /// <summary>Ribs, bolts and edges of openings.</summary>
    internal required Tie[] Ties { get; init; }
    /// <summary>Air and furnishings, in the vehicle's order of rooms.</summary>
    internal required Room[] Rooms { get; init; }
    /// <summary>Passages, in the vehicle's order.</summary>
    internal required Passage[] Passages { get; init; }

    private static Room[] RoomsOf(Vehicle vehicle, List<Part> parts, double airKgPerM3)
    {
        Room[] rooms = new Room[vehicle.Zones.Count];
        for (int i = 0; i < rooms.Length; i++)
        {
            Zone zone = vehicle.Zones[i];
            double furnishing = FurnishingFaceFactor * zone.FloorAreaM2;
            rooms[i] = new(airKgPerM3 * zone.VolumeM3 * MoistAir.DryAirSpecificHeatJPerKgK, vehicle.FurnishingsJPerM2K * zone.FloorAreaM2, furnishing,
                furnishing + parts.Sum(part => (part.Zone == i ? part.AreaM2 : 0) + (part.OtherZone == i ? part.AreaM2 : 0)));
        }
        return rooms;
    }
}

/// <summary>How faces exchange heat.</summary>
internal enum FilmRule
{
    /// <summary>One lumped resistance inside and outside as in the steady answers, no sky: for the proof against them.</summary>
    Lumped,
    /// <summary>Convection to the air and radiation to the other faces inside; convection by wind, longwave to sky and ground outside.</summary>
    Separate,
}
