using Thermal.Air;

namespace Thermal.Climates;

/// <summary>Air that never changes, in the dark: a cold chamber, a hall.</summary>
public static class SteadyWeather
{
    private const double StepS = 3600;

    /// <summary>Weather that is the same in every hour.</summary>
    /// <param name="name">What people call the place.</param>
    /// <param name="startLocal">Begin of the first hour, local standard time, which is taken as universal time too.</param>
    /// <param name="hours">Hours, 1 to 87 600: ten years.</param>
    /// <param name="airC">Air, °C, −90 to 60; what surrounds the vehicle is as warm as the air.</param>
    /// <param name="relativeHumidityFraction">Relative humidity over water, also in frost, fraction, 0 to 1.</param>
    /// <param name="windMPerS">Wind at 10 m in the open, m/s, 0 to 60.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range, or NaN.</exception>
    /// <remarks>No sun, and a "sky" of the air's own temperature: walls all round. At the equator and at sea level, which matters to nothing without sun. Source: OURS.</remarks>
    public static Weather Of(string name, DateTime startLocal, int hours, double airC, double relativeHumidityFraction, double windMPerS)
    {
        Guard.InRange(hours, 1, 87_600, "h");
        Guard.InRange(airC, -90, 60, "°C");
        Guard.InRange(relativeHumidityFraction, 0, 1, "(fraction)");
        Guard.InRange(windMPerS, 0, 60, "m/s");
        IReadOnlyList<double> dark = Same(0), air = Same(airC);
        return new()
        {
            Name = name,
            LatitudeDeg = 0,
            LongitudeDeg = 0,
            AltitudeM = 0,
            UtcOffsetH = 0,
            Kind = WeatherKind.Steady,
            Source = "stated in the trip",
            StartUtc = DateTime.SpecifyKind(startLocal, DateTimeKind.Utc),
            StepS = StepS,
            AirC = air,
            VapourPa = Same(relativeHumidityFraction * SaturationPressure.OverWaterPa(airC)),
            WindMPerS = Same(windMPerS),
            GlobalWPerM2 = dark,
            BeamNormalWPerM2 = dark,
            DiffuseWPerM2 = dark,
            SkyC = air,
        };

        IReadOnlyList<double> Same(double value) => [.. Enumerable.Repeat(value, hours)];
    }
}
