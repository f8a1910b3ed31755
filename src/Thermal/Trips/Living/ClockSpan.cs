namespace Thermal.Trips.Living;

/// <summary>A span of the clock from one hour of the day to another, over midnight where the second is smaller; equal hours are no time.</summary>
/// <param name="FromH">Begin, clock hour, 0 to 24.</param>
/// <param name="ToH">End, clock hour, 0 to 24.</param>
internal readonly record struct ClockSpan(double FromH, double ToH)
{
    private const double DayH = 24;

    /// <summary>A span that begins at an hour and lasts less than a day.</summary>
    internal static ClockSpan Lasting(double fromH, double hours) => new(fromH % DayH, (fromH + hours) % DayH);

    /// <summary>Length, h.</summary>
    internal double Hours => ToH >= FromH ? ToH - FromH : ToH + DayH - FromH;

    /// <summary>True at this hour; the end no longer counts.</summary>
    internal bool Holds(double clockH) => ToH >= FromH ? clockH >= FromH && clockH < ToH : clockH >= FromH || clockH < ToH;

    /// <summary>Hours that a stretch of time shares with it.</summary>
    /// <param name="clockH">Begin of the stretch, clock hour, 0 to 24.</param>
    /// <param name="hours">Its length, h, up to 24.</param>
    internal double SharedH(double clockH, double hours)
    {
        double sharedH = 0, lasts = Hours;
        for (int day = -1; day <= 1; day++)
        {
            double from = FromH + day * DayH;
            sharedH += Math.Max(0, Math.Min(clockH + hours, from + lasts) - Math.Max(clockH, from));
        }
        return sharedH;
    }
}
