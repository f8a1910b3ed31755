using System.Globalization;
using CsvHelper;

namespace Thermal.Tests.Published;

/// <summary>
/// Reads a table of published values from Published/Data. A file that does not say where its values come from is refused.
/// </summary>
/// <remarks>
/// The header is made of comment lines, then the CSV follows:
/// <code>
/// # source:    document, edition, table
/// # columns:   temperature_C [°C], pressure_Pa [Pa], phase [text]
/// # tolerance: 300 ppm, and why
/// # copied by: seen on the page, quoted by another work, or from memory
/// temperature_C,pressure_Pa,phase
/// 5,872.6,water
/// </code>
/// A column of unit [text] arrives as a string, every other one as a double in invariant form. Empty cells are refused.
/// A line of the header that starts with # and spaces and no name continues the line above it.
/// </remarks>
public static class PublishedTable
{
    private static readonly string[] RequiredLines = ["source", "columns", "tolerance", "copied by"];

    private static readonly CsvReaderOptions Strict = new()
    {
        Separator = ',', CommentPrefix = '#', TrackLineNumbers = true, MalformedData = CsvMalformedDataHandling.Throw,
    };

    /// <summary>The rows of a file in Published/Data, one array of doubles and strings each, in column order.</summary>
    public static IReadOnlyList<object[]> Rows(string fileName)
    {
        using var reader = new StreamReader(Path.Combine(AppContext.BaseDirectory, "Published", "Data", fileName));
        return Parse(reader, fileName);
    }

    internal static IReadOnlyList<object[]> Parse(TextReader reader, string fileName)
    {
        string file = reader.ReadToEnd();
        Dictionary<string, string> header = HeaderOf(file.ReplaceLineEndings("\n").Split('\n').TakeWhile(line => line.StartsWith('#')));
        foreach (string line in RequiredLines)
        {
            if (!header.TryGetValue(line, out string? text) || text.Length == 0)
            {
                throw new InvalidDataException($"{fileName}: the header has no line '# {line}: …'.");
            }
        }
        (string Name, bool IsText)[] columns = [.. header["columns"].Split(',').Select(column => ColumnOf(column, fileName))];
        using CsvReader body = CsvReader.FromText(file, Strict);
        body.ReadHeader();
        if (!body.Headers.SequenceEqual(columns.Select(column => column.Name)))
        {
            throw new InvalidDataException($"{fileName}: the first row must name the columns of the header: {string.Join(',', columns.Select(c => c.Name))}.");
        }
        List<object[]> rows = [];
        while (body.Read())
        {
            rows.Add(RowOf(body.Current.ToArray(), columns, $"{fileName}, line {body.LineNumber}"));
        }
        return rows.Count > 0 ? rows : throw new InvalidDataException($"{fileName}: there are no rows.");
    }

    private static Dictionary<string, string> HeaderOf(IEnumerable<string> comments)
    {
        Dictionary<string, string> header = [];
        string last = "";
        foreach (string comment in comments)
        {
            string text = comment[1..].Trim();
            int colon = text.IndexOf(':', StringComparison.Ordinal);
            bool continues = last.Length > 0 && comment.StartsWith("#    ", StringComparison.Ordinal);
            if (continues)
            {
                header[last] += " " + text;
            }
            else if (colon > 0)
            {
                last = text[..colon].Trim();
                header[last] = text[(colon + 1)..].Trim();
            }
        }
        return header;
    }

    private static (string Name, bool IsText) ColumnOf(string column, string fileName)
    {
        int bracket = column.IndexOf('[', StringComparison.Ordinal);
        return bracket > 0 && column.TrimEnd().EndsWith(']')
            ? (column[..bracket].Trim(), column.Contains("[text]", StringComparison.Ordinal))
            : throw new InvalidDataException($"{fileName}: the column '{column.Trim()}' has no unit in square brackets ([-] where it has none, [text] for words).");
    }

    private static object[] RowOf(string[] cells, (string Name, bool IsText)[] columns, string place)
    {
        if (cells.Length != columns.Length)
        {
            throw new InvalidDataException($"{place}: {cells.Length} cells instead of {columns.Length}.");
        }
        object[] row = new object[cells.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            string cell = cells[i].Trim();
            if (columns[i].IsText && cell.Length > 0)
            {
                row[i] = cell;
            }
            else if (!columns[i].IsText && double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number))
            {
                row[i] = number;
            }
            else
            {
                throw new InvalidDataException($"{place}, column {columns[i].Name}: '{cell}' is no {(columns[i].IsText ? "text" : "number")}.");
            }
        }
        return row;
    }
}
