using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Keys;
using Thermal.Materials;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>Windows, roof lights, doors and hatches with their covers.</summary>
internal static class OpeningKeys
{
    private const double UsualEdgeLeakM3PerM2H = 3; // as Covering has it

    private static readonly Field<Covering, string> CoverName = new("name", "What you call it.", Kinds.Name, cover => cover.Name) { IsRequired = true };
    private static readonly Field<Covering, Enum> Side = new("side", "In the room or outside over the glass.", Kinds.Words(typeof(CoveringSide)), cover => cover.Side) { IsRequired = true };
    private static readonly Field<Covering, Bounded> Added = new("resistance", "What it adds in place, its air layer included.", Kinds.Span(new QuantityNode(Dimensions.Resistance, "m²·K/W", 0.01, 3)), cover => cover.AddedResistanceM2KPerW) { IsRequired = true };
    private static readonly Field<Covering, double> EdgeLeak = new("edge_leak", "Only an inside cover: room air that passes its edges and meets the glass.", Kinds.AirThrough(100), cover => cover.EdgeLeakM3PerM2H) { Default = UsualEdgeLeakM3PerM2H };
    private static readonly Map<Covering> Cover = new("a cover", [CoverName, Side, Added, EdgeLeak], values => new Covering
    {
        Name = values.Of(CoverName),
        Side = (CoveringSide)values.Of(Side)!,
        AddedResistanceM2KPerW = values.Of(Added),
        EdgeLeakM3PerM2H = values.Of(EdgeLeak),
    }) { IsShort = true };

    private static readonly Field<Opening, string> Name = new("name", "What you call it.", Kinds.Name, opening => opening.Name) { IsRequired = true };
    private static readonly Field<Opening, double> Width = new("width", "Width of one.", Kinds.Millimetres(0.05, 5), opening => opening.WidthM) { IsRequired = true };
    private static readonly Field<Opening, double> Height = new("height", "Height of one.", Kinds.Millimetres(0.05, 5), opening => opening.HeightM) { IsRequired = true };
    private static readonly Field<Opening, int> Count = new("count", "How many alike.", new WholeNode(1, 50), opening => opening.Count) { Default = 1 };
    private static readonly Field<Opening, double> FromLeft = new("from_left", "From the panel's left edge as seen from outside.", Kinds.Millimetres(0, 20), opening => opening.FromLeftM);
    private static readonly Field<Opening, double> FromBottom = new("from_bottom", "From the panel's lower edge.", Kinds.Millimetres(0, 20), opening => opening.FromBottomM);
    private static readonly Field<Opening, Glazing> Glass = new("glazing", "Panes and gaps, inside to outside; or give leaf.", new GlazingNode(), opening => opening.Glazing);
    private static readonly Field<Opening, IReadOnlyList<StackLayer>> Leaf = new("leaf", "Layers of a door leaf or hatch, inside to outside; or give glazing.", LayerKeys.List, opening => opening.Leaf?.Layers);
    private static readonly Field<Opening, double> FrameShare = new("frame_share", "Share of the opening taken by the frame.", new QuantityNode(Dimensions.Fraction, "", 0, 0.9, "%"), opening => opening.FrameFraction) { Default = 0 };
    private static readonly Field<Opening, double> FrameU = new("frame_u", "U-value of the frame.", new QuantityNode(Dimensions.Transmittance, "W/(m²·K)", 0.3, 7.5), opening => opening.FrameUWPerM2K) { Default = 5 };
    private static readonly Field<Opening, double> EdgePsi = new("edge_psi", "Linear transmittance along the edge of the opening, found elsewhere; or give edge.", new QuantityNode(Dimensions.LinearTransmittance, "W/(m·K)", 0, 2), opening => opening.Edge is null ? opening.EdgePsiWPerMK : null) { Default = 0 };
    private static readonly Field<Opening, LineDetail> Edge = new("edge", "How its edge meets the panel, from which the loss along it is computed; or give edge_psi.", EdgeKeys.Map, opening => opening.Edge);
    private static readonly Field<Opening, IReadOnlyList<Covering>> Covers = new("covers", "Curtains, screens, boards, outside covers it can have.", new ListOf<Covering>("cover", Cover, 0, 10, cover => cover.Name), opening => Kinds.UnlessEmpty(opening.Coverings)) { Default = [] };
    private static readonly Field<Opening, string> AtNight = new("cover_at_night", "Name of the cover that is on at night; left out for none.", Kinds.Name, opening => opening.CoverAtNight);

    private static readonly Map<Opening> Map = new("an opening",
        [Name, Width, Height, Count, FromLeft, FromBottom, Glass, Leaf, FrameShare, FrameU, EdgePsi, Edge, Covers, AtNight], Build);

    internal static ListOf<Opening> List { get; } = new("opening", Map, 0, 60, opening => opening.Name);

    private static Opening? Build(Values<Opening> values)
    {
        if (values.Has(Glass) == values.Has(Leaf))
        {
            values.Spot.Problem("an opening needs either glazing or, for a door or hatch, leaf; write one of them");
            return null;
        }
        if (values.Has(EdgePsi) && values.Has(Edge))
        {
            values.Problem(EdgePsi, "edge_psi and edge both stand here; keep the figure or the description, and remove the other");
            return null;
        }
        if (values.Of(Edge) is DoorEdge && !values.Has(Leaf))
        {
            values.Problem(Edge, "a door edge belongs to a leaf, and this opening has glazing; write shape: frame, or give leaf");
            return null;
        }
        if (values.Has(AtNight) && values.Of(Covers).All(cover => cover.Name != values.Of(AtNight)))
        {
            values.Problem(AtNight, $"this opening has no cover \"{values.Of(AtNight)}\"; {Yaml.Offer.Of(values.Of(AtNight), values.Of(Covers).Select(cover => cover.Name), "its covers are")}");
            return null;
        }
        return new Opening
        {
            Name = values.Of(Name),
            WidthM = values.Of(Width),
            HeightM = values.Of(Height),
            Count = values.Of(Count),
            FromLeftM = values.NumberOf(FromLeft),
            FromBottomM = values.NumberOf(FromBottom),
            Glazing = values.Of(Glass),
            Leaf = values.Has(Leaf) ? new Stack(values.Of(Leaf)!) : null,
            FrameFraction = values.Of(FrameShare),
            FrameUWPerM2K = values.Of(FrameU),
            EdgePsiWPerMK = values.Of(EdgePsi),
            Edge = values.Of(Edge),
            Coverings = values.Of(Covers)!,
            CoverAtNight = values.Of(AtNight),
        };
    }
}
