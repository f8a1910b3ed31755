using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Materials;

namespace Thermal.Assessments;

/// <summary>A case with its usual figures, and with all uncertain ones at one end; described ribs, bolts and edges solved in each.</summary>
internal sealed record CaseRuns(Case Usual, Case LeastHeat, Case MostHeat, Case LeastDamp, Case MostDamp)
{
    internal static CaseRuns Of(Case asked, BridgeCache cache)
    {
        Case usual = Solved(asked, cache);
        return new(usual, Solved(Extremes.OfHeat(usual, Extreme.Low), cache, Extreme.Low), Solved(Extremes.OfHeat(usual, Extreme.High), cache, Extreme.High),
            Extremes.OfDamp(usual, Extreme.Low), Extremes.OfDamp(usual, Extreme.High));
    }

    /// <summary>The usual figures alone: every run is the usual one.</summary>
    internal static CaseRuns Alone(Case asked, BridgeCache cache)
    {
        Case usual = Solved(asked, cache);
        return new(usual, usual, usual, usual, usual);
    }

    /// <summary>True where every run is the usual one.</summary>
    internal bool IsAlone => ReferenceEquals(Usual, LeastHeat);

    /// <summary>The case with its details solved in the wind of its cold night, ψ and χ at one end of the bounds of their solution.</summary>
    private static Case Solved(Case asked, BridgeCache cache, Extreme bound = Extreme.Usual)
    {
        Vehicle solved = SolvedVehicle.At(asked.Vehicle, asked.ColdNight.WindMPerS, cache, bound, null);
        return ReferenceEquals(solved, asked.Vehicle) ? asked : asked with { Vehicle = solved };
    }
}
