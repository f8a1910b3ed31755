using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>The key of a material: built in or added in the file.</summary>
internal sealed class MaterialNode : Node<Material>
{
    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out Material value)
    {
        value = null;
        if (spot.Text("the name of a material such as birch_plywood") is not { } key)
            return false;
        if (spot.Scope.OwnMaterials.TryGetValue(key, out Material? own))
            value = own; // Null where that one has a problem itself, which is said there.
        else if ((value = MaterialLibrary.Find(key)) is null)
            spot.Problem($"there is no material \"{(key.Length <= 60 ? key : key[..60] + "…")}\"; {Instead(key, spot.Scope)}");
        return value is not null;
    }

    internal override YamlNode Write(Material value) => new YamlScalarNode(value.Key);

    private static string Instead(string key, Scope scope)
    {
        string[] known = [.. MaterialLibrary.All.Select(material => material.Key).Concat(scope.OwnMaterials.Keys)];
        if (Nearest.To(key, known) is { } near) return $"did you mean {near}?";
        // A word of the name alone, as people write it: plywood for birch_plywood.
        string[] partly = [.. known.Where(name => Nearest.To(key, name.Split('_')) is not null).Take(4)];
        return partly.Length > 0 ? $"did you mean {string.Join(" or ", partly)}?" : "the command materials lists those built in, and you can add your own under materials";
    }

    internal override JsonObject Schema() => new() { ["$ref"] = $"#/$defs/{SchemaName}" };

    /// <summary>Name of the shared part of the schema.</summary>
    internal const string SchemaName = "material";

    /// <summary>The shared part of the schema: the built-in names, or one of the file's own.</summary>
    internal static JsonObject SharedSchema() => new()
    {
        ["anyOf"] = new JsonArray(
            new JsonObject { ["enum"] = new JsonArray([.. MaterialLibrary.All.Select(material => JsonValue.Create(material.Key))]) },
            new JsonObject { ["type"] = "string", ["pattern"] = MaterialKeyNode.Pattern }),
    };
}

/// <summary>The key a person gives to a material of their own.</summary>
internal sealed class MaterialKeyNode : Node<string>
{
    internal const string Pattern = "^[a-z][a-z0-9_]{1,59}$";

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out string value)
    {
        value = spot.Text("a key such as my_foam");
        if (value is null)
            return false;
        string? wrong = !System.Text.RegularExpressions.Regex.IsMatch(value, Pattern) ? "a key has small letters, digits and underscores and begins with a letter; write for instance my_foam"
            : MaterialLibrary.Find(value) is not null || value is LayerKeys.AirGapWord or FillingNode.Hollow ? $"{value} is the name of a built-in material; write another, for instance my_{value}"
            : null;
        if (wrong is not null)
            spot.Problem(wrong);
        else
            spot.Scope.OwnMaterials.TryAdd(value, null);
        return wrong is null;
    }

    internal override YamlNode Write(string value) => new YamlScalarNode(value);

    internal override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = Pattern };
}
