using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Thermal.Numerics;

namespace Thermal.Tests.Exact;

/// <summary>Small dense systems with known solutions.</summary>
public class DenseSolveTests
{
    /// <summary>Hand-made from x = (1, −2, 3): the first pivot is zero, so rows must change places.</summary>
    [Fact]
    public void A_system_that_needs_its_rows_exchanged_is_solved()
    {
        double[] matrix = [0, 2, 1, 4, -1, 2, 3, 5, 7], x = [0 * 1 + 2 * -2 + 1 * 3, 4 * 1 - 1 * -2 + 2 * 3, 3 * 1 + 5 * -2 + 7 * 3];
        DenseSolve.Solve(matrix, x);
        Assert.Equal(1, x[0], 1e-14);
        Assert.Equal(-2, x[1], 1e-14);
        Assert.Equal(3, x[2], 1e-14);
    }

    /// <summary>Independent solver: LU of MathNet.Numerics 5.0.0. Diagonally dominant systems lose few digits, so 1e-10 of the largest unknown is far above rounding and far below a wrong step.</summary>
    [Fact]
    public void A_general_library_finds_the_same_solution() =>
        Gen.Select(Gen.Double[-1, 1].Array[25], Gen.Double[-100, 100].Array[5]).Sample((entries, rhs) =>
        {
            double[] matrix = [.. entries.Select((entry, i) => i % 6 == 0 ? entry + 8 : entry)], found = [.. rhs];
            Vector<double> expected = Matrix<double>.Build.DenseOfRowMajor(5, 5, matrix).LU().Solve(Vector<double>.Build.DenseOfArray(rhs));
            DenseSolve.Solve(matrix, found);
            double largest = expected.AbsoluteMaximum() + 1e-12;
            for (int i = 0; i < 5; i++) Assert.InRange(found[i], expected[i] - 1e-10 * largest, expected[i] + 1e-10 * largest);
        });

    [Fact]
    public void A_system_without_a_single_solution_is_refused() =>
        Assert.Throws<InvalidOperationException>(() => DenseSolve.Solve([1, 2, 2, 4], [1, 2]));

    [Fact]
    public void Solving_allocates_nothing()
    {
        double[] matrix = new double[16], x = new double[4];
        Fill();
        DenseSolve.Solve(matrix, x);
        Fill();
        long before = GC.GetAllocatedBytesForCurrentThread();
        DenseSolve.Solve(matrix, x);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        void Fill()
        {
            for (int i = 0; i < 16; i++) matrix[i] = i % 5 == 0 ? 10 : i;
            x.AsSpan().Fill(1);
        }
    }
}
