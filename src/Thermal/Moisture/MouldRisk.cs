using Thermal.Air;

namespace Thermal.Moisture;

/// <summary>Mould by monthly means: where the air at a surface stays above 80 % for a month, something grows.</summary>
/// <remarks>Not for a single night: mould is slow, dew is quick. Humidity at a surface is taken over liquid water. Source: ISO-13788, clause 5.</remarks>
public static class MouldRisk
{
    /// <summary>Monthly mean humidity at a surface from which mould grows, fraction. Source: ISO-13788, clause 5.</summary>
    public const double CriticalHumidityFraction = 0.8;

    /// <summary>How much of the way from outside to inside a surface has warmed up, f_Rsi.</summary>
    /// <param name="surfaceC">Surface, °C, -60 to 60.</param>
    /// <param name="insideC">Inside air, °C, -60 to 60.</param>
    /// <param name="outsideC">Outside air, °C, -60 to 60; at least 0.1 K from the inside.</param>
    /// <returns>Temperature factor: 1 as warm as the room, 0 as cold as outside; beyond both under a clear sky or over a warm floor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, no difference, or NaN.</exception>
    /// <remarks>f = (θsi − θe)/(θi − θe). Source: ISO-13788, clause 5.</remarks>
    public static double TemperatureFactor(double surfaceC, double insideC, double outsideC) =>
        (Guard.InRange(surfaceC, -60, 60, "°C") - outsideC) / DifferenceK(insideC, outsideC);

    /// <summary>Temperature factor of a plain build-up.</summary>
    /// <param name="transmittanceWPerM2K">U computed with the same inside film, W/(m²·K), 0 to 20.</param>
    /// <param name="insideFilmM2KPerW">Inside film Rsi for mould, m²·K/W, 0.05 to 4: 0.25 opaque, 0.13 glass and frames; more behind furniture.</param>
    /// <returns>Temperature factor f_Rsi = 1 − U·Rsi.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, a film larger than the whole, or NaN.</exception>
    /// <remarks>Source: ISO-13788, clause 5.</remarks>
    public static double TemperatureFactorOfTransmittance(double transmittanceWPerM2K, double insideFilmM2KPerW)
    {
        double share = Guard.InRange(transmittanceWPerM2K, 0, 20, "W/(m²·K)") * Guard.InRange(insideFilmM2KPerW, 0.05, 4, "m²·K/W");
        return 1 - Guard.InRange(share, 0, 1, "(share of the film)");
    }

    /// <summary>Smallest temperature factor that keeps the surface at or below 80 %.</summary>
    /// <param name="insidePa">Monthly mean vapour pressure inside, Pa, 10 to 20 000.</param>
    /// <param name="insideC">Monthly mean inside, °C, -60 to 60.</param>
    /// <param name="outsideC">Monthly mean outside, °C, -60 to 60; at least 0.1 K from the inside.</param>
    /// <returns>Temperature factor; above 1 no insulation helps, 0 or less none is needed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, no difference, or NaN.</exception>
    /// <remarks>The surface must be as warm as the dew point over water of p/0.8. Source: ISO-13788, clause 5.</remarks>
    public static double RequiredTemperatureFactor(double insidePa, double insideC, double outsideC) =>
        (DewPoint.DewPointOverWaterC(Guard.InRange(insidePa, 10, 20_000, "Pa") / CriticalHumidityFraction) - outsideC) / DifferenceK(insideC, outsideC);

    /// <summary>Humidity of the room's air where it touches a surface.</summary>
    /// <param name="insidePa">Vapour pressure inside, Pa, 0 to 20 000.</param>
    /// <param name="surfaceC">Surface, °C, -60 to 100.</param>
    /// <returns>Relative humidity over water, fraction; above 1 it drips before.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: ISO-13788, clause 5.</remarks>
    public static double SurfaceHumidityFraction(double insidePa, double surfaceC) =>
        Guard.InRange(insidePa, 0, 20_000, "Pa") / SaturationPressure.OverWaterPa(surfaceC);

    /// <summary>Highest humidity the room may have before a surface passes 80 %.</summary>
    /// <param name="temperatureFactor">Temperature factor f_Rsi of the surface, -1 to 1.</param>
    /// <param name="insideC">Inside air, °C, -60 to 60.</param>
    /// <param name="outsideC">Outside air, °C, -60 to 60.</param>
    /// <returns>Relative humidity φmax, fraction, over water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>φmax = 0.8·psat(θsi)/psat(θi). Source: DIN-4108-3 by LEHRBUCH, chapter 13; with the saturation curve of ISO-13788, annex E.</remarks>
    public static double HighestInsideHumidityFraction(double temperatureFactor, double insideC, double outsideC)
    {
        double warmingK = Guard.InRange(insideC, -60, 60, "°C") - Guard.InRange(outsideC, -60, 60, "°C");
        double surfaceC = outsideC + Guard.InRange(temperatureFactor, -1, 1, "(factor)") * warmingK;
        return CriticalHumidityFraction * SaturationPressure.OverWaterPa(surfaceC) / SaturationPressure.OverWaterPa(insideC);
    }

    private static double DifferenceK(double insideC, double outsideC)
    {
        double differenceK = Guard.InRange(insideC, -60, 60, "°C") - Guard.InRange(outsideC, -60, 60, "°C");
        Guard.InRange(Math.Abs(differenceK), 0.1, 120, "K", nameof(differenceK));
        return differenceK;
    }
}
