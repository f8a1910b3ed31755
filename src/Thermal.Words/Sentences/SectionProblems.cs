using Thermal.Bridges;

namespace Thermal.Words.Sentences;

/// <summary>Why a section cannot be solved, with what to change.</summary>
public static class SectionProblems
{
    /// <summary>One sentence.</summary>
    /// <param name="problem">What is wrong.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(SectionProblem problem, Figures figures) => Grammar.Capital(Saying(problem, Place(problem.Where, figures))) + ".";

    private static string Saying(SectionProblem problem, string place) => problem.Fault switch
    {
        SectionFault.NoPieces => "the section has no pieces, or more than can be computed; give it at least one",
        SectionFault.NoThickness => $"{problem.Name} has no thickness{place}; each end must lie beyond the other by a length that can be measured",
        SectionFault.ConductivityOutOfRange => $"the conductivity of {problem.Name} is outside 0.001 to 500 W/(m·K); check number and unit",
        SectionFault.ConductivityRatio => $"{problem.Name} and {problem.Other ?? "another piece"} conduct further apart than a hundred thousand to one; check the conductivity of both",
        SectionFault.Overlap => $"{problem.Name} and {problem.Other ?? "another piece"} claim the same place{place}; move one, or mark the later one as set into the other",
        SectionFault.InsetOutside => $"{problem.Name} is to be set into other pieces, but lies where there is none{place}; move it, or do not mark it as set in",
        SectionFault.Leak => $"{problem.Name} has a face that borders on nothing{place}; fill the hole with a piece, or put an environment there",
        SectionFault.TouchesNothing => $"the environment {problem.Name} touches no piece; let it reach one, or leave it out",
        SectionFault.ResistanceOutOfRange => $"the surface resistance of {problem.Name} is outside 0 to 10 m²·K/W; check number and unit",
        SectionFault.Afloat => $"{problem.Name} touches no environment, not even through other pieces{place}, so nothing sets its temperature; let it touch a neighbour",
        SectionFault.NegativeRadius => $"{problem.Name} reaches below radius 0{place}; a round section begins at its axis",
        SectionFault.TemperatureJump => $"{problem.Name} and {problem.Other ?? "another environment"} meet at one edge without a surface resistance{place}, where the flow has no finite value; give one of them a resistance",
        _ => throw new ArgumentOutOfRangeException(nameof(problem), problem.Fault, "There is no sentence for this fault."),
    };

    private static string Place(Box? where, Figures figures) =>
        where is { } box ? $" at {Span(box.X0M, box.X1M, figures)} across and {Span(box.Y0M, box.Y1M, figures)} up" : "";

    // An end may be infinite, or no number at all where that is what is wrong.
    private static string Span(double fromM, double toM, Figures figures)
    {
        string from = End(fromM, figures), to = End(toM, figures);
        return from == to ? from : $"{from} to {to}";
    }

    private static string End(double endM, Figures figures) =>
        double.IsFinite(endM) ? figures.Thickness(endM) : double.IsNaN(endM) ? "no number" : endM > 0 ? "the far end" : "the near end";
}
