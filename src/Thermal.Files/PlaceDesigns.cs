using Thermal.Climates;

namespace Thermal.Files;

/// <summary>The design temperatures of a place file: the one a heater is sized for, and what else is known of its cold.</summary>
/// <param name="header">The lines at the top.</param>
/// <param name="problems">Where problems go.</param>
internal sealed class PlaceDesigns(PlaceHeader header, ProblemList problems)
{
    internal const string Key = "design_temperature_c", PlusMinusKey = "design_plus_minus_k";
    private const string KindKey = "design_kind", MeasureKey = "design_measure", NoteKey = "design_note", Example = "-10.4, published, , the table it stands in";
    private const int CellCount = 4;

    private static readonly Dictionary<string, DesignKind> Kinds = new()
    {
        ["published"] = DesignKind.Published,
        ["computed"] = DesignKind.Computed,
        ["stated"] = DesignKind.Stated,
    };

    // In the order in which they are shown.
    private static readonly (string Name, DesignMeasure Measure)[] Measures =
    [
        ("99_6", DesignMeasure.HoursAt996), ("99", DesignMeasure.HoursAt99), ("two_day", DesignMeasure.TwoDayMean), ("yearly_lowest", DesignMeasure.YearlyLowest),
    ];

    internal static NumberRange Degrees { get; } = new(DesignTemperature.LowestC, DesignTemperature.HighestC, "°C", "-10.4", "give degrees Celsius");

    internal static NumberRange Span { get; } = new(0, DesignTemperature.HighestPlusMinusK, "K", "2", "give half the width of the span");

    internal static IReadOnlyList<string> Keys { get; } = [Key, KindKey, PlusMinusKey, NoteKey, MeasureKey, .. Measures.Select(measure => LineKey(measure.Name))];

    /// <summary>The one a heater is sized for, then the others; what is missing of the 99.6 % temperature is estimated. Of use only when there is no problem.</summary>
    internal IReadOnlyList<DesignTemperature> Read(IReadOnlyList<MonthNormals>? months)
    {
        DesignTemperature? used = header.TextOf(Key) is HeaderValue stated ? Used(stated) : null;
        if (header.TextOf(Key) is null) RefuseStrays();
        List<DesignTemperature> designs = used is null ? [] : [used];
        foreach (var (name, measure) in Measures)
        {
            if (header.TextOf(LineKey(name)) is not HeaderValue line || OneLine(LineKey(name), line, measure) is not DesignTemperature design) continue;
            if (used is not null && used.Measure == measure)
                problems.Add(line.Line, line.Column, LineKey(name), $"stands twice, as '# {Key}: …' has this measure too; keep one of them.");
            designs.Add(design);
        }
        CheckOrder(designs);
        bool is996Given = header.TextOf(LineKey(Measures[0].Name)) is not null, isSizedFor = is996Given || header.TextOf(Key) is not null;
        if (months is not null && !is996Given && used?.Measure != DesignMeasure.HoursAt996 && Estimated(months, isNeeded: !isSizedFor) is DesignTemperature estimated)
            designs.Insert(isSizedFor ? designs.Count : 0, estimated);
        return designs;
    }

    private static string LineKey(string name) => $"design_{name}_c";

    private void RefuseStrays()
    {
        foreach (string key in new[] { KindKey, PlusMinusKey, NoteKey, MeasureKey })
        {
            if (header.TextOf(key) is HeaderValue alone) problems.Add(alone.Line, alone.Column, key, $"stands without '# {Key}: …'; add that line, or remove this one and it is estimated.");
        }
    }

    private DesignTemperature? Used(HeaderValue stated)
    {
        DesignKind? kind = null;
        if (header.TextOf(KindKey) is not HeaderValue said)
            problems.Add(stated.Line, stated.Column, Key, $"has no kind; add '# {KindKey}: {string.Join("' or '", Kinds.Keys)}'.");
        else
            kind = Kind(said.Text, said.Line, said.Column, KindKey);
        if (header.TextOf(NoteKey) is not HeaderValue note)
        {
            problems.Add(stated.Line, stated.Column, Key, $"has no word on its definition and source; add '# {NoteKey}: …'.");
            return null;
        }
        var measure = DesignMeasure.AsNoted;
        if (header.TextOf(MeasureKey) is HeaderValue asked)
        {
            measure = Array.Find(Measures, known => known.Name == asked.Text).Measure;
            if (measure == DesignMeasure.AsNoted)
                problems.Add(asked.Line, asked.Column, MeasureKey, $"'{ProblemList.Shortened(asked.Text)}' is not a measure; write {string.Join(", ", Measures.Select(known => known.Name))}, or leave the line out.");
        }
        return kind is DesignKind given && header.NumberOf(Key) is double temperatureC
            ? new() { Measure = measure, TemperatureC = temperatureC, Kind = given, PlusMinusK = header.NumberOf(PlusMinusKey) ?? 0, Note = note.Text }
            : null;
    }

    private DesignTemperature? OneLine(string key, HeaderValue line, DesignMeasure measure)
    {
        string[] cells = line.Text.Split(',', CellCount);
        if (cells.Length < CellCount || string.IsNullOrWhiteSpace(cells[^1]))
        {
            problems.Add(line.Line, line.Column, key, $"has not four parts with commas between them: temperature, kind, half the width of its span in K or nothing, source; write it as '{Example}'.");
            return null;
        }
        int kindColumn = line.Column + cells[0].Length + 1, spanColumn = kindColumn + cells[1].Length + 1;
        double? temperatureC = problems.Number(cells[0].Trim(), line.Line, line.Column, key, Degrees);
        DesignKind? kind = Kind(cells[1].Trim(), line.Line, kindColumn + Blanks(cells[1]), key);
        double? plusMinusK = string.IsNullOrWhiteSpace(cells[2]) ? 0 : problems.Number(cells[2].Trim(), line.Line, spanColumn + Blanks(cells[2]), key, Span);
        return temperatureC is double degrees && kind is DesignKind known && plusMinusK is double span
            ? new() { Measure = measure, TemperatureC = degrees, Kind = known, PlusMinusK = span, Note = cells[3].Trim() }
            : null;
    }

    private static int Blanks(string cell) => cell.TakeWhile(char.IsWhiteSpace).Count();

    private DesignKind? Kind(string text, int line, int column, string key)
    {
        if (Kinds.TryGetValue(text, out DesignKind known)) return known;
        problems.Add(line, column, key, $"'{ProblemList.Shortened(text)}' is not a kind; write {string.Join(", ", Kinds.Keys)}, or leave the design lines out and it is estimated.");
        return null;
    }

    private void CheckOrder(List<DesignTemperature> designs)
    {
        double? colder = designs.Find(design => design.Measure == DesignMeasure.HoursAt996)?.TemperatureC, milder = designs.Find(design => design.Measure == DesignMeasure.HoursAt99)?.TemperatureC;
        if (colder > milder && header.TextOf(LineKey(Measures[1].Name)) is HeaderValue line)
            problems.Add(line.Line, line.Column, LineKey(Measures[1].Name), $"is colder than the 99.6 % temperature of {colder} °C, which cannot be; check both.");
    }

    private DesignTemperature? Estimated(IReadOnlyList<MonthNormals> months, bool isNeeded)
    {
        bool hasOwnSpread = DesignEstimate.HasOwnSpread(months);
        if (!hasOwnSpread && months.MinBy(month => month.MeanC)!.MinC is null)
        {
            if (isNeeded) problems.Add(1, 1, Key, $"is missing and cannot be estimated, because the coldest month has no min_c; add '# {Key}: …' or that cell.");
            return null;
        }
        double temperatureC = hasOwnSpread ? DesignEstimate.FromSpreadC(months) : DesignEstimate.FromMonthsC(months);
        if (temperatureC is >= DesignTemperature.LowestC and <= DesignTemperature.HighestC)
            return new()
            {
                Measure = DesignMeasure.HoursAt996,
                TemperatureC = temperatureC,
                Kind = DesignKind.Estimated,
                PlusMinusK = hasOwnSpread ? DesignEstimate.OwnSpreadPlusMinusK : DesignEstimate.PlusMinusK,
                Note = hasOwnSpread ? "estimated from the monthly means and the place's own spread of day means" : "estimated from the monthly means and daily lowest temperatures alone",
            };
        if (isNeeded) problems.Add(1, 1, Key, $"would be estimated as {temperatureC:F0} °C from the months, outside {DesignTemperature.LowestC} to {DesignTemperature.HighestC} °C; check mean_c and min_c.");
        return null;
    }
}
