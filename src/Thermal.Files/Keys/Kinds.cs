using System.Text;
using Thermal.Words.Units;

namespace Thermal.Files.Keys;

/// <summary>The kinds of value that many keys share, each with its range. Limits chosen by us unless the record states them.</summary>
internal static class Kinds
{
    internal static TextNode Name { get; } = new(60);
    internal static TextNode Sentence { get; } = new(1000);
    internal static QuantityNode Share { get; } = new(Dimensions.Fraction, "", 0, 1, "%");
    internal static QuantityNode Factor { get; } = new(Dimensions.Fraction, "", 0, 1);
    internal static QuantityNode Emissivity { get; } = new(Dimensions.Fraction, "", 0.01, 1);
    internal static QuantityNode Resistance { get; } = new(Dimensions.Resistance, "m²·K/W", 0, 10);
    internal static QuantityNode Temperature { get; } = new(Dimensions.Temperature, "°C", -60, 50);

    /// <summary>A thickness in a build-up: a tenth of a millimetre to half a metre is what is built; films go down to a micrometre.</summary>
    internal static QuantityNode Thickness { get; } = new(Dimensions.Length, "m", 1e-6, 1, "mm");

    /// <summary>A length, width or height of body, panel or room.</summary>
    internal static QuantityNode Metres(double lowestM, double highestM) => new(Dimensions.Length, "m", lowestM, highestM);
    /// <summary>A length of a window, rib or bolt.</summary>
    internal static QuantityNode Millimetres(double lowestM, double highestM, string? typical = null) => new(Dimensions.Length, "m", lowestM, highestM, "mm") { Typical = typical };
    internal static QuantityNode Area(double lowestM2, double highestM2) => new(Dimensions.Area, "m²", lowestM2, highestM2);
    internal static QuantityNode VentArea(double lowestM2, double highestM2) => new(Dimensions.Area, "m²", lowestM2, highestM2, "cm²");
    internal static QuantityNode Hours(double lowestH, double highestH) => new(Dimensions.Duration, "h", lowestH, highestH);
    internal static QuantityNode Grams(double lowestG, double highestG) => new(Dimensions.Mass, "g", lowestG, highestG);
    internal static QuantityNode Litres(double lowestL, double highestL) => new(Dimensions.Volume, "L", lowestL, highestL);
    internal static QuantityNode AirThrough(double highestM3PerM2H) => new(Dimensions.AirPerArea, "m³/(m²·h)", 0, highestM3PerM2H);
    internal static QuantityNode Number(double lowest, double highest) => new(Dimensions.Number, "", lowest, highest);

    /// <summary>The list itself, or null where it is empty and need not be written.</summary>
    internal static IReadOnlyList<T>? UnlessEmpty<T>(IReadOnlyList<T> list) => list.Count == 0 ? null : list;

    /// <summary>A span for a value whose record holds no more than the value.</summary>
    internal static SpanNode Span(QuantityNode single) => new(single);

    /// <summary>The names of an enumeration in snake_case.</summary>
    /// <remarks>Not generic: what is generic over an enumeration of another assembly is compiled anew at every start of the program.</remarks>
    internal static ChoiceNode<Enum> Words(Type enumeration) =>
        new([.. Enum.GetNames(enumeration).Select(SnakeCase)], [.. Enum.GetValues(enumeration).Cast<Enum>()]);

    private static string SnakeCase(string name)
    {
        var snake = new StringBuilder();
        foreach (char letter in name)
            snake.Append(char.IsUpper(letter) && snake.Length > 0 ? "_" : "").Append(char.ToLowerInvariant(letter));
        return snake.ToString();
    }
}
