using Thermal.Air;

namespace Thermal.Climates;

/// <summary>The twelve months of a place from its hours.</summary>
public static class PlaceNormals
{
    /// <summary>Days of each month that must be whole. Limit chosen by us.</summary>
    public const int LeastDayCount = 20;

    /// <summary>Monthly means of everything, of the daily lowest and highest, and the spread of day means.</summary>
    /// <param name="weather">At least a year, or most of every month; several years count together.</param>
    /// <returns>January first. Sun is null where the weather has none.</returns>
    /// <exception cref="ArgumentException">A month has fewer than 20 whole days.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mean lies outside the range of <see cref="MonthNormals"/>.</exception>
    /// <remarks>
    /// Days and months are those of local standard time, by the middle of each step. Lowest, highest and spread are of whole days alone, the spread as a standard deviation
    /// of a sample; that of a single year. One year is no thirty-year normal.
    /// </remarks>
    public static IReadOnlyList<MonthNormals> Of(Weather weather)
    {
        int ofDay = (int)Math.Round(86_400 / weather.StepS);
        Month[] months = [.. Enumerable.Range(0, Place.MonthCount).Select(_ => new Month())];
        for (int from = 0, to; from < weather.Count; from = to)
        {
            DateTime date = weather.MiddleLocal(from).Date;
            for (to = from + 1; to < weather.Count && weather.MiddleLocal(to).Date == date;) to++;
            months[date.Month - 1].Add(weather, from, to, to - from == ofDay);
        }
        int poor = Array.FindIndex(months, month => month.DayCount < LeastDayCount);
        if (poor >= 0) throw new ArgumentException($"{weather.Name} has {months[poor].DayCount} whole days of month {poor + 1}: {LeastDayCount} are needed for its mean.", nameof(weather));
        return [.. months.Select(month => month.Normals(weather.GlobalWPerM2 is not null))];
    }

    /// <summary>Sums over a month.</summary>
    private sealed class Month
    {
        private readonly List<double> dayMeans = [];
        private double air, vapour, humidity, wind, global, lowest, highest;
        private int count;

        internal int DayCount => dayMeans.Count;

        internal void Add(Weather weather, int from, int to, bool isWhole)
        {
            (double sum, double least, double most) = (0, double.PositiveInfinity, double.NegativeInfinity);
            for (int i = from; i < to; i++)
            {
                double airC = weather.AirC[i];
                (sum, least, most) = (sum + airC, Math.Min(least, airC), Math.Max(most, airC));
                vapour += weather.VapourPa[i];
                humidity += weather.VapourPa[i] / SaturationPressure.OverWaterPa(airC);
                wind += weather.WindMPerS[i];
                global += weather.GlobalWPerM2?[i] ?? 0;
            }
            air += sum;
            count += to - from;
            if (!isWhole) return;
            dayMeans.Add(sum / (to - from));
            lowest += least;
            highest += most;
        }

        internal MonthNormals Normals(bool hasSun)
        {
            double mean = dayMeans.Average();
            return new()
            {
                MeanC = air / count,
                MinC = lowest / DayCount,
                MaxC = highest / DayCount,
                RelativeHumidityFraction = humidity / count,
                MeasuredVapourPressurePa = vapour / count,
                WindMPerS = wind / count,
                GlobalIrradianceWPerM2 = hasSun ? global / count : null,
                DayMeanSdK = Math.Sqrt(dayMeans.Sum(day => (day - mean) * (day - mean)) / (DayCount - 1)),
            };
        }
    }
}
