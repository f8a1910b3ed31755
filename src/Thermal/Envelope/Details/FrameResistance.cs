namespace Thermal.Envelope.Details;

/// <summary>The resistance a frame must have as a flat block to let through what its U says.</summary>
internal static class FrameResistance
{
    /// <summary>Least resistance of a block, m²·K/W: a frame of less is not a flat block, its faces are larger than its width. Chosen by us.</summary>
    internal const double LeastM2KPerW = 0.001;

    // Films with which a frame's U is stated. Source: ISO-6946, table 7, horizontal.
    private const double FilmsM2KPerW = 0.13 + 0.04;

    /// <summary>R of the block = 1/U − 0.17 m²·K/W; not positive where U is more than films alone let through.</summary>
    internal static double BlockM2KPerW(double frameUWPerM2K) => 1 / frameUWPerM2K - FilmsM2KPerW;
}
