using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Words.Units;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>A build-up in one line, brought to the form that <see cref="Stack.Signature"/> has.</summary>
internal sealed class BuildUpNode : Node<string>
{
    /// <summary>What the key that holds it means.</summary>
    internal const string Words = "The layers, inside to outside, that the figure was found for, such as \"birch_plywood 4 mm, sheep_wool 40 mm, steel_sheet 0.8 mm\".";

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
