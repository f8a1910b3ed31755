using System.Globalization;

namespace Thermal.Files;

/// <summary>The problems of one file while it is being read, and the reading of a number that may be one.</summary>
/// <param name="fileName">What to call the file.</param>
/// <param name="mostCount">Most problems kept, at least 1; what is beyond is counted in one more.</param>
internal sealed class ProblemList(string fileName, int mostCount = int.MaxValue)
{
    private readonly List<Problem> problems = [];
    private int beyondCount;
    private (int Line, int Column) beyond;

    /// <summary>True while nothing is wrong.</summary>
    internal bool IsEmpty => problems.Count == 0;

    /// <summary>Notes one problem; <paramref name="what"/> says what is wrong and what to write instead.</summary>
    internal void Add(int line, int column, string where, FormattableString what)
    {
        if (problems.Count < mostCount) problems.Add(new(fileName, line, column, where, FormattableString.Invariant(what)));
        else if (beyondCount++ == 0) beyond = (line, column);
    }

    /// <summary>All problems kept, in the order of their lines and columns; last how many more there are.</summary>
    internal IReadOnlyList<Problem> InOrder()
    {
        IOrderedEnumerable<Problem> ordered = problems.OrderBy(problem => problem.Line).ThenBy(problem => problem.Column);
        return beyondCount == 0 ? [.. ordered]
            : [.. ordered, new(fileName, beyond.Line, beyond.Column, "file", FormattableString.Invariant($"has {beyondCount} more problems; mend those above first."))];
    }

    /// <summary>The number written in <paramref name="text"/>, or null and a problem.</summary>
    /// <param name="text">One number without a unit, with a decimal point, in invariant form.</param>
    /// <param name="line">Line, counted from 1.</param>
    /// <param name="column">Column, counted from 1.</param>
    /// <param name="where">Its name in the file.</param>
    /// <param name="range">Lowest and highest value taken, unit, and a hint for what lies outside.</param>
    internal double? Number(string text, int line, int column, string where, NumberRange range)
    {
        const NumberStyles plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (!double.TryParse(text, plain, CultureInfo.InvariantCulture, out double number) || !double.IsFinite(number))
        {
            Add(line, column, where, $"'{Shortened(text)}' is not a number; write it alone, with a decimal point and a plain minus, such as {range.Example}.");
            return null;
        }
        if (number >= range.Lowest && number <= range.Highest) return number;
        Add(line, column, where, $"{Shortened(text)} lies outside {range.Lowest} to {range.Highest} {range.Unit}; {range.Hint}.");
        return null;
    }

    /// <summary>At most the first forty characters, so that a problem stays one line.</summary>
    internal static string Shortened(string text) => text.Length <= 40 ? text : text[..40] + "…";
}

/// <summary>What a number in a file may be.</summary>
/// <param name="Lowest">Lowest value taken, in the file's unit.</param>
/// <param name="Highest">Highest value taken, in the file's unit.</param>
/// <param name="Unit">The file's unit.</param>
/// <param name="Example">A number that would be right.</param>
/// <param name="Hint">What to write instead of a value outside.</param>
internal sealed record NumberRange(double Lowest, double Highest, string Unit, string Example, string Hint);
