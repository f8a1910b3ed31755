using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>The lines "# key: value" of a weather file of our own columns.</summary>
internal sealed class OwnHeader(ProblemList problems)
{
    internal const string NameKey = "name", LatitudeKey = "latitude_deg", LongitudeKey = "longitude_deg", AltitudeKey = "altitude_m", OffsetKey = "utc_offset_h", StampKey = "stamp",
        SourceKey = "source", LicenceKey = "licence", KindKey = "kind", EstimatedKey = "estimated", NoteKey = "note";

    private static readonly Dictionary<string, NumberRange> Numbers = new()
    {
        [LatitudeKey] = SiteRanges.Latitude,
        [LongitudeKey] = SiteRanges.Longitude,
        [AltitudeKey] = SiteRanges.Altitude,
        [OffsetKey] = SiteRanges.UtcOffset,
    };

    private static readonly string[] Required = [NameKey, LatitudeKey, LongitudeKey, AltitudeKey, OffsetKey, StampKey];
    private static readonly string[] Keys = [.. Required, SourceKey, LicenceKey, KindKey, EstimatedKey, NoteKey];

    internal static (string Word, double Fraction)[] Stamps { get; } = [("start", 0), ("middle", 0.5), ("end", 1)];

    internal static (string Word, WeatherKind Kind)[] Kinds { get; } =
        [("real", WeatherKind.Real), ("typical", WeatherKind.TypicalYear), ("generated", WeatherKind.Generated), ("cold_spell", WeatherKind.ColdSpell), ("steady", WeatherKind.Steady)];

    internal static (string Word, WeatherGap Gap)[] Estimates { get; } =
    [
        ("spread", WeatherGap.SpreadEstimated), ("sun", WeatherGap.SunEstimated), ("wind", WeatherGap.WindAssumed),
        ("humidity", WeatherGap.HumidityEstimated), ("sky", WeatherGap.SkyComputed),
    ];

    private readonly Dictionary<string, (string Text, int Line, int Column)> texts = [];
    private readonly Dictionary<string, double> numbers = [];

    internal void ReadLine(string line, int number)
    {
        int keyAt = line.IndexOf('#', StringComparison.Ordinal) + 1, colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon < keyAt)
        {
            problems.Add(number, 1, "header", $"'{ProblemList.Shortened(line)}' has no colon; write '# key: value', or '# note: …' for a remark.");
            return;
        }
        string key = line[keyAt..colon].Trim(), value = line[(colon + 1)..].Trim().TrimEnd(',');
        int keyColumn = keyAt + 1 + line[keyAt..].TakeWhile(char.IsWhiteSpace).Count();
        int valueColumn = colon + 2 + line[(colon + 1)..].TakeWhile(char.IsWhiteSpace).Count();
        if (!Keys.Contains(key))
            problems.Add(number, keyColumn, "header", $"'{ProblemList.Shortened(key)}' is not a key of weather; {Offer(key)}");
        else if (key == NoteKey)
            return;
        else if (value.Length == 0)
            problems.Add(number, valueColumn, key, $"is empty; write a value after the colon.");
        else if (value.Contains('\uFFFD', StringComparison.Ordinal))
            problems.Add(number, valueColumn, key, $"has letters that cannot be read; save the file as UTF-8.");
        else if (texts.TryGetValue(key, out var first))
            problems.Add(number, keyColumn, key, $"stands twice, first in line {first.Line}; keep one of them.");
        else if (Numbers.TryGetValue(key, out NumberRange? range) && problems.Number(value, number, valueColumn, key, range) is { } read)
            numbers[key] = read;
        texts.TryAdd(key, (value, number, valueColumn));
    }

    private static string Offer(string key) => Nearest.To(key, Keys) is { } near ? $"did you mean '{near}'?" : $"use one of {string.Join(", ", Keys)}.";

    /// <summary>What the lines say; null where a problem stands in the way.</summary>
    internal WeatherSite? Site()
    {
        foreach (string key in Required)
            if (!texts.ContainsKey(key)) problems.Add(1, 1, key, $"is missing; add a line '# {key}: {Example(key)}' at the top.");
        double? stamp = texts.ContainsKey(StampKey) ? Word(StampKey, Stamps) : null;
        WeatherKind? kind = texts.ContainsKey(KindKey) ? Word(KindKey, Kinds) : WeatherKind.Real;
        List<WeatherGap> gaps = Estimated();
        if (stamp is not { } fraction || kind is not { } known || numbers.Count < Numbers.Count || !texts.TryGetValue(NameKey, out var name)) return null;
        return new()
        {
            Name = name.Text,
            LatitudeDeg = numbers[LatitudeKey],
            LongitudeDeg = numbers[LongitudeKey],
            AltitudeM = numbers[AltitudeKey],
            UtcOffsetH = numbers[OffsetKey],
            ClockAheadH = numbers[OffsetKey],
            Kind = known,
            Source = string.Join("; ", new[] { SourceKey, LicenceKey }.Where(texts.ContainsKey).Select(key => texts[key].Text)) is { Length: > 0 } said ? said : "no source stated",
            StampFraction = fraction,
            Gaps = gaps,
        };
    }

    private static string Example(string key) => Numbers.TryGetValue(key, out NumberRange? range) ? range.Example : key == StampKey ? string.Join(" | ", Stamps.Select(stamp => stamp.Word)) : "…";

    private List<WeatherGap> Estimated()
    {
        List<WeatherGap> gaps = [];
        if (!texts.TryGetValue(EstimatedKey, out var said)) return gaps;
        foreach (string word in said.Text.Split(',', StringSplitOptions.TrimEntries))
        {
            int at = Array.FindIndex(Estimates, known => known.Word == word);
            if (at < 0) problems.Add(said.Line, said.Column, EstimatedKey, $"'{ProblemList.Shortened(word)}' is not known; write any of {string.Join(", ", Estimates.Select(known => known.Word))}.");
            else if (!gaps.Contains(Estimates[at].Gap)) gaps.Add(Estimates[at].Gap);
        }
        return gaps;
    }

    private T? Word<T>(string key, (string Word, T Value)[] known) where T : struct
    {
        (string text, int line, int column) = texts[key];
        foreach ((string word, T value) in known)
            if (word == text) return value;
        if (text.Length > 0) problems.Add(line, column, key, $"'{ProblemList.Shortened(text)}' is not known; write {string.Join(", ", known.Select(pair => pair.Word))}.");
        return null;
    }
}
