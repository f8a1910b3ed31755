namespace Thermal.Files.Yaml;

/// <summary>A piece of a YAML text as it was written, with its place.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
internal abstract record WrittenNode(int Line, int Column);

/// <summary>A single value; nothing is interpreted.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Text">The text without quotes.</param>
/// <param name="IsQuoted">True where it stood in quotes or as a block.</param>
/// <param name="Start">First character in the text, quotes included, counted from 0.</param>
/// <param name="End">Character after the last.</param>
internal sealed record WrittenScalar(int Line, int Column, string Text, bool IsQuoted, int Start, int End) : WrittenNode(Line, Column)
{
    /// <summary>True where a key has nothing behind it.</summary>
    internal bool IsNothing => !IsQuoted && Text is "" or "~" or "null" or "Null" or "NULL";
}

/// <summary>Keys with what stands behind them, in the order written; a key may stand twice.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Entries">Keys and values.</param>
internal sealed record WrittenMap(int Line, int Column, IReadOnlyList<(WrittenScalar Key, WrittenNode Value)> Entries) : WrittenNode(Line, Column)
{
    /// <summary>What stands behind a key; null where the key is missing.</summary>
    internal WrittenNode? this[string key] => Entries.FirstOrDefault(entry => entry.Key.Text == key).Value;
}

/// <summary>A list.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Items">Items in order.</param>
internal sealed record WrittenList(int Line, int Column, IReadOnlyList<WrittenNode> Items) : WrittenNode(Line, Column);
