using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>One key of a map: its name, what it means, what may stand behind it, and how it is taken from the record again.</summary>
/// <typeparam name="TOwner">The record that the map becomes.</typeparam>
internal abstract class Field<TOwner>(string key, string words)
{
    /// <summary>Key in the file, snake_case.</summary>
    internal string Key { get; } = key;

    /// <summary>What it means, one sentence for editors.</summary>
    internal string Words { get; } = words;

    /// <summary>True where the map cannot do without it.</summary>
    internal bool IsRequired { get; init; }

    /// <summary>Reads into the values of the map.</summary>
    internal abstract void Read(Spot spot, Values<TOwner> values);

    /// <summary>What to write, or null where nothing needs to be written.</summary>
    internal abstract YamlNode? Write(TOwner owner);

    /// <summary>Schema with the description.</summary>
    internal abstract JsonObject Schema();
}

/// <inheritdoc/>
/// <typeparam name="TOwner">The record that the map becomes.</typeparam>
/// <typeparam name="T">What the value becomes.</typeparam>
internal sealed class Field<TOwner, T>(string key, string words, Node<T> node, Func<TOwner, object?> from) : Field<TOwner>(key, words)
{
    private bool hasDefault;

    /// <summary>The value of a missing key; it is not written either.</summary>
    internal T? Default { get; init => (field, hasDefault) = (value, true); }

    internal override void Read(Spot spot, Values<TOwner> values)
    {
        if (node.TryRead(spot, out T? value))
            values.Set(this, spot, value);
        else
            values.SetFailed(spot, Key);
    }

    internal override YamlNode? Write(TOwner owner) =>
        from(owner) is T value && (IsRequired || !hasDefault || !EqualityComparer<T>.Default.Equals(value, Default)) ? node.Write(value) : null;

    internal override JsonObject Schema()
    {
        JsonObject schema = node.Schema();
        schema["description"] = Words + (hasDefault && Default is not null && node.Write(Default) is YamlScalarNode { Value: { Length: > 0 } text } ? $" When left out: {text}." : "");
        return schema;
    }
}
