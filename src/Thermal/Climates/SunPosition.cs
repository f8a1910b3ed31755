namespace Thermal.Climates;

/// <summary>Where the sun stands.</summary>
/// <param name="ElevationDeg">Height of its centre above the horizon without refraction, degrees; negative below.</param>
/// <param name="AzimuthDeg">Direction, degrees clockwise from north, 0 to 360.</param>
/// <param name="DeclinationDeg">Declination, degrees.</param>
/// <param name="HourAngleDeg">Hour angle, degrees, 0 at solar noon, positive in the afternoon, −180 to 180.</param>
/// <param name="EquationOfTimeH">Equation of time, h.</param>
public readonly record struct SunPosition(double ElevationDeg, double AzimuthDeg, double DeclinationDeg, double HourAngleDeg, double EquationOfTimeH)
{
    /// <summary>Finds it.</summary>
    /// <param name="latitudeDeg">Latitude, degrees, north positive, −90 to 90.</param>
    /// <param name="longitudeDeg">Longitude, degrees, east positive, −180 to 180.</param>
    /// <param name="utc">Universal time, 1950 to 2100.</param>
    public static SunPosition At(double latitudeDeg, double longitudeDeg, DateTime utc) => throw new NotImplementedException();
}
