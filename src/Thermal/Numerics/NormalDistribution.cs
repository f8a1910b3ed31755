namespace Thermal.Numerics;

/// <summary>The distribution of errors about a mean.</summary>
internal static class NormalDistribution
{
    // Beyond this the share is 0 or 1 to the last bit that matters, and the series below would need ever more terms.
    private const double FarthestDeviations = 8;

    /// <summary>Share of values that lie below a number of standard deviations from the mean, 0 to 1.</summary>
    /// <param name="deviations">Standard deviations z above the mean, negative below; infinite ones are allowed.</param>
    /// <returns>Φ(z) to 1e-15 absolute; small shares are not exact relative to themselves. NaN gives NaN.</returns>
    /// <remarks>The power series Φ = 1/2 + φ(z)·(z + z³/3 + z⁵/(3·5) + …), after Marsaglia (2004), from memory.</remarks>
    internal static double ShareBelowFraction(double deviations)
    {
        if (deviations < -FarthestDeviations) return 0;
        if (deviations > FarthestDeviations) return 1;
        double square = deviations * deviations, term = deviations, sum = deviations, before = double.NaN;
        for (int divisor = 3; sum != before && !double.IsNaN(sum); divisor += 2)
        {
            before = sum;
            term *= square / divisor;
            sum += term;
        }
        return 0.5 + sum * Math.Exp(-square / 2) / Math.Sqrt(2 * Math.PI);
    }
}
