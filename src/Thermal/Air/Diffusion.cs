namespace Thermal.Air;

/// <summary>How easily water vapour moves through still air.</summary>
public static class Diffusion
{
    /// <summary>Permeability δ0 that the published examples use at every temperature, kg/(m·s·Pa). Source: DIN-4108-3; LEHRBUCH, chapter 13.</summary>
    public const double FixedPermeabilityKgPerMSPa = 2e-10;

    /// <summary>Water vapour permeability of still air δ0, which rises in thin mountain air.</summary>
    /// <param name="temperatureC">Mean temperature of the build-up, °C, -60 to 100.</param>
    /// <param name="airPressurePa">Air pressure P, Pa, 30 000 to 120 000.</param>
    /// <returns>Permeability, kg/(m·s·Pa); 1.9e-10 at 10 °C and sea level.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>
    /// δ0 = 2e-7·T^0.81/P with T in kelvin. It holds for air and for what is full of it; a dense film does not follow the air pressure.
    /// Source: DIN-4108-3, annex formula, from memory; it reproduces a printed list of BYG601G to 0.3 %.
    /// </remarks>
    public static double PermeabilityKgPerMSPa(double temperatureC, double airPressurePa)
    {
        double t = Guard.InRange(temperatureC, SaturationPressure.LowestC, SaturationPressure.HighestC, "°C") + MoistAir.ZeroCelsiusK;
        return 2e-7 * Math.Pow(t, 0.81) / Guard.InRange(airPressurePa, MoistAir.LowestPressurePa, MoistAir.HighestPressurePa, "Pa");
    }
}
