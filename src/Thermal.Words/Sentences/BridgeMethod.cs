using Thermal.Bridges;

namespace Thermal.Words.Sentences;

/// <summary>How a rib, edge or bolt was computed, how surely, and what the method leaves out.</summary>
public static class BridgeMethod
{
    /// <summary>A smaller error of a temperature is said to be this, K. Source: OURS.</summary>
    private const double LeastSaidK = 0.1;

    /// <summary>What was solved, with cells and remaining error.</summary>
    /// <param name="solved">The solved detail.</param>
    /// <param name="differenceK">Difference between room and outside, K.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(SolvedDetail solved, double differenceK, Figures figures)
    {
        SolvedSection loss = solved.Loss;
        string how = loss.Section.Shape switch
        {
            SectionShape.Plane => "Steady heat flow solved in two dimensions through its section",
            SectionShape.Round => "Steady heat flow solved round its axis",
            _ => "Steady heat flow solved in three dimensions",
        };
        double flowFraction = loss.CouplingErrorsWPerK[1] / loss.CouplingsWPerK[1];
        string error = $"the whole flow is known within {figures.Write(Shown.FinePercent, flowFraction)}, the coldest point within {figures.Difference(Math.Max(LeastSaidK, solved.ColdestErrorFactor * Math.Abs(differenceK)))}";
        return $"{how}, after the criteria of ISO 10211: {loss.CellCount} cells after {Grammar.Count(loss.RoundsCount, "round")} of refinement; {error}."
            + (loss.IsConverged ? "" : " The accuracy asked for was not reached: take it as an estimate.");
    }

    /// <summary>The surface films and temperatures it was computed with.</summary>
    /// <param name="bridge">The answer.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Air(Assessments.BridgeAnswer bridge, Figures figures) =>
        $"Room {figures.Temperature(bridge.InsideC)} with a dew point of {figures.Temperature(bridge.DewPointC)}; outside {figures.Temperature(bridge.OutsideC)}, as it acts there."
        + (bridge.Solved is { } solved ? $" Outside film {figures.Resistance(solved.Place.OutsideFilmM2KPerW)}, inside film of ISO 6946 by the way heat flows; for mould, the film of ISO 13788." : "");

    /// <summary>What is taken for granted of every computed detail.</summary>
    public static IReadOnlyList<string> Limits { get; } =
    [
        "The bounds are those of the solution alone; conductivities and films have spans of their own, which the ranges of a whole assessment count.",
        "Everything is taken to touch: a rib lies on the skin along its whole foot, and the insulation is cut without gaps. Gaps with moving air make it colder.",
        "Air in hollows stands for a solid that lets as much through by ISO 6946; draughts along a hollow rib are left out.",
        "It is steady: no sun, no stored heat, no warming by water that settles or freezes.",
        "ψ and χ belong to bare dimensions, skin to skin, and to the layers as they stand.",
    ];
}
