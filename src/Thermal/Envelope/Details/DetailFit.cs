namespace Thermal.Envelope.Details;

/// <summary>Whether a detail fits into the build-up it stands in.</summary>
public static class DetailFit
{
    /// <summary>Everything about a detail that does not fit its build-up.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="stack">The build-up of its panel.</param>
    /// <param name="spacingM">Distance between neighbours, m; null for one alone.</param>
    /// <returns>All problems; empty where it fits.</returns>
    public static IReadOnlyList<DetailProblem> Problems(Detail detail, Stack stack, double? spacingM) => throw new NotImplementedException();
}

/// <summary>One thing that does not fit.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="GivenM">The length given, m.</param>
/// <param name="LimitM">The limit it breaks, m.</param>
public sealed record DetailProblem(DetailFault Fault, double GivenM, double LimitM);

/// <summary>What can be wrong with a detail.</summary>
public enum DetailFault
{
    /// <summary>It reaches deeper than the build-up inside the skin.</summary>
    DeeperThanWall,
    /// <summary>Strip or batten over it does not fit between its crown and the room.</summary>
    StripTooThick,
    /// <summary>It is wider than the distance to its neighbour.</summary>
    WiderThanSpacing,
    /// <summary>Its sheet is thicker than half its depth or width allows.</summary>
    SheetTooThick,
    /// <summary>A crown is missing, or given for a plate.</summary>
    CrownUnfit,
    /// <summary>More layers over the head than the build-up has.</summary>
    TooManyLayersOver,
    /// <summary>The head is narrower than the shank.</summary>
    HeadNarrowerThanShank,
    /// <summary>The build-up has a ventilated layer that the detail would cross.</summary>
    CrossesVentilatedLayer,
}
