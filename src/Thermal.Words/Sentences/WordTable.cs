namespace Thermal.Words.Sentences;

/// <summary>A table as people read it, for screen and page alike.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Columns">Titles; one that begins with > holds numbers.</param>
/// <param name="Rows">Rows with a cell for every column; the first cell heads its row.</param>
public sealed record WordTable(string Caption, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);
