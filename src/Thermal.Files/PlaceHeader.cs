using Thermal.Climates;

namespace Thermal.Files;

/// <summary>The lines "# key: value" of a place file.</summary>
internal sealed class PlaceHeader
{
    private const string NoteKey = "note";

    private static readonly string[] TextKeys = ["name", "country", "source", "period", "licence"];

    private static readonly Dictionary<string, NumberRange> Numbers = new()
    {
        ["latitude_deg"] = new(-90, 90, "degrees", "46.8", "north is positive, south negative"),
        ["longitude_deg"] = new(-180, 180, "degrees", "9.84", "east is positive, west negative"),
        ["altitude_m"] = new(Place.LowestAltitudeM, Place.HighestAltitudeM, "m", "1594", "give the height above the sea in metres"),
        [PlaceDesigns.Key] = PlaceDesigns.Degrees,
        [PlaceDesigns.PlusMinusKey] = PlaceDesigns.Span,
    };

    private static readonly string[] Required = [.. TextKeys, "latitude_deg", "longitude_deg", "altitude_m"];

    private static readonly string[] Keys = [.. Required, .. PlaceDesigns.Keys, NoteKey];

    private readonly Dictionary<string, HeaderValue> texts = [];
    private readonly Dictionary<string, double> numbers = [];

    /// <summary>Reads every line that starts with #, wherever it stands.</summary>
    internal static PlaceHeader Read(string[] lines, ProblemList problems)
    {
        var header = new PlaceHeader();
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].TrimStart().StartsWith('#')) header.ReadLine(lines[i], i + 1, problems);
        }
        foreach (string key in Required)
        {
            if (!header.texts.ContainsKey(key)) problems.Add(1, 1, key, $"is missing; add a line '# {key}: …' at the top.");
        }
        return header;
    }

    private void ReadLine(string line, int number, ProblemList problems)
    {
        int keyAt = line.IndexOf('#', StringComparison.Ordinal) + 1, colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
        {
            problems.Add(number, 1, "header", $"'{ProblemList.Shortened(line)}' has no colon; write '# key: value', or '# note: …' for a remark.");
            return;
        }
        string key = line[keyAt..colon].Trim(), value = line[(colon + 1)..].Trim();
        int keyColumn = keyAt + 1 + line[keyAt..].TakeWhile(char.IsWhiteSpace).Count();
        int valueColumn = colon + 2 + line[(colon + 1)..].TakeWhile(char.IsWhiteSpace).Count();
        if (!Keys.Contains(key))
            problems.Add(number, keyColumn, "header", $"'{ProblemList.Shortened(key)}' is not a key of a place; {Offer(key)}");
        else if (key == NoteKey)
            return;
        else if (value.Length == 0)
            problems.Add(number, valueColumn, key, $"is empty; write a value after the colon.");
        else if (value.Contains('\uFFFD', StringComparison.Ordinal))
            problems.Add(number, valueColumn, key, $"has letters that cannot be read; save the file as UTF-8.");
        else if (texts.TryGetValue(key, out HeaderValue first))
            problems.Add(number, keyColumn, key, $"stands twice, first in line {first.Line}; keep one of them.");
        else if (Numbers.TryGetValue(key, out NumberRange? range) && problems.Number(value, number, valueColumn, key, range) is double read)
            numbers[key] = read;
        texts.TryAdd(key, new(value, number, valueColumn));
    }

    private static string Offer(string key) => Nearest.To(key, Keys) is string near ? $"did you mean '{near}'?" : $"use one of {string.Join(", ", Keys)}.";

    /// <summary>What stands behind a key, as written; null where it is missing.</summary>
    internal HeaderValue? TextOf(string key) => texts.TryGetValue(key, out HeaderValue value) ? value : null;

    /// <summary>The number behind a key; null where it is missing or wrong.</summary>
    internal double? NumberOf(string key) => numbers.TryGetValue(key, out double number) ? number : null;

    /// <summary>The place; call only when there is no problem.</summary>
    internal Place PlaceOf(IReadOnlyList<MonthNormals> months, IReadOnlyList<DesignTemperature> designs) => new()
    {
        Name = texts["name"].Text,
        Country = texts["country"].Text,
        LatitudeDeg = numbers["latitude_deg"],
        LongitudeDeg = numbers["longitude_deg"],
        AltitudeM = numbers["altitude_m"],
        Months = months,
        Design = designs[0],
        OtherDesigns = [.. designs.Skip(1)],
        Source = texts["source"].Text,
        Period = texts["period"].Text,
        Licence = texts["licence"].Text,
    };
}

/// <summary>What stands behind a key of a place file, and where.</summary>
/// <param name="Text">Without the blanks around it.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column of its first character, counted from 1.</param>
internal readonly record struct HeaderValue(string Text, int Line, int Column);
