namespace Thermal.Benchmarks;

/// <summary>Work that is the same on every day, so that figures of two days and two machines can be compared.</summary>
internal static class Yardstick
{
    /// <summary>A million exponentials; returns their sum, so that none can be left out.</summary>
    internal static double MillionExponentials()
    {
        double sum = 0;
        for (int i = 0; i < 1_000_000; i++) sum += Math.Exp(i * 1e-6);
        return sum;
    }
}
