using Thermal.Words;

namespace Thermal.Files.Tests.Units;

/// <summary>Numbers are written once, the same for all faces.</summary>
public sealed class FiguresTests
{
    [Theory]
    [InlineData(Shown.Thickness, 0.04, "40 mm", "1.57 in")]
    [InlineData(Shown.Thickness, 0.0008, "0.8 mm", "0.03 in")]
    [InlineData(Shown.Length, 1.905, "1.91 m", "6.25 ft")]
    [InlineData(Shown.Temperature, -10, "−10.0 °C", "14 °F")]
    [InlineData(Shown.Temperature, -0.04, "0.0 °C", "32 °F")]
    [InlineData(Shown.Difference, 20, "20.0 K", "36.0 °F")]
    [InlineData(Shown.Power, 1843, "1840 W", "6290 Btu/h")]
    [InlineData(Shown.Power, 12400, "12\u202F400 W", "42\u202F300 Btu/h")]
    [InlineData(Shown.HeaterPower, 2040, "2.0 kW", "6960 Btu/h")]
    [InlineData(Shown.Transmittance, 0.7534, "0.75 W/(m²·K)", "0.133 Btu/(h·ft²·°F)")]
    [InlineData(Shown.LiquidVolume, 0.00183, "1.8 L", "0.48 gal")]
    [InlineData(Shown.WaterPerArea, 0.0053, "5.3 g/m²", "5.3 g/m²")]
    [InlineData(Shown.WaterMass, 0.3456, "350 g", "350 g")]
    [InlineData(Shown.Percent, 0.604, "60 %", "60 %")]
    [InlineData(Shown.Charge, 43200, "12 Ah", "12 Ah")]
    [InlineData(Shown.Angle, 90, "90°", "90°")]
    public void A_figure_is_written_with_its_unit_and_the_digits_that_mean_something(Shown shown, double si, string metric, string us)
    {
        Assert.Equal(metric, Figures.Metric.Write(shown, si));
        Assert.Equal(us, Figures.Us.Write(shown, si));
    }

    [Fact]
    public void A_span_has_its_unit_once() => Assert.Equal("1.4 to 2.1 kW", Figures.Metric.Range(Shown.HeaterPower, 1400, 2100));

    [Fact]
    public void A_span_whose_ends_read_the_same_is_one_figure() => Assert.Equal("1.4 kW", Figures.Metric.Range(Shown.HeaterPower, 1400, 1401));

    [Theory]
    [InlineData(3.2, "+3.2 K")]
    [InlineData(-3.2, "−3.2 K")]
    [InlineData(0.001, "0.0 K")]
    public void A_change_has_its_sign_unless_it_is_none(double changeK, string written) => Assert.Equal(written, Figures.Metric.Signed(Shown.Difference, changeK));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_number_is_never_written(double si) => Assert.Throws<ArgumentOutOfRangeException>(() => Figures.Metric.Power(si));

    [Fact]
    public void Every_kind_of_figure_has_a_style_in_both_sets() => Assert.All(Enum.GetValues<Shown>(), shown =>
    {
        Assert.NotEmpty(Figures.Metric.Write(shown, 1));
        Assert.NotEmpty(Figures.Us.Write(shown, 1));
    });
}
