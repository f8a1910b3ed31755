using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>One kind of value in a file: reading, writing and its JSON Schema together, so that they cannot drift apart.</summary>
/// <typeparam name="T">What it becomes.</typeparam>
internal abstract class Node<T>
{
    /// <summary>Reads; false means that at least one problem was added.</summary>
    internal abstract bool TryRead(Spot spot, [MaybeNullWhen(false)] out T value);

    /// <summary>Writes what <see cref="TryRead"/> reads as the same value.</summary>
    internal abstract YamlNode Write(T value);

    /// <summary>The schema of what is read.</summary>
    internal abstract JsonObject Schema();
}
