using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>The layout of the European photovoltaic service: lines on the place, a table in universal time, a legend.</summary>
/// <remarks>
/// Every value is that of an instant. A step is put about its stamp, so air is exact in its middle; the sun belongs to an instant later by the offset the
/// file states, mostly some ten minutes, and is taken as the mean of the step. Source: PVGIS.
/// </remarks>
internal static class EuropeanLayout
{
    internal const string TimeColumn = "time(UTC)";

    private static readonly (string Key, NumberRange Range)[] Facts =
    [
        ("Latitude (decimal degrees)", SiteRanges.Latitude), ("Longitude (decimal degrees)", SiteRanges.Longitude), ("Elevation (m)", SiteRanges.Altitude),
        ("Irradiance Time Offset (h)", new(-0.5, 0.5, "h", "0.1761", "give hours, at most half a step")),
    ];

    /// <summary>Reads everything; the offset of the sun, h, goes to <paramref name="sunShiftH"/>.</summary>
    internal static WeatherSite? Read(CsvLines lines, int lastRowLine, WeatherRows rows, RunningYear years, ProblemList problems, out double sunShiftH)
    {
        double?[] facts = new double?[Facts.Length];
        bool[] isThere = new bool[Facts.Length];
        while (lines.Next() && lines.Text(0) != TimeColumn) Fact(lines, facts, isThere, problems);
        for (int i = 0; i < Facts.Length - 1; i++)
            if (!isThere[i]) problems.Add(1, 1, SiteRanges.NameOf(Facts[i].Range), $"is missing; write a line '{Facts[i].Key}: {Facts[i].Range.Example}' above the table.");
        rows.Heading(lines, WeatherColumn.European);
        rows.Need("table", ["T2m"], ["RH"], ["WS10m"]);
        while (lines.Next() && lines.Line <= lastRowLine)
        {
            if (!rows.IsWhole(lines)) continue;
            if (Stamp(lines, rows) is { } stamp && years.Of(stamp) is { } running) rows.Add(lines, running);
        }
        sunShiftH = facts[3] ?? 0;
        return facts is [{ } latitude, { } longitude, { } altitude, ..] ? new()
        {
            Name = FormattableString.Invariant($"{Math.Abs(latitude):0.00} {(latitude < 0 ? 'S' : 'N')} {Math.Abs(longitude):0.00} {(longitude < 0 ? 'W' : 'E')}"),
            LatitudeDeg = latitude,
            LongitudeDeg = longitude,
            AltitudeM = altitude,
            UtcOffsetH = Math.Round(longitude / 15),
            ClockAheadH = 0,
            Kind = WeatherKind.TypicalYear,
            Source = "typical year of PVGIS (c) European Union; free use, with credit",
            StampFraction = 0.5,
        } : null;
    }

    private static void Fact(CsvLines lines, double?[] facts, bool[] isThere, ProblemList problems)
    {
        string whole = lines.Whole;
        for (int i = 0; i < Facts.Length; i++)
        {
            if (!whole.StartsWith(Facts[i].Key, StringComparison.Ordinal)) continue;
            isThere[i] = true;
            string rest = whole[Facts[i].Key.Length..].TrimStart(':', ' ', '\t');
            facts[i] = problems.Number(rest.Trim(), lines.Line, whole.Length - rest.Length + 1, SiteRanges.NameOf(Facts[i].Range), Facts[i].Range);
        }
    }

    private static DateTime? Stamp(CsvLines lines, WeatherRows rows)
    {
        int year = lines.Digits(0, 0, 4), month = lines.Digits(0, 4, 2), day = lines.Digits(0, 6, 2), hour = lines.Digits(0, 9, 2), minute = lines.Digits(0, 11, 2);
        if (lines.Length(0) == 13 && lines.Letter(0, 8) == ':' && year is >= 1900 and <= 2100 && month is >= 1 and <= 12 && day >= 1
            && day <= DateTime.DaysInMonth(year, month) && hour is >= 0 and < 24 && minute is >= 0 and < 60) return new(year, month, day, hour, minute, 0);
        rows.WrongStamp(lines, 0, TimeColumn, "year, month, day, a colon, hour and minute, such as 20180131:0500");
        return null;
    }
}
