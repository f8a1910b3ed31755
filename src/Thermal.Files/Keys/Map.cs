using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using YamlDotNet.Core.Events;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>A map with a fixed set of keys. Keys are read in the order of the table, so a later one can rely on an earlier one.</summary>
/// <typeparam name="T">The record it becomes.</typeparam>
/// <param name="what">What it describes, with its article, such as "a window".</param>
/// <param name="fields">Its keys.</param>
/// <param name="build">Makes the record; adds problems and returns null where the values do not fit together.</param>
internal sealed class Map<T>(string what, IReadOnlyList<Field<T>> fields, Func<Values<T>, T?> build) : Node<T> where T : class
{
    /// <summary>True to write it on one line.</summary>
    internal bool IsShort { get; init; }

    internal IReadOnlyList<Field<T>> Fields { get; } = fields;

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        value = null;
        if (spot.Node is not WrittenMap written)
        {
            spot.Problem($"{(spot.Node is WrittenScalar { IsNothing: true } ? "nothing" : spot.Node is WrittenList ? "a list" : "a single value")} stands here; write the keys of {what}: {KeyList()}");
            return false;
        }
        WrittenMap map = written.Mended();
        int problemsBefore = spot.Scope.ProblemCount;
        RefuseUnknownAndDouble(spot, map);
        var values = new Values<T>(spot);
        foreach (Field<T> field in Fields)
        {
            if (map[field.Key] is { } node)
                field.Read(spot.Inside(node, node is WrittenList ? "" : field.Key), values);
            else if (field.IsRequired)
                spot.Problem($"{field.Key} is missing; {char.ToLowerInvariant(field.Words[0])}{field.Words[1..].TrimEnd('.')}");
        }
        value = spot.Scope.ProblemCount == problemsBefore ? build(values) : null;
        return value is not null && spot.Scope.ProblemCount == problemsBefore;
    }

    internal override YamlNode Write(T value)
    {
        var map = new YamlMappingNode { Style = IsShort ? MappingStyle.Flow : MappingStyle.Block };
        foreach (Field<T> field in Fields)
            if (field.Write(value) is { } node)
                map.Add(field.Key, node);
        return map;
    }

    internal override JsonObject Schema() => new()
    {
        ["type"] = "object",
        ["properties"] = new JsonObject(Fields.Select(field => KeyValuePair.Create<string, JsonNode?>(field.Key, field.Schema()))),
        ["required"] = new JsonArray([.. Fields.Where(field => field.IsRequired).Select(field => JsonValue.Create(field.Key))]),
        ["additionalProperties"] = false,
    };

    private void RefuseUnknownAndDouble(Spot spot, WrittenMap map)
    {
        foreach (WrittenScalar key in map.Entries.Select(entry => entry.Key))
            if (key.Text == "<<")
                spot.Inside(key, "<<").Problem("merged keys are not read; write the values out");
            else if (Fields.All(field => field.Key != key.Text))
                spot.Inside(key, Shortened(key.Text)).Problem($"{what} has no such key; {Offer.Of(key.Text, Fields.Select(field => field.Key), "its keys are")}");
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (WrittenScalar key in map.Entries.Select(entry => entry.Key).Where(key => !seen.Add(key.Text)))
            spot.Inside(key, Shortened(key.Text)).Problem("this key stands twice; remove one");
    }

    private string KeyList() => string.Join(", ", Fields.Where(field => field.IsRequired).DefaultIfEmpty(Fields[0]).Select(field => field.Key));

    private static string Shortened(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
