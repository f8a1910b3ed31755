using Thermal.Air;
using Thermal.Moisture;

namespace Thermal.Tests.Published;

/// <summary>Worked examples of water inside and on build-ups.</summary>
public class InterstitialTests
{
    public static IEnumerable<object[]> WallResults => PublishedTable.Rows("block-climate-wall-results.csv");

    public static IEnumerable<object[]> SurfaceHumidities => PublishedTable.Rows("surface-humidity.csv");

    private static double[] Column(string file, int column) => [.. PublishedTable.Rows(file).Select(row => (double)row[column])];

    [Theory, MemberData(nameof(WallResults))]
    public void The_timber_panel_wall_comes_back_unrounded_to_one_per_cent(string quantity, double value, double tolerance)
    {
        double[] resistances = Column("block-climate-wall.csv", 1), diffusionThicknesses = Column("block-climate-wall.csv", 2);
        BlockClimateResult block = BlockClimate.Of(resistances, diffusionThicknesses, isRoof: false);
        GlaserResult winter = GlaserNight.Profile([0.25, .. resistances, 0.04], [0, .. diffusionThicknesses, 0], 20, -5, 1168, 321, 2e-10);
        Assert.Equal([4], block.WetFaces);
        double computed = quantity switch
        {
            "rate_kg_m2s" => winter.SettlesKgPerM2S,
            "condensed_kg_m2" => block.CondensedKgPerM2,
            "evaporable_kg_m2" => block.EvaporableKgPerM2!.Value,
            _ => winter.TemperaturesAtFacesC[int.Parse(quantity.Split('_')[2])],
        };
        Assert.Equal(value, computed, tolerance);
    }

    /// <summary>The pressures as printed, whole pascals, give the printed rate to its last digit.</summary>
    [Fact]
    public void The_timber_panel_wall_comes_back_exactly_from_the_rounded_pressures()
    {
        double[] pressuresPa = new double[5], ratesKgPerM2S = new double[5];
        TautString.Solve([0.95, 2.00, 0.16, 1.90], [1168, 2037, 2037, 437, 321], [], [], 2e-10, pressuresPa, ratesKgPerM2S);
        Assert.Equal(3.48e-8, ratesKgPerM2S[3], 0.005e-8); // half the last printed digit
        Assert.Equal(0, ratesKgPerM2S[1] + ratesKgPerM2S[2]);
        Assert.Equal(437, pressuresPa[3]);
    }

    [Theory, MemberData(nameof(SurfaceHumidities))]
    public void The_room_may_be_as_humid_as_the_book_says(double temperatureFactor, double highestHumidityFraction, double tolerance) =>
        Assert.Equal(highestHumidityFraction, MouldRisk.HighestInsideHumidityFraction(temperatureFactor, 20, -5), tolerance);

    /// <summary>A thermal bridge at 15.3 °C, 10.4 °C outside, 20 °C inside: 0.51. Source: a foundation's book on energy in buildings, p. 104; half the last digit.</summary>
    [Fact]
    public void The_temperature_factor_of_a_bridge_comes_back() =>
        Assert.Equal(0.51, MouldRisk.TemperatureFactor(15.3, 20, 10.4), 0.005);

    /// <summary>20 °C and 50 %: the surface may not fall below 12.6 °C, f 0.70. Source: LEHRBUCH, chapter 13; half the last digits.</summary>
    [Fact]
    public void The_least_temperature_factor_of_houses_comes_back()
    {
        double factor = MouldRisk.RequiredTemperatureFactor(0.5 * SaturationPressure.OverWaterPa(20), 20, -5);
        Assert.Equal(0.70, factor, 0.0055);
        Assert.Equal(12.6, -5 + 25 * factor, 0.05);
    }

    /// <summary>A cross-check with an independent script, not a printed answer.</summary>
    [Fact]
    public void A_panel_with_a_steel_skin_wets_and_dries_as_an_independent_script_says()
    {
        IReadOnlyList<object[]> rows = PublishedTable.Rows("panel-months.csv");
        MonthConditions[] months = [.. rows.Select(row =>
        {
            double outsideC = (double)row[1], outsidePa = (double)row[2] * SaturationPressure.PairPa(outsideC);
            return new MonthConditions(20, outsideC, outsidePa + HumidityClass.ExcessPa(2, outsideC), outsidePa, (double)row[3] * 86_400, 2e-10);
        })];
        MonthlyAccountResult account = MonthlyAccount.Run(
            [0.25, 0.006 / 0.13, 0.05 / 0.035, 0.001 / 50, 0.04], [0, 0.9, 0.05, 1500, 0], months);
        for (int month = 0; month < 12; month++)
        {
            Assert.Equal((double)rows[month][4], account.Months[month].GainAtFacesKgPerM2[3], 0.00005);
            Assert.Equal((double)rows[month][5], account.Months[month].HeldAtFacesKgPerM2[3], 0.00005);
        }
        Assert.Equal(YearOutcome.WetDriesByMonth, account.Verdict);
        Assert.Equal((9, 7, 2, 3), (account.StartMonth, account.DryMonth, account.PeakMonth, account.PeakFace));
        Assert.Equal(0.9994, account.PeakKgPerM2, 0.00005);
    }
}
