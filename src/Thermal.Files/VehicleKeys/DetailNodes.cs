using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Envelope.Details;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>Kinds of value that several descriptions share.</summary>
internal static class DetailNodes
{
    /// <summary>What sheet, profiles and bolts are of where the file does not say.</summary>
    internal static Material Steel => MaterialLibrary.Find(SteelKey)!;

    /// <summary>A thickness of sheet.</summary>
    internal static QuantityNode Sheet { get; } = Kinds.Millimetres(0.0003, 0.02, "1.2 mm");

    /// <summary>A strip or batten over a rib.</summary>
    internal static Map<OverRib> Over { get; } = OverMap();

    /// <summary>Nothing to write where it is the steel that is meant without a word.</summary>
    internal static Material? UnlessSteel(Material? material) => material?.Key == SteelKey ? null : material;

    private const string SteelKey = "steel_sheet";

    private static Map<OverRib> OverMap()
    {
        Field<OverRib, Material> material = new("material", "What it is of: foam, tape, timber.", new MaterialNode(), over => over.Material) { IsRequired = true };
        Field<OverRib, double> thickness = new("thickness", "Its thickness, such as 6 mm.", Kinds.Millimetres(0.0005, 0.1, "6 mm"), over => over.ThicknessM) { IsRequired = true };
        Field<OverRib, double> width = new("width", "Its width; as wide as what it lies on where left out.", Kinds.Millimetres(0.003, 0.4), over => over.WidthM);
        return new("a strip over a rib", [material, thickness, width], values =>
            new OverRib { Material = values.Of(material), ThicknessM = values.Of(thickness), WidthM = values.NumberOf(width) }) { IsShort = true };
    }
}

/// <summary>What fills a hollow of a detail: a material, or the word for none.</summary>
internal sealed class FillingNode : Node<Material?>
{
    /// <summary>The word for air alone.</summary>
    internal const string Hollow = "hollow";

    private static readonly MaterialNode Materials = new();

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out Material? value)
    {
        value = null;
        return spot.Node is WrittenScalar { Text: Hollow } || Materials.TryRead(spot, out value);
    }

    internal override YamlNode Write(Material? value) => Materials.Write(value!);

    internal override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(new JsonObject { ["const"] = Hollow }, Materials.Schema()) };
}
