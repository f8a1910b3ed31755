using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using Thermal.Words.Units;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>The layers of a build-up, inside to outside: sheets, sheets with battens, air gaps.</summary>
internal static class LayerKeys
{
    /// <summary>What stands in place of a material where there is only air.</summary>
    internal const string AirGapWord = "air_gap";

    private static readonly Field<Battens, Material> BattenMaterial = new("material", "What the battens are of; metal ribs belong under ribs.", new MaterialNode(), battens => battens.Material) { IsRequired = true };
    private static readonly Field<Battens, double> BattenShare = new("share", "Share of the layer's area they take; or give width and spacing.", new QuantityNode(Dimensions.Fraction, "", 0.001, 0.5, "%"), battens => battens.AreaFraction);
    private static readonly Field<Battens, double> BattenWidth = new("width", "Width of one.", Kinds.Millimetres(0.001, 0.5), _ => null);
    private static readonly Field<Battens, double> BattenSpacing = new("spacing", "Distance from middle to middle.", Kinds.Millimetres(0.01, 5), _ => null);
    private static readonly Map<Battens> BattenMap = new("battens", [BattenMaterial, BattenShare, BattenWidth, BattenSpacing], BuildBattens) { IsShort = true };

    private static readonly Field<StackLayer, Material?> Material = new("material", "A material, or air_gap for a layer of air.", new MaterialOrAirNode(), layer => layer is SolidLayer solid ? solid.Material : MaterialOrAirNode.Air) { IsRequired = true };
    private static readonly Field<StackLayer, double> Thickness = new("thickness", "Thickness, such as 40 mm.", Kinds.Thickness, layer => layer.ThicknessM) { IsRequired = true };
    private static readonly Field<StackLayer, string> Name = new("name", "What you call it; the material's name where left out.", Kinds.Name, NameUnlessUsual);
    private static readonly Field<StackLayer, Battens> BattensIn = new("battens", "Battens standing in this layer.", BattenMap, layer => (layer as SolidLayer)?.Battens);
    private static readonly Field<StackLayer, double> Openings = new("openings", "Only an air_gap: openings to the outside per metre length (upright) or square metre (flat); up to 5 cm² counts as closed.", new QuantityNode(Dimensions.Area, "mm²", 0, 100_000), layer => (layer as AirLayer)?.OpeningsMm2) { Default = 0 };
    private static readonly Field<StackLayer, double> Inner = new("inner_emissivity", "Only an air_gap: emissivity of the face towards the room, where a foil makes it low.", Kinds.Emissivity, layer => (layer as AirLayer)?.InnerEmissivityFraction);
    private static readonly Field<StackLayer, double> Outer = new("outer_emissivity", "Only an air_gap: emissivity of the face towards the outside.", Kinds.Emissivity, layer => (layer as AirLayer)?.OuterEmissivityFraction);

    /// <summary>One layer.</summary>
    internal static Map<StackLayer> Layer { get; } = new("a layer", [Material, Thickness, Name, BattensIn, Openings, Inner, Outer], BuildLayer) { IsShort = true };

    /// <summary>Layers, inside to outside.</summary>
    internal static ListOf<StackLayer> List { get; } = new("layer", Layer, 1, 40);

    private static Battens? BuildBattens(Values<Battens> values)
    {
        Material material = values.Of(BattenMaterial);
        if (material.IsMetal)
        {
            values.Problem(BattenMaterial, $"{material.Name} bridges the insulation, which the layer method of ISO 6946 excludes; describe it under ribs with its shape");
            return null;
        }
        bool hasShare = values.Has(BattenShare), hasSizes = values.Has(BattenWidth) && values.Has(BattenSpacing);
        if (hasShare == hasSizes || (hasShare && (values.Has(BattenWidth) || values.Has(BattenSpacing))))
        {
            values.Spot.Problem("battens need either share, or width and spacing; write for instance width: 40 mm, spacing: 400 mm");
            return null;
        }
        double share = hasShare ? values.Of(BattenShare) : values.Of(BattenWidth) / values.Of(BattenSpacing);
        if (share is >= 0.001 and <= 0.5)
            return new Battens(material, share);
        values.Problem(BattenWidth, "battens must take between 0.1 % and 50 % of the area; check width and spacing");
        return null;
    }

    private static StackLayer? BuildLayer(Values<StackLayer> values)
    {
        if (values.Of(Material) is { } material && !ReferenceEquals(material, MaterialOrAirNode.Air))
        {
            foreach (Field<StackLayer, double> field in new[] { Openings, Inner, Outer })
                if (values.Has(field))
                    values.Problem(field, "only an air_gap has this; remove it or make the layer an air_gap");
            return new SolidLayer { Name = values.Has(Name) ? values.Of(Name) : material.Name, Material = material, ThicknessM = values.Of(Thickness), Battens = values.Of(BattensIn) };
        }
        if (values.Of(Thickness) < LeastAirGapM)
            values.Problem(Thickness, "an air_gap is at least 0.1 mm thick; leave a thinner one out");
        if (values.Has(BattensIn))
            values.Problem(BattensIn, "an air_gap with battens is a layer of still_air with battens; write material: still_air, or leave the battens out");
        return new AirLayer
        {
            Name = values.Has(Name) ? values.Of(Name) : UsualAirName,
            ThicknessM = values.Of(Thickness),
            OpeningsMm2 = values.Of(Openings),
            InnerEmissivityFraction = values.NumberOf(Inner),
            OuterEmissivityFraction = values.NumberOf(Outer),
        };
    }

    private const string UsualAirName = "air gap";

    // Below it the formula of an air layer's resistance is not meant. Limit chosen by us.
    private const double LeastAirGapM = 1e-4;

    private static string? NameUnlessUsual(StackLayer layer) =>
        layer.Name == (layer is SolidLayer solid ? solid.Material.Name : UsualAirName) ? null : layer.Name;

    /// <summary>A material's key, or the word for air.</summary>
    private sealed class MaterialOrAirNode : Node<Material?>
    {
        private static readonly MaterialNode Materials = new();

        /// <summary>Stands for the word; its figures are never used.</summary>
        internal static Material Air { get; } = new()
        {
            Key = AirGapWord,
            Name = UsualAirName,
            Group = MaterialGroup.Fluid,
            ConductivityWPerMK = Bounded.Stated(1),
            DensityKgPerM3 = Bounded.Stated(1),
            SpecificHeatJPerKgK = Bounded.Stated(1000),
            EmissivityFraction = Bounded.Stated(1),
        };

        internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out Material? value)
        {
            value = Air;
            return spot.Node is WrittenScalar { Text: AirGapWord } || Materials.TryRead(spot, out value);
        }

        internal override YamlNode Write(Material? value) => Materials.Write(value!);

        internal override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(new JsonObject { ["const"] = AirGapWord }, Materials.Schema()) };
    }
}
