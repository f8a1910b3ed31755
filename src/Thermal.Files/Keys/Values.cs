using Thermal.Files.Yaml;

namespace Thermal.Files.Keys;

/// <summary>What was read from one map.</summary>
/// <typeparam name="TOwner">The record that the map becomes.</typeparam>
internal sealed class Values<TOwner>(Spot spot)
{
    private readonly Dictionary<string, object?> values = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Spot> spots = new(StringComparer.Ordinal);

    /// <summary>The map itself.</summary>
    internal Spot Spot { get; } = spot;

    /// <summary>The value, or the default of a missing key.</summary>
    internal T Of<T>(Field<TOwner, T> field) => values.TryGetValue(field.Key, out object? value) ? (T)value! : field.Default!;

    /// <summary>The value; null where the key is missing.</summary>
    internal double? NumberOf(Field<TOwner, double> field) => values.TryGetValue(field.Key, out object? value) ? (double)value! : null;

    /// <summary>True where the key stands in the file and was read.</summary>
    internal bool Has(Field<TOwner> field) => values.ContainsKey(field.Key);

    /// <summary>Adds a problem at a key, or at the map where the key is missing.</summary>
    internal void Problem(Field<TOwner> field, string what) => SpotOf(field).Problem(what);

    /// <summary>Where a key's value stands; the map where the key is missing.</summary>
    internal Spot SpotOf(Field<TOwner> field) => spots.GetValueOrDefault(field.Key, Spot);

    internal void Set<T>(Field<TOwner, T> field, Spot at, T value) => (values[field.Key], spots[field.Key]) = (value, at);

    internal void SetFailed(Spot at, string key) => spots[key] = at;
}
