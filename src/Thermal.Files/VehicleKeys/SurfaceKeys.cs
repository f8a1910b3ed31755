using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>Panels: where they stand, how large they are, their layers, ribs, openings and what stands against them.</summary>
internal static class SurfaceKeys
{
    private static readonly ChoiceNode<Lining> LiningWords = new(
        ["bonded", "taped", "loose", "slatted"], [Lining.Usual(LiningFit.Bonded), Lining.Usual(LiningFit.Taped), Lining.Usual(LiningFit.Loose), Lining.Usual(LiningFit.Slatted)]);

    private static readonly Field<Against, string> AgainstName = new("name", "What you call it.", Kinds.Name, thing => thing.Name) { IsRequired = true };
    private static readonly Field<Against, double> AgainstKind = new("kind", "What it is like; or give resistance.", new ChoiceNode<double>(
        ["locker", "cupboard", "mattress"], [LiningDefaults.LockerM2KPerW, LiningDefaults.CupboardM2KPerW, LiningDefaults.MattressM2KPerW]), _ => null);
    private static readonly Field<Against, double> AgainstResistance = new("resistance", "What it adds inside.", Kinds.Resistance, thing => thing.AddedResistanceM2KPerW);
    private static readonly Field<Against, double> AgainstShare = new("share", "Share of the panel, openings left out, that it covers.", Kinds.Share, thing => thing.AreaFraction) { IsRequired = true };
    private static readonly Map<Against> AgainstMap = new("a thing against the panel", [AgainstName, AgainstKind, AgainstResistance, AgainstShare], BuildAgainst) { IsShort = true };

    private static readonly Field<Surface, string> Name = new("name", "What you call it.", Kinds.Name, surface => surface.Name) { IsRequired = true };
    private static readonly Field<Surface, Enum> Place = new("place", "Where it stands.", Kinds.Words(typeof(SurfacePlace)), surface => surface.Place) { IsRequired = true };
    private static readonly Field<Surface, string> Zone = new("zone", "The room on its inner side.", new ZoneReferenceNode(), surface => surface.Zone) { IsRequired = true };
    private static readonly Field<Surface, Outer> Outside = new("outside", "The outer side: air, road (sheltered, under the floor), or the name of another room.", new OuterNode(), surface => new Outer(surface.Outside, surface.OtherZone)) { IsRequired = true };
    private static readonly Field<Surface, double> Width = new("width", "Width, bare shell; found from body where left out.", Kinds.Metres(0.05, 20), surface => surface.WidthM);
    private static readonly Field<Surface, double> Height = new("height", "Height, bare shell, of a roof or floor its length; found from body where left out.", Kinds.Metres(0.05, 20), surface => surface.HeightM);
    private static readonly Field<Surface, double> Area = new("area", "Area, openings included; only where it is not width times height.", Kinds.Area(0.01, 200), AreaUnlessProduct);
    private static readonly Field<Surface, double> Tilt = new("tilt", "Angle between its outward side and straight up: roof 0°, side 90°, floor 180°; found from place where left out.", new QuantityNode(Dimensions.Angle, "°", 0, 180), surface => surface.TiltDeg);
    private static readonly Field<Surface, double> Facing = new("facing", "Where its outward side faces, clockwise from the vehicle's nose: right 90°, rear 180°, left 270°; found from place where left out.", new QuantityNode(Dimensions.Angle, "°", 0, 360), surface => surface.FacingDeg);
    private static readonly Field<Surface, IReadOnlyList<StackLayer>> Layers = new("layers", "Layers between the ribs, inside to outside.", LayerKeys.List, surface => surface.Stack.Layers) { IsRequired = true };
    private static readonly Field<Surface, int> Gaps = new("insulation_gaps", "0 none, 1 gaps that let no air round the insulation, 2 gaps that do.", new WholeNode(0, 2), surface => surface.Stack.GapLevel) { Default = 0 };
    private static readonly Field<Surface, Lining> LiningField = new("lining", "How room air is kept from the cold side: bonded, taped, loose or slatted, or the air that gets behind.", new WordOrNode<Lining>(LiningWords, new StatedLiningNode()), surface => new Lining(surface.LiningFit, surface.AirBehindLiningM3PerM2H)) { IsRequired = true };
    private static readonly Field<Surface, IReadOnlyList<LinearBridge>> Ribs = new("ribs", "Ribs, pillars, roof bows, battens, floor grooves, corners: described by shape, or with a given psi.", RibKeys.List, surface => Kinds.UnlessEmpty(surface.Ribs)) { Default = [] };
    private static readonly Field<Surface, IReadOnlyList<PointBridge>> Bolts = new("bolts", "Bolts, rivets, screws through the panel: described by diameter, or with a given chi.", BoltKeys.List, surface => Kinds.UnlessEmpty(surface.Bolts)) { Default = [] };
    private static readonly Field<Surface, IReadOnlyList<Opening>> Openings = new("openings", "Windows, roof lights, doors, hatches.", OpeningKeys.List, surface => Kinds.UnlessEmpty(surface.Openings)) { Default = [] };
    private static readonly Field<Surface, IReadOnlyList<Against>> Things = new("against", "What stands or lies against its inner side.", new ListOf<Against>("thing", AgainstMap, 0, 20, thing => thing.Name), surface => Kinds.UnlessEmpty(surface.Against)) { Default = [] };

    private static readonly Map<Surface> Map = new("a panel",
        [Name, Place, Zone, Outside, Width, Height, Area, Tilt, Facing, Layers, Gaps, LiningField, Ribs, Bolts, Openings, Things], Build);

    internal static ListOf<Surface> List { get; } = new("panel", Map, 1, 60, surface => surface.Name);

    private static Against? BuildAgainst(Values<Against> values)
    {
        if (values.Has(AgainstKind) != values.Has(AgainstResistance))
            return new Against
            {
                Name = values.Of(AgainstName),
                AddedResistanceM2KPerW = values.Has(AgainstKind) ? values.Of(AgainstKind) : values.Of(AgainstResistance),
                AreaFraction = values.Of(AgainstShare),
            };
        values.Spot.Problem("this needs either kind (locker, cupboard, mattress) or resistance; write one of them");
        return null;
    }

    private static Surface? Build(Values<Surface> values)
    {
        SurfacePlace place = (SurfacePlace)values.Of(Place)!;
        (double? widthM, double? heightM) = SizeOf(values, place);
        double? areaM2 = values.NumberOf(Area) ?? widthM * heightM;
        if (areaM2 is null)
            values.Spot.Problem("its size is missing; write width and height, or area, or give body for the panels of the living space");
        else if (widthM * heightM is { } product && areaM2 > product * Rounding)
            values.Problem(Area, "the area is larger than width times height; check the three");
        else if (areaM2 < 0.01)
            values.Spot.Problem("its area is smaller than 0.01 m²; check width and height");
        (OuterSide outside, string? otherZone) = values.Of(Outside);
        if (otherZone == values.Of(Zone))
            values.Problem(Outside, "the same room is on both sides; write air, road or another room");
        if (place == SurfacePlace.Partition && otherZone is null)
            values.Problem(Outside, "a partition has another room on its outer side; write that room's name");
        if (values.Of(Things).Sum(thing => thing.AreaFraction) > Rounding)
            values.Problem(Things, "together these cover more than the whole panel; their shares must not exceed 100 %");
        var surface = new Surface
        {
            Name = values.Of(Name),
            Place = place,
            TiltDeg = values.NumberOf(Tilt) ?? UsualTiltDeg(place),
            FacingDeg = values.NumberOf(Facing) ?? UsualFacingDeg(place),
            WidthM = widthM,
            HeightM = heightM,
            AreaM2 = areaM2 is >= 0.01 and <= 200 ? areaM2.Value : 1, // A value outside has its problem already.
            Zone = values.Of(Zone),
            Outside = outside,
            OtherZone = otherZone,
            Stack = new Stack(values.Of(Layers)) { GapLevel = values.Of(Gaps) },
            Ribs = values.Of(Ribs),
            Bolts = values.Of(Bolts),
            Openings = values.Of(Openings),
            Against = values.Of(Things),
            AirBehindLiningM3PerM2H = values.Of(LiningField).AirM3PerM2H,
            LiningFit = values.Of(LiningField).Fit,
        };
        CheckOpenings(values, surface);
        DetailCheck.Fit(values.Spot, surface);
        return surface;
    }

    // Sums of sizes in millimetres, rounded in binary, may exceed the exact bound in the last digit.
    private const double Rounding = 1 + 1e-9;

    private static void CheckOpenings(Values<Surface> values, Surface surface)
    {
        foreach (Opening opening in surface.Openings.Where(opening => TooFar(opening.FromLeftM ?? 0, opening.WidthM, surface.WidthM) || TooFar(opening.FromBottomM ?? 0, opening.HeightM, surface.HeightM)))
            values.Problem(Openings, $"the opening {opening.Name} reaches beyond its panel; check its width, height, from_left and from_bottom");
        if (surface.OpaqueAreaM2 < 0 && surface.Openings.Sum(opening => opening.AreaM2) > surface.AreaM2 * Rounding)
            values.Problem(Openings, string.Create(System.Globalization.CultureInfo.InvariantCulture,
                $"the openings ({surface.Openings.Sum(opening => opening.AreaM2):0.###} m²) are larger than their panel ({surface.AreaM2:0.###} m²); check widths, heights and counts"));
    }

    private static bool TooFar(double fromM, double sizeM, double? panelM) => panelM is { } limit && fromM + sizeM > limit * Rounding;

    private static (double? WidthM, double? HeightM) SizeOf(Values<Surface> values, SurfacePlace place)
    {
        if (values.Has(Width) || values.Has(Height) || values.Has(Area))
        {
            if (values.Has(Width) != values.Has(Height))
                values.Spot.Problem("width and height belong together; write both, or only area");
            return (values.NumberOf(Width), values.NumberOf(Height));
        }
        // Where the living space itself has a problem, that is said there and not again at each panel.
        Scope scope = values.Spot.Scope;
        bool isOfLiving = scope.LivingNames.Count != 1 || scope.LivingNames[0] == values.Of(Zone);
        return scope.Body is not { } body || !isOfLiving ? (null, null) : place switch
        {
            SurfacePlace.Roof or SurfacePlace.Floor => (body.WidthM, body.LengthM),
            SurfacePlace.Left or SurfacePlace.Right => (body.LengthM, body.HeightM),
            SurfacePlace.Front or SurfacePlace.Rear => (body.WidthM, body.HeightM),
            _ => (null, null),
        };
    }

    private static object? AreaUnlessProduct(Surface surface) => surface.WidthM * surface.HeightM == surface.AreaM2 ? null : surface.AreaM2;

    private static double UsualTiltDeg(SurfacePlace place) => place switch { SurfacePlace.Roof => 0, SurfacePlace.Floor => 180, _ => 90 };

    private static double UsualFacingDeg(SurfacePlace place) => place switch { SurfacePlace.Right => 90, SurfacePlace.Rear => 180, SurfacePlace.Left => 270, _ => 0 };
}
