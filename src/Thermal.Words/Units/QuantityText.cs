using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Thermal.Words.Units;

/// <summary>Reads a number with its unit as a person writes it, always in the same culture, and says what to write instead where it cannot.</summary>
/// <remarks>UnitsNet's own parser is not used: in some cultures it reads 1,5 m as 15 m and 1.234 m as 1234 m.</remarks>
public static partial class QuantityText
{
    // A number too large for a double must not become infinite, and a text longer than this is not a quantity.
    private const int LongestText = 60;

    /// <summary>Reads text such as "40 mm".</summary>
    /// <param name="text">Number, then unit.</param>
    /// <param name="dimension">What it must measure.</param>
    /// <param name="si">The value in the unit Thermal computes in; NaN where it cannot be read.</param>
    /// <param name="wrong">Empty, or what is wrong and what to write instead, in one sentence without a full stop.</param>
    /// <returns>True where it was read.</returns>
    public static bool TryRead(string text, Dimension dimension, out double si, out string wrong) =>
        TryRead(text, dimension, dimension.Units[0], out si, out wrong);

    /// <summary>Reads text such as "10 h" into a unit of choice.</summary>
    /// <param name="text">Number, then unit.</param>
    /// <param name="dimension">What it must measure.</param>
    /// <param name="into">The unit wanted, one of the dimension's.</param>
    /// <param name="value">The value in that unit; NaN where it cannot be read.</param>
    /// <param name="wrong">Empty, or what is wrong and what to write instead, in one sentence without a full stop.</param>
    /// <returns>True where it was read.</returns>
    public static bool TryRead(string text, Dimension dimension, Unit into, out double value, out string wrong)
    {
        value = double.NaN;
        text = Plain(text);
        if (text.Length > LongestText)
            wrong = $"this is too long for a value; write {Like(dimension)}";
        else if (WrongInNumber(text, dimension) is { } fault)
            wrong = fault;
        else
            wrong = ReadParts(text, dimension, into, ref value);
        return wrong.Length == 0;
    }

    /// <summary>The number and the unit of a text that <see cref="TryRead(string, Dimension, out double, out string)"/> reads.</summary>
    /// <param name="text">Number, then unit.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="number">The number as written.</param>
    /// <param name="unit">The unit; null with false.</param>
    public static bool TrySplit(string text, Dimension dimension, out double number, [NotNullWhen(true)] out Unit? unit)
    {
        Match match = NumberThenUnit().Match(Plain(text));
        number = match.Success ? double.Parse(match.Groups[1].Value, NumberStyles.Float, CultureInfo.InvariantCulture) : double.NaN;
        unit = match.Success ? dimension.Find(match.Groups[2].Value.Trim()) : null;
        return unit is not null;
    }

    private static string ReadParts(string text, Dimension dimension, Unit into, ref double value)
    {
        Match match = NumberThenUnit().Match(text);
        if (!match.Success)
            return $"\"{text}\" is not a value; write {Like(dimension)}";
        string number = match.Groups[1].Value;
        string unitText = match.Groups[2].Value.Trim();
        double written = double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);
        if (!double.IsFinite(written))
            return $"{number} is too large to be a value; write {Like(dimension)}";
        if (unitText.Length == 0 && !dimension.MayBeBare)
            return $"{number} has no unit; write it with one, for instance {WithUnits(number, dimension)}";
        if (dimension.Find(unitText) is not { } unit)
            return WrongUnit(number, unitText, dimension);
        value = dimension.Convert(written, unit, into);
        return "";
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
        if (dimension.Units.FirstOrDefault(unit => unit.IsWritten(bare, StringComparison.OrdinalIgnoreCase)) is { Spelling.Length: > 0 } near)
            return $"\"{unitText}\" is not a unit; write {number} {near.Spelling}";
        if (Dimensions.All.FirstOrDefault(other => other.Find(unitText) is not null) is { } other)
            return $"{unitText} measures {other.Name[(other.Name.IndexOf(' ', StringComparison.Ordinal) + 1)..]}, and this must be {dimension.Name}; write {Like(dimension)}";
        return $"\"{unitText}\" is not a unit known here; {dimension.Name} is written in {UnitList(dimension)}";
    }

    private static string Like(Dimension dimension) => $"{dimension.Name} such as {dimension.Example}";

    private static string WithUnits(string number, Dimension dimension) =>
        string.Join(" or ", dimension.Units.Skip(dimension.Units.Count > 2 ? 1 : 0).Take(2).Select(unit => $"{number} {unit.Spelling}"));

    private static string UnitList(Dimension dimension) => dimension.Units is [{ Spelling: "" }]
        ? "no unit at all"
        : string.Join(", ", dimension.Units.Where(unit => unit.Spelling.Length > 0).Select(unit => unit.Spelling));

    private static string Plain(string text) => text.Trim().Replace('\u2212', '-').Replace('\u00A0', ' ').Replace('\u202F', ' ');

    [GeneratedRegex(@"^([-+]?[0-9]+(?:\.[0-9]+)?(?:[eE][-+]?[0-9]{1,3})?)(?![0-9.])\s*(.*)$", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex NumberThenUnit();
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
