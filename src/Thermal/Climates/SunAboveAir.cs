namespace Thermal.Climates;

/// <summary>The sun before the air takes its share.</summary>
public static class SunAboveAir
{
    /// <summary>Solar constant, W/m². Source: DUFFIE, chapter 1, 1367.</summary>
    public const double ConstantWPerM2 = 1367;

    private const double RadPerDeg = Math.PI / 180;

    /// <summary>Irradiance of a face turned to the sun, W/m².</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <remarks>Source: DUFFIE, chapter 1, the one-term form.</remarks>
    public static double NormalWPerM2(int dayOfYear) => ConstantWPerM2 * (1 + 0.033 * Math.Cos(RadPerDeg * 360 * Day(dayOfYear) / 365));

    /// <summary>Declination of the day, degrees, for sums over days; the sun's place in the sky is <see cref="SunPosition"/>.</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <remarks>Source: DUFFIE, chapter 1, Cooper's form; within 0.5°.</remarks>
    public static double DeclinationDeg(int dayOfYear) => 23.45 * Math.Sin(RadPerDeg * 360 * (284 + Day(dayOfYear)) / 365);

    /// <summary>Hour angle of sunset, degrees: 0 in polar night, 180 under the midnight sun.</summary>
    /// <param name="latitudeDeg">Latitude, degrees, −90 to 90.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    public static double SunsetDeg(double latitudeDeg, int dayOfYear)
    {
        double cosine = -Math.Tan(Guard.InRange(latitudeDeg, -90, 90, "degrees") * RadPerDeg) * Math.Tan(DeclinationDeg(dayOfYear) * RadPerDeg);
        return cosine >= 1 ? 0 : cosine <= -1 ? 180 : Math.Acos(cosine) / RadPerDeg;
    }

    /// <summary>What would fall on the flat in a day without air, Wh/m².</summary>
    /// <param name="latitudeDeg">Latitude, degrees, −90 to 90.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <remarks>H0 = 24/π·G·(cos φ cos δ sin ω_s + ω_s sin φ sin δ). Source: DUFFIE, chapter 1 (from memory).</remarks>
    public static double DayWhPerM2(double latitudeDeg, int dayOfYear)
    {
        double sunset = SunsetDeg(latitudeDeg, dayOfYear) * RadPerDeg;
        (double sinLatitude, double cosLatitude) = Math.SinCos(latitudeDeg * RadPerDeg);
        (double sinDeclination, double cosDeclination) = Math.SinCos(DeclinationDeg(dayOfYear) * RadPerDeg);
        return 24 / Math.PI * NormalWPerM2(dayOfYear) * (cosLatitude * cosDeclination * Math.Sin(sunset) + sunset * sinLatitude * sinDeclination);
    }

    private static int Day(int dayOfYear) => (int)Guard.InRange(dayOfYear, 1, 366, "(day of the year)", nameof(dayOfYear));
}
