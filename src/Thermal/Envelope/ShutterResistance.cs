namespace Thermal.Envelope;

/// <summary>What a closed shutter, blind or board adds to a window, by how tight its edges are.</summary>
public static class ShutterResistance
{
    /// <summary>Added resistance ΔR = a·R_sh + b, its air layer included.</summary>
    /// <param name="ownM2KPerW">Resistance of the shutter itself R_sh, m²·K/W, 0 to 3.</param>
    /// <param name="edges">How tight its edges are.</param>
    /// <returns>m²·K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>Source: EN-13125, classes of air permeability (from memory); the gaps of the classes by a public energy service.</remarks>
    public static double AddedM2KPerW(double ownM2KPerW, ShutterEdges edges)
    {
        double own = Guard.InRange(ownM2KPerW, 0, 3, "m²·K/W");
        return edges switch
        {
            ShutterEdges.VeryLeaky => 0.08,
            ShutterEdges.Leaky => 0.25 * own + 0.09,
            ShutterEdges.Average => 0.55 * own + 0.11,
            ShutterEdges.Close => 0.80 * own + 0.14,
            _ => 0.95 * own + 0.17,
        };
    }
}

/// <summary>Gaps round a closed shutter: the sum of those below, above and at the sides.</summary>
public enum ShutterEdges
{
    /// <summary>Over 35 mm: air permeability very high.</summary>
    VeryLeaky,
    /// <summary>15 to 35 mm: high.</summary>
    Leaky,
    /// <summary>8 to 15 mm: average.</summary>
    Average,
    /// <summary>Up to 8 mm: low.</summary>
    Close,
    /// <summary>Up to 3 mm, and sealed at one side and at top or bottom.</summary>
    Tight,
}
