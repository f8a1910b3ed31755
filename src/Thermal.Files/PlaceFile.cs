using Thermal.Climates;

namespace Thermal.Files;

/// <summary>Reads a place from its text: header lines "# key: value", then a table of twelve months with commas between the cells.</summary>
/// <remarks>
/// Missing values are empty cells or missing columns. What can be estimated is estimated on reading and marked in the result,
/// never written in the file. The format is described in climates/README.md.
/// </remarks>
public static class PlaceFile
{
    /// <summary>Longest text taken, characters; a place needs about two thousand. Limit chosen by us.</summary>
    public const int LongestCharacterCount = 50_000;

    /// <summary>The place described by <paramref name="text"/>, or every problem found in it.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="fileName">What to call it in problems.</param>
    /// <returns>A place and no problem, or no place and all problems in the order of their lines. Never throws for any text.</returns>
    public static Reading<Place> Read(string text, string fileName)
    {
        var problems = new ProblemList(fileName);
        if (IsNoPlaceText(text, problems)) return new(null, problems.InOrder());

        string[] lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        PlaceHeader header = PlaceHeader.Read(lines, problems);
        IReadOnlyList<MonthNormals>? months = PlaceTable.Read(lines, problems);
        IReadOnlyList<DesignTemperature> designs = new PlaceDesigns(header, problems).Read(months);
        return problems.IsEmpty && months is not null
            ? new(header.PlaceOf(months, designs), [])
            : new(null, problems.InOrder());
    }

    private static bool IsNoPlaceText(string text, ProblemList problems)
    {
        if (text.Length > LongestCharacterCount)
            problems.Add(1, 1, "file", $"holds {text.Length} characters, a place has twelve rows and a short header; keep it under {LongestCharacterCount} characters.");
        else if (string.IsNullOrWhiteSpace(text))
            problems.Add(1, 1, "file", $"is empty; write the header lines '# name: …' and twelve months, as climates/README.md shows.");
        else if (text.Contains('\0', StringComparison.Ordinal))
            problems.Add(1, 1, "file", $"is not a text file; save the table as plain text with commas (CSV, UTF-8).");
        return !problems.IsEmpty;
    }
}
