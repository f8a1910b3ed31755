namespace Thermal.Climates;

/// <summary>Sun under a clear sky, by the day of the year.</summary>
/// <remarks>Coefficients of the former handbook method as sines over the year; made for mid latitudes near sea level, so mountains get more beam. Source: MASTERS, chapter on the solar resource (from memory).</remarks>
public static class ClearSky
{
    private const double RadPerDeg = Math.PI / 180;

    /// <summary>Beam on a face turned to the sun, I = A·e^(−k·m), W/m²; 0 below the horizon.</summary>
    /// <param name="elevationDeg">Height of the sun, degrees, −90 to 90.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    public static double BeamNormalWPerM2(double elevationDeg, int dayOfYear)
    {
        if (!(Guard.InRange(elevationDeg, -90, 90, "degrees") > 0)) return 0;
        double apparent = 1160 + 75 * Wave(dayOfYear, 275), depth = 0.174 + 0.035 * Wave(dayOfYear, 100);
        return apparent * Math.Exp(-depth * AirMassRatio(elevationDeg));
    }

    /// <summary>Sky light on the flat, W/m².</summary>
    /// <param name="elevationDeg">Height of the sun, degrees, −90 to 90.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    public static double DiffuseWPerM2(double elevationDeg, int dayOfYear) =>
        (0.095 + 0.04 * Wave(dayOfYear, 100)) * BeamNormalWPerM2(elevationDeg, dayOfYear);

    /// <summary>Air the beam passes, as a ratio to that overhead; finite at the horizon.</summary>
    /// <param name="elevationDeg">Height of the sun, degrees, 0 to 90.</param>
    /// <remarks>Spherical air. Source: MASTERS, air mass ratio (from memory).</remarks>
    public static double AirMassRatio(double elevationDeg)
    {
        double up = 708 * Math.Sin(Guard.InRange(elevationDeg, 0, 90, "degrees") * RadPerDeg);
        return Math.Sqrt(up * up + 1417) - up;
    }

    private static double Wave(int dayOfYear, int from) => Math.Sin(RadPerDeg * 360 / 365 * (Guard.InRange(dayOfYear, 1, 366, "(day of the year)") - from));
}
