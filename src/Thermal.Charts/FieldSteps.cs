namespace Thermal.Charts;

/// <summary>A span of temperatures in at most five steps between round numbers, in the unit shown.</summary>
/// <param name="Low">Lower end of the first step.</param>
/// <param name="Step">Size of a step.</param>
/// <param name="Count">Steps, 1 to 5.</param>
internal sealed record FieldSteps(double Low, double Step, int Count)
{
    // A span below this has no steps worth a line, in the unit shown. Source: OURS.
    private const double LeastStep = 0.1;

    private static readonly double[] Digits = [1, 2, 3, 4, 5, 6, 8];

    /// <summary>The finest that holds the span.</summary>
    internal static FieldSteps Of(double low, double high)
    {
        for (double power = LeastStep; ; power *= 10)
            foreach (double digit in Digits)
            {
                double step = digit * power, from = Math.Floor(low / step + 1e-9), to = Math.Max(from + 1, Math.Ceiling(high / step - 1e-9));
                if (to - from <= 5)
                    return new FieldSteps(from * step, step, (int)(to - from));
            }
    }

    /// <summary>Where one step ends and the next begins.</summary>
    internal IEnumerable<double> Borders => Enumerable.Range(1, Count - 1).Select(k => Low + k * Step);

    /// <summary>Colour of a step, the warmest the strongest.</summary>
    internal string Colour(Palette palette, int step) => palette.Heat[Count == 1 ? 2 : (int)Math.Round(step * 4.0 / (Count - 1))];

    internal string Written(double value) => NiceNumbers.Written(value, Step);
}
