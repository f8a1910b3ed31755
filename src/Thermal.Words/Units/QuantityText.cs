using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Thermal.Words.Units;

/// <summary>Reads a number with its unit as a person writes it, always in the same culture, and says what to write instead where it cannot.</summary>
/// <remarks>UnitsNet's own parser is not used: in some cultures it reads 1,5 m as 15 m and 1.234 m as 1234 m.</remarks>
public static partial class QuantityText
{
    // A text longer than this is not a quantity. Limit chosen by us.
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
        bool isRead = TrySplit(text, dimension, out double number, out Unit? unit);
        value = isRead ? dimension.Convert(number, unit!, into) : double.NaN;
        wrong = isRead ? "" : WhatIsWrong(Plain(text), dimension);
        return isRead;
    }

    /// <summary>The number and the unit of a text, each as written.</summary>
    /// <param name="text">Number, then unit.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="number">The number beside the unit; NaN with false.</param>
    /// <param name="unit">The unit; null with false.</param>
    /// <returns>True where the text is a number and a unit of that dimension.</returns>
    public static bool TrySplit(string text, Dimension dimension, out double number, [NotNullWhen(true)] out Unit? unit)
    {
        text = Plain(text);
        int length = text.Length <= LongestText ? NumberLength(text) : 0;
        number = length > 0 ? Value(text[..length]) : double.NaN;
        unit = double.IsFinite(number) ? dimension.Find(text[length..].Trim()) : null;
        return unit is not null;
    }

    private static double Value(string number) => double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);

    // Sign, digits without a leading zero, point and digits, exponent: the length of the number at the beginning, 0 where there is none.
    private static int NumberLength(string text)
    {
        int start = text.Length > 0 && text[0] is '+' or '-' ? 1 : 0;
        int end = AfterDigits(text, start);
        if (end == start || (text[start] == '0' && end > start + 1))
            return 0;
        if (end < text.Length && text[end] == '.')
        {
            int point = end;
            end = AfterDigits(text, point + 1);
            if (end == point + 1)
                return 0;
        }
        if (end < text.Length && text[end] is 'e' or 'E')
        {
            int first = end + 1 < text.Length && text[end + 1] is '+' or '-' ? end + 2 : end + 1;
            end = AfterDigits(text, first) is var last && last > first ? last : end;
        }
        return end < text.Length && text[end] == '.' ? 0 : end;
    }

    private static int AfterDigits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at;
    }

    private static string WhatIsWrong(string text, Dimension dimension)
    {
        if (text.Length > LongestText)
            return $"this is too long for a value; write {Like(dimension)}";
        if (WrongInNumber(text, dimension) is { } fault)
            return fault;
        int length = NumberLength(text);
        if (length == 0)
            return $"\"{text}\" is not a value; write {Like(dimension)}";
        string number = text[..length], unitText = text[length..].Trim();
        if (!double.IsFinite(Value(number)))
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

    private static string WithUnits(string number, Dimension dimension) =>
        string.Join(" or ", dimension.Units.Skip(dimension.Units.Count > 2 ? 1 : 0).Take(2).Select(unit => $"{number} {unit.Spelling}"));

    private static string UnitList(Dimension dimension) => dimension.Units is [{ Spelling: "" }]
        ? "no unit at all"
        : string.Join(", ", dimension.Units.Where(unit => unit.Spelling.Length > 0).Select(unit => unit.Spelling));

    private static string Plain(string text) => text.Trim().Replace('\u2212', '-').Replace('\u00A0', ' ').Replace('\u202F', ' ');

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
