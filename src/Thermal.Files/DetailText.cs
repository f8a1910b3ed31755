using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Keys;
using Thermal.Files.VehicleKeys;
using Thermal.Files.Yaml;

namespace Thermal.Files;

/// <summary>Reads a rib or a bolt and the layers round it from a line of text, with the keys of vehicle files but without a vehicle.</summary>
public static class DetailText
{
    // A line this long describes no detail. Limit chosen by us.
    private const int LongestText = 2000;

    /// <summary>A rib such as "{shape: hat, sheet: 1.2 mm, depth: 36 mm, crown: 40 mm, foot: 20 mm}".</summary>
    /// <param name="text">Its keys on one line.</param>
    /// <param name="source">Name shown in problems.</param>
    public static Reading<LineDetail> Rib(string text, string source)
    {
        Reading<LinearBridge> read = Read(text, source, RibKeys.Alone);
        return read.Value?.Detail is Corner
            ? new(null, [new Problem(source, 1, 1, "shape", "a corner lies between two panels of a vehicle; describe it in a vehicle file, under ribs of one of them")])
            : new(read.Value?.Detail, read.Problems);
    }

    /// <summary>A bolt such as "{diameter: 8 mm, head: 20 mm, head_thickness: 5 mm}".</summary>
    /// <param name="text">Its keys on one line.</param>
    /// <param name="source">Name shown in problems.</param>
    public static Reading<PointDetail> Bolt(string text, string source)
    {
        Reading<PointBridge> read = Read(text, source, BoltKeys.Alone);
        return new(read.Value?.Detail, read.Problems);
    }

    /// <summary>A build-up such as "birch_plywood 6.5 mm, xps 40 mm, steel_sheet 1 mm", inside to outside.</summary>
    /// <param name="text">Materials with their thicknesses, parted by commas.</param>
    /// <param name="source">Name shown in problems.</param>
    public static Reading<Stack> Layers(string text, string source)
    {
        var scope = new Scope(source, PlaceLibrary.BuiltIn);
        List<StackLayer> layers = [];
        if (text.Length > LongestText)
            scope.Add(1, 1, "layers", "this is too long for a build-up");
        else
            for ((int at, int number) = (0, 1); at <= text.Length; number++)
            {
                int comma = text.IndexOf(',', at), end = comma < 0 ? text.Length : comma;
                if (LayerKeys.Layer.TryRead(new Spot(Layer(text, at, end), $"layer {number}", scope), out StackLayer? layer))
                    layers.Add(layer);
                at = end + 1;
            }
        if (layers.Count == 1 && scope.ProblemCount == 0)
            scope.Add(1, 1, "layers", "a rib stands between the room and an outermost sheet; write at least two layers, inside to outside");
        return scope.ProblemCount == 0 ? new(new Stack(layers), []) : new(null, scope.Problems);
    }

    private static Reading<T> Read<T>(string text, string source, Map<T> map) where T : class
    {
        if (text.Length > LongestText || string.IsNullOrWhiteSpace(text) || text.Any(char.IsControl))
            return new(null, [new Problem(source, 1, 1, "text", "one line of keys belongs here, such as {shape: hat, sheet: 1.2 mm, depth: 36 mm, crown: 40 mm, foot: 20 mm}")]);
        var scope = new Scope(source, PlaceLibrary.BuiltIn);
        T? value = YamlTree.Read(text, scope) is { } root && map.TryRead(new Spot(root, "", scope), out T? read) ? read : null;
        return scope.ProblemCount == 0 ? new(value, []) : new(null, scope.Problems);
    }

    // The same tree as of {material: birch_plywood, thickness: 6.5 mm}.
    private static WrittenMap Layer(string text, int from, int to)
    {
        while (from < to && char.IsWhiteSpace(text[from])) from++;
        int blank = text.IndexOf(' ', from, to - from), split = blank < 0 ? to : blank;
        List<WrittenEntry> entries = [Entry("material", text, from, split)];
        if (split < to)
            entries.Add(Entry("thickness", text, split + 1, to));
        return new(1, from + 1, entries);
    }

    private static WrittenEntry Entry(string key, string text, int from, int to) =>
        new(new(1, from + 1, key, false, from, from), new WrittenScalar(1, from + 1, text[from..to], false, from, to));
}
