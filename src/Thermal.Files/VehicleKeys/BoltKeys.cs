using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Keys;
using Thermal.Materials;
using Thermal.Words.Sentences;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>Bolts, rivets, screws: described by their sizes, or with a given χ and the build-up it was found for.</summary>
internal static class BoltKeys
{
    private static readonly Field<PointBridge, string> Name = new("name", "What you call it.", Kinds.Name, bolt => bolt.Name) { IsRequired = true };
    private static readonly Field<PointBridge, double> Diameter = new("diameter", "Diameter of the shank that passes the build-up from the outside inwards.", Kinds.Millimetres(0.001, 0.05, "8 mm"), bolt => BoltOf(bolt)?.DiameterM);
    private static readonly Field<PointBridge, Material> Of = new("material", "What it is of; painted steel sheet (steel_sheet) where left out.", new MaterialNode(), bolt => DetailNodes.UnlessSteel(BoltOf(bolt)?.Material));
    private static readonly Field<PointBridge, double> Head = new("head", "Diameter of head or washer on the room's side; left out for none.", Kinds.Millimetres(0.001, 0.2, "24 mm"), bolt => HasHead(bolt) ? BoltOf(bolt)?.HeadM : null);
    private static readonly Field<PointBridge, double> HeadThickness = new("head_thickness", "Thickness of head and washer together; belongs to head and outer_head.", Kinds.Millimetres(0, 0.05, "6 mm"), bolt => HasHead(bolt) || BoltOf(bolt)?.OuterHeadM is not null ? BoltOf(bolt)?.HeadThicknessM : null);
    private static readonly Field<PointBridge, double> OuterHead = new("outer_head", "Diameter of head or washer outside; left out for none.", Kinds.Millimetres(0.001, 0.2, "30 mm"), bolt => BoltOf(bolt)?.OuterHeadM);
    private static readonly Field<PointBridge, int> LayersOver = new("layers_over", "How many layers, counted from the room, lie unbroken over its head; 0 where the head shows in the room.", new WholeNode(0, 39), bolt => BoltOf(bolt)?.LayersOver) { Default = 0 };
    private static readonly Field<PointBridge, Bounded> Chi = new("chi", "In place of diameter: its point thermal transmittance from elsewhere.", Kinds.Span(new QuantityNode(Dimensions.PointTransmittance, "W/K", -1, 5)), bolt => Given(bolt)?.ChiWPerK);
    private static readonly Field<PointBridge, int> Count = new("count", "How many.", new WholeNode(0, 10_000), bolt => bolt.Count) { IsRequired = true };
    private static readonly Field<PointBridge, double> Coldest = new("coldest_factor", "Only beside chi: temperature factor of the coldest inner point, 0 as cold as outside, 1 as warm as the room.", Kinds.Factor, bolt => Given(bolt)?.ColdestFactor);
    private static readonly Field<PointBridge, double> Mould = new("mould_factor", "Only beside chi: the same with the inside films for mould; that of coldest_factor where left out.", Kinds.Factor, bolt => Given(bolt)?.MouldFactor);
    private static readonly Field<PointBridge, string> For = new("given_for", "Only beside chi: " + char.ToLowerInvariant(BuildUpNode.Words[0]) + BuildUpNode.Words[1..], new BuildUpNode(), bolt => Given(bolt)?.GivenFor);

    private static readonly Field<PointBridge>[] Described = [Of, Head, HeadThickness, OuterHead, LayersOver];
    private static readonly Told<PointBridge> Told = new("a bolt", Chi, For, [Coldest, Mould], Diameter, "its diameter, and head if it has one", Described);

    private static readonly Map<PointBridge> Map = new("a bolt", [Name, Diameter, .. Described, Chi, Count, Coldest, Mould, For], Build);

    /// <summary>A bolt without a vehicle: its sizes alone.</summary>
    internal static Map<PointBridge> Alone { get; } = new("a bolt", [Diameter, .. Described], BuildAlone);

    internal static ListOf<PointBridge> List { get; } = new("bolt", Map, 0, 50, bolt => bolt.Name);

    private static PointBridge? Build(Values<PointBridge> values)
    {
        if (Told.IsDescribed(values) is not { } isDescribed)
            return null;
        PointDetail? detail = isDescribed ? Read(values) : null;
        return isDescribed && detail is null ? null : new PointBridge
        {
            Name = values.Of(Name),
            Detail = detail,
            ChiWPerK = values.Of(Chi),
            Count = values.Of(Count),
            ColdestFactor = values.NumberOf(Coldest),
            MouldFactor = values.NumberOf(Mould),
            GivenFor = values.Of(For),
        };
    }

    private static PointBridge? BuildAlone(Values<PointBridge> values)
    {
        if (!values.Has(Diameter))
            values.Spot.Problem("diameter is missing; write for instance diameter: 8 mm");
        else if (Read(values) is { } detail)
            return new PointBridge { Name = DetailNames.Of(detail), Detail = detail, Count = 1 };
        return null;
    }

    private static Bolt? Read(Values<PointBridge> values)
    {
        if ((values.Has(Head) || values.Has(OuterHead)) != values.Has(HeadThickness))
        {
            values.Spot.Problem("a head and head_thickness belong together; write both, for instance head: 20 mm, head_thickness: 6 mm, or neither");
            return null;
        }
        return new Bolt
        {
            Material = values.Has(Of) ? values.Of(Of) : DetailNodes.Steel,
            DiameterM = values.Of(Diameter),
            HeadM = values.Has(Head) ? values.Of(Head) : values.Of(Diameter),
            HeadThicknessM = values.NumberOf(HeadThickness) ?? 0,
            OuterHeadM = values.NumberOf(OuterHead),
            LayersOver = values.Of(LayersOver),
        };
    }

    private static Bolt? BoltOf(PointBridge bridge) => bridge.Detail as Bolt;

    private static bool HasHead(PointBridge bridge) => BoltOf(bridge) is { } bolt && (bolt.HeadM != bolt.DiameterM || (bolt.HeadThicknessM != 0 && bolt.OuterHeadM is null));

    // What was computed for a described bolt is not written: it would go stale.
    private static PointBridge? Given(PointBridge bridge) => bridge.Detail is null ? bridge : null;
}
