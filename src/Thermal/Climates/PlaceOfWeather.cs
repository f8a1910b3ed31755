using System.Globalization;

namespace Thermal.Climates;

/// <summary>A place made from hours that cover its year.</summary>
public static class PlaceOfWeather
{
    /// <summary>Least share of a year for percentiles that stand for a place. Limit chosen by us: nine days may be missing.</summary>
    public const double LeastYearsRatio = 0.975;

    /// <summary>True where months and percentiles of a year can be found: most of a year, and twenty whole days of every month.</summary>
    /// <param name="weather">Weather of any length.</param>
    public static bool Covers(Weather weather)
    {
        if (weather.Count * weather.StepS < LeastYearsRatio * 365 * 86_400) return false;
        int ofDay = (int)Math.Round(86_400 / weather.StepS);
        return Enumerable.Range(0, weather.Count).GroupBy(step => weather.MiddleLocal(step).Date).Where(day => day.Count() == ofDay)
            .GroupBy(day => day.Key.Month).Count(month => month.Count() >= PlaceNormals.LeastDayCount) == Place.MonthCount;
    }

    /// <summary>The place with its monthly means and its design temperatures.</summary>
    /// <param name="weather">Weather for which <see cref="Covers"/> is true.</param>
    /// <exception cref="ArgumentException">It is not.</exception>
    /// <remarks>The country is not in weather and has to be filled in by hand. One year's extremes are those of that year.</remarks>
    public static Place Of(Weather weather)
    {
        if (!Covers(weather)) throw new ArgumentException($"{weather.Name} does not cover twenty whole days of every month of a year.", nameof(weather));
        DesignConditions found = DesignConditions.Of(weather);
        string count = found.YearsRatio.ToString("F1", CultureInfo.InvariantCulture), years = count == "1.0" ? "from one year of hours only: the coldest night of a long record is lower" : $"from {count} years of hours";
        DesignTemperature Design(DesignMeasure measure, double temperatureC, string what) => new() { Measure = measure, TemperatureC = temperatureC, Kind = DesignKind.Computed, PlusMinusK = 0, Note = what + years };
        return new()
        {
            Name = weather.Name,
            Country = "not stated",
            LatitudeDeg = weather.LatitudeDeg,
            LongitudeDeg = weather.LongitudeDeg,
            AltitudeM = weather.AltitudeM,
            Months = PlaceNormals.Of(weather),
            Design = Design(DesignMeasure.HoursAt996, found.HoursAt996C, ""),
            OtherDesigns =
            [
                Design(DesignMeasure.HoursAt99, found.HoursAt99C, ""),
                Design(DesignMeasure.TwoDayMean, found.ColdestTwoDaysC, "coldest mean of 48 h, "),
                Design(DesignMeasure.YearlyLowest, found.ColdestC, "coldest step of all, "),
            ],
            Source = weather.Source,
            Period = string.Create(CultureInfo.InvariantCulture, $"{weather.MiddleLocal(0):yyyy-MM} to {weather.MiddleLocal(weather.Count - 1):yyyy-MM}, {(weather.Kind == WeatherKind.TypicalYear ? "a typical year" : "hours")}"),
            Licence = "as the source states",
        };
    }
}
