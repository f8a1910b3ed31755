using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>The TMY3 column layout: a line on the station, a line of names, hours of local standard time named by their ends, 01:00 to 24:00.</summary>
/// <remarks>Sun is the mean of the hour that ends; the rest are readings at its end. Source: TMY3.</remarks>
internal static class Tmy3Layout
{
    internal const string DateColumn = "Date (MM/DD/YYYY)", TimeColumn = "Time (HH:MM)";

    private const double Missing = -9900;
    private const int FactCount = 7;

    internal static WeatherSite? Read(CsvLines lines, WeatherRows rows, RunningYear years, ProblemList problems)
    {
        if (!lines.Next()) return null;
        WeatherSite? site = Site(lines, problems);
        if (!lines.Next()) return site;
        rows.Heading(lines, WeatherColumn.Tmy3);
        string[] names = lines.Texts();
        if (names.Length < 2 || names[0] != DateColumn || names[1] != TimeColumn)
        {
            problems.Add(lines.Line, 1, "table", $"does not begin with '{DateColumn},{TimeColumn}'; keep the second line as the agency wrote it.");
            return null;
        }
        rows.Need("table", [.. WeatherColumn.Tmy3.Where(column => column.Quantity is Quantity.Air or Quantity.HumidityPercent or Quantity.Wind).Select(column => new[] { column.Name })]);
        while (lines.Next())
        {
            if (!rows.IsWhole(lines)) continue;
            if (Stamp(lines, rows) is { } stamp && years.Of(stamp.Date) is { } date) rows.Add(lines, date.AddMinutes(stamp.Minutes), Missing);
        }
        return site;
    }

    private static (DateTime Date, int Minutes)? Stamp(CsvLines lines, WeatherRows rows)
    {
        int month = lines.Digits(0, 0, 2), day = lines.Digits(0, 3, 2), year = lines.Digits(0, 6, 4), hour = lines.Digits(1, 0, 2), minute = lines.Digits(1, 3, 2);
        bool isDate = lines.Length(0) == 10 && lines.Letter(0, 2) == '/' && lines.Letter(0, 5) == '/' && year is >= 1900 and <= 2100 && month is >= 1 and <= 12
            && day >= 1 && day <= DateTime.DaysInMonth(year, month);
        if (!isDate)
            rows.WrongStamp(lines, 0, "date", "month/day/year, such as 01/31/1997");
        else if (lines.Length(1) == 5 && lines.Letter(1, 2) == ':' && hour is >= 0 and <= 24 && minute is >= 0 and < 60 && (hour < 24 || minute == 0))
            return (new(year, month, day), 60 * hour + minute);
        else
            rows.WrongStamp(lines, 1, "time", "the end of the hour, 01:00 to 24:00");
        return null;
    }

    private static WeatherSite? Site(CsvLines lines, ProblemList problems)
    {
        if (lines.CellCount != FactCount)
        {
            problems.Add(lines.Line, 1, "station", $"has {lines.CellCount} cells; the first line must hold number, name, state, hours ahead of universal time, latitude, longitude and elevation.");
            return null;
        }
        double? offset = Number(3, SiteRanges.UtcOffset), latitude = Number(4, SiteRanges.Latitude), longitude = Number(5, SiteRanges.Longitude), altitude = Number(6, SiteRanges.Altitude);
        string name = lines.Text(1);
        if (name.Length == 0) problems.Add(lines.Line, lines.Column(1), "name", $"is empty; write what people call the place.");
        return offset is { } ahead && latitude is { } north && longitude is { } east && altitude is { } up ? new()
        {
            Name = name,
            LatitudeDeg = north,
            LongitudeDeg = east,
            AltitudeM = up,
            UtcOffsetH = ahead,
            ClockAheadH = ahead,
            Kind = WeatherKind.TypicalYear,
            Source = $"typical year in the TMY3 layout, station {lines.Text(0)}, {name} {lines.Text(2)}; TMY3, National Renewable Energy Laboratory / US Department of Energy, no licence line in the file",
            StampFraction = 1,
            AirIsAtEnd = true,
        } : null;

        double? Number(int cell, NumberRange range) => problems.Number(lines.Text(cell), lines.Line, lines.Column(cell), SiteRanges.NameOf(range), range);
    }
}
