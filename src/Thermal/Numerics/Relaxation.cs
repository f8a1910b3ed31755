namespace Thermal.Numerics;

/// <summary>A value that falls exponentially towards an end value.</summary>
internal static class Relaxation
{
    /// <summary>The value after a share of its time constant.</summary>
    internal static double After(double from, double end, double timesFactor) => end + (from - end) * Math.Exp(-timesFactor);

    /// <summary>When it passes a bound, in time constants; infinite where it never does (the bound lies at the end value, beyond it or behind, or is infinite).</summary>
    internal static double ReachesFactor(double from, double bound, double end)
    {
        double ratio = (from - end) / (bound - end);
        return ratio > 1 ? Math.Log(ratio) : double.PositiveInfinity;
    }
}
