using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using Thermal.Words.Units;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>Ribs and bolts with a given ψ or χ. Each says which build-up its figure was found for, since it holds for no other.</summary>
internal static class BridgeKeys
{
    private const string GivenForWords = "The layers, inside to outside, that the figure was found for, such as \"birch_plywood 4 mm, sheep_wool 40 mm, steel_sheet 0.8 mm\".";

    private static readonly Field<LinearBridge, string> RibName = new("name", "What you call it.", Kinds.Name, rib => rib.Name) { IsRequired = true };
    private static readonly Field<LinearBridge, Bounded> Psi = new("psi", "Linear thermal transmittance, found with the loss films and bare dimensions.", Kinds.Span(new QuantityNode(Dimensions.LinearTransmittance, "W/(m·K)", -1, 5)), rib => rib.PsiWPerMK) { IsRequired = true };
    private static readonly Field<LinearBridge, double> Length = new("length", "Total length in this panel.", Kinds.Metres(0, 500), rib => rib.LengthM) { IsRequired = true };
    private static readonly Field<LinearBridge, double> Spacing = new("spacing", "Distance between neighbours.", Kinds.Millimetres(0.02, 20), rib => rib.SpacingM);
    private static readonly Field<LinearBridge, double> Coldest = new("coldest_factor", "Temperature factor of the coldest inner point: 0 as cold as outside, 1 as warm as the room.", Kinds.Factor, rib => rib.ColdestFactor);
    private static readonly Field<LinearBridge, string> RibFor = new("given_for", GivenForWords, new BuildUpNode(), rib => rib.GivenFor) { IsRequired = true };

    private static readonly Map<LinearBridge> Rib = new("a rib", [RibName, Psi, Length, Spacing, Coldest, RibFor], values => new LinearBridge
    {
        Name = values.Of(RibName),
        PsiWPerMK = values.Of(Psi),
        LengthM = values.Of(Length),
        SpacingM = values.NumberOf(Spacing),
        ColdestFactor = values.NumberOf(Coldest),
        GivenFor = values.Of(RibFor),
    });

    private static readonly Field<PointBridge, string> BoltName = new("name", "What you call it.", Kinds.Name, bolt => bolt.Name) { IsRequired = true };
    private static readonly Field<PointBridge, Bounded> Chi = new("chi", "Point thermal transmittance.", Kinds.Span(new QuantityNode(Dimensions.PointTransmittance, "W/K", -1, 5)), bolt => bolt.ChiWPerK) { IsRequired = true };
    private static readonly Field<PointBridge, int> Count = new("count", "How many.", new WholeNode(0, 10_000), bolt => bolt.Count) { IsRequired = true };
    private static readonly Field<PointBridge, double> BoltColdest = new("coldest_factor", "Temperature factor of the coldest inner point: 0 as cold as outside, 1 as warm as the room.", Kinds.Factor, bolt => bolt.ColdestFactor);
    private static readonly Field<PointBridge, string> BoltFor = new("given_for", GivenForWords, new BuildUpNode(), bolt => bolt.GivenFor) { IsRequired = true };

    private static readonly Map<PointBridge> Bolt = new("a bolt", [BoltName, Chi, Count, BoltColdest, BoltFor], values => new PointBridge
    {
        Name = values.Of(BoltName),
        ChiWPerK = values.Of(Chi),
        Count = values.Of(Count),
        ColdestFactor = values.NumberOf(BoltColdest),
        GivenFor = values.Of(BoltFor),
    });

    internal static ListOf<LinearBridge> Ribs { get; } = new("rib", Rib, 0, 50, rib => rib.Name);
    internal static ListOf<PointBridge> Bolts { get; } = new("bolt", Bolt, 0, 50, bolt => bolt.Name);

    /// <summary>A build-up in one line, brought to the form that <see cref="Stack.Signature"/> has.</summary>
    private sealed class BuildUpNode : Node<string>
    {
        internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out string value)
        {
            value = null;
            if (spot.Text("the layers that the figure was found for, such as \"birch_plywood 4 mm, steel_sheet 0.8 mm\"") is not { } text)
                return false;
            List<string> layers = [];
            foreach (string layer in text.Split(',', StringSplitOptions.TrimEntries))
            {
                int blank = layer.IndexOf(' ', StringComparison.Ordinal);
                string wrong = "";
                if (blank <= 0 || text.Length > 1000 || !QuantityText.TryRead(layer[blank..], Dimensions.Length, out double thicknessM, out wrong))
                {
                    spot.Problem($"\"{(layer.Length <= 40 ? layer : layer[..40] + "…")}\" is not a material with its thickness{(wrong.Length > 0 ? $": {wrong}" : "; write for instance birch_plywood 4 mm")}");
                    return false;
                }
                string material = layer[..blank] == LayerKeys.AirGapWord ? "air" : layer[..blank];
                layers.Add(string.Create(CultureInfo.InvariantCulture, $"{material} {Math.Round(thicknessM * 1000, 3)} mm"));
            }
            value = string.Join(", ", layers);
            return true;
        }

        internal override YamlNode Write(string value) => new YamlScalarNode(value);

        internal override JsonObject Schema() => new() { ["type"] = "string" };
    }
}
