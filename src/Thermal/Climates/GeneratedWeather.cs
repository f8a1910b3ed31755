using Thermal.Air;
using Thermal.Numerics;

namespace Thermal.Climates;

/// <summary>An ordinary year, or a cold spell, by the hour, made from the monthly normals of a place.</summary>
/// <remarks>
/// Good for energy: heat, fuel and battery over a trip or a winter to about 1 %. Not for extremes: without the site's own spread of day means its coldest
/// hours are 2.5 K too cold to 6 K too warm; and it has too few hours near saturation: dew and fog must not be counted on it.
/// Tested against four real years. Source: OURS, after the methods each part names.
/// </remarks>
public static class GeneratedWeather
{
    /// <summary>The seed of the default year.</summary>
    public const int UsualSeed = 1;
    /// <summary>Share of a day's departure from the mean that the next day keeps (lag-1 autocorrelation). Source: RICHARDSON-1981, solved for the mean temperature; six real years gave 0.64 to 0.79.</summary>
    public const double DayToDayFactor = 0.70;
    /// <summary>Day means spread this many times as wide as a month's mean from year to year: √(30·(1 − φ)/(1 + φ)). Source: EKB-1983 with φ 0.7.</summary>
    public const double DaySpreadFactor = 2.3;
    /// <summary>Wind where the place has none, m/s. Source: OURS.</summary>
    public const double WindWithoutNormalMPerS = 3;
    /// <summary>Cloud share in polar night, fraction. Source: OURS, 0.61 at one subarctic site.</summary>
    public const double PolarNightCloudFraction = 0.6;
    /// <summary>Relative humidity in the coldest hour of a cold spell, at most, fraction. Source: OURS.</summary>
    public const double ColdSpellHumidityFraction = 0.95;

    /// <summary>A year of hours that has the place's monthly means of temperature, vapour pressure, sun and wind.</summary>
    /// <param name="place">The place; every month needs its mean daily lowest and highest.</param>
    /// <param name="seed">Which of the many possible years; equal seed gives equal bits.</param>
    /// <param name="year">Calendar year it is put into, 1950 to 2099; a leap year has no 31 December.</param>
    /// <exception cref="ArgumentException">A month has no daily lowest or highest.</exception>
    /// <remarks>A month too cold and even for the vapour pressure asked of it ends below it: saturation comes first.</remarks>
    public static Weather Typical(Place place, int seed = UsualSeed, int year = 2025)
    {
        Guard.InRange(year, 1950, 2099, "(year)");
        YearPlan plan = YearPlan.Of(place, year);
        RandomStream random = new(seed);
        double[] dayRatios = YearSun.DayRatios(plan, random);
        double[] air = YearAir.HoursC(plan, YearAir.DayMeansC(plan, random), dayRatios);
        double[] vapour = YearVapour.HoursPa(plan, air);
        YearSun sun = YearSun.Of(plan, dayRatios);
        double[] sky = new double[YearPlan.HourCount];
        for (int hour = 0; hour < sky.Length; hour++) sky[hour] = SkyTemperature.OfC(air[hour], vapour[hour], sun.DayCloudFraction[hour / 24]);
        return plan.Framed(WeatherKind.Generated, air, vapour) with
        {
            WindMPerS = YearWind.HoursMPerS(plan, random),
            GlobalWPerM2 = sun.GlobalWPerM2,
            BeamNormalWPerM2 = sun.BeamNormalWPerM2,
            DiffuseWPerM2 = sun.DiffuseWPerM2,
            SkyC = sky,
        };
    }

    /// <summary>Clear winter days in a row whose coldest hour is the place's design temperature.</summary>
    /// <param name="place">The place; its coldest month needs its mean daily lowest and highest.</param>
    /// <param name="days">Days, 1 to 30, about the middle of the coldest month.</param>
    /// <param name="year">Calendar year, 1950 to 2099.</param>
    /// <exception cref="ArgumentException">The coldest month has no daily lowest or highest.</exception>
    /// <remarks>
    /// Every day alike: day mean + winter range · daily cycle; vapour of the month, at most 95 % over water in the coldest hour; clear sky by day and night; wind of
    /// the design night.
    /// </remarks>
    public static Weather ColdSpell(Place place, int days, int year = 2025)
    {
        Guard.InRange(days, 1, 30, "days");
        Guard.InRange(year, 1950, 2099, "(year)");
        YearPlan plan = YearPlan.Of(place, year);
        int first = plan.FirstDay(ColdestMonth(place)) + 15 - days / 2;
        return ColdSpell(plan, days, plan.StartUtc.AddDays(first < 0 ? first + YearPlan.DayCount : first));
    }

    /// <summary>The same cold days from a date of one's own: air of the coldest month, sun of the date.</summary>
    /// <param name="place">The place; its coldest month needs its mean daily lowest and highest.</param>
    /// <param name="days">Days, 1 to 30.</param>
    /// <param name="firstDay">First of them, 1950 to 2099.</param>
    /// <exception cref="ArgumentException">The coldest month has no daily lowest or highest.</exception>
    public static Weather ColdSpell(Place place, int days, DateOnly firstDay)
    {
        Guard.InRange(days, 1, 30, "days");
        Guard.InRange(firstDay.Year, 1950, 2099, "(year)");
        YearPlan plan = YearPlan.Of(place, firstDay.Year);
        return ColdSpell(plan, days, plan.StartUtc.AddDays(firstDay.DayOfYear - 1));
    }

    private static int ColdestMonth(Place place) => Enumerable.Range(0, Place.MonthCount).MinBy(m => place.Months[m].MeanC);

    private static Weather ColdSpell(YearPlan plan, int days, DateTime startUtc)
    {
        Place place = plan.Place;
        int month = ColdestMonth(place);
        double rangeK = plan.RangeK[month], dayC = place.Design.TemperatureC - rangeK * DailyCycle.LowestFactor;
        double vapourPa = Math.Min(place.Months[month].VapourPressurePa, ColdSpellHumidityFraction * SaturationPressure.OverWaterPa(place.Design.TemperatureC));
        Weather frame = plan.Framed(WeatherKind.ColdSpell, new double[24 * days], [.. Enumerable.Repeat(vapourPa, 24 * days)]) with
        {
            StartUtc = startUtc,
        };
        double[] air = new double[24 * days], beam = new double[24 * days], diffuse = new double[24 * days], global = new double[24 * days], sky = new double[24 * days];
        for (int i = 0; i < air.Length; i++)
        {
            DateTime middle = frame.MiddleUtc(i);
            SunPosition sun = SunPosition.At(place.LatitudeDeg, place.LongitudeDeg, middle);
            air[i] = dayC + rangeK * DailyCycle.Factor(12 + sun.HourAngleDeg / 15);
            beam[i] = ClearSky.BeamNormalWPerM2(sun.ElevationDeg, middle.DayOfYear);
            diffuse[i] = ClearSky.DiffuseWPerM2(sun.ElevationDeg, middle.DayOfYear);
            global[i] = beam[i] * Math.Max(0, Math.Sin(sun.ElevationDeg * Math.PI / 180)) + diffuse[i];
            sky[i] = SkyTemperature.OfC(air[i], vapourPa, 0);
        }
        return frame with
        {
            AirC = air,
            WindMPerS = [.. Enumerable.Repeat(NightConditions.UsualWindMPerS, air.Length)],
            GlobalWPerM2 = global,
            BeamNormalWPerM2 = beam,
            DiffuseWPerM2 = diffuse,
            SkyC = sky,
        };
    }
}
