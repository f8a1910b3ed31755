using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>The equal steps that the times of the rows stand on.</summary>
/// <param name="First">Stamp of the first step.</param>
/// <param name="Step">Length of a step.</param>
/// <param name="Count">Number of steps from the first row to the last, missing ones included.</param>
/// <param name="Positions">Step of each row.</param>
internal sealed record EvenSteps(DateTime First, TimeSpan Step, int Count, int[] Positions)
{
    /// <summary>Longest gap that is filled. Source: OURS.</summary>
    internal static readonly TimeSpan LongestGap = TimeSpan.FromHours(6);

    // Clocks of loggers wander by seconds. Source: OURS.
    private const double LooseFraction = 0.02;

    /// <summary>Finds them; null, with the problems named, where rows stand double, in wrong order, off the steps or too far apart.</summary>
    internal static EvenSteps? Of(WeatherRows rows, ProblemList problems)
    {
        List<DateTime> stamps = rows.Stamps;
        if (Middle(stamps) is not { } step)
        {
            problems.Add(rows.HeadingLine, 1, "table", $"has {stamps.Count} rows with times of their own; at least two are needed.");
            return null;
        }
        if (step.TotalSeconds < Weather.ShortestStepS || step.TotalSeconds > Weather.LongestStepS)
        {
            problems.Add(rows.Lines[0], 1, "time", $"goes in steps of {step.TotalSeconds} s; steps from a minute to three hours are taken: average shorter ones, and give longer ones as monthly normals of a place.");
            return null;
        }
        int[] positions = new int[stamps.Count];
        bool isEven = true;
        for (int i = 1, before = 0; i < stamps.Count; i++)
        {
            double at = (stamps[i] - stamps[0]) / step;
            bool isRight = IsRight(rows, i, before, at, step, problems);
            isEven &= isRight;
            if (!isRight && at <= positions[before]) continue;
            positions[i] = (int)Math.Min(Math.Round(at), int.MaxValue);
            before = i;
        }
        return isEven ? new(stamps[0], step, positions[^1] + 1, positions) : null;
    }

    private static bool IsRight(WeatherRows rows, int i, int before, double at, TimeSpan step, ProblemList problems)
    {
        DateTime now = rows.Stamps[i], last = rows.Stamps[before];
        int line = rows.Lines[i];
        if (now == last)
            problems.Add(line, 1, "time", $"{now:yyyy-MM-dd HH:mm} stands twice, first in line {rows.Lines[before]}; keep one of them, and write standard time all year, without summer time.");
        else if (now < last)
            problems.Add(line, 1, "time", $"{now:yyyy-MM-dd HH:mm} stands after {last:yyyy-MM-dd HH:mm}; put the rows in the order of time, and months of different years into one running year.");
        else if (Math.Abs(at - Math.Round(at)) > LooseFraction)
            problems.Add(line, 1, "time", $"{now:yyyy-MM-dd HH:mm:ss} does not stand on the steps of {step.TotalMinutes:0.###} min that begin at {rows.Stamps[0]:yyyy-MM-dd HH:mm:ss}; give equal steps.");
        else if (now - last - step > LongestGap)
            problems.Add(line, 1, "time", $"lacks the steps from {last + step:yyyy-MM-dd HH:mm} to {now - step:yyyy-MM-dd HH:mm}; gaps of more than {LongestGap.TotalHours} h are not filled: add the rows, or keep one side of the gap.");
        else
            return true;
        return false;
    }

    /// <summary>The middle of all forward steps; null where there is none.</summary>
    private static TimeSpan? Middle(List<DateTime> stamps)
    {
        List<long> ticks = [];
        for (int i = 1; i < stamps.Count; i++)
            if (stamps[i] > stamps[i - 1]) ticks.Add((stamps[i] - stamps[i - 1]).Ticks);
        if (ticks.Count == 0) return null;
        ticks.Sort();
        return TimeSpan.FromTicks(ticks[(ticks.Count - 1) / 2]);
    }
}
