using System.Globalization;

namespace Thermal.Files.Weathers;

/// <summary>Our own columns: header lines "# key: value", a line of column names, one row a step in local standard time.</summary>
internal static class OwnLayout
{
    internal const string TimeColumn = "time";

    private const string Write = "local standard time such as 2025-01-31T05:30, without a zone: the zone stands in '# utc_offset_h: …'";
    private const int LongestStampLength = 24;
    private static readonly string[] Formats =
        ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd'T'HH:mm:ss.FFF", "yyyy-MM-dd HH:mm:ss.FFF"];

    internal static WeatherSite? Read(CsvLines lines, WeatherRows rows, ProblemList problems)
    {
        OwnHeader header = new(problems);
        int timeCell = -1;
        bool isHeaded = false;
        while (lines.Next())
        {
            if (lines.StartsWith('#')) header.ReadLine(lines.Whole, lines.Line);
            else if (!isHeaded)
            {
                isHeaded = true;
                timeCell = Columns(lines, rows, problems);
            }
            else if (timeCell >= 0 && rows.IsWhole(lines))
            {
                if (Stamp(lines, timeCell) is { } stamp) rows.Add(lines, stamp);
                else rows.WrongStamp(lines, timeCell, TimeColumn, Write);
            }
        }
        if (!isHeaded) problems.Add(1, 1, "table", $"is missing; write a line of column names, such as 'time,air_c,relative_humidity_percent,wind_m_s', then one row a step.");
        return header.Site();
    }

    private static int Columns(CsvLines lines, WeatherRows rows, ProblemList problems)
    {
        if (lines.CellCount == 1 && lines.Whole.AsSpan().IndexOfAny(';', '\t') >= 0)
        {
            problems.Add(lines.Line, 1, "table", $"has no commas between its columns; save it with commas, and with decimal points.");
            return -1;
        }
        string[] names = lines.Texts(), known = [TimeColumn, .. WeatherColumn.Own.Select(column => column.Name)];
        int timeCell = Array.IndexOf(names, TimeColumn);
        for (int cell = 0; cell < names.Length; cell++)
        {
            if (!known.Contains(names[cell]))
                problems.Add(lines.Line, lines.Column(cell), "column", $"'{ProblemList.Shortened(names[cell])}' is not a column of weather; {(Nearest.To(names[cell], known) is { } near ? $"did you mean '{near}'?" : $"use {string.Join(", ", known)}.")}");
            else if (names[cell] == TimeColumn && cell > timeCell)
                problems.Add(lines.Line, lines.Column(cell), "column", $"'{TimeColumn}' stands twice; keep one of them.");
        }
        rows.Heading(lines, WeatherColumn.Own);
        rows.Need("table", ["air_c", "air_f"], ["relative_humidity_percent", "vapour_pressure_pa", "dew_point_c"], ["wind_m_s"]);
        foreach ((Quantity one, Quantity other) in new[] { (Quantity.HumidityPercent, Quantity.Vapour), (Quantity.HumidityPercent, Quantity.DewPoint), (Quantity.Vapour, Quantity.DewPoint), (Quantity.Longwave, Quantity.Sky) })
            if (rows.NameOf(one).Length > 0 && rows.NameOf(other).Length > 0)
                problems.Add(lines.Line, 1, "table", $"has both '{rows.NameOf(one)}' and '{rows.NameOf(other)}'; keep the one that was measured.");
        if (timeCell < 0) problems.Add(lines.Line, 1, "table", $"has no column '{TimeColumn}'; add it, with {Write}.");
        return timeCell;
    }

    private static DateTime? Stamp(CsvLines lines, int cell) =>
        lines.Short(cell, LongestStampLength) is { } text
            && DateTime.TryParseExact(text, Formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime stamp) && stamp.Year is >= 1950 and < 2100 ? stamp : null;
}
