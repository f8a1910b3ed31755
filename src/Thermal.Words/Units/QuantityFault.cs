using System.Text.RegularExpressions;

namespace Thermal.Words.Units;

/// <summary>What is wrong with a text that is no quantity, and what to write instead.</summary>
internal static partial class QuantityFault
{
    /// <summary>One sentence without a full stop.</summary>
    /// <param name="text">The text that could not be read, blanks at its ends taken off.</param>
    /// <param name="dimension">What it must measure.</param>
    internal static string Of(string text, Dimension dimension)
    {
        if (text.Length > QuantityText.LongestText)
            return $"this is too long for a value; write {Like(dimension)}";
        if (WrongInNumber(text, dimension) is { } fault)
            return fault;
        int length = QuantityText.NumberLength(text);
        if (length == 0)
            return $"\"{text}\" is not a value; write {Like(dimension)}";
        string number = text[..length], unitText = text[length..].Trim();
        if (!double.IsFinite(QuantityText.Value(number)))
            return $"{number} is too large to be a value; write {Like(dimension)}";
        return unitText.Length == 0
            ? $"{number} has no unit; write it with one, for instance {WithUnits(number, dimension)}"
            : WrongUnit(number, unitText, dimension);
    }

    private static string? WrongInNumber(string text, Dimension dimension)
    {
        if (text.Length == 0)
            return $"nothing is written here; write {Like(dimension)}";
        if (NotANumber().IsMatch(text))
            return $"\"{text}\" is not a number that can be computed with; write {Like(dimension)}";
        if (Comma().Match(text) is { Success: true } comma)
            return $"\"{text}\" has a comma; write {text.Replace(",", ".", StringComparison.Ordinal)} with a point"
                + (comma.Groups[1].Value.Length == 3 ? $" or, if thousands are meant, {text.Replace(",", "", StringComparison.Ordinal)}" : "");
        if (Underscore().IsMatch(text))
            return $"\"{text}\" has an underscore; write {text.Replace("_", "", StringComparison.Ordinal)}";
        if (Spaced().IsMatch(text))
            return $"\"{text}\" has a space inside the number; write {Spaced().Replace(text, "$1$2")}";
        if (Slash().IsMatch(text))
            return $"\"{text}\" is a broken number; write it as a decimal, such as 0.75 in";
        if (LeadingZero().Match(text) is { Success: true } zero)
            return $"\"{text}\" begins with a zero; write {text.Replace(zero.Groups[1].Value, zero.Groups[1].Value.TrimStart('0'), StringComparison.Ordinal)}";
        if (OpenPoint().IsMatch(text))
            return $"\"{text}\" lacks a digit beside its point; write for instance 0.5 or 5";
        return null;
    }

    private static string WrongUnit(string number, string unitText, Dimension dimension)
    {
        string bare = Unit.Bare(unitText);
        if (dimension.Units.FirstOrDefault(unit => unit.BareSpellings.Contains(bare, StringComparer.OrdinalIgnoreCase)) is { Spelling.Length: > 0 } near)
            return $"\"{unitText}\" is not a unit; write {number} {near.Spelling}";
        if (Dimensions.All.FirstOrDefault(other => other.Find(unitText) is not null) is { } other)
            return $"{unitText} measures {other.Name[(other.Name.IndexOf(' ', StringComparison.Ordinal) + 1)..]}, and this must be {dimension.Name}; write {Like(dimension)}";
        return $"\"{unitText}\" is not a unit known here; {dimension.Name} is written in {UnitList(dimension)}";
    }

    private static string Like(Dimension dimension) => $"{dimension.Name} such as {dimension.Example}";

    // The unit of the example and the next one in the table: mm and cm, °C and °F.
    private static string WithUnits(string number, Dimension dimension) =>
        string.Join(" or ", dimension.Units.SkipWhile(unit => unit != dimension.ExampleUnit).Take(2).Select(unit => $"{number} {unit.Spelling}"));

    private static string UnitList(Dimension dimension) => dimension.Units is [{ Spelling: "" }]
        ? "no unit at all"
        : string.Join(", ", dimension.Units.Where(unit => unit.Spelling.Length > 0).Select(unit => unit.Spelling));

    [GeneratedRegex(@"^[-+]?\.?(nan|inf|infinity|∞)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NotANumber();
    [GeneratedRegex(@"^[-+]?[0-9]+,([0-9]+)", RegexOptions.CultureInvariant)]
    private static partial Regex Comma();
    [GeneratedRegex(@"^[-+]?[0-9]+_[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Underscore();
    [GeneratedRegex(@"^([-+]?[0-9]+)[ '’]([0-9]{3})(?=[^0-9/]|$)", RegexOptions.CultureInvariant)]
    private static partial Regex Spaced();
    [GeneratedRegex(@"^[-+]?([0-9]+[ -])?[0-9]+/[0-9]+", RegexOptions.CultureInvariant)]
    private static partial Regex Slash();
    [GeneratedRegex(@"^[-+]?(0+[0-9]+)", RegexOptions.CultureInvariant)]
    private static partial Regex LeadingZero();
    [GeneratedRegex(@"^[-+]?(\.[0-9]|[0-9]+\.(?![0-9]))", RegexOptions.CultureInvariant)]
    private static partial Regex OpenPoint();
}
