namespace Thermal.Numerics;

/// <summary>A stream of random numbers that is the same on every machine and runtime for one seed.</summary>
/// <remarks>The 64-bit mixing generator of Steele, Lea and Flood (2014), constants from memory; normal numbers by Box and Muller.</remarks>
internal sealed class RandomStream(int seed)
{
    private ulong state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL + 0x2545F4914F6CDD1DUL);
    private double spare = double.NaN;

    /// <summary>The next number between 0 and 1, neither of them.</summary>
    internal double NextFraction()
    {
        unchecked
        {
            ulong z = state += 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return (((z ^ (z >> 31)) >> 11) + 0.5) / (1UL << 53);
        }
    }

    /// <summary>The next number of the normal distribution with mean 0 and deviation 1.</summary>
    internal double NextNormal()
    {
        if (!double.IsNaN(spare))
        {
            double kept = spare;
            spare = double.NaN;
            return kept;
        }
        double radius = Math.Sqrt(-2 * Math.Log(NextFraction()));
        (double sin, double cos) = Math.SinCos(2 * Math.PI * NextFraction());
        spare = radius * sin;
        return radius * cos;
    }

    /// <summary>Fills a run in which each normal number keeps a share of the one before it; mean 0, deviation 1.</summary>
    internal void FillChain(Span<double> run, double kept)
    {
        double fresh = Math.Sqrt(1 - kept * kept), last = NextNormal();
        for (int i = 0; i < run.Length; i++) run[i] = last = kept * last + fresh * NextNormal();
    }
}
