using Thermal.Numerics;

namespace Thermal.Climates;

/// <summary>Air temperatures of a generated year.</summary>
internal static class YearAir
{
    private const int Rounds = 30;
    /// <summary>How far a clear or a dull day may widen or narrow the daily cycle. Source: OURS.</summary>
    private const double LeastSwing = 0.4, MostSwing = 1.6;

    // What the line from noon to noon keeps of a day's own mean, and takes of each neighbour's: its hours are a quarter of a day from noon on average.
    private const double OwnShare = 0.75, NeighbourShare = 0.125;

    /// <summary>Means at noon: a smooth year with exact monthly means, and departures that fade from day to day, wide enough that the days' hours have the month's spread.</summary>
    internal static double[] DayMeansC(YearPlan plan, RandomStream random)
    {
        double[] days = SmoothC(plan), departures = new double[YearPlan.DayCount];
        random.FillChain(departures, GeneratedWeather.DayToDayFactor);
        for (int m = 0; m < Place.MonthCount; m++)
        {
            int first = plan.FirstDay(m), count = YearPlan.DaysIn(m);
            double mean = 0, square = 0;
            for (int day = first; day < first + count; day++) mean += OfHours(departures, day) / count;
            for (int day = first; day < first + count; day++) square += Math.Pow(OfHours(departures, day) - mean, 2) / (count - 1);
            double factor = plan.SpreadK[m] / Math.Sqrt(square);
            for (int day = first; day < first + count; day++) days[day] += (departures[day] - mean) * factor;
        }
        return days;
    }

    /// <summary>Mean of a day's hours on the line through the noons.</summary>
    private static double OfHours(double[] noons, int day) =>
        OwnShare * noons[day] + NeighbourShare * (noons[(day + YearPlan.DayCount - 1) % YearPlan.DayCount] + noons[(day + 1) % YearPlan.DayCount]);

    /// <summary>Hours: the line through the day means, and the daily cycle, wider on clear days.</summary>
    internal static double[] HoursC(YearPlan plan, double[] dayMeansC, double[] dayRatios)
    {
        double[] swings = SwingsK(plan, dayRatios);
        double[] hours = new double[YearPlan.HourCount], shift = new double[Place.MonthCount];
        // Solar time of a generated year needs no equation of time: its normals are means over many years.
        double solarAheadH = plan.Place.LongitudeDeg / 15 - plan.UtcOffsetH;
        Span<double> cycle = stackalloc double[24];
        for (int h = 0; h < 24; h++) cycle[h] = DailyCycle.Factor(h + 0.5 + solarAheadH);
        for (int hour = 0; hour < hours.Length; hour++)
        {
            int day = hour / 24, month = plan.MonthOf(hour);
            double at = (hour % 24 + 0.5) / 24 - 0.5;
            int other = (day + (at < 0 ? YearPlan.DayCount - 1 : 1)) % YearPlan.DayCount;
            hours[hour] = dayMeansC[day] + Math.Abs(at) * (dayMeansC[other] - dayMeansC[day]) + swings[day] * cycle[hour % 24];
            shift[month] += (plan.Place.Months[month].MeanC - hours[hour]) / (24 * YearPlan.DaysIn(month));
        }
        // The line through the means takes a little from month to month, and a cycle off solar hours leaves a rest: each month gets it back.
        for (int hour = 0; hour < hours.Length; hour++) hours[hour] += shift[plan.MonthOf(hour)];
        return hours;
    }

    /// <summary>Range of each day: the month's, by the day's clearness against the month's mean; the month's itself where there is no sun.</summary>
    private static double[] SwingsK(YearPlan plan, double[] dayRatios)
    {
        double[] swings = new double[YearPlan.DayCount];
        for (int m = 0; m < Place.MonthCount; m++)
        {
            int first = plan.FirstDay(m), count = YearPlan.DaysIn(m);
            double mean = 0;
            for (int day = first; day < first + count; day++) mean += dayRatios[day] / count;
            for (int day = first; day < first + count; day++)
                swings[day] = plan.RangeK[m] * (mean > 0 ? Math.Clamp(dayRatios[day] / mean, LeastSwing, MostSwing) : 1);
        }
        return swings;
    }

    private static double[] SmoothC(YearPlan plan)
    {
        double[] nodes = [.. plan.Place.Months.Select(month => month.MeanC)], days = new double[YearPlan.DayCount];
        for (int round = 0; ; round++)
        {
            double[] rest = [.. plan.Place.Months.Select(month => month.MeanC)];
            for (int day = 0; day < days.Length; day++)
            {
                int m = plan.MonthOfDay(day);
                double from = plan.FirstDay(m) + YearPlan.DaysIn(m) / 2.0, at = day + 0.5 - from;
                int other = (m + (at < 0 ? Place.MonthCount - 1 : 1)) % Place.MonthCount;
                double apart = (YearPlan.DaysIn(m) + YearPlan.DaysIn(other)) / 2.0;
                days[day] = nodes[m] + Math.Abs(at) / apart * (nodes[other] - nodes[m]);
                rest[m] -= days[day] / YearPlan.DaysIn(m);
            }
            if (round == Rounds) return days;
            for (int m = 0; m < nodes.Length; m++) nodes[m] += rest[m];
        }
    }
}
