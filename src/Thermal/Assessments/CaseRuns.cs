using Thermal.Materials;

namespace Thermal.Assessments;

/// <summary>A case with its usual figures, and with all uncertain ones at one end.</summary>
internal sealed record CaseRuns(Case Usual, Case LeastHeat, Case MostHeat, Case LeastDamp, Case MostDamp)
{
    internal static CaseRuns Of(Case asked) => new(asked, Extremes.OfHeat(asked, Extreme.Low), Extremes.OfHeat(asked, Extreme.High),
        Extremes.OfDamp(asked, Extreme.Low), Extremes.OfDamp(asked, Extreme.High));
}
