using System.Globalization;
using Thermal.Files.Yaml;
using Thermal.Words.Units;

namespace Thermal.Files;

/// <summary>Changes one value in the text of a vehicle file, so that comments, order and the person's own units survive.</summary>
public static class VehicleEdit
{
    /// <summary>The text with the thickness of one layer changed, in the unit that stands there.</summary>
    /// <param name="text">A vehicle file that is read without a problem.</param>
    /// <param name="surface">Name of the panel.</param>
    /// <param name="layer">Index of the layer, 0 at the room.</param>
    /// <param name="thicknessM">New thickness, m, 1e-6 to 1.</param>
    /// <returns>The new text; only the value differs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside its range, or NaN.</exception>
    /// <exception cref="ArgumentException">The file has no such panel or layer, or its thickness cannot be read.</exception>
    public static string SetThickness(string text, string surface, int layer, double thicknessM)
    {
        if (!(thicknessM is >= 1e-6 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(thicknessM), thicknessM, "thicknessM must lie between 1e-6 and 1 m.");
        string body = text.TrimStart('\uFEFF');
        var scope = new Scope("text", PlaceLibrary.BuiltIn);
        WrittenScalar thickness = YamlTree.Read(body, scope) is WrittenMap root && Panel(root, surface) is { } panel
            && panel["layers"] is WrittenList layers && layer >= 0 && layer < layers.Items.Count && layers.Items[layer] is WrittenMap map && map["thickness"] is WrittenScalar found
            ? found
            : throw new ArgumentException($"There is no layer {layer + 1} in a panel \"{surface}\".", nameof(surface));
        return text[..^body.Length] + Replaced(body, thickness, thicknessM);
    }

    private static WrittenMap? Panel(WrittenMap root, string name) => (root["surfaces"] as WrittenList)?.Items.OfType<WrittenMap>()
        .FirstOrDefault(panel => panel["name"] is WrittenScalar scalar && scalar.Text.Trim() == name);

    private static string Replaced(string text, WrittenScalar old, double thicknessM)
    {
        if (!QuantityText.TrySplit(old.Text, Dimensions.Length, out _, out Unit? unit))
            throw new ArgumentException($"The thickness \"{old.Text}\" cannot be read.", nameof(old));
        string number = Dimensions.Length.FromSi(thicknessM, unit).ToString(CultureInfo.InvariantCulture);
        int at = old.Text.IndexOfAny([.. "0123456789+-"], 0);
        string written = text[old.Start..old.End];
        // What stands behind the number, blank and unit, is kept as it was written.
        string rest = old.Text.Trim()[at..].TrimStart([.. "0123456789+-.eE"]);
        string quote = old.IsQuoted && written[0] is '"' or '\'' ? written[..1] : "";
        return text[..old.Start] + quote + number + rest + quote + text[old.End..];
    }
}
