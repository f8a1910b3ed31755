using Thermal.Choices;

namespace Thermal.Words.Sentences;

/// <summary>What a strip over a rib or a filling in it buys, in a sentence.</summary>
public static class RibChoiceWords
{
    /// <summary>Share of the largest saving from which more thickness hardly pays, fraction. Source: OURS.</summary>
    private const double MostOfItFraction = 0.5;

    /// <summary>Changes below this are not worth a word, W and K. Source: OURS.</summary>
    private const double WorthW = 0.5, WorthK = 0.1;

    /// <summary>The strip that is worth it, with what it saves and how warm the coldest inner point gets.</summary>
    /// <param name="table">The strips that were tried.</param>
    /// <param name="figures">Metric or US.</param>
    public static string OfStrip(StripTable table, Figures figures)
    {
        StripRow kept = table.Rows.First(row => row.IsKept);
        if (WorthIt(table) is not { } row)
            return kept.StripM > 0
                ? $"The strip of {figures.Thickness(kept.StripM)} over it is thick enough: more would change little."
                : "A strip over it would change little.";
        string headroom = row.HeadroomLostM > kept.HeadroomLostM ? $" For it the lining moves in by {figures.Thickness(row.HeadroomLostM - kept.HeadroomLostM)}, with as much more insulation behind it." : "";
        return $"{figures.Thickness(row.StripM)} of {Lowered(table.Material)} over it {Effect(row.SavedW - kept.SavedW, kept.ColdestC, row.ColdestC, row.ToSpareK, figures)}.{headroom}";
    }

    /// <summary>The strip a person should look at first: the thinnest that keeps it dry, else the thinnest with most of the saving; null where none changes anything.</summary>
    public static StripRow? WorthIt(StripTable table)
    {
        StripRow kept = table.Rows.First(row => row.IsKept);
        StripRow[] thicker = [.. table.Rows.Where(row => row.StripM > kept.StripM)];
        if (thicker.Length == 0 || !(thicker[^1].SavedW - kept.SavedW >= WorthW || thicker[^1].ColdestC - kept.ColdestC >= WorthK))
            return null;
        return kept.ToSpareK < 0 && thicker.FirstOrDefault(row => row.ToSpareK >= 0) is { } dry ? dry
            : kept.ToSpareK < 0 ? thicker[^1]
            : thicker.First(row => row.SavedW - kept.SavedW >= MostOfItFraction * (thicker[^1].SavedW - kept.SavedW));
    }

    /// <summary>The filling that saves most against the rib as it stands.</summary>
    /// <param name="table">The fillings that were tried.</param>
    /// <param name="figures">Metric or US.</param>
    public static string OfFilling(FillingTable table, Figures figures)
    {
        FillingRow kept = table.Rows.First(row => row.IsKept), best = table.Rows.MaxBy(row => row.SavedW)!;
        double savedW = best.SavedW - kept.SavedW;
        if (best == kept || !(savedW >= WorthW || best.ColdestC - kept.ColdestC >= WorthK))
            return "Filling it or leaving it hollow changes little: the heat runs along its metal, not through its hollow.";
        return $"{(best.Filling is { } filling ? $"Filled with {Lowered(filling)} it" : "Left hollow it")} {Effect(savedW, kept.ColdestC, best.ColdestC, best.ToSpareK, figures)}.";
    }

    /// <summary>A filling as it stands in a table.</summary>
    public static string Filling(FillingRow row) => row.Filling is { } filling ? Lowered(filling) : "hollow";

    private static string Effect(double savedW, double fromC, double toC, double toSpareK, Figures figures)
    {
        string spare = toSpareK >= 0 ? $"dry with {figures.Difference(toSpareK)} to spare" : $"still {figures.Difference(-toSpareK)} below the dew point";
        return $"saves {figures.Power(savedW)} on the cold night and brings the coldest inner surface from {figures.Temperature(fromC)} to {figures.Temperature(toC)}: {spare}";
    }

    private static string Lowered(string name) => name.Length > 1 && char.IsUpper(name[0]) && !char.IsUpper(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
