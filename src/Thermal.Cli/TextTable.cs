namespace Thermal.Cli;

/// <summary>A table in plain text: columns set apart by two blanks, numbers to the right.</summary>
internal sealed class TextTable
{
    private readonly string[] titles, marks;
    private readonly List<string[]> rows = [];

    /// <param name="titles">Column titles; one that begins with > holds numbers and stands to the right.</param>
    internal TextTable(params string[] titles)
    {
        marks = titles;
        this.titles = [.. titles.Select(title => title.TrimStart('>'))];
    }

    /// <summary>Adds one row with a cell for every column.</summary>
    internal void Row(params string[] cells) => rows.Add(cells.Length == titles.Length
        ? cells
        : throw new ArgumentException($"The table has {titles.Length} columns, the row {cells.Length}.", nameof(cells)));

    /// <summary>Writes titles and rows, as wide as they are: a table that is cut tells half the truth.</summary>
    internal void WriteTo(Terminal terminal)
    {
        int[] widths = new int[titles.Length];
        for (int column = 0; column < widths.Length; column++)
        {
            widths[column] = titles[column].Length;
            foreach (string[] row in rows)
                widths[column] = Math.Max(widths[column], row[column].Length);
        }
        terminal.Heading(Line(titles, widths));
        foreach (string[] row in rows)
            terminal.Answers.WriteLine(Line(row, widths));
    }

    private string Line(string[] cells, int[] widths) => string.Join("  ", cells.Select((cell, column) =>
        marks[column].StartsWith('>') ? cell.PadLeft(widths[column]) : cell.PadRight(widths[column]))).TrimEnd();
}
