using System.Globalization;

namespace Thermal.Charts;

/// <summary>Round numbers for scales, and how a number on an axis is written.</summary>
internal static class NiceNumbers
{
    /// <summary>The largest of 1, 2, 5, 10, 20, 50 … and their tenths that is not above a value.</summary>
    /// <param name="value">Above 0.</param>
    internal static double AtMost(double value)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        double digit = value / power;
        return (digit >= 5 ? 5 : digit >= 2 ? 2 : 1) * power;
    }

    /// <summary>The step that divides a span into at most so many parts.</summary>
    internal static double Step(double span, int mostParts)
    {
        double least = span / mostParts, step = AtMost(least);
        while (step < least * (1 - 1e-9))
            step = AtMost(step * 2.5);
        return step;
    }

    /// <summary>Multiples of a step from low to high, both ends included.</summary>
    internal static IEnumerable<double> Multiples(double low, double high, double step)
    {
        for (int i = (int)Math.Ceiling(low / step - 1e-9); i * step <= high + step * 1e-9; i++)
            yield return i * step;
    }

    /// <summary>A number on an axis with that step: true minus sign, a narrow space before thousands from five digits, whatever the machine's culture.</summary>
    internal static string Written(double value, double step)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, 6);
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        string text = Math.Abs(rounded).ToString(rounded is <= -10_000 or >= 10_000 ? $"N{decimals}" : $"F{decimals}", CultureInfo.InvariantCulture);
        return (rounded < 0 ? "−" : "") + text.Replace(',', '\u202F');
    }
}
