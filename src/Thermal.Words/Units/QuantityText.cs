using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Thermal.Words.Units;

/// <summary>Reads a number with its unit as a person writes it, always in the same culture, and says what to write instead where it cannot.</summary>
/// <remarks>UnitsNet's own parser is not used: in some cultures it reads 1,5 m as 15 m and 1.234 m as 1234 m.</remarks>
public static class QuantityText
{
    // A text longer than this is not a quantity. Limit chosen by us.
    internal const int LongestText = 60;

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
        wrong = isRead ? "" : QuantityFault.Of(Plain(text), dimension);
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

    internal static double Value(string number) => double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);

    // Sign, digits without a leading zero, point and digits, exponent: the length of the number at the beginning, 0 where there is none.
    internal static int NumberLength(string text)
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

    private static string Plain(string text) => text.Trim().Replace('\u2212', '-').Replace('\u00A0', ' ').Replace('\u202F', ' ');
}
