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
        return new(usual, AtEnd(Extreme.Low), AtEnd(Extreme.High), Extremes.OfDamp(usual, Extreme.Low), Extremes.OfDamp(usual, Extreme.High));

        // Sections are solved again with the conductivities of that end, ψ at that end of its bounds; mould is not asked of these runs.
        Case AtEnd(Extreme extreme)
        {
            Case moved = Extremes.OfHeat(usual, extreme);
            return moved with { Vehicle = SolvedVehicle.ForHeat(moved.Vehicle, moved.ColdNight.WindMPerS, cache, extreme) };
        }
    }

    /// <summary>The usual figures alone: every run is the usual one.</summary>
    internal static CaseRuns Alone(Case asked, BridgeCache cache)
    {
        Case usual = Solved(asked, cache);
        return new(usual, usual, usual, usual, usual);
    }

    /// <summary>True where every run is the usual one.</summary>
    internal bool IsAlone => ReferenceEquals(Usual, LeastHeat);

    /// <summary>The case with its details solved in the wind of its cold night.</summary>
    private static Case Solved(Case asked, BridgeCache cache)
    {
        Vehicle solved = SolvedVehicle.Of(asked.Vehicle, asked.ColdNight.WindMPerS, cache);
        return ReferenceEquals(solved, asked.Vehicle) ? asked : asked with { Vehicle = solved };
    }
}
