using Thermal.Envelope.Details;
using Thermal.Files.Keys;
using Thermal.Materials;

namespace Thermal.Files.VehicleKeys;

/// <summary>The described edge of a window, hatch or door where it meets its panel.</summary>
internal static class EdgeKeys
{
    private static readonly string[] Words = ["frame", "door"];

    private static readonly Field<LineDetail, string> ShapeWord = new("shape", "frame: a window, roof light or hatch set into the panel; door: a leaf that shuts against a hollow folded post with a seal.", new ChoiceNode<string>(Words, Words), edge => edge is FrameEdge ? Words[0] : Words[1]) { IsRequired = true };
    private static readonly Field<LineDetail, Material> Of = new("material", "Door: what post and edge of the leaf are folded of; painted steel sheet (steel_sheet) where left out.", new MaterialNode(), edge => DetailNodes.UnlessSteel((edge as DoorEdge)?.Material));
    private static readonly Field<LineDetail, double> Sheet = new("sheet", "Door: thickness of that sheet.", DetailNodes.Sheet, edge => (edge as DoorEdge)?.SheetM);
    private static readonly Field<LineDetail, double> Depth = new("depth", "Frame: its depth through the panel; door: depth of post and leaf edge from the skin inwards.", Kinds.Millimetres(0.005, 0.3, "30 mm"), edge => edge switch { FrameEdge frame => frame.FrameDepthM, DoorEdge door => door.DepthM, _ => null });
    private static readonly Field<LineDetail, double> Width = new("width", "Frame: its width beside the panel.", Kinds.Millimetres(0.01, 0.2, "25 mm"), edge => (edge as FrameEdge)?.FrameWidthM);
    private static readonly Field<LineDetail, double> Lip = new("lip", "Frame: how far the skin is folded inwards along the cut-out; 0 mm for a plain cut.", Kinds.Millimetres(0, 0.2, "15 mm"), edge => (edge as FrameEdge)?.LipM) { Default = 0 };
    private static readonly Field<LineDetail, double> Gap = new("gap", "Frame: air between the cut insulation and lip or frame; 0 mm where they meet.", Kinds.Millimetres(0, 0.1, "5 mm"), edge => (edge as FrameEdge)?.GapM) { Default = 0 };
    private static readonly Field<LineDetail, double> Post = new("post", "Door: width of the post along the panel.", Kinds.Millimetres(0.01, 0.3, "60 mm"), edge => (edge as DoorEdge)?.PostM);
    private static readonly Field<LineDetail, double> Seal = new("seal", "Door: width of the gap that the seal closes.", Kinds.Millimetres(0.003, 0.05, "12 mm"), edge => (edge as DoorEdge)?.SealM);
    private static readonly Field<LineDetail, Material?> Filling = new("inside", "Door: hollow, or the material that fills the post; hollow where left out.", new FillingNode(), edge => (edge as DoorEdge)?.Filling);

    private static readonly Field<LineDetail>[] Fields = [Of, Sheet, Depth, Width, Lip, Gap, Post, Seal, Filling];

    private static readonly Shape<LineDetail, LineDetail>[] All =
    [
        new("frame", "a frame", [Depth, Width], [Lip, Gap], values => new FrameEdge { FrameDepthM = values.Of(Depth), FrameWidthM = values.Of(Width), LipM = values.Of(Lip), GapM = values.Of(Gap) }) { Ranges = [(Depth, Kinds.Millimetres(0.005, 0.2))] },
        new("door", "a door edge", [Sheet, Post, Depth, Seal], [Of, Filling], DoorOf) { Ranges = [(Depth, Kinds.Millimetres(0.01, 0.3))] },
    ];

    internal static Map<LineDetail> Map { get; } = new("an edge", [ShapeWord, .. Fields], values => All.First(shape => shape.Word == values.Of(ShapeWord)).Read(values, Fields)) { IsShort = true };

    private static DoorEdge DoorOf(Values<LineDetail> values) => new()
    {
        Material = values.Has(Of) ? values.Of(Of) : DetailNodes.Steel,
        SheetM = values.Of(Sheet),
        PostM = values.Of(Post),
        DepthM = values.Of(Depth),
        SealM = values.Of(Seal),
        Filling = values.Of(Filling),
    };
}
