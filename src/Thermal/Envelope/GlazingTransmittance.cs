namespace Thermal.Envelope;

/// <summary>Thermal resistance of panes and gaps by EN 673.</summary>
public static class GlazingTransmittance
{
    private const double MeanK = 283, DifferenceK = 15;

    // Density, dynamic viscosity, conductivity, specific heat at 10 °C; EN 673, table 1.
    private readonly record struct GasData(double DensityKgPerM3, double ViscosityPaS, double ConductivityWPerMK, double HeatJPerKgK);

    private static GasData Of(GapGas gas) => gas switch
    {
        GapGas.Argon => new(1.699, 2.164e-5, 0.01684, 519),
        GapGas.Krypton => new(3.560, 2.400e-5, 0.00900, 245),
        _ => new(1.232, 1.761e-5, 0.02496, 1008),
    };

    /// <summary>Resistance from the inner face of the inner pane to the outer face of the outer one, without films.</summary>
    /// <param name="glazing">Panes and gaps.</param>
    /// <param name="tiltDeg">Tilt, degrees: roof light 0, upright 90. Beyond 120 (heat down) the gaps' air stands still.</param>
    /// <returns>m²·K/W.</returns>
    /// <remarks>
    /// Gap conductance h = Nu·λ/s + 4σT³/(1/ε1 + 1/ε2 − 1), Nu = max(1, A·(Gr·Pr)^n), 15 K over all gaps at 283 K, shared by
    /// their resistance. A and n upright 0.035 and 0.38, at 45° 0.10 and 0.31, flat 0.16 and 0.28, linear between (from memory).
    /// Source: EN-673, 5 and 6; table 1 for the gases.
    /// </remarks>
    public static double CoreM2KPerW(Glazing glazing, double tiltDeg)
    {
        double sum = 0;
        foreach (Pane pane in glazing.Panes) sum += pane.ThicknessM / pane.Material.ConductivityWPerMK.Value;
        Span<double> gaps = stackalloc double[glazing.Gaps.Count];
        return sum + GapsM2KPerW(glazing, tiltDeg, gaps);
    }

    /// <summary>Resistance of each gap, inside to outside, into a span of as many; returns their sum, m²·K/W.</summary>
    internal static double GapsM2KPerW(Glazing glazing, double tiltDeg, Span<double> gaps)
    {
        Guard.InRange(tiltDeg, 0, 180, "°");
        int n = gaps.Length;
        if (n == 0) return 0;
        gaps.Fill(1);
        double sum = n;
        // The share of the 15 K of each gap depends on its resistance: one gap is exact at once, more settle in a few rounds.
        for (int round = 0; round < (n > 1 ? 20 : 1); round++)
        {
            double next = 0;
            for (int i = 0; i < n; i++)
            {
                gaps[i] = 1 / GapWPerM2K(glazing.Gaps[i], glazing.Panes[i].OuterEmissivityFraction, glazing.Panes[i + 1].InnerEmissivityFraction,
                    tiltDeg, DifferenceK * gaps[i] / sum);
                next += gaps[i];
            }
            sum = next;
        }
        return sum;
    }

    /// <summary>Conductance of one gap h_g + h_r, W/(m²·K).</summary>
    internal static double GapWPerM2K(GlazingGap gap, double innerEmissivityFraction, double outerEmissivityFraction, double tiltDeg, double differenceK)
    {
        GasData air = Of(GapGas.Air), fill = Of(gap.Gas);
        double f = gap.Gas == GapGas.Air ? 1 : gap.GasFraction;
        double density = f * fill.DensityKgPerM3 + (1 - f) * air.DensityKgPerM3;
        double viscosity = f * fill.ViscosityPaS + (1 - f) * air.ViscosityPaS;
        double conductivity = f * fill.ConductivityWPerMK + (1 - f) * air.ConductivityWPerMK;
        double heat = f * fill.HeatJPerKgK + (1 - f) * air.HeatJPerKgK;
        double s = gap.ThicknessM;
        double grashof = 9.81 * s * s * s * differenceK * density * density / (MeanK * viscosity * viscosity);
        double prandtl = viscosity * heat / conductivity;
        double nusselt = tiltDeg > 120 ? 1 : Math.Max(1, Law(tiltDeg, grashof * prandtl));
        double radiative = 4 * SurfaceResistance.StefanBoltzmannWPerM2K4 * MeanK * MeanK * MeanK / (1 / innerEmissivityFraction + 1 / outerEmissivityFraction - 1);
        return nusselt * conductivity / s + radiative;
    }

    private static double Law(double tiltDeg, double product)
    {
        double upright = 0.035 * Math.Pow(product, 0.38);
        if (tiltDeg >= 90) return upright;
        double halfway = 0.10 * Math.Pow(product, 0.31);
        if (tiltDeg >= 45) return halfway + (upright - halfway) * (tiltDeg - 45) / 45;
        double flat = 0.16 * Math.Pow(product, 0.28);
        return flat + (halfway - flat) * tiltDeg / 45;
    }
}
