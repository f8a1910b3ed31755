namespace Thermal.Numerics;

/// <summary>A value that falls exponentially towards an end value.</summary>
internal static class Relaxation
{
    /// <summary>The value after a share of its time constant.</summary>
    internal static double After(double from, double end, double timesFactor) => end + (from - end) * Math.Exp(-timesFactor);

    /// <summary>When it reaches a bound on its way, in time constants; infinite where it never does (the bound lies at the end value or beyond it, or is infinite).</summary>
    internal static double ReachesFactor(double from, double bound, double end)
    {
        // Exactly one where it stands so near the bound that the difference is lost: it is there.
        double ratio = (from - end) / (bound - end);
        return ratio >= 1 ? Math.Log(ratio) : double.PositiveInfinity;
    }
}
