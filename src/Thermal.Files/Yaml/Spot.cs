namespace Thermal.Files.Yaml;

/// <summary>A node with its address in the vehicle.</summary>
/// <param name="Node">What is written there.</param>
/// <param name="Where">Address such as "roof / layer 3 / thickness".</param>
/// <param name="Scope">The reading it belongs to.</param>
internal sealed record Spot(WrittenNode Node, string Where, Scope Scope)
{
    /// <summary>A place inside this one; an empty step stays here.</summary>
    internal Spot Inside(WrittenNode node, string step) =>
        this with { Node = node, Where = step.Length == 0 ? Where : Where.Length == 0 ? step : $"{Where} / {step}" };

    /// <summary>What stands behind a key of the map here; this place where there is no such key.</summary>
    internal Spot At(string key) => Node is WrittenMap map && map.Mended()[key] is { } node ? Inside(node, node is WrittenList ? "" : key) : this;

    /// <summary>An item of the list here, called by its name; this place where there is no such item.</summary>
    internal Spot At(int item, string name) => Node is WrittenList list && item < list.Items.Count ? Inside(list.Items[item], name) : this;

    /// <summary>Adds a problem here.</summary>
    internal void Problem(string what) => Scope.Add(Node.Line, Node.Column, Where.Length == 0 ? "file" : Where, what);

    /// <summary>The single value written here; null and a problem where it is none.</summary>
    /// <param name="wanted">What should stand here, such as "a length such as 40 mm".</param>
    internal string? Text(string wanted)
    {
        if (Node is WrittenScalar { IsNothing: false } scalar)
            return scalar.Text.Trim();
        Problem(Node switch
        {
            WrittenScalar => $"nothing is written here; write {wanted}",
            WrittenList => $"a list stands here; write {wanted}",
            _ => $"keys stand here; write {wanted}",
        });
        return null;
    }
}
