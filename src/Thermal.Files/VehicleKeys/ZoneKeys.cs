using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Materials;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>Rooms, their vents, and the passages between them.</summary>
internal static class ZoneKeys
{
    private static readonly WordOrNode<Bounded> Leak = new(
        new ChoiceNode<Bounded>(["tight", "usual", "leaky"], [LeakDefaults.TightM2, LeakDefaults.UsualM2, LeakDefaults.LeakyM2]),
        Kinds.Span(Kinds.VentArea(LeastLeakM2, 0.5)));

    // A room without any air exchange has no humidity that could be computed, and none that is built is airtight. Limits chosen by us.
    private const double LeastLeakM2 = 1e-5, LeastAirChangesPerH = 0.01;

    private static readonly Field<Vent, string> VentName = new("name", "What you call it.", Kinds.Name, vent => vent.Name) { IsRequired = true };
    private static readonly Field<Vent, double> FreeArea = new("free_area", "Free area, mesh and bars taken off.", Kinds.VentArea(0, 0.2), vent => vent.FreeAreaM2) { IsRequired = true };
    private static readonly Field<Vent, bool> Position = new("position", "High (roof, upper wall) or low (floor, lower wall).", new ChoiceNode<bool>(["high", "low"], [true, false]), vent => vent.IsHigh) { IsRequired = true };
    private static readonly Map<Vent> VentMap = new("a vent", [VentName, FreeArea, Position], values => new Vent(values.Of(VentName), values.Of(FreeArea), values.Of(Position))) { IsShort = true };

    private static readonly Field<Zone, string> Name = new("name", "Name of the room, used by panels and passages.", new ZoneNameNode(), zone => zone.Name) { IsRequired = true };
    private static readonly Field<Zone, Enum> Kind = new("kind", "The living space is heated; exactly one room is.", Kinds.Words(typeof(ZoneKind)), zone => zone.Kind) { IsRequired = true };
    private static readonly Field<Zone, double> Volume = new("volume", "Volume of air, finished inside; for the living space found from body where left out.", new QuantityNode(Dimensions.Volume, "m³", 0.1, 200), zone => zone.VolumeM3);
    private static readonly Field<Zone, double> FloorArea = new("floor_area", "Floor, bare; for the living space found from body where left out.", Kinds.Area(0.1, 100), zone => zone.FloorAreaM2);
    private static readonly Field<Zone, double> Height = new("height", "Height between its low and high leaks; for the living space that of body where left out.", Kinds.Metres(0.2, 4), zone => zone.HeightM);
    private static readonly Field<Zone, Bounded> Leakage = new("leakage", "Tight, usual or leaky, or the leak area low down (the same again is high up).", Leak, zone => zone.LeakEachM2) { Default = LeakDefaults.UsualM2 };
    private static readonly Field<Zone, double> AirChanges = new("air_changes", "A stated air exchange that replaces leaks and vents.", new QuantityNode(Dimensions.AirChange, "1/h", LeastAirChangesPerH, 100), zone => zone.AirChangesPerH);
    private static readonly Field<Zone, IReadOnlyList<Vent>> Vents = new("vents", "Vents that stay open.", new ListOf<Vent>("vent", VentMap, 0, 40, vent => vent.Name), zone => Kinds.UnlessEmpty(zone.Vents)) { Default = [] };

    private static readonly Map<Zone> Map = new("a zone", [Name, Kind, Volume, FloorArea, Height, Leakage, AirChanges, Vents], Build);

    internal static ListOf<Zone> List { get; } = new("zone", Map, 1, 12, zone => zone.Name);

    private static Zone? Build(Values<Zone> values)
    {
        BodySize? body = (ZoneKind)values.Of(Kind)! == ZoneKind.Living ? values.Spot.Scope.Body : null;
        double? volumeM3 = values.NumberOf(Volume) ?? body?.BareM3;
        double? floorM2 = values.NumberOf(FloorArea) ?? body?.LengthM * body?.WidthM;
        double? heightM = values.NumberOf(Height) ?? body?.HeightM;
        if (volumeM3 is null || floorM2 is null || heightM is null)
        {
            values.Spot.Problem("volume, floor_area and height are missing; write them, or for the living space write body with length, width and height");
            return null;
        }
        if (floorM2 is < 0.1 or > 100 || volumeM3 is < 0.1 or > 200)
        {
            values.Spot.Problem("body leaves no room of sensible size; check its length, width, height and wheel_arches");
            return null;
        }
        if ((ZoneKind)values.Of(Kind)! == ZoneKind.Living)
            values.Spot.Scope.LivingNames.Add(values.Of(Name));
        if (!values.Has(Volume))
            values.Spot.Scope.VolumeFromBody = values.Of(Name);
        return new Zone
        {
            Name = values.Of(Name),
            Kind = (ZoneKind)values.Of(Kind)!,
            VolumeM3 = volumeM3.Value,
            FloorAreaM2 = floorM2.Value,
            HeightM = heightM.Value,
            LeakEachM2 = values.Of(Leakage),
            AirChangesPerH = values.NumberOf(AirChanges),
            Vents = values.Of(Vents),
        };
    }
}
