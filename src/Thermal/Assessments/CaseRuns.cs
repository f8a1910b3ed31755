using Thermal.Materials;

namespace Thermal.Assessments;

/// <summary>A case with its usual figures, and with all uncertain ones at one end.</summary>
internal sealed record CaseRuns(Case Usual, Case LeastHeat, Case MostHeat, Case LeastDamp, Case MostDamp)
{
    internal static CaseRuns Of(Case asked) => new(asked, Extremes.OfHeat(asked, Extreme.Low), Extremes.OfHeat(asked, Extreme.High),
        Extremes.OfDamp(asked, Extreme.Low), Extremes.OfDamp(asked, Extreme.High));

    /// <summary>The usual figures alone: every run is the usual one.</summary>
    internal static CaseRuns Alone(Case asked) => new(asked, asked, asked, asked, asked);

    /// <summary>True where every run is the usual one.</summary>
    internal bool IsAlone => ReferenceEquals(Usual, LeastHeat);
}
