using Thermal.Numerics;

namespace Thermal.Tests.Refusals;

/// <summary>Systems that have no single solution, orders that do not fit and iterations that do not arrive are refused.</summary>
public class SparseSolveRefusals
{
    private static GridNetwork Plate(Func<int, double> own, double conductance = 1) => new(12, 12, 1, (_, _) => conductance, own);

    private static string Refusal(Action act) => Assert.Throws<InvalidOperationException>(act).Message;

    [Fact]
    public void A_plate_tied_to_nothing_has_no_single_solution() =>
        Assert.Contains("no single solution", Refusal(() => Plate(_ => 0).Factored()), StringComparison.Ordinal);

    [Fact]
    public void A_plate_tied_by_a_millionth_at_one_point_is_solved()
    {
        double[] x = new double[144];
        x[0] = 1e-6;
        Plate(point => point == 0 ? 1e-6 : 0).Factored().Solve(x);
        // All of it takes the temperature of its only tie, less what six lost digits allow.
        Assert.All(x, temperature => Assert.Equal(1, temperature, 1e-7));
    }

    [Fact]
    public void One_of_two_parts_tied_to_nothing_has_no_single_solution() => Assert.Contains("no single solution", Refusal(() =>
        new GridNetwork(12, 12, 1, (_, _) => 1, point => point < 12 ? 1 : 0, point => point / 12 != 6).Factored()), StringComparison.Ordinal);

    [Theory]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void A_negative_tie_or_one_that_is_no_number_is_refused(double tie)
    {
        Assert.Contains("no single solution", Refusal(() => Plate(_ => tie).Factored()), StringComparison.Ordinal);
        Assert.Contains("No incomplete factor", Refusal(() => _ = new ConjugateGradients(Plate(_ => tie).Matrix)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_conductance_that_is_no_number_is_refused() =>
        Assert.Contains("no single solution", Refusal(() => Plate(_ => 1, double.NaN).Factored()), StringComparison.Ordinal);

    [Theory]
    [InlineData(143)]
    [InlineData(145)]
    public void A_grid_with_another_number_of_nodes_is_refused(int count) =>
        Assert.Throws<ArgumentException>("node", () => NestedDissection.Of(12, 12, 1, Plate(_ => 1).Node, count));

    [Fact]
    public void An_order_of_another_size_is_refused() =>
        Assert.Throws<ArgumentException>("dissection", () => new BlockPlan(Plate(_ => 1).Matrix, new GridNetwork(3, 3, 1, (_, _) => 1, _ => 1).Dissection));

    [Fact]
    public void A_matrix_of_another_pattern_is_not_factored() =>
        Assert.Throws<ArgumentException>("matrix", () => Plate(_ => 1).Factored().Factor(new GridNetwork(3, 3, 1, (_, _) => 1, _ => 1).Matrix));

    [Fact]
    public void An_iteration_that_does_not_arrive_tells_how_far_it_came()
    {
        ConjugateGradients iteration = new(Plate(point => point == 0 ? 1 : 0).Matrix);
        double[] rhs = [.. Enumerable.Range(0, 144).Select(i => Math.Sin(i))];
        string message = Refusal(() => iteration.Solve(rhs, new double[144], new double[iteration.ScratchLength], 1e-12, 3));
        Assert.Contains("after 3 iterations", message, StringComparison.Ordinal);
        Assert.Contains("asked for 1.0E-12", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_source_that_is_no_number_is_never_solved()
    {
        ConjugateGradients iteration = new(Plate(_ => 1).Matrix);
        Assert.Contains("relative residual NaN", Refusal(() =>
            iteration.Solve([.. Enumerable.Repeat(double.NaN, 144)], new double[144], new double[iteration.ScratchLength], 1e-9, 5)), StringComparison.Ordinal);
    }
}
