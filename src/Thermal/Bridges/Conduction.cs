namespace Thermal.Bridges;

/// <summary>Steady conduction in a section.</summary>
public static class Conduction
{
    // With every round at least one line is added; this many rounds would mean a grid that gains nothing.
    private const int MostRounds = 60;

    // ISO 10211: doubling the subdivisions changes the flow by less than this.
    private const double StandardFraction = 0.01;

    /// <summary>Solves a section: flows between its environments, temperatures anywhere, and how far off they can be.</summary>
    /// <param name="section">The section.</param>
    /// <param name="accuracy">How closely; null for the standard's one per cent.</param>
    /// <exception cref="SectionException">The section has problems: all of them are named.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The accuracy is out of its ranges.</exception>
    /// <remarks>
    /// Two schemes on one grid enclose the truth. The vertex scheme dissipates at least as much as the true field for any temperatures of the environments
    /// (Dirichlet's principle), the cell scheme at most as much (Thomson's principle); so with power matrices U and C of the two and G of the truth,
    /// U − G and G − C have no negative eigenvalue. The answer is the middle; with D = U − C, a coefficient G_ij is off by at most ½·√(D_ii·D_jj).
    /// Lines are halved where the schemes differ most until the flow of every environment alone 1 K warmer than the rest is within the accuracy asked for.
    /// The temperatures are those of the vertex scheme, on flat surfaces the mean of both schemes: not bounded, judged by their change in the last round.
    /// Where two environments with R_s 0 meet, no finite flow exists: temperatures are found, but the result never counts as converged.
    /// Source: ISO-10211, numerical method and criterion of subdivision; OURS for the bounds and the refinement.
    /// </remarks>
    public static SolvedSection Solve(Section section, Accuracy? accuracy = null)
    {
        Accuracy asked = Checked(accuracy ?? Accuracy.OnePerCent);
        IReadOnlyList<SectionProblem> problems = SectionCheck.Of(section);
        if (problems.Any(problem => problem.Fault != SectionFault.TemperatureJump)) throw new SectionException(section.Name, problems);
        Blocks blocks = new(section);
        Refinement current = new(new Grid(blocks, StartGrid.Of(blocks)));
        double[][] startM = [.. current.Grid.Axes.Select(axis => axis.LinesM)];
        (int Vertex, double Weight)[] watched = current.Watched(startM);
        double[] changesK = [.. watched.Select(_ => double.PositiveInfinity)];
        int rounds = 0;
        while (rounds < MostRounds && !(changesK.All(change => change <= asked.TemperatureK) && (current.HasJump || IsMet(current, asked))))
        {
            IEnumerable<int> unsteady = rounds == 0 ? [] : watched.Where((_, at) => !(changesK[at] <= asked.TemperatureK / 2)).Select(point => point.Vertex);
            Grid next = new(blocks, current.Next(unsteady));
            if (next.CellCount > asked.LargestCellCount) break;
            current = new Refinement(next);
            (int Vertex, double Weight)[] now = current.Watched(startM);
            changesK = [.. watched.Zip(now, (before, after) => Math.Abs(after.Weight - before.Weight))];
            watched = now;
            rounds++;
        }
        double changeK = changesK.DefaultIfEmpty(0).Max();
        return SolvedSection.Of(current, changeK, rounds, changeK <= asked.TemperatureK && IsMet(current, asked));
    }

    private static Accuracy Checked(Accuracy accuracy)
    {
        Guard.InRange(accuracy.FlowFraction, 1e-5, 0.1, "");
        Guard.InRange(accuracy.TemperatureK, 1e-5, 1, "K");
        Guard.InRange(accuracy.LargestCellCount, 1, 20_000_000, "cells");
        return accuracy;
    }

    private static bool IsMet(Refinement solved, Accuracy asked) => solved.ErrorFraction() <= asked.FlowFraction && solved.DoublingFraction() <= StandardFraction;
}
