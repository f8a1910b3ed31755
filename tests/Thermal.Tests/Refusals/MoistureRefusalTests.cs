using Thermal.Air;
using Thermal.Moisture;

namespace Thermal.Tests.Refusals;

/// <summary>Nonsense about air and water is refused by name, NaN included.</summary>
public class MoistureRefusalTests
{
    private static readonly MonthConditions Usual = new(20, 0, 1200, 500, 30 * 86_400, 2e-10);

    private static MonthConditions[] Year => [.. Enumerable.Repeat(Usual, 12)];

    private static void Refused(string parameter, Func<double> call) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(() => { call(); }).ParamName);

    [Theory, InlineData(double.NaN), InlineData(-60.1), InlineData(100.1), InlineData(double.PositiveInfinity), InlineData(293.15)]
    public void A_temperature_out_of_range_is_refused(double temperatureC)
    {
        Refused("temperatureC", () => SaturationPressure.OverWaterPa(temperatureC));
        Refused("temperatureC", () => SaturationPressure.PairPa(temperatureC));
        Refused("temperatureC", () => SaturationPressure.OverIcePa(temperatureC));
        Refused("temperatureC", () => MoistAir.EnthalpyJPerKg(temperatureC, 0.01));
        Refused("temperatureC", () => MoistAir.SpecificVolumeM3PerKg(temperatureC, 0.01, 101_325));
        Refused("temperatureC", () => MoistAir.DensityKgPerM3(temperatureC, 1000, 101_325));
        Refused("temperatureC", () => Diffusion.PermeabilityKgPerMSPa(temperatureC, 101_325));
    }

    [Fact]
    public void Ice_above_freezing_is_refused() => Refused("temperatureC", () => SaturationPressure.OverIcePa(0.1));

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(0), InlineData(1e6)]
    public void A_vapour_pressure_without_a_dew_point_is_refused(double vapourPressurePa)
    {
        Refused("vapourPressurePa", () => DewPoint.OfPressureC(vapourPressurePa));
        Assert.Throws<ArgumentOutOfRangeException>(() => DewPoint.DewPointOverWaterC(vapourPressurePa));
    }

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(100_000)]
    public void More_vapour_than_air_is_refused(double vapourPressurePa)
    {
        Refused("vapourPressurePa", () => MoistAir.HumidityRatioKgPerKg(vapourPressurePa, 101_325));
        Refused("vapourPressurePa", () => MoistAir.DryAirDensityKgPerM3(20, vapourPressurePa, 101_325));
    }

    [Theory, InlineData(double.NaN), InlineData(1013.25), InlineData(101.325)]
    public void An_air_pressure_in_hectopascals_or_kilopascals_is_refused(double airPressurePa)
    {
        Refused("airPressurePa", () => MoistAir.HumidityRatioKgPerKg(0, airPressurePa));
        Refused("airPressurePa", () => MoistAir.VapourPressurePa(0.01, airPressurePa));
        Refused("airPressurePa", () => Diffusion.PermeabilityKgPerMSPa(10, airPressurePa));
    }

    [Theory, InlineData(double.NaN), InlineData(-501), InlineData(6001)]
    public void A_height_outside_the_standard_atmosphere_is_refused(double altitudeM) => Refused("altitudeM", () => Atmosphere.PressurePa(altitudeM));

    [Theory, InlineData(double.NaN, 20, 0, 1000, 500, 2e-10), InlineData(1, double.NaN, 0, 1000, 500, 2e-10), InlineData(1, 20, 273, 1000, 500, 2e-10),
        InlineData(1, 20, 0, double.NaN, 500, 2e-10), InlineData(1, 20, 0, 1000, -1, 2e-10), InlineData(1, 20, 0, 1000, 500, 7.2e-7), InlineData(-1, 20, 0, 1000, 500, 2e-10)]
    public void A_night_of_nonsense_is_refused(double diffusionThicknessM, double insideC, double outsideC, double insidePa, double outsidePa, double permeability)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => GlaserNight.Profile([0.13, 1, 0.04], [0, diffusionThicknessM, 0], insideC, outsideC, insidePa, outsidePa, permeability));
        if (diffusionThicknessM == 1)
            Assert.Throws<ArgumentOutOfRangeException>(() => new MonthConditions(insideC, outsideC, insidePa, outsidePa, 30 * 86_400, permeability));
    }

    [Fact]
    public void A_stack_without_any_resistance_is_refused()
    {
        Refused("resistancesM2KPerW", () => GlaserNight.Profile([0, 0], [1, 1], 20, 0, 1000, 500, 2e-10).InKgPerM2S);
        Refused("diffusionThicknessesM", () => GlaserNight.Profile([1, 1], [0, 0], 20, 0, 1000, 500, 2e-10).InKgPerM2S);
        Assert.Throws<ArgumentException>(() => GlaserNight.Profile([1, 1], [1], 20, 0, 1000, 500, 2e-10));
    }

    [Fact]
    public void A_month_of_thirty_seconds_and_a_year_of_eleven_months_are_refused()
    {
        Refused("lengthS", () => new MonthConditions(20, 0, 1000, 500, 30, 2e-10).LengthS);
        Refused("month count", () => MonthlyAccount.Run([0.13, 1, 0.04], [0, 1, 0], [.. Year.Skip(1)]).PeakKgPerM2);
    }

    [Fact]
    public void Water_brought_where_none_can_be_held_is_refused()
    {
        MonthConditions[] Brought(params double[] sources) => [.. Year.Select(month => month with { SourcesAtFacesKgPerM2S = sources })];
        double[] resistances = [0.13, 1, 0.1, 0.04], diffusionThicknesses = [0, 1, 2, 0];
        Assert.Equal(YearOutcome.StaysWet, MonthlyAccount.Run(resistances, diffusionThicknesses, Brought(0, 0, 1e-6, 0, 0)).Verdict);
        Assert.Throws<ArgumentException>(() => MonthlyAccount.Run(resistances, diffusionThicknesses, Brought(0, 1e-8, 0, 0, 0)));
        Assert.Throws<ArgumentException>(() => MonthlyAccount.Run(resistances, diffusionThicknesses, Brought(0, 0, 1e-8)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MonthlyAccount.Run(resistances, diffusionThicknesses, Brought(0, 0, double.NaN, 0, 0)));
    }

    [Theory, InlineData(double.NaN), InlineData(-1e-6), InlineData(0.1)]
    public void An_air_flow_per_hour_or_below_zero_is_refused(double airFlowM3PerM2S) =>
        Refused("airFlowM3PerM2S", () => AirBehindLining.WettingKgPerM2S(airFlowM3PerM2S, 20, 1168, -10, 101_325));

    [Fact]
    public void A_temperature_factor_without_a_difference_is_refused()
    {
        Refused("differenceK", () => MouldRisk.TemperatureFactor(20, 20, 20));
        Refused("temperatureFactor", () => MouldRisk.HighestInsideHumidityFraction(1.01, 20, 0));
        Refused("humidityClass", () => HumidityClass.ExcessPa(6, 0));
        Refused("outsideC", () => HumidityClass.ExcessPa(3, double.NaN));
    }
}
