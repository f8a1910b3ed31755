using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>Reads hourly weather in three layouts, known by what stands in the file, and writes it in our own columns.</summary>
/// <remarks>The layout of our own columns is described in climates/README.md.</remarks>
public static class WeatherFile
{
    /// <summary>Longest text taken, characters: a year of minutes with every column fits. Limit chosen by us.</summary>
    public const int LongestCharacterCount = 64_000_000;

    /// <summary>Most problems named; what is beyond is counted. Limit chosen by us.</summary>
    public const int MostProblemCount = 50;

    // Letters at the beginning within which a layout shows itself.
    private const int BeginningCount = 20_000;

    /// <summary>The weather in <paramref name="text"/>, or every problem found in it.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="fileName">What to call it in problems.</param>
    /// <returns>Weather with its layout and remarks and no problem, or none and the problems in the order of their lines. Never throws for any text.</returns>
    public static Reading<WeatherReading> Read(string text, string fileName)
    {
        ProblemList problems = new(fileName, MostProblemCount);
        if (IsNoText(text, problems) || LayoutOf(text, problems) is not { } layout) return new(null, problems.InOrder());
        WeatherRows rows = new(problems);
        RunningYear years = new();
        List<WeatherRemark> remarks = [];
        WeatherSite? site = SiteAndRows(text, layout, rows, years, remarks, problems);
        EvenSteps? steps = rows.StampsAreRight && rows.Stamps.Count > 0 ? EvenSteps.Of(rows, problems) : NoRows(rows, problems);
        if (site is null || steps is null || !problems.IsEmpty) return new(null, problems.InOrder());
        if (years.YearCount > 1) remarks.Add(new(WeatherRemarkKind.YearsJoined) { StepCount = years.YearCount });
        if (years.LeapRowCount > 0) remarks.Add(new(WeatherRemarkKind.LeapDayLeftOut) { StepCount = years.LeapRowCount });
        Weather? weather = FilledSteps.Of(rows, steps, problems) is { } filled ? WeatherOfSteps.Of(filled, site, rows, remarks, problems) : null;
        return weather is not null && problems.IsEmpty ? new(new(weather, layout, remarks), []) : new(null, problems.InOrder());
    }

    /// <summary>Weather as text in our own columns; reading it gives the same to the digits written.</summary>
    /// <param name="weather">Weather of at least two steps.</param>
    /// <remarks>Temperatures to 0.01 K, vapour to 0.01 Pa and never above saturation, wind to 0.01 m/s, light to 0.1 W/m², air pressure to 1 Pa.</remarks>
    public static string Write(Weather weather) => OwnText.Of(weather);

    private static EvenSteps? NoRows(WeatherRows rows, ProblemList problems)
    {
        if (rows.StampsAreRight && rows.HeadingLine > 0) problems.Add(rows.HeadingLine, 1, "table", $"has no rows; write one row a step below the column names.");
        else if (problems.IsEmpty) problems.Add(1, 1, "file", $"has no table; write a line of column names and one row a step.");
        return null;
    }

    private static WeatherSite? SiteAndRows(string text, WeatherLayout layout, WeatherRows rows, RunningYear years, List<WeatherRemark> remarks, ProblemList problems)
    {
        using CsvLines lines = new(text.TrimStart('\uFEFF'));
        if (layout == WeatherLayout.OwnColumns) return OwnLayout.Read(lines, rows, problems);
        if (layout == WeatherLayout.Tmy3)
        {
            remarks.Add(new(WeatherRemarkKind.MovedToMiddle) { ShiftH = 0.5 });
            return Tmy3Layout.Read(lines, rows, years, problems);
        }
        WeatherSite? site = EuropeanLayout.Read(lines, LastLineOfDigits(text), rows, years, problems, out double sunShiftH);
        remarks.Add(new(WeatherRemarkKind.OffsetFromLongitude) { ShiftH = site?.UtcOffsetH ?? 0 });
        if (sunShiftH != 0) remarks.Add(new(WeatherRemarkKind.SunIsLater) { ShiftH = sunShiftH });
        return site;
    }

    private static bool IsNoText(string text, ProblemList problems)
    {
        if (text.Length > LongestCharacterCount)
            problems.Add(1, 1, "file", $"holds {text.Length} characters; keep it under {LongestCharacterCount}, such as a year of minutes.");
        else if (string.IsNullOrWhiteSpace(text))
            problems.Add(1, 1, "file", $"is empty; write header lines, column names and rows, as climates/README.md shows.");
        else if (text.Contains('\0', StringComparison.Ordinal))
            problems.Add(1, 1, "file", $"is not a text file; save the table as plain text with commas (CSV, UTF-8).");
        return !problems.IsEmpty;
    }

    private static WeatherLayout? LayoutOf(string text, ProblemList problems)
    {
        string beginning = text.Length > BeginningCount ? text[..BeginningCount] : text;
        if (beginning.Contains(Tmy3Layout.DateColumn, StringComparison.Ordinal)) return WeatherLayout.Tmy3;
        if (beginning.Contains(EuropeanLayout.TimeColumn + ",", StringComparison.Ordinal)) return WeatherLayout.EuropeanService;
        if (beginning.TrimStart('\uFEFF').TrimStart().StartsWith('#')
            || WeatherColumn.Own.Any(column => beginning.Contains(column.Name, StringComparison.Ordinal))) return WeatherLayout.OwnColumns;
        problems.Add(1, 1, "file", $"has none of the three layouts known: our own columns ('# name: …' lines at the top, then 'time,air_c,…'; climates/README.md describes them), TMY3 (second line '{Tmy3Layout.DateColumn},{Tmy3Layout.TimeColumn},…'), the European photovoltaic service (a line '{EuropeanLayout.TimeColumn},T2m,RH,…'). Copy the columns into our own.");
        return null;
    }

    /// <summary>The legend below a table begins no line with a digit.</summary>
    private static int LastLineOfDigits(string text)
    {
        ReadOnlySpan<char> rest = text.AsSpan().TrimStart('\uFEFF');
        int line = 1, last = 0;
        while (!rest.IsEmpty)
        {
            if (char.IsAsciiDigit(rest[0])) last = line;
            int end = rest.IndexOfAny('\r', '\n');
            if (end < 0) break;
            rest = rest[(end + (rest[end] == '\r' && end + 1 < rest.Length && rest[end + 1] == '\n' ? 2 : 1))..];
            line++;
        }
        return last;
    }
}
