using Thermal.Power;

namespace Thermal.Tests.Exact;

/// <summary>A battery's charge and temperature by hand: 12.8 W are an ampere.</summary>
public class BatteryRunTests
{
    private const double HourS = 3600;

    private static readonly Battery Hundred = new() { UsableAh = 100, Zone = "living" };

    private static readonly ChargeOffer None = new(0, 0, 0);

    [Fact]
    public void Ampere_hours_add_up_by_hand()
    {
        BatteryRun run = new(Hundred, 20, 0.5);
        run.Step(4 * HourS, 64, None, 20, null); // 5 A
        Assert.Equal(30, run.StoredAh, 1e-12);
        run.Step(HourS, 64, new(10, 20, 0), 20, null); // 25 A into it, 4 % lost
        Assert.Equal(54, run.StoredAh, 1e-12);
        Assert.Equal([10, 20, 0, 5, 1], new[] { run.SunAh, run.ShoreAh, run.AlternatorAh, run.DrawnAh, run.LostAh }.Select(ah => Math.Round(ah, 9)));
        Assert.Equal(0.54, run.ChargeFraction, 1e-12);
    }

    [Fact]
    public void Flat_it_serves_what_it_had_and_comes_back_when_it_holds_a_tenth()
    {
        BatteryRun run = new(Hundred, 20, 0.54);
        run.Step(6 * HourS, 128, None, 20, null); // 60 Ah wanted
        Assert.True(run.IsFlat);
        Assert.Equal(0.9, run.ServedFraction, 1e-12);
        run.Step(HourS, 128, new(4, 0, 0), 20, null); // too little for the loads: all of it charges
        Assert.Equal((0, 3.84), (run.ServedFraction, Math.Round(run.StoredAh, 9)));
        Assert.True(run.IsFlat);
        run.Step(HourS, 128, new(0, 20, 0), 20, null); // enough for the loads
        Assert.Equal(1, run.ServedFraction, 1e-12);
        Assert.Equal(13.44, run.StoredAh, 1e-9);
        Assert.False(run.IsFlat);
    }

    [Fact]
    public void The_sun_is_used_before_shore_and_shore_before_the_engine()
    {
        BatteryRun run = new(Hundred, 20, 0.5);
        run.Step(HourS / 2, 0, new(10, 45, 30), 20, null); // takes no more than 50 A
        Assert.Equal([5, 20, 0], new[] { run.SunAh, run.ShoreAh, run.AlternatorAh }.Select(ah => Math.Round(ah, 9)));
        Assert.Equal(74, run.StoredAh, 1e-9);
    }

    /// <summary>At 0 °C lithium gives four fifths; the rest comes back with warmth.</summary>
    [Fact]
    public void Cold_holds_charge_back_and_warmth_returns_it()
    {
        BatteryRun run = new(Hundred, 0, 1);
        Assert.Equal((80, 1), (Math.Round(run.ReachableAh, 9), run.ChargeFraction));
        run.Step(10 * HourS, 128, None, 0, null);
        Assert.Equal(0.8, run.ServedFraction, 1e-12);
        Assert.True(run.IsFlat);
        run.Step(1000 * HourS, 0, None, 20, null);
        Assert.Equal(20, run.ReachableAh, 1e-9);
        Assert.False(run.IsFlat);
    }

    [Theory]
    [InlineData(Chemistry.Lithium, 30, 1), InlineData(Chemistry.Lithium, 10, 0.9), InlineData(Chemistry.Lithium, -10, 0.75), InlineData(Chemistry.Lithium, -20, 0.7), InlineData(Chemistry.Lithium, -20.1, 0)]
    [InlineData(Chemistry.Lead, 20, 1), InlineData(Chemistry.Lead, 0, 0.85), InlineData(Chemistry.Lead, -20, 0.6), InlineData(Chemistry.Lead, -40, 0.35)]
    public void Capacity_falls_with_cold(Chemistry chemistry, double batteryC, double fraction) =>
        Assert.Equal(fraction, BatteryFigures.CapacityFraction(chemistry, batteryC), 1e-12);

    [Fact]
    public void Lithium_below_zero_refuses_charge_and_lead_takes_it()
    {
        BatteryRun lithium = new(Hundred, -5, 0.2), lead = new(Hundred with { Chemistry = Chemistry.Lead }, -5, 0.2);
        lithium.Step(HourS, 12.8, new(11, 0, 0), -5, null);
        lead.Step(HourS, 12.8, new(11, 0, 0), -5, null);
        Assert.Equal((10, 20, 1), (Math.Round(lithium.RefusedAh, 9), lithium.StoredAh, Math.Round(lithium.SunAh, 9))); // the load is served all the same
        Assert.Equal((0, 28.5), (lead.RefusedAh, Math.Round(lead.StoredAh, 9)));
    }

    /// <summary>
    /// 30 W into 11 kJ/K behind 0.33 m²/(0.87 + 0.13) = 0.33 W/K at −5 °C: 0 °C after τ·ln(90.91/85.91), 5 °C after τ·ln(90.91/80.91), τ = 33 333 s; then 3.3 W hold it.
    /// </summary>
    [Fact]
    public void A_pad_brings_lithium_to_5_degrees_and_charging_begins_at_zero()
    {
        BatteryRun run = new(Hundred with { PadW = 30, InsulationM2KPerW = 0.87 }, -5, 0.2);
        double tau = 11_000 / 0.33, end = 30 / 0.33, zeroH = tau * Math.Log(end / (end - 5)) / HourS, fiveH = tau * Math.Log(end / (end - 10)) / HourS;
        run.Step(2 * HourS, 0, new(10, 0, 0), -5, null);
        double takenAh = (10 - 30 / 12.8) * (fiveH - zeroH) + (10 - 3.3 / 12.8) * (2 - fiveH);
        Assert.Equal(5, run.BatteryC);
        Assert.Equal(30 * fiveH + 3.3 * (2 - fiveH), run.PadWh, 1e-9);
        Assert.Equal(20 + 0.96 * takenAh, run.StoredAh, 1e-9);
        Assert.Equal((10 - 30 / 12.8) * zeroH, run.RefusedAh, 1e-9);
        Assert.Equal(20 - run.RefusedAh, run.SunAh, 1e-9);
    }

    [Fact]
    public void A_pad_rests_without_charge_on_offer()
    {
        BatteryRun run = new(Hundred with { PadW = 30 }, 10, 0.5);
        run.Step(1000 * HourS, 0, None, -5, null);
        Assert.Equal((0, -5), (run.PadWh, Math.Round(run.BatteryC, 9)));
    }

    /// <summary>Its lump: 11 kJ/K and 0.33 m² over 0.13 m²·K/W in a room, over 1/84 under the floor at 20 m/s.</summary>
    [Theory, InlineData("living", 0.13), InlineData(null, 1 / 84.0)]
    public void It_cools_as_one_lump(string? zone, double film)
    {
        BatteryRun run = new(Hundred with { Zone = zone }, 20, 0.5);
        run.Step(HourS, 0, None, -10, 20);
        Assert.Equal(-10 + 30 * Math.Exp(-0.33 / film * HourS / 11_000), run.BatteryC, 1e-11);
        Assert.Equal(11_000 * (20 - run.BatteryC), run.GivenJ, 1e-7);
    }

    /// <summary>Nearly full, the current falls with what is missing: lead, 40 Ah missing of 100, 1 h: 40·e^(−0.85·t) left.</summary>
    [Fact]
    public void Nearly_full_lead_takes_ever_less()
    {
        BatteryRun run = new(Hundred with { Chemistry = Chemistry.Lead }, 20, 0.6);
        run.Step(3 * HourS, 0, new(0, 100, 0), 20, null);
        Assert.Equal(100 - 40 * Math.Exp(-0.85 * 3), run.StoredAh, 1e-9);
    }

    [Fact]
    public void The_charger_gives_its_current_or_what_the_site_is_enough_for()
    {
        BoardPower power = new() { Battery = Hundred, ShoreChargerA = 20, AlternatorA = 30 };
        Assert.Equal(new ChargeOffer(2, 20, 0), ChargeOffer.Of(power, 25.6, 3000, false));
        Assert.Equal(0.9 * 128 / 12.8, ChargeOffer.Of(power, 0, 128, false).ShoreA, 1e-12);
        Assert.Equal(new ChargeOffer(0, 0, 30), ChargeOffer.Of(power, 0, null, true));
    }
}
