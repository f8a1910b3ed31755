using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>Words of a person's own: a name, a sentence.</summary>
/// <param name="longest">Longest text, characters. Limit chosen by us.</param>
internal sealed class TextNode(int longest) : Node<string>
{
    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out string value)
    {
        value = spot.Text("a few words");
        if (value is null)
            return false;
        string? wrong = value.Length == 0 ? "nothing is written here; write a few words"
            : value.Length > longest ? $"{value.Length} characters are too many; write at most {longest}"
            : value.Any(letter => char.IsControl(letter) && letter != '\n') || value.EnumerateRunes().Any(rune => rune == Rune.ReplacementChar) ? "characters that cannot be shown stand here; write plain words"
            : null;
        if (wrong is not null)
            spot.Problem(wrong);
        return wrong is null;
    }

    internal override YamlNode Write(string value) => new YamlScalarNode(value) { Style = value.Length > 80 || NeedsQuotes(value) ? ScalarStyle.DoubleQuoted : ScalarStyle.Any };

    internal override JsonObject Schema() => new() { ["type"] = new JsonArray("string", "number", "boolean"), ["maxLength"] = longest };

    // A name such as "null" or "~" would be read as nothing when bare.
    private static bool NeedsQuotes(string value) => value is "~" or "null" or "Null" or "NULL" || value.Contains('\n', StringComparison.Ordinal);
}

/// <summary>A whole number.</summary>
/// <param name="fewest">Lowest.</param>
/// <param name="most">Highest.</param>
internal sealed class WholeNode(int fewest, int most) : Node<int>
{
    internal override bool TryRead(Spot spot, out int value)
    {
        value = 0;
        if (spot.Text($"a whole number from {fewest} to {most}") is not { } text)
            return false;
        bool isWhole = int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value) && value.ToString(CultureInfo.InvariantCulture) == text;
        if (!isWhole)
            spot.Problem($"\"{text}\" is not a whole number; write one from {fewest} to {most}");
        else if (value < fewest || value > most)
            spot.Problem($"{text} is outside {fewest} to {most}");
        return isWhole && value >= fewest && value <= most;
    }

    internal override YamlNode Write(int value) => new YamlScalarNode(value.ToString(CultureInfo.InvariantCulture));

    internal override JsonObject Schema() => new() { ["type"] = "integer", ["minimum"] = fewest, ["maximum"] = most };
}

/// <summary>One of a few words.</summary>
/// <typeparam name="T">What they mean.</typeparam>
/// <param name="words">Word and meaning.</param>
internal sealed class ChoiceNode<T>(IReadOnlyDictionary<string, T> words) : Node<T>
{
    private readonly string wanted = $"one of {string.Join(", ", words.Keys)}";

    /// <summary>The names of an enumeration in snake_case.</summary>
    internal static ChoiceNode<TEnum> Of<TEnum>() where TEnum : struct, Enum =>
        new(Enum.GetValues<TEnum>().ToDictionary(value => SnakeCase(value.ToString()), value => value));

    /// <summary>True where a word means this.</summary>
    internal bool Knows(T value) => words.Values.Contains(value);

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (spot.Text(wanted) is not { } text)
            return false;
        if (words.TryGetValue(text, out value))
            return true;
        spot.Problem($"\"{(text.Length <= 40 ? text : text[..40] + "…")}\" is not known here; {Offer.Of(text, words.Keys, "write one of")}");
        return false;
    }

    internal override YamlNode Write(T value) => new YamlScalarNode(words.First(pair => EqualityComparer<T>.Default.Equals(pair.Value, value)).Key);

    internal override JsonObject Schema() => new() { ["type"] = "string", ["enum"] = new JsonArray([.. words.Keys.Select(word => JsonValue.Create(word))]) };

    private static string SnakeCase(string name) =>
        string.Concat(name.Select((letter, i) => char.IsUpper(letter) ? (i > 0 ? "_" : "") + char.ToLowerInvariant(letter) : letter.ToString()));
}
