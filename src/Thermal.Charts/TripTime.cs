using System.Globalization;
using Thermal.Trips;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The lower axis of a trip: hours from its start, ticks that fit, nights, legs; days in place of hours where it is long.</summary>
internal sealed class TripTime
{
    // A fortnight still shows its hours; beyond it a day is a point.
    private const int MostDaysByHour = 15, HoursOfTwoDays = 60;
    private const double Dark = 1;

    private readonly Trip trip;
    private readonly TripHours hours;

    internal TripTime(TripResult found)
    {
        (trip, hours) = (found.Asked.Trip, found.Hours);
        ArgumentOutOfRangeException.ThrowIfLessThan(hours.Count, 1, "hours of the trip");
        IsByDay = hours.Count > MostDaysByHour * 24;
        Days = [.. Enumerable.Range(0, hours.Count).GroupBy(i => hours.StartLocal.AddHours(i).Date).Select(day => (day.First(), day.Last() + 1))];
    }

    /// <summary>True where a day is a point.</summary>
    internal bool IsByDay { get; }

    /// <summary>First hour of each day and the hour after its last.</summary>
    internal IReadOnlyList<(int From, int To)> Days { get; }

    internal int HoursCount => hours.Count;

    /// <summary>What a long trip's points are, to stand behind the title of an axis.</summary>
    internal string Means => IsByDay ? "; means of days" : "";

    /// <summary>Points of the axis as spans of hours.</summary>
    internal IReadOnlyList<(int From, int To)> Spans => IsByDay ? Days : [.. Enumerable.Range(0, hours.Count).Select(i => (i, i + 1))];

    /// <summary>The axis for a plot of that width.</summary>
    internal AxisScale AxisFor(float widthPx) => AxisScale.Bare("", 0, hours.Count) with { Ticks = [.. hours.Count <= HoursOfTwoDays ? Clock(widthPx) : ByDays(widthPx)] };

    /// <summary>Spans of darkness, hours; none where the weather knows no sun or the trip is long.</summary>
    internal IEnumerable<(int From, int To)> Nights()
    {
        if (IsByDay || !hours.SunOnFlatWPerM2.Any(sun => sun >= Dark))
            yield break;
        for (int i = 0; i < hours.Count;)
        {
            int next = i + 1;
            bool dark = hours.SunOnFlatWPerM2[i] < Dark;
            while (next < hours.Count && hours.SunOnFlatWPerM2[next] < Dark == dark)
                next++;
            if (dark)
                yield return (i, next);
            i = next;
        }
    }

    /// <summary>Legs with their begin and end, hours from the start.</summary>
    internal IEnumerable<(string Name, double From, double To)> Legs() => trip.Legs.Select(leg =>
        (leg.Name, (leg.StartLocal - hours.StartLocal).TotalHours, Math.Min(hours.Count, (leg.EndLocal - hours.StartLocal).TotalHours)));

    private IEnumerable<(double At, string Label)> Clock(float widthPx)
    {
        int[] steps = [1, 2, 3, 6, 12, 24];
        int step = steps.First(each => each == 24 || each * widthPx / hours.Count >= 44);
        DateTime first = hours.StartLocal;
        // The clock of the begin may lie off the round hours.
        for (DateTime at = first.Date; at <= first.AddHours(hours.Count); at = at.AddHours(step))
            if (at >= first)
                yield return ((at - first).TotalHours, at.ToString("HH:mm", CultureInfo.InvariantCulture));
    }

    private IEnumerable<(double At, string Label)> ByDays(float widthPx)
    {
        float dayPx = widthPx * 24 / hours.Count;
        if (dayPx * 30 < 120)
            return Months(dayPx);
        string format = dayPx >= 70 ? "ddd d MMM" : dayPx >= 44 ? "ddd d" : "d MMM";
        int[] steps = [1, 2, 3, 7, 14];
        int step = dayPx >= 44 ? 1 : steps.First(each => each == 14 || each * dayPx >= 52);
        return Days.Where((_, i) => i % step == 0).Where(day => step > 1 || day.To - day.From >= 12)
            .Select(day => (Middle(day), Label: hours.StartLocal.AddHours(day.From).ToString(format, CultureInfo.InvariantCulture)))
            .Where(tick => tick.Item1 * widthPx / hours.Count + 18 < widthPx);
    }

    private IEnumerable<(double At, string Label)> Months(float dayPx) => Days.GroupBy(day => hours.StartLocal.AddHours(day.From).Month)
        .Where(month => month.Count() * dayPx >= 27)
        .Select(month => ((month.First().From + month.Last().To) / 2.0, Grammar.ShortMonth(month.Key)));

    private static double Middle((int From, int To) day) => (day.From + day.To) / 2.0;
}
