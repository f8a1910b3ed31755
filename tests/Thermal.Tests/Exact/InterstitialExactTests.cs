using Thermal.Air;
using Thermal.Moisture;

namespace Thermal.Tests.Exact;

/// <summary>Build-ups whose answer is a short formula.</summary>
public class InterstitialExactTests
{
    private const double Permeability = 2e-10;

    private static readonly double[] VanResistances = [0.13, 0.05, 1.5, 0.00002, 0.04], VanDiffusionThicknesses = [0, 0.9, 0.1, 1500, 0];

    /// <summary>One plane behind s_d 1 m: δ0·((p_i − p_c)/1 − (p_c − p_e)/1500).</summary>
    [Fact]
    public void A_tight_skin_takes_what_diffuses_in_less_the_little_that_leaves()
    {
        GlaserResult night = GlaserNight.Profile(VanResistances, VanDiffusionThicknesses, 20, -15, 1168, 140, Permeability);
        double skinC = 20 - 35 * 1.68 / 1.72002, skinPa = 610.5 * Math.Exp(21.875 * skinC / (265.5 + skinC));
        double expected = Permeability * ((1168 - skinPa) / 1.0 - (skinPa - 140) / 1500);
        Assert.Equal(expected, night.RatesAtFacesKgPerM2S[3], 1e-13 * expected);
        Assert.Equal(Permeability * (skinPa - 140) / 1500, night.OutKgPerM2S, 1e-12 * night.OutKgPerM2S); // no digits lost to the 1500 m
        Assert.Equal(3, night.WettestFace);
    }

    /// <summary>A skin of a thousand kilometres lets through a milligram in a month, exactly what its s_d says; all the rest dries inwards.</summary>
    [Fact]
    public void Drying_does_not_pass_through_the_skin()
    {
        double[] diffusionThicknesses = [0, 0.9, 0.1, 1e6, 0];
        MonthConditions wet = new(20, -10, 1300, 200, 30 * 86_400, Permeability), dry = new(20, 18, 1200, 500, 30 * 86_400, Permeability);
        MonthlyAccountResult account = MonthlyAccount.Run(VanResistances, diffusionThicknesses, [wet, .. Enumerable.Repeat(dry, 11)]);
        double skinPa = SaturationPressure.PairPa(20 - 2 * 1.68 / 1.72002);
        Assert.Equal(-Permeability * (skinPa - 1200) * 30 * 86_400, account.Months[1].InKgPerM2, 1e-12);
        double throughSkin = Permeability * (skinPa - 500) / 1e6 * 30 * 86_400;
        Assert.Equal(throughSkin, account.Months[1].OutKgPerM2, 1e-9 * throughSkin);
        Assert.InRange(throughSkin, 0, 1e-6);
    }

    /// <summary>Water m settles in month 1; in month 2 it leaves at rate r, so it is gone after m/r seconds and nothing flows afterwards.</summary>
    [Fact]
    public void A_plane_that_runs_dry_within_a_month_stops_giving_water_at_that_moment()
    {
        MonthConditions wet = new(20, -10, 1300, 200, 10 * 86_400, Permeability), dry = new(20, 20, 1000, 1000, 30 * 86_400, Permeability);
        MonthlyAccountResult account = MonthlyAccount.Run(VanResistances, VanDiffusionThicknesses, [wet, .. Enumerable.Repeat(dry, 11)]);
        double settled = account.Months[0].HeldKgPerM2;
        Assert.InRange(settled, 0.1, 0.2); // 1.04e-7·10 d: the case is what the name says
        double fallPa = SaturationPressure.OverWaterPa(20) - 1000, ratio = 1.0 / 1500;
        Assert.Equal(0, account.Months[1].HeldKgPerM2);
        Assert.InRange(Permeability * fallPa * (1 + ratio) * 30 * 86_400 / settled, 2, 8); // it would have dried several times over
        Assert.Equal(-settled / (1 + ratio), account.Months[1].InKgPerM2, 1e-13);
        Assert.Equal(settled * ratio / (1 + ratio), account.Months[1].OutKgPerM2, 1e-13);
        Assert.Equal((YearOutcome.WetDriesByMonth, 0, 1, 1), (account.Verdict, account.StartMonth, account.DryMonth, account.YearsComputed));
    }

    /// <summary>The plane of the test above, with air that carries water away as well: both shares follow their rates.</summary>
    [Fact]
    public void Passing_air_shortens_the_drying_and_takes_its_share()
    {
        const double airKgPerM2S = 1e-7;
        MonthConditions wet = new(20, -10, 1300, 200, 10 * 86_400, Permeability);
        MonthConditions dry = new(20, 20, 1000, 1000, 30 * 86_400, Permeability) { SourcesAtFacesKgPerM2S = [0, 0, 0, -airKgPerM2S, 0, 0] };
        MonthlyAccountResult account = MonthlyAccount.Run(VanResistances, VanDiffusionThicknesses, [wet, .. Enumerable.Repeat(dry, 11)]);
        double settled = account.Months[0].HeldKgPerM2, inwards = Permeability * (SaturationPressure.OverWaterPa(20) - 1000);
        double all = inwards * (1 + 1.0 / 1500) + airKgPerM2S;
        Assert.Equal(-settled * airKgPerM2S / all, account.Months[1].SourceKgPerM2, 1e-13);
        Assert.Equal(-settled * inwards / all, account.Months[1].InKgPerM2, 1e-13);
        Assert.Equal((0.0, 0.0), (account.Months[1].HeldKgPerM2, account.Months[2].SourceKgPerM2));
    }

    /// <summary>What diffuses to the skin, 2.08e-7 kg/(m²·s), less what the air can take; nothing where the air can take more.</summary>
    [Theory, InlineData(1e-7), InlineData(3e-7)]
    public void Passing_air_keeps_a_skin_dry_that_wets_more_slowly_than_it_can_dry(double airKgPerM2S)
    {
        MonthConditions month = new(20, -10, 1300, 200, 10 * 86_400, Permeability) { SourcesAtFacesKgPerM2S = [0, 0, 0, -airKgPerM2S, 0, 0] };
        double skinPa = SaturationPressure.PairPa(20 - 30 * 1.68 / 1.72002), arrives = Permeability * (1300 - skinPa - (skinPa - 200) / 1500);
        MonthlyAccountResult account = MonthlyAccount.Run(VanResistances, VanDiffusionThicknesses, [.. Enumerable.Repeat(month, 12)]);
        Assert.Equal(Math.Max(0, arrives - airKgPerM2S) * 10 * 86_400, account.Months[0].HeldKgPerM2, 1e-12);
        Assert.Equal(-Math.Min(arrives, airKgPerM2S) * 10 * 86_400, account.Months[0].SourceKgPerM2, 1e-12);
    }

    /// <summary>A dry build-up shares the fall by s_d: 1 of 4 m; a source s there adds s/δ0·(1·3/4).</summary>
    [Fact]
    public void Dry_faces_share_the_fall_of_vapour_pressure_by_s_d()
    {
        GlaserResult night = GlaserNight.Profile([0.13, 1, 1, 0.04], [0, 1, 3, 0], 20, 10, 1000, 800, Permeability);
        double[] expected = [1000, 1000, 950, 800, 800];
        for (int face = 0; face < 5; face++) Assert.Equal(expected[face], night.VapourPressuresAtFacesPa[face], 1e-10);
        double[] pressuresPa = new double[3], ratesKgPerM2S = new double[3];
        VapourFlows flows = TautString.Solve([1, 3], [1000, 5000, 800], [], [0, 1e-8, 0], Permeability, pressuresPa, ratesKgPerM2S);
        Assert.Equal(987.5, pressuresPa[1], 1e-10);
        Assert.Equal((0, 12.5 * Permeability, 62.5 * Permeability), (ratesKgPerM2S[1], flows.InKgPerM2S, flows.OutKgPerM2S), SameFlows);
    }

    private static bool SameFlows((double Rate, double In, double Out) expected, (double Rate, double In, double Out) actual) =>
        expected.Rate == actual.Rate && Math.Abs(actual.In / expected.In - 1) < 1e-12 && Math.Abs(actual.Out / expected.Out - 1) < 1e-12;

    [Fact]
    public void Faces_without_vapour_resistance_between_them_gather_water_at_the_coldest()
    {
        GlaserResult night = GlaserNight.Profile([0.13, 0.1, 1.0, 0.5, 0.001, 0.04], [0, 1, 0, 0, 2000, 0], 20, -10, 1400, 200, Permeability);
        Assert.Equal([0, 0, 0, 0, night.SettlesKgPerM2S, 0, 0], night.RatesAtFacesKgPerM2S);
        Assert.Equal(night.SaturationsAtFacesPa[4], night.VapourPressuresAtFacesPa[2]);
        Assert.Equal(Permeability * (1400 - night.SaturationsAtFacesPa[4]), night.InKgPerM2S, 1e-20);
    }

    /// <summary>Bare metal with a film of no s_d: the surface is wet, but that water belongs to the room's balance.</summary>
    [Fact]
    public void A_wet_inner_surface_is_seen_and_not_counted()
    {
        GlaserResult night = GlaserNight.Profile([0.13, 0.00002, 0.04], [0, 1500, 0], 20, -10, 1400, 200, Permeability);
        Assert.Equal(night.SaturationsAtFacesPa[1], night.VapourPressuresAtFacesPa[1]);
        Assert.Equal((0, 1400), (night.SettlesKgPerM2S, night.VapourPressuresAtFacesPa[0]));
        Assert.Null(night.WettestFace);
    }

    /// <summary>Whatever the lining: 500/(1168 − p_skin) for a wall and 800/(1168 − p_skin) for a roof; p_skin is 405 to 440 Pa.</summary>
    [Theory, InlineData(0.5), InlineData(3), InlineData(40)]
    public void Behind_a_tight_skin_the_block_climate_says_the_same_whatever_the_lining(double liningM)
    {
        double[] resistances = [0.05, 1.5, 0.00002], diffusionThicknesses = [liningM, 0.05, 1500];
        BlockClimateResult wall = BlockClimate.Of(resistances, diffusionThicknesses, isRoof: false), roof = BlockClimate.Of(resistances, diffusionThicknesses, isRoof: true);
        Assert.True(wall.OutsideScope && roof.OutsideScope);
        double skinPa = SaturationPressure.PairPa(-5 + 25 * 0.04002 / 1.84002);
        double outwards = (1 / (liningM + 0.05) + 1 / 1500.0) / (1 / (liningM + 0.05) - (skinPa - 321) / (1168 - skinPa) / 1500);
        Assert.Equal(500 / (1168 - skinPa) * outwards, wall.EvaporableKgPerM2!.Value / wall.CondensedKgPerM2, 1e-9);
        Assert.Equal(1.6, roof.EvaporableKgPerM2!.Value / wall.EvaporableKgPerM2.Value, 1e-12);
    }

    [Fact]
    public void An_open_outer_board_is_within_the_scope_of_the_block_climate()
    {
        Assert.False(BlockClimate.Of([0.15, 4, 0.15], [0.95, 0.16, 1.9], isRoof: false).OutsideScope);
        BlockClimateResult dry = BlockClimate.Of([0.15, 4, 0.15], [50, 0.16, 0.1], isRoof: false);
        Assert.Equal((0, null, false), (dry.CondensedKgPerM2, dry.EvaporableKgPerM2, dry.OutsideScope));
    }

    /// <summary>0.1 m³ an hour of 20 °C and 50 % at a skin of -12 °C, worked by hand with the ideal gas.</summary>
    [Fact]
    public void Air_behind_the_lining_leaves_what_it_cannot_hold_at_the_skin()
    {
        double roomPa = 1168.5, skinPa = 610.5 * Math.Exp(21.875 * -12 / 253.5);
        double dryAir = (101_325 - roomPa) / (287.042 * 293.15), excess = 0.621945 * (roomPa / (101_325 - roomPa) - skinPa / (101_325 - skinPa));
        double expected = 0.1 / 3600 * dryAir * excess;
        Assert.Equal(expected, AirBehindLining.WettingKgPerM2S(0.1 / 3600, 20, roomPa, -12, 101_325), 1e-12 * expected);
        Assert.InRange(expected * 8 * 3600, 0.004, 0.007); // five grams in a night
        Assert.Equal(0, AirBehindLining.WettingKgPerM2S(0.1 / 3600, 20, roomPa, 9.5, 101_325));
    }

    [Theory, InlineData(1, -10, 270), InlineData(3, 0, 810), InlineData(4, 5, 810), InlineData(5, 10, 675), InlineData(2, 20, 0), InlineData(5, 30, 0)]
    public void Humidity_classes_fall_in_a_straight_line_from_freezing_to_twenty_degrees(int humidityClass, double outsideC, double excessPa) =>
        Assert.Equal(excessPa, HumidityClass.ExcessPa(humidityClass, outsideC), 1e-9);

    [Fact]
    public void A_plain_build_up_has_the_temperature_factor_of_its_inside_film()
    {
        double transmittance = 1 / (0.25 + 1.5 + 0.04);
        double surfaceC = 20 - 25 * 0.25 * transmittance;
        Assert.Equal(MouldRisk.TemperatureFactor(surfaceC, 20, -5), MouldRisk.TemperatureFactorOfTransmittance(transmittance, 0.25), 1e-12);
        double highest = MouldRisk.HighestInsideHumidityFraction(MouldRisk.TemperatureFactor(surfaceC, 20, -5), 20, -5);
        Assert.Equal(0.8, MouldRisk.SurfaceHumidityFraction(highest * SaturationPressure.OverWaterPa(20), surfaceC), 1e-12);
    }

    /// <summary>T^0.81/P: at 2000 m air is as much easier to cross as it is thinner, 27 %.</summary>
    [Fact]
    public void Vapour_diffuses_faster_in_thin_air()
    {
        double sea = Diffusion.PermeabilityKgPerMSPa(10, Atmosphere.SeaLevelPa), high = Diffusion.PermeabilityKgPerMSPa(10, Atmosphere.PressurePa(2000));
        Assert.Equal(1.2746, high / sea, 1e-4); // 101 325 / 79 495, the printed pressure
        Assert.Equal(1.911e-10, sea, 0.001e-10); // 2e-7·96.8/101 325 by hand
    }

    [Fact]
    public void The_night_kernel_allocates_nothing()
    {
        double[] resistances = [0.13, 0.05, 0.8, 0.7, 0.00002, 0.04], diffusionThicknesses = [0, 0.9, 0.1, 3, 1500, 0];
        double[] temperatures = new double[7], saturations = new double[7], pressures = new double[7], rates = new double[7];
        double sum = 0;
        for (int warm = 0; warm < 2; warm++) sum += Many(10);
        long before = GC.GetAllocatedBytesForCurrentThread();
        sum += Many(1000);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);

        double Many(int count)
        {
            double total = 0;
            for (int i = 0; i < count; i++)
                total += GlaserNight.Solve(resistances, diffusionThicknesses, 20, -15, 1168, 140, Permeability, temperatures, saturations, pressures, rates).InKgPerM2S;
            return total;
        }
    }
}
