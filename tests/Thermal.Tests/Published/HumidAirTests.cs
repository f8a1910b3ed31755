using Thermal.Air;

namespace Thermal.Tests.Published;

/// <summary>Printed tables and examples of humid air.</summary>
public class HumidAirTests
{
    public static IEnumerable<object[]> Saturations => PublishedTable.Rows("saturation-pressure.csv");

    public static IEnumerable<object[]> Concentrations => PublishedTable.Rows("vapour-concentration.csv");

    public static IEnumerable<object[]> SaturatedRatios => PublishedTable.Rows("saturated-humidity-ratio.csv");

    public static IEnumerable<object[]> DewPoints => PublishedTable.Rows("dew-points.csv");

    public static IEnumerable<object[]> Altitudes => PublishedTable.Rows("standard-atmosphere.csv");

    public static IEnumerable<object[]> WetBulbs => PublishedTable.Rows("wet-bulb-states.csv");

    public static IEnumerable<object[]> Example1 => PublishedTable.Rows("handbook-example-1.csv");

    public static IEnumerable<object[]> LibraryStates => PublishedTable.Rows("humid-air-library.csv");

    [Theory, MemberData(nameof(Saturations))]
    public void Saturation_pressure_matches_the_tables(string curve, double temperatureC, double pressurePa, double tolerance, string reason)
    {
        double computedPa = curve switch
        {
            "water" => SaturationPressure.OverWaterPa(temperatureC),
            "ice" => SaturationPressure.OverIcePa(temperatureC),
            _ => SaturationPressure.PairPa(temperatureC),
        };
        Assert.True(Math.Abs(computedPa / pressurePa - 1) <= tolerance, $"{computedPa} Pa, not {pressurePa} within {tolerance} ({reason})");
    }

    [Theory, MemberData(nameof(Concentrations))]
    public void Vapour_concentration_at_saturation_matches_the_course_book(double temperatureC, double concentrationGPerM3, double tolerance)
    {
        double computedKgPerM3 = MoistAir.VapourConcentrationKgPerM3(temperatureC, SaturationPressure.PairPa(temperatureC));
        Assert.InRange(computedKgPerM3 * 1000 / concentrationGPerM3, 1 - tolerance, 1 + tolerance);
    }

    [Theory, MemberData(nameof(SaturatedRatios))]
    public void Ideal_gas_holds_half_a_per_cent_less_water_than_the_real_gas_of_the_table(double temperatureC, double saturationPa, double ratioKgPerKg)
    {
        Assert.InRange(SaturationPressure.PairPa(temperatureC) / saturationPa, 0.995, 1);
        Assert.InRange(MoistAir.HumidityRatioKgPerKg(saturationPa, Atmosphere.SeaLevelPa) / ratioKgPerKg, 0.993, 0.997);
    }

    [Theory, MemberData(nameof(DewPoints))]
    public void Dew_points_match(double temperatureC, double humidityFraction, double dewPointC, double toleranceK) =>
        Assert.Equal(dewPointC, DewPoint.OfPressureC(humidityFraction * SaturationPressure.PairPa(temperatureC)), toleranceK);

    [Theory, MemberData(nameof(Altitudes))]
    public void Air_pressure_falls_with_height_as_in_the_standard_atmosphere(double altitudeM, double pressurePa) =>
        Assert.Equal(pressurePa, Atmosphere.PressurePa(altitudeM), 1.0);

    [Theory, MemberData(nameof(WetBulbs))]
    public void Humidity_ratio_from_the_wet_bulb_matches(double temperatureC, double wetBulbC, double airPressurePa, double ratioKgPerKg, double tolerance) =>
        Assert.InRange(RatioFromWetBulb(temperatureC, wetBulbC, airPressurePa) / ratioKgPerKg, 1 - tolerance, 1 + tolerance);

    [Theory, MemberData(nameof(Example1))]
    public void The_handbook_s_first_example_comes_back(string quantity, double value, double tolerance)
    {
        double ratio = RatioFromWetBulb(40, 20, Atmosphere.SeaLevelPa), vapourPa = MoistAir.VapourPressurePa(ratio, Atmosphere.SeaLevelPa);
        double computed = quantity switch
        {
            "dew_point_C" => DewPoint.OfPressureC(vapourPa),
            "relative_humidity_fraction" => vapourPa / SaturationPressure.OverWaterPa(40),
            "enthalpy_J_kg" => MoistAir.EnthalpyJPerKg(40, ratio),
            "specific_volume_m3_kg" => MoistAir.SpecificVolumeM3PerKg(40, ratio, Atmosphere.SeaLevelPa),
            "enthalpy_of_30_C_and_0.02_J_kg" => MoistAir.EnthalpyJPerKg(30, 0.02),
            "ratio_of_3169.7_Pa_at_95461_Pa" => MoistAir.HumidityRatioKgPerKg(3169.7, 95_461),
            _ => throw new InvalidDataException(quantity),
        };
        Assert.Equal(value, computed, tolerance);
    }

    [Theory, MemberData(nameof(LibraryStates))]
    public void An_independent_library_sees_the_same_air(
        double temperatureC, double humidityFraction, double airPressurePa, double vapourPa, double dewPointC,
        double ratioKgPerKg, double enthalpyJPerKg, double volumeM3PerKg, double densityKgPerM3)
    {
        double ownVapourPa = humidityFraction * SaturationPressure.PairPa(temperatureC);
        Assert.InRange(ownVapourPa / vapourPa, 0.9975, 1);
        Assert.Equal(dewPointC, DewPoint.OfPressureC(ownVapourPa), 0.01);
        Assert.InRange(MoistAir.HumidityRatioKgPerKg(vapourPa, airPressurePa) / ratioKgPerKg, 1 - 1e-6, 1 + 1e-6);
        Assert.Equal(enthalpyJPerKg, MoistAir.EnthalpyJPerKg(temperatureC, ratioKgPerKg), 1e-6);
        Assert.InRange(MoistAir.SpecificVolumeM3PerKg(temperatureC, ratioKgPerKg, airPressurePa) / volumeM3PerKg, 1 - 1e-6, 1 + 1e-6);
        Assert.InRange(MoistAir.DensityKgPerM3(temperatureC, vapourPa, airPressurePa) / densityKgPerM3, 1 - 1e-6, 1 + 1e-6);
        Assert.InRange(MoistAir.DryAirDensityKgPerM3(temperatureC, vapourPa, airPressurePa) * volumeM3PerKg, 1 - 1e-6, 1 + 1e-6);
    }

    /// <summary>Humidity ratio from dry and wet bulb. Source: ASHRAE-F (2017), chapter 1, eq. 33 above and eq. 35 below freezing.</summary>
    private static double RatioFromWetBulb(double t, double w, double airPressurePa)
    {
        double saturated = MoistAir.HumidityRatioKgPerKg(HandbookSaturation.PressurePa(w), airPressurePa);
        return w >= 0
            ? ((2501 - 2.326 * w) * saturated - 1.006 * (t - w)) / (2501 + 1.86 * t - 4.186 * w)
            : ((2830 - 0.24 * w) * saturated - 1.006 * (t - w)) / (2830 + 1.86 * t - 2.1 * w);
    }
}
