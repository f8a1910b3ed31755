using Thermal.Climates;

namespace Thermal.Tests.Exact;

/// <summary>What follows from a place by definition.</summary>
public sealed class ClimateValueTests
{
    private static readonly MonthNormals Frosty = new() { MeanC = -10, MinC = -20, MaxC = -5, RelativeHumidityFraction = 0.5 };

    // Saturation over water at -10 °C is printed as 285.6 Pa (over ice 259.3): half of it, to half the last digit.
    [Fact]
    public void Outside_vapour_pressure_in_frost_is_taken_over_water() => Assert.Equal(142.8, Frosty.VapourPressurePa, 0.025);

    [Fact]
    public void A_measured_vapour_pressure_goes_before_the_derived_one() =>
        Assert.Equal(150, (Frosty with { MeasuredVapourPressurePa = 150 }).VapourPressurePa);

    // Over water 124.6 Pa at -20 °C and 285.6 Pa at -10 °C, both printed to 0.1 Pa.
    [Fact]
    public void Missing_humidity_is_saturation_at_the_lowest_over_saturation_at_the_mean() =>
        Assert.Equal(124.6 / 285.6, HumidityEstimate.RelativeHumidityFraction(-20, -10), 4e-4);

    [Fact]
    public void A_month_whose_lowest_is_its_mean_is_saturated() => Assert.Equal(1, HumidityEstimate.RelativeHumidityFraction(7, 7));

    // Twelve equal months have no yearly spread: -20 - 3·(1.45 + 0.029·10) = -25.22.
    [Fact]
    public void The_design_estimate_of_twelve_equal_months_is_three_spreads_below_their_lowest() =>
        Assert.Equal(-25.22, DesignEstimate.FromMonthsC([.. Enumerable.Repeat(Frosty, 12)]), 1e-12);

    [Fact]
    public void The_design_night_is_clear_and_takes_the_temperature_and_height_of_the_place() => Assert.Equal(
        new NightConditions { OutsideC = -13, RelativeHumidityFraction = 0.85, WindMPerS = 3, SkyBelowAirK = 20, AltitudeM = 1200 },
        NightConditions.Design(AnyPlace()));

    [Fact]
    public void The_mild_night_is_damp_and_covered_at_six_degrees() => Assert.Equal(
        new NightConditions { OutsideC = 6, RelativeHumidityFraction = 0.9, WindMPerS = 3, SkyBelowAirK = 0, AltitudeM = 1200 },
        NightConditions.Mild(1200));

    internal static Place AnyPlace() => new()
    {
        Name = "Upper Pass",
        Country = "Nowhere",
        LatitudeDeg = 46,
        LongitudeDeg = 8,
        AltitudeM = 1200,
        Months = [.. Enumerable.Repeat(Frosty, 12)],
        Design = new() { TemperatureC = -13, Kind = DesignKind.Stated, PlusMinusK = 0, Note = "stated" },
        Source = "invented",
        Period = "none",
        Licence = "none",
    };
}
