using System.Globalization;
using Thermal.Climates;

namespace Thermal.Files;

/// <summary>The table of a place file: a line of column names, then one row a month.</summary>
internal static class PlaceTable
{
    internal const string MonthColumn = "month";

    /// <summary>The twelve months, January first; null where a problem stands in the way.</summary>
    internal static IReadOnlyList<MonthNormals>? Read(string[] lines, ProblemList problems)
    {
        int heading = Array.FindIndex(lines, IsTable);
        if (heading < 0)
        {
            problems.Add(lines.Length, 1, "table", $"is missing; write a line of column names, such as '{MonthColumn},mean_c,min_c,max_c', then twelve rows.");
            return null;
        }
        if (Columns(lines[heading], heading + 1, problems) is not string[] columns) return null;

        var months = new MonthNormals?[Place.MonthCount];
        int[] firstLines = new int[Place.MonthCount];
        for (int i = heading + 1; i < lines.Length; i++)
        {
            if (IsTable(lines[i])) ReadRow(lines[i], i + 1, columns, months, firstLines, problems);
        }
        for (int month = 1; month <= Place.MonthCount; month++)
        {
            if (firstLines[month - 1] == 0) problems.Add(heading + 1, 1, "table", $"has no row for month {month}; add one, with empty cells where nothing is known.");
        }
        return problems.IsEmpty || months.All(month => month is not null) ? [.. months.Select(month => month!)] : null;
    }

    private static bool IsTable(string line) => !string.IsNullOrWhiteSpace(line) && !line.TrimStart().StartsWith('#');

    private static string[]? Columns(string line, int number, ProblemList problems)
    {
        (string Text, int Column)[] cells = Cells(line);
        if (cells.Length == 1 && line.AsSpan().IndexOfAny(';', '\t') >= 0)
        {
            problems.Add(number, 1, "table", $"has no commas between its columns; save it with commas, and with decimal points.");
            return null;
        }
        bool isRight = true;
        string[] known = [MonthColumn, .. PlaceRow.Columns.Keys];
        for (int i = 0; i < cells.Length; i++)
        {
            var (name, column) = cells[i];
            string shown = ProblemList.Shortened(name);
            isRight &= known.Contains(name) && !cells[..i].Any(cell => cell.Text == name);
            if (!known.Contains(name))
                problems.Add(number, column, "column", $"'{shown}' is not a column of a place; {(Nearest.To(name, known) is string near ? $"did you mean '{near}'?" : $"use {string.Join(", ", known)}.")}");
            else if (cells[..i].Any(cell => cell.Text == name))
                problems.Add(number, column, "column", $"'{shown}' stands twice; keep one of them.");
        }
        if (cells.All(cell => cell.Text != MonthColumn))
        {
            problems.Add(number, 1, "table", $"has no column '{MonthColumn}'; add it, with 1 for January.");
            return null;
        }
        return isRight ? [.. cells.Select(cell => cell.Text)] : null;
    }

    private static void ReadRow(string line, int number, string[] columns, MonthNormals?[] months, int[] firstLines, ProblemList problems)
    {
        (string Text, int Column)[] cells = Cells(line);
        if (cells.Length != columns.Length)
        {
            problems.Add(number, 1, "row", $"has {cells.Length} cells, but there are {columns.Length} columns; leave a cell empty where nothing is known, and write decimals with a point.");
            return;
        }
        var (text, column) = cells[Array.IndexOf(columns, MonthColumn)];
        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int month) || month < 1 || month > Place.MonthCount)
            problems.Add(number, column, MonthColumn, $"'{ProblemList.Shortened(text)}' is not a month; write 1 for January to 12 for December.");
        else if (firstLines[month - 1] > 0)
            problems.Add(number, column, MonthColumn, $"{month} stands twice, first in line {firstLines[month - 1]}; keep one of them.");
        else
        {
            firstLines[month - 1] = number;
            months[month - 1] = new PlaceRow(number, month, problems).Read(columns, cells);
        }
    }

    private static (string Text, int Column)[] Cells(string line)
    {
        string[] parts = line.Split(',');
        var cells = new (string, int)[parts.Length];
        int start = 1;
        for (int i = 0; i < parts.Length; i++)
        {
            int blanks = parts[i].TakeWhile(char.IsWhiteSpace).Count();
            cells[i] = (parts[i].Trim(), start + (blanks == parts[i].Length ? 0 : blanks));
            start += parts[i].Length + 1;
        }
        return cells;
    }
}
