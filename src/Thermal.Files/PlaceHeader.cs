using Thermal.Climates;

namespace Thermal.Files;

/// <summary>The lines "# key: value" of a place file.</summary>
internal sealed class PlaceHeader
{
    private const string DesignKey = "design_temperature_c", KindKey = "design_kind", PlusMinusKey = "design_plus_minus_k", DesignNoteKey = "design_note", NoteKey = "note";

    private static readonly string[] TextKeys = ["name", "country", "source", "period", "licence"];

    private static readonly Dictionary<string, NumberRange> Numbers = new()
    {
        ["latitude_deg"] = new(-90, 90, "degrees", "46.8", "north is positive, south negative"),
        ["longitude_deg"] = new(-180, 180, "degrees", "9.84", "east is positive, west negative"),
        ["altitude_m"] = new(Place.LowestAltitudeM, Place.HighestAltitudeM, "m", "1594", "give the height above the sea in metres"),
        [DesignKey] = new(DesignTemperature.LowestC, DesignTemperature.HighestC, "°C", "-10.4", "give degrees Celsius"),
        [PlusMinusKey] = new(0, DesignTemperature.HighestPlusMinusK, "K", "2", "give half the width of the span"),
    };

    private static readonly string[] Required = [.. TextKeys, "latitude_deg", "longitude_deg", "altitude_m"];

    private static readonly string[] Keys = [.. Required, DesignKey, KindKey, PlusMinusKey, DesignNoteKey, NoteKey];

    private static readonly Dictionary<string, DesignKind> Kinds = new()
    {
        ["published"] = DesignKind.Published,
        ["computed"] = DesignKind.Computed,
        ["stated"] = DesignKind.Stated,
    };

    private readonly Dictionary<string, (string Text, int Line, int Column)> texts = [];
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
        else if (texts.TryGetValue(key, out var first))
            problems.Add(number, keyColumn, key, $"stands twice, first in line {first.Line}; keep one of them.");
        else if (Numbers.TryGetValue(key, out NumberRange? range) && problems.Number(value, number, valueColumn, key, range) is double read)
            numbers[key] = read;
        texts.TryAdd(key, (value, number, valueColumn));
    }

    private static string Offer(string key) => Nearest.To(key, Keys) is string near ? $"did you mean '{near}'?" : $"use one of {string.Join(", ", Keys)}.";

    /// <summary>The stated design temperature, else the estimate from the months; null where a problem stands in the way.</summary>
    internal DesignTemperature? Design(IReadOnlyList<MonthNormals>? months, ProblemList problems)
    {
        if (texts.ContainsKey(DesignKey)) return StatedDesign(problems);
        foreach (string key in new[] { KindKey, PlusMinusKey, DesignNoteKey })
        {
            if (texts.TryGetValue(key, out var alone)) problems.Add(alone.Line, alone.Column, key, $"stands without '# {DesignKey}: …'; add that line, or remove this one and it is estimated.");
        }
        return months is null ? null : EstimatedDesign(months, problems);
    }

    private DesignTemperature? StatedDesign(ProblemList problems)
    {
        var (_, line, column) = texts[DesignKey];
        DesignKind? kind = null;
        if (!texts.TryGetValue(KindKey, out var said))
            problems.Add(line, column, DesignKey, $"has no kind; add '# {KindKey}: {string.Join("' or '", Kinds.Keys)}'.");
        else if (Kinds.TryGetValue(said.Text, out DesignKind known))
            kind = known;
        else
            problems.Add(said.Line, said.Column, KindKey, $"'{ProblemList.Shortened(said.Text)}' is not a kind; write {string.Join(", ", Kinds.Keys)}, or leave the design lines out and it is estimated.");
        if (!texts.TryGetValue(DesignNoteKey, out var note))
            problems.Add(line, column, DesignKey, $"has no word on its definition and source; add '# {DesignNoteKey}: …'.");
        return kind is DesignKind given && numbers.TryGetValue(DesignKey, out double temperatureC) && problems.IsEmpty
            ? new() { TemperatureC = temperatureC, Kind = given, PlusMinusK = numbers.GetValueOrDefault(PlusMinusKey), Note = note.Text }
            : null;
    }

    private static DesignTemperature? EstimatedDesign(IReadOnlyList<MonthNormals> months, ProblemList problems)
    {
        if (months.MinBy(month => month.MeanC)!.MinC is null)
        {
            problems.Add(1, 1, DesignKey, $"is missing and cannot be estimated, because the coldest month has no min_c; add '# {DesignKey}: …' or that cell.");
            return null;
        }
        double temperatureC = DesignEstimate.FromMonthsC(months);
        if (temperatureC >= DesignTemperature.LowestC && temperatureC <= DesignTemperature.HighestC)
            return new() { TemperatureC = temperatureC, Kind = DesignKind.Estimated, PlusMinusK = DesignEstimate.PlusMinusK, Note = "estimated from the monthly means and daily lowest temperatures alone" };
        problems.Add(1, 1, DesignKey, $"would be estimated as {temperatureC:F0} °C from the months, outside {DesignTemperature.LowestC} to {DesignTemperature.HighestC} °C; check mean_c and min_c.");
        return null;
    }

    /// <summary>The place; call only when there is no problem.</summary>
    internal Place PlaceOf(IReadOnlyList<MonthNormals> months, DesignTemperature design) => new()
    {
        Name = texts["name"].Text,
        Country = texts["country"].Text,
        LatitudeDeg = numbers["latitude_deg"],
        LongitudeDeg = numbers["longitude_deg"],
        AltitudeM = numbers["altitude_m"],
        Months = months,
        Design = design,
        Source = texts["source"].Text,
        Period = texts["period"].Text,
        Licence = texts["licence"].Text,
    };
}
