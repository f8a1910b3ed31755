using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>A number as a value of another type, so that "off" or "unknown" can stand beside it.</summary>
/// <typeparam name="T">What it becomes.</typeparam>
/// <param name="number">How the number is read.</param>
/// <param name="wrap">From the number.</param>
/// <param name="unwrap">To the number.</param>
internal sealed class Wrapped<T>(Node<double> number, Func<double, T> wrap, Func<T, double> unwrap) : Node<T>
{
    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        bool isRead = number.TryRead(spot, out double read);
        value = isRead ? wrap(read) : default;
        return isRead;
    }

    internal override YamlNode Write(T value) => number.Write(unwrap(value));

    internal override JsonObject Schema() => number.Schema();
}
