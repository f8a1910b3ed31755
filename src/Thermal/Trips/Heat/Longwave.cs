using Thermal.Air;
using Thermal.Envelope;

namespace Thermal.Trips.Heat;

/// <summary>Longwave exchange as a coefficient.</summary>
internal static class Longwave
{
    /// <summary>Coefficient h with h·(a − b) = ε·σ·(a⁴ − b⁴), W/(m²·K): exact at the temperatures given, so a balance that has settled is free of linearisation.</summary>
    internal static double CoefficientWPerM2K(double emissivityFraction, double aC, double bC)
    {
        double a = aC + MoistAir.ZeroCelsiusK, b = bC + MoistAir.ZeroCelsiusK;
        return emissivityFraction * SurfaceResistance.StefanBoltzmannWPerM2K4 * (a * a + b * b) * (a + b);
    }
}
