using System.Globalization;
using Thermal.Air;
using Thermal.Climates;

namespace Thermal.Trips.Outdoors;

/// <summary>Weather at any time of a leg, without allocating.</summary>
/// <remarks>
/// Between the middles of its steps values are drawn straight. Years put together or generated repeat by the calendar (29 February as the 28th), shorter
/// generated weather from its begin to its end over and over; measured hours count for their own dates, and in the half step at either end the
/// outermost value holds. Weather without a sky is taken as half covered.
/// </remarks>
internal sealed class WeatherTrack
{
    /// <summary>Cloud share where weather has no sky temperature, fraction. Source: OURS.</summary>
    internal const double CloudWithoutSkyFraction = 0.5;
    /// <summary>Weather at least this long is a year, days.</summary>
    private const double YearDays = 364;

    private readonly Weather weather;
    private readonly double standardPa, lengthS;
    private readonly DateTime startLocal;

    /// <param name="leg">The leg.</param>
    /// <exception cref="ArgumentException">Its weather does not cover it.</exception>
    internal WeatherTrack(Leg leg)
    {
        weather = leg.Weather;
        (standardPa, lengthS) = (Atmosphere.PressurePa(weather.AltitudeM), weather.Count * weather.StepS);
        startLocal = DateTime.SpecifyKind(weather.StartUtc.AddHours(weather.UtcOffsetH), DateTimeKind.Unspecified);
        if (weather.Count < 1) throw new ArgumentException($"{weather.Name} has no hours of weather.", nameof(leg));
        if (weather.Kind == WeatherKind.Real && (leg.StartLocal < startLocal || leg.EndLocal > startLocal.AddSeconds(lengthS)))
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture,
                $"{leg.Name} lasts from {leg.StartLocal:yyyy-MM-dd HH:mm} to {leg.EndLocal:yyyy-MM-dd HH:mm}, but the weather of {weather.Name} from {startLocal:yyyy-MM-dd HH:mm} to {startLocal.AddSeconds(lengthS):yyyy-MM-dd HH:mm}."), nameof(leg));
    }

    /// <summary>Fills in the outside at a local standard time.</summary>
    internal void Fill(DateTime local, OutdoorsNow now)
    {
        double at = SecondsIn(local) / weather.StepS, between = at - 0.5;
        int last = weather.Count - 1, low = (int)Math.Floor(between);
        double share = between - low;
        now.WeatherStep = Math.Clamp((int)Math.Floor(at), 0, last);
        bool repeats = weather.Kind != WeatherKind.Real;
        int first = low < 0 ? repeats ? last : 0 : low, second = low + 1 > last ? repeats ? 0 : last : low + 1;
        now.AirC = Between(weather.AirC, first, second, share);
        now.VapourPa = Between(weather.VapourPa, first, second, share);
        now.WindMPerS = Between(weather.WindMPerS, first, second, share);
        now.SkyC = weather.SkyC is { } sky ? Between(sky, first, second, share) : SkyTemperature.OfC(now.AirC, now.VapourPa, CloudWithoutSkyFraction);
        now.PressurePa = weather.PressurePa is { } pressure ? Between(pressure, first, second, share) : standardPa;
    }

    private static double Between(IReadOnlyList<double> values, int first, int second, double share) => values[first] + share * (values[second] - values[first]);

    /// <summary>Time since the begin of the weather, s, brought into its length.</summary>
    private double SecondsIn(DateTime local)
    {
        if (weather.Kind != WeatherKind.Real && lengthS >= YearDays * 86_400)
            local = new DateTime(startLocal.Year, local.Month, Math.Min(local.Day, local.Month == 2 ? 28 : 31)).Add(local.TimeOfDay);
        double seconds = (local - startLocal).TotalSeconds;
        return weather.Kind == WeatherKind.Real ? Math.Clamp(seconds, 0, lengthS) : (seconds % lengthS + lengthS) % lengthS;
    }
}
