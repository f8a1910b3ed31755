namespace Thermal.Envelope;

/// <summary>Thermal resistance of a closed air layer.</summary>
public static class AirLayerResistance
{
    /// <summary>Openings up to which a layer counts as closed, mm² per m or m². Source: ISO-6946, 6.9.2.</summary>
    public const double ClosedUpToMm2 = 500;

    /// <summary>Openings from which a layer counts as well ventilated, mm² per m or m². Source: ISO-6946, 6.9.4.</summary>
    public const double WellVentilatedFromMm2 = 1500;

    /// <summary>Resistance R = 1/(h_a + h_r) of a closed layer.</summary>
    /// <param name="thicknessM">Thickness d across the heat flow, m, 0.0001 to 1; the source's table ends at 0.3.</param>
    /// <param name="direction">Which way heat flows.</param>
    /// <param name="innerEmissivityFraction">Emissivity of one face, fraction, 0.01 to 1.</param>
    /// <param name="outerEmissivityFraction">Emissivity of the other face, fraction, 0.01 to 1.</param>
    /// <param name="meanC">Mean temperature, °C, -60 to 80; the tables hold at 10.</param>
    /// <returns>m²·K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <remarks>Source: ISO-6946, annex D, airspaces wider than a tenth of their thickness (from memory; the 24 values of its table come back).</remarks>
    public static double ClosedM2KPerW(double thicknessM, FlowDirection direction,
        double innerEmissivityFraction = SurfaceResistance.UsualEmissivityFraction,
        double outerEmissivityFraction = SurfaceResistance.UsualEmissivityFraction, double meanC = 10)
    {
        double d = Guard.InRange(thicknessM, 1e-4, 1, "m");
        double mean = Guard.InRange(meanC, -60, 80, "°C") + 273.15;
        double radiative = 4 * SurfaceResistance.StefanBoltzmannWPerM2K4 * mean * mean * mean
            / (1 / Guard.InRange(innerEmissivityFraction, 0.01, 1, "(fraction)") + 1 / Guard.InRange(outerEmissivityFraction, 0.01, 1, "(fraction)") - 1);
        return 1 / (ConvectiveWPerM2K(d, direction) + radiative);
    }

    /// <summary>Coefficient h_a of the air in a closed space of a depth: still, or moving where that carries more, W/(m²·K).</summary>
    internal static double ConvectiveWPerM2K(double depthM, FlowDirection direction) => Math.Max(0.025 / depthM, direction switch
    {
        FlowDirection.Up => 1.95,
        FlowDirection.Down => 0.12 * Math.Pow(depthM, -0.44),
        _ => 1.25,
    });
}
