using Thermal.Assessments;
using Thermal.Choices;

namespace Thermal.Words.Sentences;

/// <summary>All findings as a person reads them: worst first, and those that only differ in the place told once.</summary>
public static class Findings
{
    /// <summary>Findings of one kind from which they are told together.</summary>
    private const int ToldTogetherFrom = 3;

    private static readonly HashSet<FindingKind> Alike =
        [FindingKind.Mould, FindingKind.BridgeFrosts, FindingKind.BridgeDrips, FindingKind.DetailNotConverged, FindingKind.StaleBridge, FindingKind.BridgeWithoutBuildUp, FindingKind.AreaAlone, FindingKind.LimitsFarApart, FindingKind.WaterTrapped, FindingKind.StaysWet];

    /// <summary>The sentences, worst first.</summary>
    /// <param name="assessment">What was found.</param>
    /// <param name="advice">Changes that were tried on it, the most helpful first.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<string> Of(Assessment assessment, IReadOnlyList<AdviceItem> advice, Figures figures)
    {
        IReadOnlyList<Finding> all = assessment.Findings;
        List<string> told = [];
        for (int i = 0; i < all.Count;)
        {
            int next = i + 1;
            while (next < all.Count && all[next].Kind == all[i].Kind)
                next++;
            told.AddRange(Told([.. all.Skip(i).Take(next - i)], assessment, advice, figures));
            i = next;
        }
        return told;
    }

    private static IEnumerable<string> Told(Finding[] group, Assessment assessment, IReadOnlyList<AdviceItem> advice, Figures figures)
    {
        if (group.Length < ToldTogetherFrom || !Alike.Contains(group[0].Kind))
            return group.Select(finding => FindingSentence.Of(finding, assessment, advice, figures));
        Finding worst = group.MaxBy(finding => finding.FigureInItsUnit)!;
        string others = string.Join("; ", group.Where(finding => finding != worst).Select(finding => finding.Where));
        return [$"{FindingSentence.Of(worst, assessment, advice, figures)} The same holds for: {others}."];
    }
}
