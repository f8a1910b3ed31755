namespace Thermal.Envelope;

/// <summary>Convection at a plate by handbook correlations: a yardstick for the simple films of ISO 6946, which the balances use.</summary>
public static class PlateConvection
{
    /// <summary>Mean Nusselt number of a plate with air blown along it.</summary>
    /// <param name="reynoldsRatio">Re = w·l/ν, dimensionless, 1 to 1e8.</param>
    /// <param name="prandtlRatio">Pr, dimensionless, 0.5 to 2000; air 0.71.</param>
    /// <returns>Nu, dimensionless: root of the squares of the laminar and the turbulent law.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: LEHRBUCH, chapter 2: 0.664·Re^½·Pr^⅓ and 0.037·Re^0.8·Pr/(1 + 2.443·Re^−0.1·(Pr^⅔ − 1)).</remarks>
    public static double ForcedNusseltRatio(double reynoldsRatio, double prandtlRatio)
    {
        double re = Guard.InRange(reynoldsRatio, 1, 1e8, "(ratio)"), pr = Guard.InRange(prandtlRatio, 0.5, 2000, "(ratio)");
        double laminar = 0.664 * Math.Sqrt(re) * Math.Cbrt(pr);
        double turbulent = 0.037 * Math.Pow(re, 0.8) * pr / (1 + 2.443 * Math.Pow(re, -0.1) * (Math.Pow(pr, 2.0 / 3) - 1));
        return Math.Sqrt(laminar * laminar + turbulent * turbulent);
    }

    /// <summary>Mean Nusselt number of an upright plate warmer or colder than still air.</summary>
    /// <param name="rayleighRatio">Ra = g·β·ΔT·l³·Pr/ν², dimensionless, 0 to 1e12.</param>
    /// <param name="prandtlRatio">Pr, dimensionless, 0.5 to 2000; air 0.71.</param>
    /// <returns>Nu, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Churchill and Chu, laminar and turbulent in one (from memory). Source: LEHRBUCH, chapter 2, for its example.</remarks>
    public static double FreeNusseltRatio(double rayleighRatio, double prandtlRatio)
    {
        double ra = Guard.InRange(rayleighRatio, 0, 1e12, "(ratio)"), pr = Guard.InRange(prandtlRatio, 0.5, 2000, "(ratio)");
        double root = 0.825 + 0.387 * Math.Pow(ra, 1.0 / 6) / Math.Pow(1 + Math.Pow(0.492 / pr, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /// <summary>Coefficient of heat transfer h = Nu·λ/l.</summary>
    /// <param name="nusseltRatio">Nu, dimensionless, 0 to 1e6.</param>
    /// <param name="airConductivityWPerMK">Conductivity of the air, W/(m·K), 0.01 to 0.1.</param>
    /// <param name="lengthM">Length along the flow, or height, m, 0.01 to 100.</param>
    /// <returns>W/(m²·K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>The definition of the Nusselt number.</remarks>
    public static double CoefficientWPerM2K(double nusseltRatio, double airConductivityWPerMK, double lengthM) =>
        Guard.InRange(nusseltRatio, 0, 1e6, "(ratio)") * Guard.InRange(airConductivityWPerMK, 0.01, 0.1, "W/(m·K)") / Guard.InRange(lengthM, 0.01, 100, "m");
}
