using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>The name of a room where the room is described.</summary>
internal sealed class ZoneNameNode : Node<string>
{
    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out string value)
    {
        if (!Kinds.Name.TryRead(spot, out value))
            return false;
        spot.Scope.Declare(value);
        if (!OuterNode.IsReserved(value))
            return true;
        spot.Problem($"{value} already means the outside; write another name");
        return false;
    }

    internal override YamlNode Write(string value) => Kinds.Name.Write(value);

    internal override JsonObject Schema() => Kinds.Name.Schema();
}

/// <summary>The name of a room where it is used.</summary>
internal sealed class ZoneReferenceNode : Node<string>
{
    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out string value)
    {
        if (!Kinds.Name.TryRead(spot, out value))
            return false;
        spot.Scope.Refer(spot, value);
        return true;
    }

    internal override YamlNode Write(string value) => Kinds.Name.Write(value);

    internal override JsonObject Schema() => Kinds.Name.Schema();
}

/// <summary>What is on a panel's outer side.</summary>
/// <param name="Side">Air, road or another room.</param>
/// <param name="Zone">The room; null for the others.</param>
internal sealed record Outer(OuterSide Side, string? Zone);

/// <summary>What is on a panel's outer side: air, road, or the name of a room.</summary>
internal sealed class OuterNode : Node<Outer>
{
    private static readonly ZoneReferenceNode Zones = new();

    internal static bool IsReserved(string name) => name is "air" or "road" or "outside";

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out Outer value)
    {
        value = null;
        if (spot.Node is WrittenScalar { Text: "air" or "road" } word)
            value = new(word.Text == "air" ? OuterSide.Air : OuterSide.Road, null);
        else if (Zones.TryRead(spot, out string? zone))
            value = new(OuterSide.OtherZone, zone);
        return value is not null;
    }

    internal override YamlNode Write(Outer value) =>
        value.Side == OuterSide.OtherZone ? Zones.Write(value.Zone!) : new YamlScalarNode(value.Side == OuterSide.Air ? "air" : "road");

    internal override JsonObject Schema() => new()
    {
        ["anyOf"] = new JsonArray(new JsonObject { ["enum"] = new JsonArray("air", "road") }, Zones.Schema()),
    };
}
