namespace Thermal.Climates;

/// <summary>Where the sun stands.</summary>
/// <param name="ElevationDeg">Height of its centre above the horizon without refraction, degrees; negative below.</param>
/// <param name="AzimuthDeg">Direction, degrees clockwise from north, 0 to 360.</param>
/// <param name="DeclinationDeg">Declination, degrees.</param>
/// <param name="HourAngleDeg">Hour angle, degrees, 0 at solar noon, positive in the afternoon, −180 to 180.</param>
/// <param name="EquationOfTimeH">Solar time less mean time, h.</param>
public readonly record struct SunPosition(double ElevationDeg, double AzimuthDeg, double DeclinationDeg, double HourAngleDeg, double EquationOfTimeH)
{
    private const double DaysPerCentury = 36_525, RadPerDeg = Math.PI / 180;
    private static readonly DateTime Noon2000 = new(2000, 1, 1, 12, 0, 0, DateTimeKind.Utc);

    /// <summary>Finds it.</summary>
    /// <param name="latitudeDeg">Latitude, degrees, north positive, −90 to 90.</param>
    /// <param name="longitudeDeg">Longitude, degrees, east positive, −180 to 180.</param>
    /// <param name="utc">Universal time, years 1950 to 2100.</param>
    /// <returns>The position, right to about 0.01°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <remarks>
    /// Mean longitude and anomaly, centre, nutation in its largest term, sidereal time; the difference between terrestrial and universal time
    /// (0.001°), parallax and refraction are left out. Source: MEEUS, chapters 12, 22 and 25 (from memory).
    /// </remarks>
    public static SunPosition At(double latitudeDeg, double longitudeDeg, DateTime utc)
    {
        Guard.InRange(utc.Year, 1950, 2100, "(year)", nameof(utc));
        return SunOrbit.At((utc - Noon2000).TotalDays).Seen(
            Guard.InRange(latitudeDeg, -90, 90, "degrees"), Guard.InRange(longitudeDeg, -180, 180, "degrees"));
    }

    /// <summary>The sun as the earth's centre sees it.</summary>
    private readonly record struct SunOrbit(double DeclinationRad, double GreenwichHourAngleDeg, double EquationOfTimeH)
    {
        internal static SunOrbit At(double daysSince2000)
        {
            double t = daysSince2000 / DaysPerCentury;
            double mean = 280.46646 + t * (36000.76983 + t * 0.0003032);
            double anomaly = RadPerDeg * (357.52911 + t * (35999.05029 - t * 0.0001537));
            double centre = (1.914602 - t * (0.004817 + t * 0.000014)) * Math.Sin(anomaly)
                + (0.019993 - t * 0.000101) * Math.Sin(2 * anomaly) + 0.000289 * Math.Sin(3 * anomaly);
            double node = RadPerDeg * (125.04 - 1934.136 * t), nutationDeg = -0.00478 * Math.Sin(node);
            double longitude = RadPerDeg * (mean + centre - 0.00569 + nutationDeg);
            double obliquity = RadPerDeg * (23.439291 - t * 0.013004167 + 0.00256 * Math.Cos(node));
            (double sin, double cos) = Math.SinCos(longitude);
            double ascensionDeg = Math.Atan2(Math.Cos(obliquity) * sin, cos) / RadPerDeg;
            double shift = nutationDeg * Math.Cos(obliquity);
            double sidereal = 280.46061837 + 360.98564736629 * daysSince2000 + 0.000387933 * t * t + shift;
            return new(Math.Asin(Math.Sin(obliquity) * sin), sidereal - ascensionDeg, HalfTurn(mean - 0.0057183 - ascensionDeg + shift) / 15);
        }

        internal SunPosition Seen(double latitudeDeg, double longitudeDeg)
        {
            double hourAngleDeg = HalfTurn(GreenwichHourAngleDeg + longitudeDeg);
            (double sinLatitude, double cosLatitude) = Math.SinCos(latitudeDeg * RadPerDeg);
            (double sinDeclination, double cosDeclination) = Math.SinCos(DeclinationRad);
            (double sinHour, double cosHour) = Math.SinCos(hourAngleDeg * RadPerDeg);
            double up = sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosHour;
            double north = cosLatitude * sinDeclination - sinLatitude * cosDeclination * cosHour, east = -cosDeclination * sinHour;
            double azimuthDeg = Math.Atan2(east, north) / RadPerDeg;
            return new(Math.Asin(Math.Clamp(up, -1, 1)) / RadPerDeg, azimuthDeg < 0 ? azimuthDeg + 360 : azimuthDeg,
                DeclinationRad / RadPerDeg, hourAngleDeg, EquationOfTimeH);
        }

        private static double HalfTurn(double degrees) => degrees - 360 * Math.Round(degrees / 360);
    }
}
