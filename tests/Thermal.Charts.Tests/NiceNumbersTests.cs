namespace Thermal.Charts.Tests;

/// <summary>Numbers on axes are round and written the same in every culture.</summary>
public class NiceNumbersTests
{
    [Theory]
    [InlineData(-12, 5, "−12")]
    [InlineData(-0.04, 0.1, "0.0")]
    [InlineData(0.25, 0.05, "0.25")]
    [InlineData(1.5, 0.5, "1.5")]
    [InlineData(4000, 1000, "4000")]
    [InlineData(-15000, 5000, "−15\u202F000")]
    public void A_number_is_written_with_as_many_decimals_as_its_step(double value, double step, string written) =>
        Assert.Equal(written, NiceNumbers.Written(value, step));

    [Theory]
    [InlineData(0.7, 0.5)]
    [InlineData(1, 1)]
    [InlineData(4.9, 2)]
    [InlineData(99, 50)]
    public void The_round_number_below_is_one_two_or_five(double value, double round) =>
        Assert.Equal(round, NiceNumbers.AtMost(value), 1e-12); // decimal fractions in binary

    [Theory]
    [InlineData(10, 5, 2)]
    [InlineData(11, 5, 5)]
    [InlineData(0.9, 3, 0.5)]
    [InlineData(2600, 6, 500)]
    public void A_span_is_never_divided_into_more_parts_than_asked(double span, int mostParts, double step) =>
        Assert.Equal(step, NiceNumbers.Step(span, mostParts), 1e-12); // decimal fractions in binary

    [Fact]
    public void Multiples_hold_both_ends() => Assert.Equal([-10.0, -5, 0, 5], NiceNumbers.Multiples(-10, 5, 5));
}
