using System.Buffers.Text;
using System.Globalization;
using System.Text;
using CsvHelper;

namespace Thermal.Files.Weathers;

/// <summary>The lines of a text with commas, one after the other, with the place of every cell.</summary>
internal sealed class CsvLines : IDisposable
{
    private readonly CsvReader reader;

    internal CsvLines(string text)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        // A stray quote must not swallow the lines below it; whether a row has its cells is judged where the columns are known.
        reader = CsvReader.Create(bytes, new()
        {
            HasHeader = false, TrackLineNumbers = true, AllowLineBreaksInQuotes = false, SkipEmptyLines = true, TrimWhitespace = true,
            MalformedData = CsvMalformedDataHandling.Recover, FieldCountMismatch = CsvFieldCountHandling.Allow,
        });
    }

    internal int Line => (int)reader.LineNumber;

    internal int CellCount => reader.FieldCount;

    internal bool Next() => reader.Read();

    /// <summary>The whole line as it stands.</summary>
    internal string Whole => Encoding.UTF8.GetString(reader.RawRecord);

    internal bool StartsWith(char letter) => !reader.RawRecord.IsEmpty && reader.RawRecord.TrimStart((byte)' ')[..1].SequenceEqual([(byte)letter]);

    internal string Text(int cell) => reader.GetString(cell).Trim();

    internal string[] Texts() => [.. Enumerable.Range(0, CellCount).Select(Text)];

    internal bool IsEmpty(int cell) => reader.GetSpan(cell).Trim((byte)' ').IsEmpty;

    /// <summary>Copies a cell of at most as many plain letters as there is room for; null where it does not fit.</summary>
    internal string? Short(int cell, int most) => reader.GetSpan(cell).Length <= most ? Text(cell) : null;

    internal bool TryNumber(int cell, out double number) =>
        double.TryParse(reader.GetSpan(cell), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);

    /// <summary>A whole number of plain digits between two places of a cell; −1 where there is none.</summary>
    internal int Digits(int cell, int from, int count)
    {
        ReadOnlySpan<byte> span = reader.GetSpan(cell);
        if (span.Length < from + count) return -1;
        return Utf8Parser.TryParse(span.Slice(from, count), out uint number, out int used) && used == count ? (int)number : -1;
    }

    internal int Length(int cell) => reader.GetSpan(cell).Length;

    internal char Letter(int cell, int at) => at < reader.GetSpan(cell).Length ? (char)reader.GetSpan(cell)[at] : '\0';

    /// <summary>Column of a cell, counted from 1 in letters.</summary>
    internal int Column(int cell)
    {
        int bytes = 0;
        for (int i = 0; i < cell; i++) bytes += reader.GetRawSpan(i).Length + 1;
        ReadOnlySpan<byte> whole = reader.RawRecord;
        while (bytes < whole.Length && whole[bytes] == (byte)' ') bytes++;
        return 1 + Encoding.UTF8.GetCharCount(whole[..Math.Min(bytes, whole.Length)]);
    }

    public void Dispose() => reader.Dispose();
}
