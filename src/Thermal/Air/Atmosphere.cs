namespace Thermal.Air;

/// <summary>The standard atmosphere: how air pressure falls with height above the sea.</summary>
public static class Atmosphere
{
    /// <summary>Pressure at sea level, Pa; exact, by definition.</summary>
    public const double SeaLevelPa = 101_325;

    /// <summary>Air pressure at a height above the sea.</summary>
    /// <param name="altitudeM">Height above sea level z, m, -500 to 6000.</param>
    /// <returns>Pressure, Pa. The weather moves the real one by about ±3 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>P = 101 325·(1 − 2.25577e-5·z)^5.2559. Source: STD-ATM, in the form of ASHRAE-F, chapter 1, eq. 3.</remarks>
    public static double PressurePa(double altitudeM) =>
        SeaLevelPa * Math.Pow(1 - 2.25577e-5 * Guard.InRange(altitudeM, -500, 6000, "m"), 5.2559);
}
