using Thermal.Envelope;

namespace Thermal.Bridges;

/// <summary>Air in a small or divided space, as a solid that lets the same heat through.</summary>
public static class AirCavity
{
    /// <summary>Equivalent conductivity λ = d/R of a closed space of air, R = 1/(h_a + h_r).</summary>
    /// <param name="depthM">Depth d along the heat flow, m, 0.0001 to 1.</param>
    /// <param name="widthM">Width b across it, m, above 0.0001; infinite for an air layer without ends.</param>
    /// <param name="direction">Which way heat flows.</param>
    /// <param name="innerEmissivityFraction">Emissivity of the face towards the room, fraction, 0.01 to 1.</param>
    /// <param name="outerEmissivityFraction">Emissivity of the face towards the outside, fraction, 0.01 to 1.</param>
    /// <param name="meanC">Mean temperature, °C, -60 to 80; the coefficients hold at 10.</param>
    /// <returns>W/(m·K). For an infinite width that of the air layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <remarks>
    /// h_r = h_r0/(1/ε1 + 1/ε2 − 2 + 1/F) with the view factor F = ½·(1 + √(1 + d²/b²) − d/b): the side faces take no net heat, and the
    /// deeper the space the less its ends see each other, down to half. h_a as in an air layer of that depth.
    /// Source: ISO-6946, annex D, small or divided unventilated air spaces (from memory).
    /// </remarks>
    public static double ConductivityWPerMK(double depthM, double widthM, FlowDirection direction,
        double innerEmissivityFraction = SurfaceResistance.UsualEmissivityFraction,
        double outerEmissivityFraction = SurfaceResistance.UsualEmissivityFraction, double meanC = 10)
    {
        double d = Guard.InRange(depthM, 1e-4, 1, "m"), slender = d / Guard.InRange(widthM, 1e-4, double.PositiveInfinity, "m");
        double view = (1 + Math.Sqrt(1 + slender * slender) - slender) / 2;
        double mean = Guard.InRange(meanC, -60, 80, "°C") + 273.15;
        double radiative = 4 * SurfaceResistance.StefanBoltzmannWPerM2K4 * mean * mean * mean
            / (1 / Guard.InRange(innerEmissivityFraction, 0.01, 1, "(fraction)") + 1 / Guard.InRange(outerEmissivityFraction, 0.01, 1, "(fraction)") - 2 + 1 / view);
        return d * (AirLayerResistance.ConvectiveWPerM2K(d, direction) + radiative);
    }
}
