using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Thermal.Numerics;

namespace Thermal.Tests.Property;

/// <summary>Laws of the sparse solvers, for networks on grids with holes and with conductances a thousand times apart.</summary>
public class SparseSolveLaws
{
    private static readonly Gen<(int X, int Y, int Z)> AnySize = Gen.OneOf(
        Gen.Select(Gen.Int[1, 14], Gen.Int[1, 14], (x, y) => (x, y, 1)), Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6], Gen.Int[1, 6], (x, y, z) => (x, y, z)));

    private static readonly Gen<GridNetwork> AnyNetwork =
        from size in AnySize
        from seed in Gen.Int[0, 1_000_000]
        from missing in Gen.Double[0, 0.4]
        select Make(size, seed, missing);

    private static GridNetwork Make((int X, int Y, int Z) size, int seed, double missing)
    {
        Random random = new(seed);
        double[] draws = [.. Enumerable.Range(0, 5 * size.X * size.Y * size.Z).Select(_ => random.NextDouble())];
        return new(size.X, size.Y, size.Z, (point, axis) => Math.Pow(10, 3 * draws[5 * point + axis] - 1.5), point => 0.01 + draws[5 * point + 3],
            point => point == 0 || draws[5 * point + 4] >= missing);
    }

    private static double[] Rhs(int count) => [.. Enumerable.Range(0, count).Select(i => Math.Sin(1 + 1.7 * i))];

    private static void SameWithin(double fraction, ReadOnlySpan<double> expected, ReadOnlySpan<double> found)
    {
        double largest = 0;
        foreach (double value in expected) largest = Math.Max(largest, Math.Abs(value));
        for (int i = 0; i < expected.Length; i++) Assert.InRange(found[i], expected[i] - fraction * largest, expected[i] + fraction * largest);
    }

    [Fact]
    public void The_order_holds_every_node_once() => AnyNetwork.Sample(network =>
        Assert.Equal(Enumerable.Range(0, network.Own.Length), network.Dissection.Order.ToArray().Order()));

    [Fact]
    public void The_blocks_follow_each_other_and_hold_every_node() => AnyNetwork.Sample(network =>
    {
        IReadOnlyList<int> start = network.Dissection.BlockStart;
        Assert.Equal(0, start[0]);
        Assert.Equal(network.Own.Length, start[^1]);
        Assert.All(start.Zip(start.Skip(1)), pair => Assert.True(pair.First < pair.Second));
    });

    [Fact]
    public void A_product_is_that_of_the_full_matrix() => AnyNetwork.Sample(network =>
    {
        double[] x = Rhs(network.Own.Length), y = [.. Enumerable.Repeat(0.5, x.Length)];
        network.Matrix.MultiplyAdd(x, y);
        // Sums of a few products: rounding stays below 1e-13 of the largest.
        SameWithin(1e-13, (network.Dense() * Vector<double>.Build.DenseOfArray(x) + 0.5).ToArray(), y);
    });

    /// <summary>Independent solver: dense Cholesky of MathNet.Numerics 5.0.0. Condition numbers reach 1e4, so 1e-10 is far above rounding and far below a wrong entry.</summary>
    [Fact]
    public void A_general_library_finds_the_same_solution() => AnyNetwork.Sample(network =>
    {
        double[] x = Rhs(network.Own.Length);
        double[] expected = network.Dense().Cholesky().Solve(Vector<double>.Build.DenseOfArray(x)).ToArray();
        network.Factored().Solve(x);
        SameWithin(1e-10, expected, x);
    });

    [Fact]
    public void Iterating_finds_what_the_factor_finds() => AnyNetwork.Sample(network =>
    {
        double[] rhs = Rhs(network.Own.Length), direct = [.. rhs], iterated = new double[rhs.Length];
        network.Factored().Solve(direct);
        ConjugateGradients iteration = new(network.Matrix);
        iteration.Solve(rhs, iterated, new double[iteration.ScratchLength], 1e-13, 500);
        // Residual 1e-13, condition number 1e4.
        SameWithin(1e-9, direct, iterated);
    });

    [Fact]
    public void New_values_of_one_pattern_are_factored_in_the_old_plan() => AnyNetwork.Sample(network =>
    {
        SparseCholesky kept = network.Factored();
        double[] edges = [.. network.Edges.Select((edge, i) => edge * (1 + i % 3))], old = Rhs(network.Own.Length), fresh = [.. old];
        network.Matrix.Assemble(network.Own, network.From, network.To, edges);
        kept.Factor(network.Matrix);
        kept.Solve(old);
        network.Factored().Solve(fresh);
        Assert.Equal(fresh, old);
    });

    [Fact]
    public void What_stood_in_lent_memory_does_not_matter() => AnyNetwork.Sample(network =>
    {
        BlockPlan plan = new(network.Matrix, network.Dissection);
        double[] memory = new double[SparseCholesky.MemoryLength(plan) + 13];
        memory.AsSpan().Fill(double.NaN);
        SparseCholesky lent = new(plan, memory);
        lent.Factor(network.Matrix);
        double[] found = Rhs(network.Own.Length), own = [.. found];
        lent.Solve(found);
        network.Factored().Solve(own);
        Assert.Equal(own, found);
    });

    [Fact]
    public void Equal_input_gives_equal_bits() => AnyNetwork.Sample(network =>
    {
        double[] one = Rhs(network.Own.Length), other = [.. one], rhs = [.. one], third = new double[one.Length], fourth = new double[one.Length];
        network.Factored().Solve(one);
        network.Factored().Solve(other);
        Assert.Equal(one, other);
        ConjugateGradients first = new(network.Matrix), second = new(network.Matrix);
        Assert.Equal(first.Solve(rhs, third, new double[first.ScratchLength], 1e-10, 500), second.Solve(rhs, fourth, new double[first.ScratchLength], 1e-10, 500));
        Assert.Equal(third, fourth);
    });
}
