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
internal sealed record WrittenMap(int Line, int Column, IReadOnlyList<WrittenEntry> Entries) : WrittenNode(Line, Column)
{
    /// <summary>
    /// The map with values put together again that a decimal comma tore apart: on one line, {thickness: 2,5 mm} is the key
    /// thickness with 2 and the key "5 mm" with nothing.
    /// </summary>
    internal WrittenMap Mended()
    {
        if (!Entries.Any(entry => entry.IsTornOff))
            return this;
        List<WrittenEntry> mended = [];
        foreach (WrittenEntry entry in Entries)
            if (mended.Count > 0 && entry.IsTornOff && mended[^1].Value is WrittenScalar { IsNothing: false } before)
                mended[^1] = mended[^1] with { Value = before with { Text = $"{before.Text},{entry.Key.Text}" } };
            else
                mended.Add(entry);
        return this with { Entries = mended };
    }

    /// <summary>What stands behind a key; null where the key is missing.</summary>
    internal WrittenNode? this[string key] => Entries.FirstOrDefault(entry => entry.Key.Text == key)?.Value;
}

/// <summary>One key with what stands behind it.</summary>
/// <param name="Key">The key.</param>
/// <param name="Value">What stands behind it.</param>
internal sealed record WrittenEntry(WrittenScalar Key, WrittenNode Value)
{
    /// <summary>True for the second half of a value with a decimal comma on one line.</summary>
    internal bool IsTornOff => Key.Text.Length > 0 && char.IsAsciiDigit(Key.Text[0]) && Value is WrittenScalar { IsNothing: true };
}

/// <summary>A list.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Items">Items in order.</param>
internal sealed record WrittenList(int Line, int Column, IReadOnlyList<WrittenNode> Items) : WrittenNode(Line, Column);
