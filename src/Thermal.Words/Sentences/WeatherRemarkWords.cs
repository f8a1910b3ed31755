using System.Globalization;
using Thermal.Climates;

namespace Thermal.Words.Sentences;

/// <summary>What was found in a file of weather and what was done to it, in sentences.</summary>
public static class WeatherRemarkWords
{
    /// <summary>What replaces the months of weather that does not cover a year.</summary>
    public const string NoYear = "The hours do not cover twenty whole days of every month, so they make no months, no sun by month and no place.";

    /// <summary>How long and how fine: "8760 steps of 1.0 h, 1 January 2025 to 31 December 2025".</summary>
    /// <param name="weather">The weather.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Period(Weather weather, Figures figures)
    {
        string step = weather.StepS < 3600 ? figures.Write(Shown.Minutes, weather.StepS) : figures.Write(Shown.Hours, weather.StepS);
        return $"{weather.Count.ToString(CultureInfo.InvariantCulture)} steps of {step}, {Day(weather.MiddleLocal(0))} to {Day(weather.MiddleLocal(weather.Count - 1))}, {WeatherWords.Of(weather.Kind)}";
    }

    /// <summary>Everything done on reading, one sentence each.</summary>
    /// <param name="remarks">The remarks of the reading.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<string> All(IReadOnlyList<WeatherRemark> remarks, Figures figures) =>
        remarks.Count == 0 ? ["Nothing was filled, moved or estimated."] : [.. remarks.Select(remark => Of(remark, figures))];

    /// <summary>One thing done on reading.</summary>
    /// <param name="remark">The remark.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(WeatherRemark remark, Figures figures)
    {
        string columns = remark.Columns.Count > 0 ? Grammar.List(remark.Columns) : "", steps = Steps(remark.StepCount);
        string when = remark is { FromLocal: { } from, ToLocal: { } to } ? $" from {Time(from)} to {Time(to)}" : "";
        return remark.Kind switch
        {
            WeatherRemarkKind.GapFilled => $"A gap{when}, {steps}{(columns.Length > 0 ? $" of {columns}" : "")}, was filled with straight lines between its neighbours.",
            WeatherRemarkKind.MovedToMiddle => $"{(columns.Length > 0 ? Grammar.Capital(columns) : "What")} is stated for the end of a step {(remark.Columns.Count > 1 ? "were" : "was")} moved by {figures.Hours(remark.ShiftH)} to its middle.",
            WeatherRemarkKind.YearsJoined => $"Months of {remark.StepCount.ToString(CultureInfo.InvariantCulture)} different years were put into one running year.",
            WeatherRemarkKind.LeapDayLeftOut => $"29 February was left out ({steps}).",
            WeatherRemarkKind.OffsetFromLongitude => $"The file tells universal time; local standard time is taken by its longitude as {figures.Signed(Shown.Hours, remark.ShiftH * 3600)}.",
            WeatherRemarkKind.SunIsLater => $"Sun belongs to an instant {figures.Hours(remark.ShiftH)} after the middle of its step.",
            WeatherRemarkKind.SunBelowZero => $"Sun slightly below 0, as sensors show at night, was taken as 0 ({steps}).",
            WeatherRemarkKind.SunSplit => "Beam and sky light were estimated from the light on the flat.",
            WeatherRemarkKind.SunCompleted => "One of flat, beam and sky light follows from the other two.",
            WeatherRemarkKind.SunMissing => "There is no sun in the file: nothing is said of sun on the vehicle.",
            WeatherRemarkKind.HumidityCapped => $"Humidity above saturation was taken as saturation ({steps}).",
            WeatherRemarkKind.SkyComputed => "The sky's temperature is computed, not measured.",
            WeatherRemarkKind.SkyMissing => "There is no sky temperature, and no sun to compute it from.",
            _ => throw new ArgumentOutOfRangeException(nameof(remark), remark.Kind, "There is no sentence for this value."),
        };
    }

    /// <summary>What design conditions of these hours are worth.</summary>
    /// <param name="found">The conditions.</param>
    /// <param name="weather">The weather they were found in.</param>
    public static IReadOnlyList<string> OfConditions(DesignConditions found, Weather weather)
    {
        List<string> said = [$"The coldest three days lie about {Day(found.ColdestThreeDaysUtc.AddHours(weather.UtcOffsetH))}."];
        if (found.YearsRatio < PlaceOfWeather.LeastYearsRatio)
            said.Add("This is less than a year: the percentiles are those of these hours, not of the place.");
        else if (weather.Kind == WeatherKind.TypicalYear)
            said.Add("A typical year is ordinary by design: the coldest nights of a long record are colder.");
        else if (found.YearsRatio < 10)
            said.Add("A few years do not hold the coldest winter: design temperatures want ten years and more.");
        return said;
    }

    private static string Steps(int count) => count == 1 ? "one step" : $"{count.ToString(CultureInfo.InvariantCulture)} steps";

    private static string Day(DateTime time) => $"{time.Day} {Grammar.Month(time.Month)} {time.Year.ToString(CultureInfo.InvariantCulture)}";

    private static string Time(DateTime time) => $"{Day(time)} {time.ToString("HH:mm", CultureInfo.InvariantCulture)}";
}
