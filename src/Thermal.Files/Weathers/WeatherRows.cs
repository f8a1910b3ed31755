namespace Thermal.Files.Weathers;

/// <summary>The rows of a weather file as they stand, cell by cell, in the units of the physics; NaN where a cell is empty or wrong.</summary>
internal sealed class WeatherRows(ProblemList problems)
{
    private readonly List<double>?[] values = new List<double>?[WeatherColumn.QuantityCount];
    private readonly WeatherColumn?[] columns = new WeatherColumn?[WeatherColumn.QuantityCount];
    private readonly List<(WeatherColumn Column, int Cell)> cells = [];
    private int cellCount, headingLine;

    internal List<DateTime> Stamps { get; } = [];
    internal List<int> Lines { get; } = [];

    /// <summary>Line of the column names.</summary>
    internal int HeadingLine => headingLine;

    /// <summary>False once the time of a row could not be read, so that what is missing cannot be told from what is wrong.</summary>
    internal bool StampsAreRight { get; private set; } = true;

    internal bool Has(Quantity quantity) => values[(int)quantity] is { } list && list.Exists(double.IsFinite);

    internal IReadOnlyList<double> Of(Quantity quantity) => values[(int)quantity]!;

    internal string NameOf(Quantity quantity) => columns[(int)quantity]?.Name ?? "";

    /// <summary>Takes the columns that are known from the line of names the reader stands on.</summary>
    internal void Heading(CsvLines lines, IReadOnlyList<WeatherColumn> known)
    {
        (cellCount, headingLine) = (lines.CellCount, lines.Line);
        string[] names = lines.Texts();
        for (int cell = 0; cell < names.Length; cell++)
        {
            WeatherColumn? column = known.FirstOrDefault(column => column.Name == names[cell]);
            if (column is null) continue;
            if (columns[(int)column.Quantity] is { } first)
            {
                problems.Add(headingLine, lines.Column(cell), "column", $"'{column.Name}' tells again what '{first.Name}' tells; keep one of them.");
                continue;
            }
            columns[(int)column.Quantity] = column;
            values[(int)column.Quantity] = [];
            cells.Add((column, cell));
        }
    }

    /// <summary>True when the row the reader stands on has as many cells as there are columns.</summary>
    internal bool IsWhole(CsvLines lines)
    {
        if (lines.CellCount == cellCount) return true;
        StampsAreRight = false;
        problems.Add(lines.Line, 1, "row", $"has {lines.CellCount} cells, but there are {cellCount} columns; leave a cell empty where nothing is known, and write decimals with a point.");
        return false;
    }

    internal void WrongStamp(CsvLines lines, int cell, string where, string write)
    {
        StampsAreRight = false;
        problems.Add(lines.Line, lines.Column(cell), where, $"'{ProblemList.Shortened(lines.Text(cell))}' is not a time; write {write}.");
    }

    /// <summary>Takes the row the reader stands on.</summary>
    /// <param name="lines">The reader.</param>
    /// <param name="stamp">Its time.</param>
    /// <param name="missing">Number that stands for an unknown value.</param>
    internal void Add(CsvLines lines, DateTime stamp, double missing = double.NaN)
    {
        Stamps.Add(stamp);
        Lines.Add(lines.Line);
        foreach ((WeatherColumn column, int cell) in cells)
        {
            double value = double.NaN;
            if (lines.TryNumber(cell, out double number) && number >= column.Range.Lowest && number <= column.Range.Highest)
                value = (number + column.Shift) * column.Factor;
            else if (!lines.IsEmpty(cell) && number != missing)
                problems.Number(lines.Text(cell), lines.Line, lines.Column(cell), column.Name, column.Range);
            values[(int)column.Quantity]!.Add(value);
        }
    }

    /// <summary>Says which needed columns are missing.</summary>
    internal void Need(string where, params string[][] choices)
    {
        foreach (string[] choice in choices)
        {
            if (!cells.Exists(cell => choice.Contains(cell.Column.Name)))
                problems.Add(headingLine, 1, where, $"has no column '{string.Join("' or '", choice)}'; add it.");
        }
    }
}
