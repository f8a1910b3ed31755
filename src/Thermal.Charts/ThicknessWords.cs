using Thermal.Choices;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>What is said of a layer in the thicknesses sold.</summary>
internal static class ThicknessWords
{
    // Two lines closer than this at every thickness are one to the eye. Source: OURS.
    private const double LeastApartFraction = 0.01;

    internal static bool HasRibs(IReadOnlyList<ThicknessRow> choices) => choices.Any(choice => !(Math.Abs(choice.UWithRibsWPerM2K - choice.UWPerM2K) <= LeastApartFraction * choice.UWPerM2K));

    // A roof or a floor takes headroom, a side takes width; what does not change is not shown.
    internal static (string Name, Func<ThicknessRow, double?> M) SpaceOf(IReadOnlyList<ThicknessRow> choices) =>
        choices[0].HeadroomM != choices[^1].HeadroomM ? ("headroom", row => row.HeadroomM)
        : choices[0].InnerWidthM != choices[^1].InnerWidthM ? ("inner width", row => row.InnerWidthM)
        : ("", _ => null);

    internal static string Title(ThicknessTable table) => $"{Grammar.Capital(table.Panel)}, {CutWords.Lowered(table.Layer)}";

    internal static string Caption(ThicknessTable table, Figures figures)
    {
        IReadOnlyList<ThicknessRow> choices = table.Rows;
        ThicknessRow thin = choices[0], thick = choices[^1];
        (string space, Func<ThicknessRow, double?> spaceM) = SpaceOf(choices);
        string takes = spaceM(thin) is { } most && spaceM(thick) is { } least ? $" and takes {figures.Thickness(most - least)} of {space}" : "";
        return $"{Title(table)}: {figures.Thickness(thick.ThicknessM)} instead of {figures.Thickness(thin.ThicknessM)} saves {figures.Power(thin.LossW - thick.LossW)} on the cold night{takes}; "
            + $"the last step, from {figures.Thickness(choices[^2].ThicknessM)}, saves {figures.Power(choices[^2].LossW - thick.LossW)}."
            + (HasRibs(choices) ? $" With ribs, {figures.Thickness(thick.ThicknessM)} come to U {figures.Transmittance(thick.UWithRibsWPerM2K)}, not the {figures.Transmittance(thick.UWPerM2K)} between them." : "")
            + LeftOut(table, figures)
            + (choices.Any(row => row.BridgesStale) ? " The rib's figure was given for another thickness, so the others are only a guess." : "");
    }

    private static string LeftOut(ThicknessTable table, Figures figures) => string.Concat(table.LeftOut.GroupBy(left => left.Reason.Name).Select(left =>
        $" Left out {(left.Count() == 1 ? "is" : "are")} {string.Join(", ", left.Select(row => figures.Thickness(row.ThicknessM)))}: {CutWords.Lowered(left.Key)} would not fit."));

    internal static string AltText(IReadOnlyList<ThicknessRow> choices, Figures figures, string caption) => string.Concat(
        caption, " ",
        string.Join("; ", choices.Select(choice => $"{figures.Thickness(choice.ThicknessM)}: {figures.Power(choice.LossW)}, {Names.Of(choice.Verdict)}{(HasRibs(choices) ? $", U {figures.Transmittance(choice.UWPerM2K)} between ribs and {figures.Transmittance(choice.UWithRibsWPerM2K)} with them" : "")}")), ".");
}
