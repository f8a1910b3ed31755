using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>Words of a person's own: a name, a sentence.</summary>
/// <param name="longest">Longest text, characters. Limit chosen by us.</param>
/// <param name="wrongWith">What is wrong with such a text, null where nothing; left out where any words will do.</param>
internal sealed class TextNode(int longest, Func<string, Scope, string?>? wrongWith = null) : Node<string>
{
    // What a decoder writes for bytes that are no letter.
    private const char Unreadable = '\uFFFD';

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out string value)
    {
        value = spot.Text("a few words");
        if (value is null)
            return false;
        string? wrong = value.Length == 0 ? "nothing is written here; write a few words"
            : value.Length > longest ? $"{value.Length} characters are too many; write at most {longest}"
            : value.Any(letter => char.IsControl(letter) && letter != '\n') || value.Contains(Unreadable, StringComparison.Ordinal) ? "characters that cannot be shown stand here; write plain words"
            : wrongWith?.Invoke(value, spot.Scope);
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

/// <summary>True or false.</summary>
internal sealed class FlagNode : Node<bool>
{
    private static readonly string[] Words = ["true", "false"];

    internal override bool TryRead(Spot spot, out bool value)
    {
        value = false;
        if (spot.Text("true or false") is not { } text)
            return false;
        bool isKnown = Array.IndexOf(Words, text) >= 0;
        value = text == Words[0];
        if (!isKnown)
            spot.Problem($"\"{(text.Length <= 40 ? text : text[..40] + "…")}\" is not known here; write true or false");
        return isKnown;
    }

    internal override YamlNode Write(bool value) => new YamlScalarNode(value ? Words[0] : Words[1]);

    internal override JsonObject Schema() => new() { ["type"] = "boolean" };
}

/// <summary>One of a few words.</summary>
/// <typeparam name="T">What they mean.</typeparam>
/// <param name="words">The words.</param>
/// <param name="meanings">What each means, in the same order.</param>
/// <remarks>Two arrays and no dictionary: one of an enumeration would be compiled at every start of the program.</remarks>
internal sealed class ChoiceNode<T>(string[] words, T[] meanings) : Node<T>
{
    private readonly string wanted = $"one of {string.Join(", ", words)}";

    /// <summary>True where a word means this.</summary>
    internal bool Knows(T value) => IndexOf(value) >= 0;

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (spot.Text(wanted) is not { } text)
            return false;
        int index = Array.IndexOf(words, text);
        if (index >= 0)
            value = meanings[index];
        else
            spot.Problem($"\"{(text.Length <= 40 ? text : text[..40] + "…")}\" is not known here; {Offer.Of(text, words, "write one of")}");
        return index >= 0;
    }

    internal override YamlNode Write(T value) => new YamlScalarNode(words[IndexOf(value)]);

    internal override JsonObject Schema() => new() { ["type"] = "string", ["enum"] = new JsonArray([.. words.Select(word => JsonValue.Create(word))]) };

    private int IndexOf(T value)
    {
        int index = meanings.Length - 1;
        while (index >= 0 && !Equals(meanings[index], value))
            index--;
        return index;
    }
}
