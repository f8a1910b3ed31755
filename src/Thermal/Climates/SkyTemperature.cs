namespace Thermal.Climates;

/// <summary>Radiant temperature of the sky.</summary>
/// <remarks>
/// A clear cold night sky is about 20 K below the air (measured 19 to 25 K at four places). Two old and common formulas run 5 to 14 K too cold
/// in frost and are not here.
/// </remarks>
public static class SkyTemperature
{
    private const double KelvinAtZeroC = 273.15;

    /// <summary>Emissivity of a clear sky, fraction.</summary>
    /// <param name="airC">Air temperature, °C, −60 to 50.</param>
    /// <param name="vapourPa">Vapour pressure, Pa, 0 to 10 000.</param>
    /// <remarks>ε = 1 − (1 + w)·e^(−√(1.2 + 3w)), w = 46.5·e/T with e in hPa. Source: PRATA-1996 (from memory).</remarks>
    public static double ClearEmissivityFraction(double airC, double vapourPa)
    {
        double w = 46.5 * (Guard.InRange(vapourPa, 0, 10_000, "Pa") / 100) / (Guard.InRange(airC, MonthNormals.LowestC, MonthNormals.HighestC, "°C") + KelvinAtZeroC);
        return 1 - (1 + w) * Math.Exp(-Math.Sqrt(1.2 + 3 * w));
    }

    /// <summary>Share of the sky that clouds cover in effect, from the sun that came through in a day, fraction.</summary>
    /// <param name="globalWhPerM2">Sun and sky light on the flat in the day, Wh/m².</param>
    /// <param name="aboveAirWhPerM2">The same without air, Wh/m², above 0.</param>
    /// <param name="altitudeM">Height above the sea z, m, −430 to 6000.</param>
    /// <returns>1 − H/H_clear, held between 0 and 1, with H_clear = (0.75 + 2·10⁻⁵·z)·H0.</returns>
    /// <remarks>Source: CRAWFORD-1999.</remarks>
    public static double CloudFraction(double globalWhPerM2, double aboveAirWhPerM2, double altitudeM)
    {
        double clear = (0.75 + 2e-5 * Guard.InRange(altitudeM, Place.LowestAltitudeM, Place.HighestAltitudeM, "m")) * Guard.InRange(aboveAirWhPerM2, 1e-6, 20_000, "Wh/m²");
        return Math.Clamp(1 - Guard.InRange(globalWhPerM2, 0, 20_000, "Wh/m²") / clear, 0, 1);
    }

    /// <summary>Radiant temperature of the sky, °C.</summary>
    /// <param name="airC">Air temperature, °C, −60 to 50.</param>
    /// <param name="vapourPa">Vapour pressure, Pa.</param>
    /// <param name="cloudFraction">Share covered by clouds C, fraction, 0 to 1; clouds count as black at air temperature.</param>
    /// <remarks>T_sky = T_air·(C + (1 − C)·ε_clear)^¼. Source: CRAWFORD-1999, with PRATA-1996.</remarks>
    public static double OfC(double airC, double vapourPa, double cloudFraction)
    {
        double clouds = Guard.InRange(cloudFraction, 0, 1, "(fraction)");
        double emissivity = clouds + (1 - clouds) * ClearEmissivityFraction(airC, vapourPa);
        return (airC + KelvinAtZeroC) * Math.Sqrt(Math.Sqrt(emissivity)) - KelvinAtZeroC;
    }

    /// <summary>Radiant temperature of a sky whose longwave radiation was measured, °C.</summary>
    /// <param name="longwaveWPerM2">Radiation from the sky on the flat, W/m², 20 to 700.</param>
    /// <remarks>Black-body law with the constant of the SI, exact.</remarks>
    public static double OfLongwaveC(double longwaveWPerM2) =>
        Math.Sqrt(Math.Sqrt(Guard.InRange(longwaveWPerM2, 20, 700, "W/m²") / 5.670374419e-8)) - KelvinAtZeroC;
}
