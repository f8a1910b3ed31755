using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>A list of equal things.</summary>
/// <typeparam name="T">One of them.</typeparam>
/// <param name="word">What one is called in an address, such as "layer"; a name of its own comes first.</param>
/// <param name="item">How one is read.</param>
/// <param name="fewest">Fewest that make sense.</param>
/// <param name="most">Most that are taken. Limit chosen by us.</param>
/// <param name="nameOf">The name that must not stand twice; null where none must differ.</param>
internal sealed class ListOf<T>(string word, Node<T> item, int fewest, int most, Func<T, string>? nameOf = null) : Node<IReadOnlyList<T>>
{
    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        value = null;
        if (spot.Node is not WrittenList list)
        {
            spot.Problem($"a list of {word}s belongs here; begin each with a dash");
            return false;
        }
        int problemsBefore = spot.Scope.ProblemCount;
        if (list.Items.Count < fewest || list.Items.Count > most)
            spot.Problem($"{list.Items.Count} {word}s stand here; write {fewest} to {most}");
        List<T> items = [];
        HashSet<string> names = new(StringComparer.Ordinal);
        for (int i = 0; i < Math.Min(list.Items.Count, most); i++)
        {
            Spot at = spot.Inside(list.Items[i], Label(list.Items[i], i));
            if (!item.TryRead(at, out T? one))
                continue;
            items.Add(one);
            if (nameOf is not null && !names.Add(nameOf(one)))
                at.Problem($"the name {nameOf(one)} stands twice; give each {word} its own");
        }
        value = items;
        return spot.Scope.ProblemCount == problemsBefore;
    }

    internal override YamlNode Write(IReadOnlyList<T> value) => new YamlSequenceNode(value.Select(item.Write));

    internal override JsonObject Schema() => new() { ["type"] = "array", ["items"] = item.Schema(), ["minItems"] = fewest, ["maxItems"] = most };

    private string Label(WrittenNode node, int index) =>
        nameOf is not null && node is WrittenMap map && (map["name"] ?? map["key"]) is WrittenScalar { Text: { Length: > 0 and <= 60 } name }
            ? name
            : $"{word} {index + 1}";
}
