using System.Globalization;
using System.Runtime.CompilerServices;
using Thermal.Materials;

namespace Thermal;

/// <summary>The range checks of all public entrances.</summary>
internal static class Guard
{
    /// <summary>Returns <paramref name="value"/>, or refuses it; NaN is never in range.</summary>
    internal static double InRange(double value, double min, double max, string unit,
        [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= min && value <= max ? value : throw Refused(value, min, max, unit, name);

    /// <summary>Returns <paramref name="figure"/>, or refuses it: low, value and high must stand in that order within the limits.</summary>
    internal static Bounded InRange(Bounded figure, double min, double max, string unit, string name)
    {
        InRange(figure.Low, min, max, unit, name);
        InRange(figure.Value, figure.Low, max, unit, name);
        InRange(figure.High, figure.Value, max, unit, name);
        return figure;
    }

    // Apart from the check, so that the check stays small enough to be built into the formulas that call it.
    private static ArgumentOutOfRangeException Refused(double value, double min, double max, string unit, string? name) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"{name} must lie between {min} and {max} {unit}."));
}
