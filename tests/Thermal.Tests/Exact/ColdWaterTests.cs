using Thermal.Envelope;
using Thermal.Water;

namespace Thermal.Tests.Exact;

/// <summary>Tanks and pipes stepped through time against closed forms: exponential cooling, the time at 0 °C, a pad that holds or does not.</summary>
public class ColdWaterTests
{
    private const double SeaLevelPa = 101_325;

    /// <summary>Bare 100 L slung under the floor, 1.6 m² and 0.10 m²·K/W: 16 W/K.</summary>
    private static readonly Tank Slung = new() { Name = "tank", WaterL = 100, AreaM2 = 1.6 };

    private static TankRun Run(Tank tank, double startC, double roundC, double hours, double stepS = 600, bool hasPower = true, double livingC = 20)
    {
        TankRun run = new(tank, startC);
        for (double s = 0; s < hours * 3600 - 1e-6; s += stepS) run.Step(Math.Min(stepS, hours * 3600 - s), roundC, null, livingC, SeaLevelPa, hasPower);
        return run;
    }

    /// <summary>T = T_a + (T_0 − T_a)·e^(−K·t/(m·c)); 16 W/K and 419 kJ/K.</summary>
    [Fact]
    public void A_tank_cools_as_the_exponential_says() =>
        Assert.Equal(-10 + 20 * Math.Exp(-16 * 5 * 3600 / 419_000.0), Run(Slung, 10, -10, 5).WaterC, 1e-11);

    [Fact]
    public void A_tank_reaches_zero_and_freezes_when_the_steady_answer_says()
    {
        double zeroH = TankFreezing.HoursToZeroH(100, 16, 10, -10)!.Value, iceH = TankFreezing.HoursToIceH(100, 16, -10, 0.1)!.Value;
        Assert.Equal(0, Run(Slung, 10, -10, zeroH).WaterC, 1e-9);
        Assert.Equal(0.1, Run(Slung, 10, -10, zeroH + iceH).IceFraction, 1e-9);
        TankRun allIce = Run(Slung, 10, -10, zeroH + 10 * iceH);
        Assert.Equal(1, allIce.IceFraction, 1e-9);
        Assert.Equal(0, allIce.WaterC, 1e-6);
    }

    /// <summary>All ice falls towards the air by its own heat capacity, 100 kg · 2050 J/(kg·K); from −5 °C in 6 h.</summary>
    [Fact]
    public void Ice_goes_on_cooling_and_melts_again()
    {
        Assert.Equal(-20 + 15 * Math.Exp(-16 * 6 * 3600 / 205_000.0), Run(Slung, -5, -20, 6).WaterC, 1e-11);
        double warmS = 205_000 / 16.0 * Math.Log(25 / 20.0), meltS = 100 * 334_000 / (16 * 20.0);
        Assert.Equal(0.5, Run(Slung, -5, 20, (warmS + meltS / 2) / 3600).IceFraction, 1e-9);
        Assert.Equal(20 - 20 * Math.Exp(-16 * 3600 / 419_000.0), Run(Slung, -5, 20, (warmS + meltS + 3600) / 3600).WaterC, 1e-9);
    }

    /// <summary>A slab of 0.10 m cooled on both sides by 20 W/(m²·K) at −10 °C: 26.06 h by Plank, P = 1/2 and R = 1/8, ρ 917, λ 2.22. Of it ρ·L·a²/(8·λ·ΔT) = 4.79 h are the ice's own resistance, which tanks leave out.</summary>
    [Fact]
    public void Without_the_ice_s_own_resistance_a_slab_freezes_sooner_than_by_Plank()
    {
        double ownH = 917 * 334_000 * 0.01 / (8 * 2.22 * 10) / 3600, restH = 26.06 - ownH;
        ColdWater slab = new(91.7, 0, Tank.PadOnC);
        slab.Step(restH * 3600, 40, -10, 0);
        Assert.Equal(1, slab.IceFraction, 0.0003); // half the last digit of 26.06 h
    }

    /// <summary>It cools to the pad's temperature, then the pad gives K·(3 + 10) = 208 W and no more.</summary>
    [Fact]
    public void A_pad_strong_enough_holds_its_temperature_with_what_is_lost()
    {
        TankRun run = Run(Slung with { PadW = 250 }, 10, -10, 48);
        Assert.Equal(3, run.WaterC, 1e-12);
        Assert.Equal(208, run.PadWh * 6, 1e-9);
        Assert.Equal(208, run.HoldW, 1e-9);
        Assert.Equal(208 * 600, run.GivenJ, 1e-6);
    }

    /// <summary>100 W at 16 W/K lift it 6.25 K above −4 °C: it settles at 2.25 °C. At −10 °C it freezes with 60 W to spare; without power sooner.</summary>
    [Fact]
    public void A_pad_too_weak_gives_all_it_has()
    {
        TankRun mild = Run(Slung with { PadW = 100 }, 10, -4, 200), cold = Run(Slung with { PadW = 100 }, 0, -10, 24), dead = Run(Slung with { PadW = 100 }, 0, -10, 24, hasPower: false);
        Assert.Equal(2.25, mild.WaterC, 1e-9);
        Assert.Equal(100, mild.PadWh * 6, 1e-9);
        Assert.Equal(60 * 24 * 3600 / 33.4e6, cold.IceFraction, 1e-9);
        Assert.Equal(160 * 24 * 3600 / 33.4e6, dead.IceFraction, 1e-9);
        Assert.Equal(0, dead.PadWh);
    }

    /// <summary>A pad that wakes in ice thaws it and stops at 3 °C; in warm air it never comes on.</summary>
    [Fact]
    public void A_pad_thaws_a_frozen_tank_and_rests_in_warm_air()
    {
        TankRun thawed = Run(Slung with { PadW = 1000 }, -2, -5, 20), warm = Run(Slung with { PadW = 1000 }, 4, 10, 5);
        Assert.Equal(3, thawed.WaterC, 1e-12);
        Assert.Equal(0, warm.PadWh);
        Assert.Equal(10 - 6 * Math.Exp(-16 * 5 * 3600 / 419_000.0), warm.WaterC, 1e-11);
    }

    /// <summary>10 m³/h at 20 °C (1.204 kg/m³, 1006 J/(kg·K)), half of it used: 1.682 W/K against 16 W/K to −5 °C; 0.1 % for the air's figures.</summary>
    [Fact]
    public void Warm_air_led_past_lifts_a_tank_as_two_exchanges_say()
    {
        double airWPerK = 0.5 * 10 / 3600 * 1.204 * 1006, endC = (16 * -5 + airWPerK * 20) / (16 + airWPerK);
        TankRun run = Run(Slung with { WarmAirM3PerH = 10 }, endC, -5, 1);
        Assert.Equal(endC < 0 ? endC : 0, Run(Slung with { WarmAirM3PerH = 10 }, -1, -5, 2000).WaterC, 0.03);
        Assert.Equal(run.FromWarmAirJ, run.GivenJ, 0.001 * run.GivenJ);
        Assert.Equal(airWPerK * (20 - endC) * 600, run.FromWarmAirJ, 0.002 * run.FromWarmAirJ);
    }

    [Fact]
    public void A_tank_in_a_room_has_the_films_of_a_room() =>
        Assert.Equal(-10 + 20 * Math.Exp(-1.6 / 0.13 * 5 * 3600 / 419_000), Run(Slung with { Zone = "garage" }, 10, -10, 5).WaterC, 1e-11);

    /// <summary>Parked sheltered 0.10; at 20 m/s 1/84; at walking pace no worse than parked.</summary>
    [Theory, InlineData(null, 0.10), InlineData(20.0, 1 / 84.0), InlineData(1.0, 0.10), InlineData(4.0, 0.05)]
    public void Driving_blows_along_what_hangs_under_the_floor(double? drivingMPerS, double film)
    {
        Assert.Equal(film, SurfaceResistance.UnderFloorM2KPerW(drivingMPerS), 1e-15);
        TankRun run = new(Slung, 10);
        run.Step(600, -10, drivingMPerS, 20, SeaLevelPa, true);
        Assert.Equal(-10 + 20 * Math.Exp(-1.6 / film * 600 / 419_000), run.WaterC, 1e-11);
    }

    [Fact]
    public void A_pipe_freezes_after_the_hours_of_its_loss()
    {
        Pipe pipe = new() { Name = "pipe", BoreM = 0.010, OuterM = 0.012, InsulationM = 0.013, LengthM = 3 };
        double kg = 10 * PipeLoss.WaterKgPerM(pipe), lossWPerK = 10 * PipeLoss.WPerMK(pipe, SurfaceResistance.ShelteredRoadM2KPerW);
        PipeRun run = new(pipe, 10);
        run.Step(TankFreezing.HoursToZeroH(kg, lossWPerK, 10, -10)!.Value * 3600, -10, null);
        Assert.Equal(0, run.WaterC, 1e-9);
        run.Step(TankFreezing.HoursToIceH(kg, lossWPerK, -10, 0.5)!.Value * 3600, -10, null);
        Assert.Equal(0.5, run.IceFraction, 1e-9);
    }

    /// <summary>12 L from 8 to 38 °C: 12 · 4190 · 30 J; water at 38 °C and more takes none.</summary>
    [Fact]
    public void A_shower_takes_the_heat_between_tank_and_skin()
    {
        Assert.Equal(1_508_400 / 3.6e6, ShowerWater.HeatKWh(12, 8), 1e-12);
        Assert.Equal(0, ShowerWater.HeatKWh(12, 40));
    }
}
