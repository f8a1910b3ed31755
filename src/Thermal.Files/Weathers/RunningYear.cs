namespace Thermal.Files.Weathers;

/// <summary>Puts dates of months from different years into one year that runs on.</summary>
internal sealed class RunningYear
{
    /// <summary>The year a typical year is put into. Source: OURS; not a leap year.</summary>
    internal const int UsualYear = 2025;

    private readonly HashSet<int> years = [];
    private int year = UsualYear, lastMonth;

    internal int YearCount => years.Count;

    /// <summary>Rows of 29 February, which are left out.</summary>
    internal int LeapRowCount { get; private set; }

    /// <summary>The same month and day in the running year; null on 29 February.</summary>
    internal DateTime? Of(DateTime date)
    {
        if (date is { Month: 2, Day: 29 })
        {
            LeapRowCount++;
            return null;
        }
        years.Add(date.Year);
        if (lastMonth == 12 && date.Month == 1) year++;
        lastMonth = date.Month;
        return new DateTime(year, date.Month, date.Day).Add(date.TimeOfDay);
    }
}
