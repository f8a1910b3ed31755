namespace Thermal.Power;

/// <summary>What a solar panel gives to the battery.</summary>
public static class SolarYield
{
    /// <summary>How much warmer than the air cells get in full sun on a roof, K under 1000 W/m². Source: PRACTICE, 25 K under 800 W/m² as in cells' rated operating temperature, from memory; flat on a roof without a gap it is more.</summary>
    public const double CellsAboveAirK = 31.25;
    /// <summary>Power lost for each kelvin above 25 °C, as a ratio of the peak, 1/K. Source: PRACTICE, silicon cells, 0.35 to 0.45 % a kelvin, from memory.</summary>
    public const double LostPerKelvinRatio = 0.004;

    private const double PeakWPerM2 = 1000, PeakC = 25;

    /// <summary>Temperature of its cells.</summary>
    /// <param name="sunWPerM2">Sun on its face, W/m², 0 to 1500.</param>
    /// <param name="airC">Air outside, °C, -60 to 60.</param>
    /// <returns>°C; wind left out.</returns>
    public static double CellC(double sunWPerM2, double airC) =>
        Guard.InRange(airC, -60, 60, "°C") + CellsAboveAirK * Guard.InRange(sunWPerM2, 0, 1500, "W/m²") / PeakWPerM2;

    /// <summary>Power at the battery.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="sunWPerM2">Sun on its face, W/m², 0 to 1500: <see cref="Climates.SurfaceAspect"/> by tilt, facing and heading.</param>
    /// <param name="airC">Air outside, °C, -60 to 60.</param>
    /// <param name="extreme">Which end of the share that reaches the battery.</param>
    /// <returns>W.</returns>
    /// <remarks>
    /// Peak · sun/1000 · (1 − 0.004·(cells − 25)) · share that reaches the battery; cold cells give more. Snow lying on the panel is not reckoned: it
    /// counts as swept. Weak light, angle and shade by things on the roof are in the share. Source: OURS, the usual linear rule.
    /// </remarks>
    public static double PanelW(SolarPanel panel, double sunWPerM2, double airC, Materials.Extreme extreme = Materials.Extreme.Usual) =>
        panel.PeakW * sunWPerM2 / PeakWPerM2 * (1 - LostPerKelvinRatio * (CellC(sunWPerM2, airC) - PeakC)) * panel.SystemFraction.At(extreme);
}
