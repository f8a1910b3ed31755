using Thermal.Numerics;

namespace Thermal.Benchmarks;

/// <summary>The sparse solvers beside a general solver on the same matrix in the same run.</summary>
internal static class SolverForm
{
    private const int Large = 400, Small = 40;
    // Two sums of 160 000 temperatures between 0 and 1 from different solvers.
    private const double SameSumFraction = 1e-8;

    /// <summary>Measures and prints: assembling, ordering, planning, factoring and solving together; processor times, which a busy machine changes little.</summary>
    internal static void Print(TextWriter to)
    {
        double exponentialsS = Batches.Middle(() => Yardstick.MillionExponentials()).Seconds;
        ContrastCase small = new(Small), large = new(Large);
        (double smallS, long smallBytes) = Batches.Middle(() => small.Solve());
        (double iterateS, long iterateBytes) = Batches.Middle(() => small.Iterate());
        (double largeS, long largeBytes) = Batches.Middle(() => large.Solve());
        to.WriteLine($"{"",-52} {"measured",12} {"guide",8}   beside the yardstick");
        Row("yardstick: a million exponentials", exponentialsS, "", "");
        Row($"{Small} × {Small} unknowns, direct", smallS, "1 ms", ShortForm.Of(smallS / exponentialsS, "of a million exponentials"));
        Bytes(smallBytes, "");
        Row($"{Small} × {Small} unknowns, iteration to 1e-10", iterateS, "", ShortForm.Of(iterateS / exponentialsS, "of a million exponentials"));
        Bytes(iterateBytes, "");
        Row($"{Large} × {Large} unknowns, direct", largeS, "", ShortForm.Of(largeS / exponentialsS, "million exponentials"));
        Bytes(largeBytes, "1E+08");
        Compare(large, largeS, to);

        void Row(string what, double seconds, string guide, string beside) => to.WriteLine($"{what,-52} {ShortForm.Time(seconds),12} {guide,8}   {beside}");
        void Bytes(long bytes, string guide) => to.WriteLine($"{"  bytes allocated",-52} {ShortForm.Count(bytes),12} {guide,8}");
    }

    private static void Compare(ContrastCase large, double largeS, TextWriter to)
    {
        SparseSymmetric matrix = large.Assemble();
        (IReadOnlyList<(string Ordering, double Seconds, double Sum)>? times, string note) = GeneralSolver.Measure(matrix, large.Rhs, "COLAMD", "MMD_AT_PLUS_A");
        if (times is null)
        {
            to.WriteLine($"No general solver to compare with: {note}.");
            return;
        }
        double sum = large.Solve().Sum();
        foreach ((string ordering, double seconds, double othersSum) in times)
        {
            if (!(Math.Abs(othersSum / sum - 1) < SameSumFraction)) throw new InvalidOperationException($"The solvers differ: sums {sum:R} and {othersSum:R}.");
            string guide = ordering == "COLAMD" ? "2.5 ×" : "1 ×";
            to.WriteLine($"{$"  the same by {note}, {ordering}",-52} {ShortForm.Time(seconds),12} {guide,8}   {ShortForm.Of(seconds / largeS, "× the direct solve above")}");
        }
    }
}
