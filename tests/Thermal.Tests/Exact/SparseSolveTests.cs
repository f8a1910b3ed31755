using Thermal.Numerics;

namespace Thermal.Tests.Exact;

/// <summary>The sparse solvers on networks whose solutions are known in closed form.</summary>
public class SparseSolveTests
{
    /// <summary>Edges of 1 on an n × n (× n) grid whose outer neighbours are held: h = 1/(n + 1).</summary>
    private static GridNetwork Held(int count, int depth) => new(count, count, depth, (_, _) => 1, point =>
    {
        int[] at = [point % count, point / count % count, point / (count * count)];
        return at.Take(depth > 1 ? 3 : 2).Sum(i => (i == 0 ? 1 : 0) + (i == count - 1 ? 1 : 0));
    });

    private static double[] Iterated(GridNetwork network, double[] rhs)
    {
        ConjugateGradients iteration = new(network.Matrix);
        double[] x = new double[rhs.Length];
        iteration.Solve(rhs, x, new double[iteration.ScratchLength], 1e-12, 500);
        return x;
    }

    /// <summary>The grid's own waves: with v = sin(pπx)·sin(qπy), A·v = (4 − 2·cos pπh − 2·cos qπh)·v at every node.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 5)]
    [InlineData(37, 40)]
    public void A_wave_of_the_grid_comes_back_divided_by_its_own_value(int waveX, int waveY)
    {
        const int n = 47;
        const double h = 1.0 / (n + 1);
        double value = 4 - 2 * Math.Cos(waveX * Math.PI * h) - 2 * Math.Cos(waveY * Math.PI * h);
        double[] wave = [.. Enumerable.Range(0, n * n).Select(i => Math.Sin(waveX * Math.PI * (i % n + 1) * h) * Math.Sin(waveY * Math.PI * (i / n + 1) * h))];
        double[] x = [.. wave];
        GridNetwork network = Held(n, 1);
        network.Factored().Solve(x);
        // The condition number is 900 and rounding 1e-16.
        for (int i = 0; i < x.Length; i++) Assert.Equal(wave[i] / value, x[i], 1e-12 / value);
    }

    /// <summary>A row of layers between 0 and 1 K: the temperature falls in proportion to the resistance passed.</summary>
    [Fact]
    public void A_row_of_resistances_shares_the_difference_in_proportion()
    {
        double[] conductances = [8, 500, 0.035, 2e4, 0.13, 25];
        GridNetwork row = new(5, 1, 1, (point, _) => conductances[point + 1], point => point == 0 ? conductances[0] : point == 4 ? conductances[5] : 0);
        double[] direct = [conductances[0], 0, 0, 0, 0], iterated = Iterated(row, direct);
        row.Factored().Solve(direct);
        double total = conductances.Sum(conductance => 1 / conductance), passed = 0;
        for (int i = 0; i < 5; i++)
        {
            passed += 1 / conductances[i];
            // Conductances a million times apart cost six of sixteen digits.
            Assert.Equal(1 - passed / total, direct[i], 1e-10);
            Assert.Equal(1 - passed / total, iterated[i], 1e-10);
        }
    }

    /// <summary>u_xx + u_yy = 0 on the unit square, u = sin πx at y = 1 and 0 on the other sides; exact: sin πx·sinh πy / sinh π.</summary>
    [Fact]
    public void Halving_the_step_quarters_the_error_in_the_plane() =>
        Assert.InRange(Math.Log2(ErrorAtMiddle(15, 1) / ErrorAtMiddle(31, 1)), 1.97, 2.03);

    /// <summary>The same in the unit cube with sin πx·sin πy at z = 1; exact: sin πx·sin πy·sinh √2πz / sinh √2π.</summary>
    [Fact]
    public void Halving_the_step_quarters_the_error_in_space() =>
        Assert.InRange(Math.Log2(ErrorAtMiddle(15, 15) / ErrorAtMiddle(31, 31)), 1.97, 2.03);

    private static double ErrorAtMiddle(int n, int depth)
    {
        double h = 1.0 / (n + 1), rate = depth > 1 ? Math.Sqrt(2) * Math.PI : Math.PI;
        double[] rhs = new double[n * n * depth];
        for (int i = 0; i < n; i++)
            if (depth == 1) rhs[i + n * (n - 1)] = Math.Sin(Math.PI * (i + 1) * h);
            else
                for (int j = 0; j < n; j++) rhs[i + n * (j + n * (n - 1))] = Math.Sin(Math.PI * (i + 1) * h) * Math.Sin(Math.PI * (j + 1) * h);
        GridNetwork network = Held(n, depth);
        // The plane by the factor, space by iteration.
        if (depth == 1) network.Factored().Solve(rhs);
        else rhs = Iterated(network, rhs);
        return Math.Abs(rhs[rhs.Length / 2] - Math.Sinh(rate / 2) / Math.Sinh(rate));
    }

    [Fact]
    public void Factoring_and_solving_again_allocate_nothing()
    {
        GridNetwork network = Held(20, 1);
        SparseCholesky factor = network.Factored();
        double[] x = new double[400];
        Work();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Work();
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        void Work()
        {
            x.AsSpan().Fill(1);
            network.Matrix.Assemble(network.Own, network.From, network.To, network.Edges);
            factor.Factor(network.Matrix);
            factor.Solve(x);
        }
    }

    [Fact]
    public void Iterating_allocates_nothing()
    {
        ConjugateGradients iteration = new(Held(12, 12).Matrix);
        double[] rhs = new double[1728], x = new double[1728], scratch = new double[iteration.ScratchLength];
        rhs.AsSpan().Fill(1);
        iteration.Solve(rhs, x, scratch, 1e-8, 100);
        x.AsSpan().Clear();
        long before = GC.GetAllocatedBytesForCurrentThread();
        iteration.Solve(rhs, x, scratch, 1e-8, 100);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    [Fact]
    public void A_right_first_guess_takes_no_iteration()
    {
        GridNetwork network = Held(12, 1);
        double[] rhs = [.. Enumerable.Repeat(1.0, 144)], x = Iterated(network, rhs);
        ConjugateGradients iteration = new(network.Matrix);
        Assert.Equal(0, iteration.Solve(rhs, x, new double[iteration.ScratchLength], 1e-10, 100));
    }
}
