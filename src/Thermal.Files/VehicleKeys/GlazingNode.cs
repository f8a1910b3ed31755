using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using Thermal.Words.Units;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>Panes and gaps by turns, inside to outside, each on its line: {pane: acrylic, thickness: 3 mm}, {gap: air, thickness: 20 mm}.</summary>
internal sealed class GlazingNode : Node<Glazing>
{
    private const double UsualEmissivity = 0.837; // as Pane has it

    private static readonly Field<Part, Material> PaneOf = new("pane", "Glass, acrylic or polycarbonate.", new MaterialNode(), part => part.Pane?.Material);
    private static readonly Field<Part, Enum> GapOf = new("gap", "What fills the gap.", Kinds.Words(typeof(GapGas)), part => part.Gap?.Gas);
    private static readonly Field<Part, double> Thickness = new("thickness", "Thickness of pane or gap.", Kinds.Millimetres(0.0005, 0.1), part => part.Pane?.ThicknessM ?? part.Gap!.ThicknessM) { IsRequired = true };
    private static readonly Field<Part, double> Share = new("share", "Only a gap: share of the filling, the rest is air.", Kinds.Share, part => part.Gap?.GasFraction) { Default = 1 };
    private static readonly Field<Part, double> Inner = new("inner_emissivity", "Only a pane: emissivity of the face towards the room.", Kinds.Emissivity, part => part.Pane?.InnerEmissivityFraction) { Default = UsualEmissivity };
    private static readonly Field<Part, double> Outer = new("outer_emissivity", "Only a pane: emissivity of the face towards the outside.", Kinds.Emissivity, part => part.Pane?.OuterEmissivityFraction) { Default = UsualEmissivity };

    private static readonly ListOf<Part> Parts = new("pane or gap", new Map<Part>("a pane or gap", [PaneOf, GapOf, Thickness, Share, Inner, Outer], Build) { IsShort = true }, 1, 7);

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out Glazing value)
    {
        value = null;
        if (!Parts.TryRead(spot, out IReadOnlyList<Part>? parts))
            return false;
        bool takesTurns = parts.Count % 2 == 1 && parts.Index().All(part => part.Item.Pane is null == (part.Index % 2 == 1));
        if (takesTurns)
            value = new Glazing([.. parts.Select(part => part.Pane).OfType<Pane>()], [.. parts.Select(part => part.Gap).OfType<GlazingGap>()]);
        else
            spot.Problem("panes and gaps must take turns and begin and end with a pane; write pane, gap, pane");
        return takesTurns;
    }

    internal override YamlNode Write(Glazing value) => Parts.Write([.. value.Panes.SelectMany((pane, i) =>
        i < value.Gaps.Count ? new[] { new Part(pane, null), new Part(null, value.Gaps[i]) } : [new Part(pane, null)])]);

    internal override JsonObject Schema() => Parts.Schema();

    private static Part? Build(Values<Part> values)
    {
        bool isPane = values.Has(PaneOf);
        if (isPane == values.Has(GapOf))
        {
            values.Spot.Problem("this needs either pane or gap; write for instance pane: acrylic");
            return null;
        }
        foreach (Field<Part> field in isPane ? new Field<Part>[] { Share } : [Inner, Outer])
            if (values.Has(field))
                values.Problem(field, $"only a {(isPane ? "gap" : "pane")} has this; remove it");
        if (isPane && values.Of(PaneOf)!.Group is not (MaterialGroup.Pane or MaterialGroup.Plastic))
            values.Problem(PaneOf, $"{values.Of(PaneOf)!.Name} is no pane; write glass, acrylic or polycarbonate");
        double thicknessM = values.Of(Thickness);
        (double lowest, double highest) = isPane ? (0.0005, 0.05) : (0.001, 0.1);
        if (!(thicknessM >= lowest && thicknessM <= highest))
        {
            values.Problem(Thickness, isPane ? "a pane is 0.5 mm to 50 mm thick" : "a gap is 1 mm to 100 mm wide");
            return null;
        }
        return isPane
            ? new Part(new Pane { Material = values.Of(PaneOf), ThicknessM = thicknessM, InnerEmissivityFraction = values.Of(Inner), OuterEmissivityFraction = values.Of(Outer) }, null)
            : new Part(null, new GlazingGap { Gas = (GapGas)values.Of(GapOf)!, ThicknessM = thicknessM, GasFraction = values.Of(Share) });
    }

    private sealed record Part(Pane? Pane, GlazingGap? Gap);
}
