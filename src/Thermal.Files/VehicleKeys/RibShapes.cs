using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Keys;
using Thermal.Materials;

namespace Thermal.Files.VehicleKeys;

/// <summary>The shapes of ribs, battens, grooves and corners with their keys.</summary>
internal static class RibShapes
{
    private static readonly string[] Words = ["hat", "zed", "channel", "box", "plate", "batten", "corrugation", "corner"];

    internal static string WordList { get; } = string.Join(", ", Words);

    /// <summary>The key that begins a description.</summary>
    internal static Field<LinearBridge, string> Shape { get; } = new("shape",
        "Its section. Folded sheet: hat (two feet on the skin, a crown towards the room), zed (foot and flange on opposite sides of the web), channel (both on the same side), plate (a web on edge); box (a tube); batten (solid); corrugation (grooves pressed outwards into a floor pan); corner (where this panel meets another).",
        new ChoiceNode<string>(Words, Words), rib => rib.Detail is { } detail ? WordOf(detail) : null);

    private static readonly Field<LinearBridge, string> With = new("with", "Corner: name of the panel it meets at a right angle, such as floor.", Kinds.Name, rib => (rib.Detail as Corner)?.Other);
    private static readonly Field<LinearBridge, Material> Of = new("material", "What it is of; painted steel sheet (steel_sheet) where left out, but a batten must say.", new MaterialNode(), MaterialOf);
    private static readonly Field<LinearBridge, double> Sheet = new("sheet", "Thickness of the sheet it is folded of, or of the wall of a box; corner: of a metal angle inside the skin.", DetailNodes.Sheet, rib => rib.Detail switch { Rib folded => folded.SheetM, Corner corner => corner.AngleSheetM, _ => null });
    private static readonly Field<LinearBridge, double> Depth = new("depth", "How far it reaches from the skin into the build-up; corrugation: how far the grooves hang below the ridges.", Kinds.Millimetres(0.002, 0.3, "36 mm"), rib => rib.Detail switch { Rib folded => folded.DepthM, Batten batten => batten.DepthM, Corrugation grooves => grooves.DepthM, _ => null });
    private static readonly Field<LinearBridge, double> Crown = new("crown", "Hat: width of its crown over all.", Kinds.Millimetres(0.003, 0.4, "40 mm"), rib => CrownOf(rib, RibShape.Hat));
    private static readonly Field<LinearBridge, double> Flange = new("flange", "Zed, channel: width of the flange towards the room, over all.", Kinds.Millimetres(0.003, 0.4, "30 mm"), rib => CrownOf(rib, RibShape.Zed, RibShape.Channel));
    private static readonly Field<LinearBridge, double> Width = new("width", "Box, batten: its width along the panel.", Kinds.Millimetres(0.003, 0.4, "45 mm"), rib => rib.Detail is Batten batten ? batten.WidthM : CrownOf(rib, RibShape.Box));
    private static readonly Field<LinearBridge, double> Foot = new("foot", "Hat, zed, channel: width of each foot on the skin, beyond the web; 0 mm for none.", Kinds.Millimetres(0, 0.2, "20 mm"), rib => rib.Detail is Rib { Shape: RibShape.Hat or RibShape.Zed or RibShape.Channel } folded ? folded.FootM : null);
    private static readonly Field<LinearBridge, double> Groove = new("groove", "Corrugation: width of a groove inside.", Kinds.Millimetres(0.005, 0.3, "40 mm"), rib => (rib.Detail as Corrugation)?.GrooveM);
    private static readonly Field<LinearBridge, double> Leg = new("leg", "Corner: width of each leg of the metal angle; belongs to sheet.", Kinds.Millimetres(0.003, 0.3, "30 mm"), rib => rib.Detail is Corner { AngleSheetM: not null } corner ? corner.AngleLegM : null);
    private static readonly Field<LinearBridge, Material?> Filling = new("inside", "Hat, box, corrugation: hollow, or the material that fills it; hollow where left out.", new FillingNode(), rib => rib.Detail switch { Rib folded => folded.Filling, Corrugation grooves => grooves.Filling, _ => null });
    private static readonly Field<LinearBridge, double> Emissivity = new("inside_emissivity", "Hollow hat or box: emissivity of its sheet inside; that of its material where left out.", Kinds.Emissivity, rib => (rib.Detail as Rib)?.InnerEmissivityFraction);
    private static readonly Field<LinearBridge, OverRib> Over = new("over", "A strip of foam or tape, or a batten, on it towards the room, in place of what the build-up has there.", DetailNodes.Over, rib => rib.Detail switch { Rib folded => folded.Over, Batten batten => batten.Over, _ => null });
    private static readonly Field<LinearBridge, bool> Bare = new("bare", "True where insulation and lining stop beside it, so that it shows in the room.", new FlagNode(), rib => rib.Detail is Rib { IsBare: true } ? true : null) { Default = false };

    /// <summary>All keys of descriptions but the first.</summary>
    internal static IReadOnlyList<Field<LinearBridge>> Fields { get; } = [With, Of, Sheet, Depth, Crown, Flange, Width, Foot, Groove, Leg, Filling, Emissivity, Over, Bare];

    private static readonly QuantityNode RibDepth = Kinds.Millimetres(0.003, 0.3), GrooveDepth = Kinds.Millimetres(0.002, 0.05);

    private static readonly Shape<LinearBridge, LineDetail>[] All =
    [
        new("hat", "a hat", [Sheet, Depth, Crown, Foot], [Of, Filling, Emissivity, Over, Bare], values => Folded(values, RibShape.Hat, Crown)) { Ranges = [(Depth, RibDepth)] },
        new("zed", "a zed", [Sheet, Depth, Flange, Foot], [Of, Over, Bare], values => Folded(values, RibShape.Zed, Flange)) { Ranges = [(Depth, RibDepth)] },
        new("channel", "a channel", [Sheet, Depth, Flange, Foot], [Of, Over, Bare], values => Folded(values, RibShape.Channel, Flange)) { Ranges = [(Depth, RibDepth)] },
        new("box", "a box", [Sheet, Depth, Width], [Of, Filling, Emissivity, Over, Bare], values => Folded(values, RibShape.Box, Width)) { Ranges = [(Depth, RibDepth)] },
        new("plate", "a plate", [Sheet, Depth], [Of, Over, Bare], values => Folded(values, RibShape.Plate, null)) { Ranges = [(Depth, RibDepth)] },
        new("batten", "a batten", [Of, Width, Depth], [Over], values => new Batten { Material = values.Of(Of), WidthM = values.Of(Width), DepthM = values.Of(Depth), Over = values.Of(Over) }) { Ranges = [(Depth, RibDepth)] },
        new("corrugation", "a corrugation", [Depth, Groove], [Filling], values => new Corrugation { DepthM = values.Of(Depth), GrooveM = values.Of(Groove), Filling = values.Of(Filling) }) { Ranges = [(Depth, GrooveDepth)] },
        new("corner", "a corner", [With], [Of, Sheet, Leg], CornerOf),
    ];

    /// <summary>What is described; null where at least one problem was added.</summary>
    internal static LineDetail? Read(Values<LinearBridge> values) => All.First(shape => shape.Word == values.Of(Shape)).Read(values, Fields);

    private static Rib? Folded(Values<LinearBridge> values, RibShape shape, Field<LinearBridge, double>? width)
    {
        if (values.Has(Emissivity) && values.Of(Filling) is not null)
        {
            values.Problem(Emissivity, "only a hollow rib has an emissivity inside; remove it, or write inside: hollow");
            return null;
        }
        return new Rib
        {
            Shape = shape,
            Material = values.Has(Of) ? values.Of(Of) : DetailNodes.Steel,
            SheetM = values.Of(Sheet),
            DepthM = values.Of(Depth),
            CrownM = width is null ? 0 : values.Of(width),
            FootM = values.Has(Foot) ? values.Of(Foot) : 0,
            Filling = values.Of(Filling),
            InnerEmissivityFraction = values.NumberOf(Emissivity),
            Over = values.Of(Over),
            IsBare = values.Of(Bare),
        };
    }

    private static Corner? CornerOf(Values<LinearBridge> values)
    {
        if (values.Has(Sheet) != values.Has(Leg) || (values.Has(Of) && !values.Has(Sheet)))
        {
            values.Spot.Problem("a metal angle in the corner needs both sheet and leg; write for instance sheet: 1.5 mm, leg: 30 mm, or leave sheet, leg and material out");
            return null;
        }
        return new Corner
        {
            Other = values.Of(With),
            AngleSheetM = values.NumberOf(Sheet),
            AngleLegM = values.NumberOf(Leg) ?? 0,
            AngleMaterial = !values.Has(Sheet) ? null : values.Has(Of) ? values.Of(Of) : DetailNodes.Steel,
        };
    }

    private static string WordOf(LineDetail detail) => detail switch
    {
        Rib { Shape: RibShape.Hat } => "hat",
        Rib { Shape: RibShape.Zed } => "zed",
        Rib { Shape: RibShape.Channel } => "channel",
        Rib { Shape: RibShape.Box } => "box",
        Rib { Shape: RibShape.Plate } => "plate",
        Batten => "batten",
        Corrugation => "corrugation",
        Corner => "corner",
        _ => throw new ArgumentException($"A {detail.GetType().Name} is written under its opening.", nameof(detail)),
    };

    private static Material? MaterialOf(LinearBridge rib) => rib.Detail switch
    {
        Rib folded => DetailNodes.UnlessSteel(folded.Material),
        Batten batten => batten.Material,
        Corner corner => DetailNodes.UnlessSteel(corner.AngleMaterial),
        _ => null,
    };

    private static double? CrownOf(LinearBridge rib, params RibShape[] shapes) => rib.Detail is Rib folded && shapes.Contains(folded.Shape) ? folded.CrownM : null;
}
