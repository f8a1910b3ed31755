using Thermal.Choices;

namespace Thermal.Words.Sentences;

/// <summary>One change that was tried, and what it does.</summary>
public static class AdviceSentence
{
    /// <summary>Changes below this are not worth a word, g, W and g/m². Source: OURS.</summary>
    private const double WorthSaying = 1;

    /// <summary>The change and its effects in one sentence.</summary>
    /// <param name="item">What was tried.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(AdviceItem item, Figures figures) => $"{Grammar.Capital(What(item, figures))}: {Grammar.List(Effects(item, figures))}.";

    /// <summary>The change alone, such as "tape the joints of the lining in the roof".</summary>
    public static string What(AdviceItem item, Figures figures)
    {
        string where = Grammar.The(item.Where);
        return item.Change switch
        {
            Change.TapeLining => $"tape the joints of the lining in {where}",
            Change.AddRetarder => $"put a vapour retarder of s_d {figures.Write(Shown.DiffusionThickness, Advice.TrialRetarderM)} behind the lining of {where}",
            Change.BondedFoam => $"glue closed-cell foam to the skin of {where} without gaps, instead of wool",
            Change.MoreInsulation => $"add {figures.Thickness(Advice.TrialThicknessM)} to the layer that insulates {where} most",
            Change.StripOverRibs => $"stick a strip of closed-cell foam, {figures.Thickness(Advice.TrialStripM)} thick, over the ribs of {where}",
            Change.RunFan => $"run a roof fan at {figures.AirPerHour(Advice.TrialFanM3PerH)} all night, with an inlet open",
            Change.DryElsewhere => "dry wet clothes and kit somewhere else",
            Change.CoverOutside => $"put covers outside over {item.Where}",
            Change.CloseCurtain => $"close a curtain across {where}",
            _ => throw new ArgumentOutOfRangeException(nameof(item), item.Change, "There is no word for this change."),
        };
    }

    /// <summary>What it does, the good and the bad, each with its figure.</summary>
    private static List<string> Effects(AdviceItem item, Figures figures)
    {
        List<string> effects = [];
        if (item.BuildUpsDriedCount != 0)
            effects.Add(item.BuildUpsDriedCount > 0
                ? $"{Grammar.Count(item.BuildUpsDriedCount, "wet build-up")} fewer"
                : $"{Grammar.Count(-item.BuildUpsDriedCount, "wet build-up")} more");
        Add(item.WaterAvoidedG, "less water in the cold night", "more water in the cold night", figures.Grams);
        Add(item.PeakAvoidedGPerM2, "less held at worst", "more held at worst", figures.GramsPerArea);
        Add(item.LossSavedW, "less heat lost", "more heat lost", figures.Power);
        if (item.HeadroomLostM > 0)
            effects.Add($"{figures.Thickness(item.HeadroomLostM)} less headroom");
        return effects;

        void Add(double gain, string better, string worse, Func<double, string> write)
        {
            if (Math.Abs(gain) >= WorthSaying)
                effects.Add($"{write(Math.Abs(gain))} {(gain > 0 ? better : worse)}");
        }
    }
}
