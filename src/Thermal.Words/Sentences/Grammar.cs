using System.Globalization;

namespace Thermal.Words.Sentences;

/// <summary>Small pieces of English that several sentences share.</summary>
public static class Grammar
{
    private static readonly string[] MonthNames =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    private static readonly string[] SmallNumbers =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>The month's English name.</summary>
    /// <param name="month">1 to 12.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another number.</exception>
    public static string Month(int month) => month is >= 1 and <= 12
        ? MonthNames[month - 1]
        : throw new ArgumentOutOfRangeException(nameof(month), month, "A month is 1 to 12.");

    /// <summary>The month's first three letters.</summary>
    /// <param name="month">1 to 12.</param>
    public static string ShortMonth(int month) => Month(month)[..3];

    /// <summary>A count and its thing, such as "two sleepers" or "one sleeper".</summary>
    /// <param name="count">0 or more; up to twelve in words.</param>
    /// <param name="one">The thing in the singular; its plural takes an s.</param>
    public static string Count(int count, string one) => Count(count, one, one + "s");

    /// <summary>A count and its thing where the plural is a word of its own, such as "two people".</summary>
    /// <param name="count">0 or more; up to twelve in words.</param>
    /// <param name="one">The thing in the singular.</param>
    /// <param name="many">In the plural.</param>
    public static string Count(int count, string one, string many) =>
        $"{(count < SmallNumbers.Length ? SmallNumbers[count] : count.ToString(CultureInfo.InvariantCulture))} {(count == 1 ? one : many)}";

    /// <summary>The text with a capital first letter.</summary>
    public static string Capital(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A builder's name as it stands inside a sentence: "the roof" for roof and Roof, "the GRP box" for GRP box.</summary>
    public static string The(string name)
    {
        string inside = name.Length > 1 && char.IsUpper(name[0]) && !char.IsUpper(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
        return inside.StartsWith("the ", StringComparison.OrdinalIgnoreCase) ? inside : "the " + inside;
    }

    /// <summary>Items with commas and an "and" before the last.</summary>
    public static string List(IReadOnlyList<string> items) => items.Count switch
    {
        0 => "nothing",
        1 => items[0],
        _ => string.Join(", ", items.Take(items.Count - 1)) + " and " + items[^1],
    };

    /// <summary>The text with blanks after a digit that do not break, so that no line ends between a number and its unit.</summary>
    public static string Glued(string text) => text.IndexOf(' ', StringComparison.Ordinal) < 0 ? text : string.Create(text.Length, text, (glued, source) =>
    {
        source.CopyTo(glued);
        for (int i = 1; i + 1 < glued.Length; i++)
            if (glued[i] == ' ' && char.IsAsciiDigit(glued[i - 1]) && glued[i + 1] != '(')
                glued[i] = NoBreakSpace;
    });

    /// <summary>A blank at which no line is broken.</summary>
    public const char NoBreakSpace = '\u00A0';
}
