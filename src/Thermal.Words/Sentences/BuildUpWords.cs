using Thermal.Assessments;

namespace Thermal.Words.Sentences;

/// <summary>What there is to say about damp in one build-up, piece by piece.</summary>
/// <param name="Verdict">In a few words, such as "wet from November, dry by May".</param>
/// <param name="HowMuch">Grams at worst, or that nothing settles.</param>
/// <param name="Where">The face where most settles; empty where nothing does.</param>
/// <param name="Why">Which way the water comes, with figures.</param>
/// <param name="HowSure">"Sure" where the runs agree, else "Likely" and what the runs say.</param>
public sealed record BuildUpWords(string Verdict, string HowMuch, string Where, string Why, string HowSure)
{
    /// <summary>Water that would be written as zero, g/m².</summary>
    private const double NextToNothingGPerM2 = 0.05;

    /// <summary>Everything in one line of sentences.</summary>
    public string Line => Where.Length == 0
        ? $"{Grammar.Capital(Verdict)}. {Grammar.Capital(HowMuch)}. {Why} {HowSure}"
        : $"{Grammar.Capital(Verdict)}, {Where}; {HowMuch}. {Why} {HowSure}";

    /// <summary>The words for one build-up.</summary>
    /// <param name="damp">Damp inside it.</param>
    /// <param name="figures">Metric or US.</param>
    public static BuildUpWords Of(BuildUpDamp damp, Figures figures) => new(
        VerdictOf(damp),
        HowMuchOf(damp, figures),
        damp.Verdict == DampVerdict.Dry || damp.WettestFace < 0 ? "" : damp.WettestPlace,
        WhyOf(damp, figures),
        HowSureOf(damp));

    /// <summary>The most water the build-up holds: over the year where there is one, else what one cold night brings, g/m².</summary>
    public static double WorstGPerM2(BuildUpDamp damp) => damp.Year is { } year ? year.PeakGPerM2 : NightGPerM2(damp);

    /// <summary>What one cold night brings by diffusion and, at most, by air, g/m².</summary>
    public static double NightGPerM2(BuildUpDamp damp) => damp.NightByDiffusionGPerM2 + damp.NightByAirGPerM2;

    private static string VerdictOf(BuildUpDamp damp) => damp.Verdict switch
    {
        DampVerdict.Dry => damp.Year is null ? "dry on the cold night" : "dry",
        DampVerdict.WetNightOnly => "wet on the cold night, with no months to say whether it dries",
        DampVerdict.StaysWet => "stays wet all year",
        DampVerdict.WetDries when damp.Year is { WetFromMonth: { } wet, DryInMonth: { } dry } =>
            $"wet from {Grammar.Month(wet)}, dry by {Grammar.Month(dry)}",
        _ => Names.Of(damp.Verdict),
    };

    private static string HowMuchOf(BuildUpDamp damp, Figures figures)
    {
        double worstGPerM2 = WorstGPerM2(damp);
        if (worstGPerM2 <= 0)
            return damp.Year is null ? "nothing settles" : "nothing stays over the months";
        if (damp is { Verdict: DampVerdict.Dry, Year: null })
            return $"{figures.GramsPerArea(worstGPerM2)} settle in it, too little to matter in one night";
        if (damp.Verdict == DampVerdict.Dry)
            return $"at most {figures.GramsPerArea(worstGPerM2)} stay over the months, too little to run down";
        string worst = $"{figures.GramsPerArea(worstGPerM2)} at worst";
        return damp is { Verdict: DampVerdict.StaysWet, Year: { GainPerYearGPerM2: > 0 } year }
            ? $"{worst} in the first year, {figures.GramsPerArea(year.GainPerYearGPerM2)} more each year"
            : worst;
    }

    private static string WhyOf(BuildUpDamp damp, Figures figures)
    {
        double airG = damp.NightByAirGPerM2, diffusionG = damp.NightByDiffusionGPerM2;
        string air = figures.GramsPerArea(airG), diffusion = figures.GramsPerArea(diffusionG);
        if (airG <= 0 && diffusionG <= 0)
            return "On the cold night neither room air nor diffusion leaves water in it.";
        if (damp.AirFace < 0)
            return diffusionG < NextToNothingGPerM2
                ? "No room air gets in, and diffusion leaves next to nothing in a cold night."
                : $"No room air gets in; diffusion alone leaves {diffusion} in a cold night.";
        return airG >= diffusionG
            ? $"Mostly room air behind the lining: up to {air} in a cold night, against {diffusion} by diffusion."
            : $"Mostly diffusion through the lining: {diffusion} in a cold night, against up to {air} by air through gaps.";
    }

    private static string HowSureOf(BuildUpDamp damp) =>
        damp.LowVerdict == damp.Verdict && damp.HighVerdict == damp.Verdict
            ? "Sure: the runs with least and with most moisture say the same."
            : $"Likely: with least moisture {Says(damp.LowVerdict)}, with most {Says(damp.HighVerdict)}.";

    private static string Says(DampVerdict verdict) => verdict switch
    {
        DampVerdict.Dry => "it is dry",
        DampVerdict.WetDries => "it gets wet and dries",
        DampVerdict.StaysWet => "it stays wet",
        _ => "it gets wet on the cold night",
    };
}
