using Thermal.Heating;
using Thermal.Materials;
using Thermal.Power;

namespace Thermal.Tests.Exact;

/// <summary>Sun, loads and the running heater by hand.</summary>
public class PowerFigureTests
{
    private static readonly SolarPanel Panel = new() { Name = "roof", PeakW = 100 };

    private static readonly Load Lamps = new() { Name = "lamps", PowerW = 20, Rhythm = LoadRhythm.Evenings, HoursPerDay = 4 };

    /// <summary>Cells stand 31.25 K above the air in full sun: at −6.25 °C they are at 25 °C and the panel gives its peak, three quarters of which arrive.</summary>
    [Theory, InlineData(1000, -6.25, 75), InlineData(500, 9.375, 37.5), InlineData(1000, 18.75, 67.5), InlineData(1000, -31.25, 82.5), InlineData(0, 10, 0)]
    public void A_panel_gives_its_peak_at_25_degrees_and_less_when_hot(double sunWPerM2, double airC, double watts) =>
        Assert.Equal(watts, SolarYield.PanelW(Panel, sunWPerM2, airC), 1e-9);

    [Theory]
    [InlineData(18, 1, 22.5, 10), InlineData(19, 1, 22.5, 20), InlineData(22, 1, 22.5, 10), InlineData(23, 1, 22.5, 0)]
    [InlineData(0, 2, 1, 10), InlineData(20, 4, 1, 15), InlineData(20, 8, 1, 10), InlineData(0, 24, 12, 20 / 6.0)]
    public void Evenings_end_at_bedtime_even_past_midnight(double clockH, double stepH, double bedtimeH, double watts) =>
        Assert.Equal(watts, LoadPower.MeanW(Lamps, clockH, stepH, bedtimeH, 20), 1e-9);

    [Theory, InlineData(15, 0.25), InlineData(25, 0.35), InlineData(0, 0.1), InlineData(-40, 0.1), InlineData(80, 0.9)]
    public void A_fridge_runs_more_in_a_warm_room(double roomC, double fraction)
    {
        Assert.Equal(fraction, LoadPower.FridgeFraction(roomC), 1e-12);
        Assert.Equal(45 * fraction, LoadPower.MeanW(new() { Name = "fridge", PowerW = 45, Rhythm = LoadRhythm.Fridge }, 3, 1, 22, roomC), 1e-9);
    }

    [Fact]
    public void Hours_a_day_of_a_steady_load_are_spread_over_it() => Assert.Equal(5, LoadPower.MeanW(new() { Name = "router", PowerW = 10, HoursPerDay = 12 }, 3, 1, 22, 20));

    private static HeaterRun Night(double heatW, double hours, double quickJPerK, string key = "diesel_air_small")
    {
        HeaterClass heater = HeaterLibrary.Find(key)!;
        HeaterRun run = new(heater, quickJPerK);
        for (int i = 0; i < hours * 6; i++) run.Step(600, heatW, heater.LowestW, heater.HighestW);
        return run;
    }

    /// <summary>1 kW for 10 h over 0.80 and 42.84/3.6 · 0.832 kWh/L: 1.263 L; one start of 15 Wh and 150/1150 of the way from 10 to 28 W.</summary>
    [Fact]
    public void Fuel_and_current_of_a_night_that_runs_through()
    {
        HeaterRun run = Night(1000, 10, 1e5);
        Assert.Equal(10 / 0.80 / (42.84 / 3.6 * 0.832), run.AllFuelAmount, 1e-9);
        Assert.Equal(1, run.AllStartsCount);
        Assert.Equal((10 + 18 * 150 / 1150.0) / 6, run.ElectricWh, 1e-9);
    }

    /// <summary>400 W of at least 850 on 100 kJ/K: a cycle of 2e5·(1/450 + 1/400) s, so 3.812 starts an hour, and the first one.</summary>
    [Fact]
    public void Starts_of_a_cycling_night_add_up_to_those_of_the_steady_answer()
    {
        HeaterRun run = Night(400, 100, 1e5);
        double startsPerH = 3600 / (2e5 * (1 / 450.0 + 1 / 400.0));
        Assert.Equal(1 + 100 * startsPerH, run.AllStartsCount, 1e-8);
        Assert.Equal((10 * 400 / 850.0 + 15 * startsPerH) / 6, run.ElectricWh, 1e-9);
    }

    [Fact]
    public void Off_it_takes_nothing_and_going_on_again_is_a_start()
    {
        HeaterClass heater = HeaterLibrary.Find("diesel_air_small")!;
        HeaterRun run = new(heater, 1e5);
        foreach (double heatW in new[] { 0, 1000, 1500, 0, 1000.0 }) run.Step(600, heatW, 850, 2000);
        Assert.Equal(2, run.AllStartsCount);
        run.Step(600, 0, 850, 2000);
        Assert.Equal((0, 0, 0, false), (run.FuelAmount, run.ElectricWh, run.StartsCount, run.IsOn));
    }

    [Fact]
    public void An_electric_heater_burns_kilowatt_hours_and_draws_nothing_else()
    {
        HeaterRun run = Night(900, 10, 1e5, "electric_1kw");
        Assert.Equal(9, run.AllFuelAmount, 1e-9);
        Assert.Equal(0, run.ElectricWh);
    }

    /// <summary>Plausibility: owners and makers tell of 4 to 17 Ah a night of 8 h for a small heater.</summary>
    [Theory, InlineData(850, 1e5), InlineData(1200, 1e5), InlineData(1700, 1e5), InlineData(600, 3e5)]
    public void A_small_heater_draws_of_a_night_what_owners_tell(double heatW, double quickJPerK)
    {
        HeaterClass heater = HeaterLibrary.Find("diesel_air_small")!;
        HeaterRun run = new(heater, quickJPerK);
        double chargeAh = 0;
        for (int i = 0; i < 48; i++)
        {
            run.Step(600, heatW, heater.LowestW, heater.HighestW);
            chargeAh += run.ElectricWh / Battery.NominalV;
        }
        Assert.InRange(chargeAh, 4, 17);
    }
}
