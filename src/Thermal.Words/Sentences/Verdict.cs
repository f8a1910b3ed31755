using Thermal.Assessments;

namespace Thermal.Words.Sentences;

/// <summary>The whole assessment as a friend would put it: warm or not, wet or not, and what else cannot wait.</summary>
public static class Verdict
{
    /// <summary>Water on cold surfaces in one night that a person would have to wipe up, g. Source: OURS, about a cupful.</summary>
    private const double WorthWipingG = 100;

    /// <summary>Two to four short sentences, without jargon, the worst figures in them.</summary>
    /// <param name="assessment">What was found.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(Assessment assessment, Figures figures)
    {
        List<string> sentences = [Warm(assessment.Heating, assessment.Case.WarmUpH, figures), Inside(assessment, figures)];
        if (OnSurfaces(assessment.ColdNight, figures) is { } wiping)
            sentences.Add(wiping);
        if (assessment.Findings.Any(finding => finding.Kind == FindingKind.StaleAir))
            sentences.Add("Too little fresh air to sleep in.");
        if (assessment.Findings.Any(finding => finding.Kind == FindingKind.VentsTooSmall))
            sentences.Add("The fixed vents are too small.");
        return string.Join(' ', sentences);
    }

    /// <summary>The build-up with the most trouble; null where there is none at all.</summary>
    public static BuildUpDamp? Worst(Assessment assessment)
    {
        BuildUpDamp? worst = null;
        foreach (BuildUpDamp damp in assessment.BuildUps)
            if (worst is null || IsWorse(damp, worst))
                worst = damp;
        return worst;
    }

    private static bool IsWorse(BuildUpDamp damp, BuildUpDamp than) =>
        Rank(damp.Verdict) > Rank(than.Verdict)
        || Rank(damp.Verdict) == Rank(than.Verdict) && BuildUpWords.WorstGPerM2(damp) > BuildUpWords.WorstGPerM2(than);

    private static string Warm(HeatingAnswer heating, double wantedH, Figures figures)
    {
        if (heating.HighestOutputW < heating.SteadyW.Value)
            return $"Not warm enough: the heater is {figures.HeaterPower(heating.SteadyW.Value - heating.HighestOutputW)} short on the cold night.";
        if (!heating.IsEnough)
            return $"Warm enough through the night, but slow to warm up: {(heating.WarmUpH is { } hours ? figures.Hours(hours) : "it never gets there")} instead of {figures.Hours(wantedH)}.";
        return heating.HighestOutputW >= heating.NeedW.High ? "Warm enough." : "Just warm enough.";
    }

    private static string Inside(Assessment assessment, Figures figures)
    {
        if (Worst(assessment) is not { } worst || worst.Verdict == DampVerdict.Dry)
            return assessment.Case.Place is null
                ? "The build-ups are dry on the cold night; without a place nothing can be said of the year."
                : "The build-ups stay dry.";
        int others = assessment.BuildUps.Count(damp => damp.Verdict != DampVerdict.Dry) - 1;
        string more = others > 0 ? $" {Grammar.Capital(Grammar.Count(others, "other build-up"))} {(others == 1 ? "gets" : "get")} wet too." : "";
        string worstG = $"{figures.GramsPerArea(BuildUpWords.WorstGPerM2(worst))} at worst";
        string where = $"{Grammar.The(worst.Name)}, {worst.WettestPlace}";
        return (worst.Verdict, worst.Year) switch
        {
            (DampVerdict.StaysWet, _) => $"It stays wet all year in {where}: {worstG}.",
            (DampVerdict.WetDries, { WetFromMonth: { } wet, DryInMonth: { } dry }) =>
                $"Wet in {where}, from {Grammar.Month(wet)}, dry by {Grammar.Month(dry)}; {worstG}.",
            (DampVerdict.WetDries, _) => $"Wet in {where}, but it dries within the year; {worstG}.",
            _ => $"Wet in {where}, on the cold night: {worstG}. Without months there is no telling whether it dries.",
        } + more;
    }

    private static string? OnSurfaces(Night night, Figures figures)
    {
        SurfaceNight[] wet = [.. night.Surfaces.Where(surface => surface is { InUse: true, SettledG: > 0 }).OrderByDescending(surface => surface.SettledG)];
        double allG = wet.Sum(surface => surface.SettledG);
        return allG < WorthWipingG ? null
            : $"{figures.Grams(allG)} to wipe off cold surfaces after the cold night, most of it from {Grammar.The(wet[0].Name)}.";
    }

    private static int Rank(DampVerdict verdict) => verdict switch
    {
        DampVerdict.StaysWet => 3,
        DampVerdict.WetNightOnly => 2,
        DampVerdict.WetDries => 1,
        _ => 0,
    };
}
