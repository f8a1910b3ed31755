using CsCheck;
using Thermal.Heating;
using Thermal.Power;
using Thermal.Water;

namespace Thermal.Tests.Property;

/// <summary>Laws of what is stepped beside the rooms: the length of a step does not matter while nothing round it changes, and books close.</summary>
public class StepLaws
{
    private const double SeaLevelPa = 101_325;

    private static readonly Gen<Tank> AnyTank = Gen.Select(Gen.Double[5, 300], Gen.Double[0.2, 5], Gen.Double[0, 3], Gen.Double[0, 40], Gen.Double[0, 300])
        .Select((litres, area, insulation, air, pad) => new Tank { Name = "tank", WaterL = litres, AreaM2 = area, InsulationM2KPerW = insulation, WarmAirM3PerH = air, PadW = pad });

    private static readonly Gen<(double StepS, double RoundC, double StartC)> Surroundings = Gen.Select(Gen.Double[60, 1e6], Gen.Double[-40, 30], Gen.Double[-20, 30]);

    private static readonly Gen<Battery> AnyBattery = Gen.Select(Gen.Double[20, 600], Gen.Bool, Gen.Double[0, 3], Gen.Double[0, 100])
        .Select((charge, isLead, insulation, pad) => new Battery { UsableAh = charge, Chemistry = isLead ? Chemistry.Lead : Chemistry.Lithium, InsulationM2KPerW = insulation, PadW = pad });

    private static readonly Gen<ChargeOffer> AnyOffer = Gen.Select(Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 40]), Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 60]), Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 60]))
        .Select((sun, shore, alternator) => new ChargeOffer(sun, shore, alternator));

    [Fact]
    public void Two_half_steps_of_a_tank_are_one_whole_step() => Gen.Select(AnyTank, Surroundings, Gen.Double[0.01, 0.99]).Sample((tank, round, share) =>
    {
        TankRun whole = new(tank, round.StartC), parts = new(tank, round.StartC);
        whole.Step(round.StepS, round.RoundC, null, 20, SeaLevelPa, true);
        parts.Step(round.StepS * share, round.RoundC, null, 20, SeaLevelPa, true);
        double padWh = parts.PadWh, givenJ = parts.GivenJ;
        parts.Step(round.StepS * (1 - share), round.RoundC, null, 20, SeaLevelPa, true);
        Assert.Equal(whole.WaterC, parts.WaterC, 1e-9);
        Assert.Equal(whole.IceFraction, parts.IceFraction, 1e-9);
        Assert.Equal(whole.PadWh, padWh + parts.PadWh, 1e-9 * (1 + whole.PadWh));
        Assert.Equal(whole.GivenJ, givenJ + parts.GivenJ, 1e-9 * (1e6 + Math.Abs(whole.GivenJ)));
    });

    /// <summary>Content counted from temperature and ice: what came in by the pad and the warm air less what was given away.</summary>
    [Fact]
    public void Heat_of_a_tank_closes() => Gen.Select(AnyTank, Surroundings).Sample((tank, round) =>
    {
        TankRun run = new(tank, round.StartC);
        double before = Content(tank, run);
        run.Step(round.StepS, round.RoundC, null, 20, SeaLevelPa, true);
        Assert.Equal(run.PadWh * 3600 + run.FromWarmAirJ - run.GivenJ, Content(tank, run) - before, 1e-9 * (1e8 + Math.Abs(run.GivenJ)));

        static double Content(Tank tank, TankRun run) => tank.WaterL * ((run.WaterC > 0 ? 4190 : 2050) * run.WaterC - 334_000 * run.IceFraction);
    });

    [Fact]
    public void Colder_air_never_leaves_a_tank_warmer_or_with_less_ice() => Gen.Select(AnyTank, Surroundings, Gen.Double[0, 10]).Sample((tank, round, colderK) =>
    {
        TankRun warm = new(tank, round.StartC), cold = new(tank, round.StartC);
        warm.Step(round.StepS, round.RoundC, null, 20, SeaLevelPa, true);
        cold.Step(round.StepS, round.RoundC - colderK, null, 20, SeaLevelPa, true);
        return cold.WaterC <= warm.WaterC + 1e-9 && cold.IceFraction >= warm.IceFraction - 1e-9 && cold.PadWh >= warm.PadWh - 1e-9 * (1 + warm.PadWh);
    });

    /// <summary>Through warmth and frost, charging and drawing: sun + shore + engine = loads + pad + lost + what is stored more; and the heat of its lump.</summary>
    [Fact]
    public void Ampere_hours_close_and_stay_within_the_battery() => Gen.Select(AnyBattery, Gen.Select(AnyOffer, Gen.Double[0, 400], Gen.Double[-30, 30], Gen.Double[60, 40_000]).Array[1, 20], Gen.Double[0, 1])
        .Sample((battery, steps, start) =>
        {
            BatteryRun run = new(battery, 10, start);
            foreach ((ChargeOffer offer, double loadW, double roundC, double stepS) in steps)
            {
                (double storedAh, bool wasFlat) = (run.StoredAh, run.IsFlat);
                run.Step(stepS, loadW, offer, roundC, null);
                double inAh = run.SunAh + run.ShoreAh + run.AlternatorAh;
                Assert.Equal(inAh - run.DrawnAh - run.PadWh / 12.8 - run.LostAh, run.StoredAh - storedAh, 1e-9 * (1 + inAh + run.DrawnAh));
                Assert.InRange(run.StoredAh, 0, battery.UsableAh);
                Assert.InRange(run.ChargeFraction, 0, 1);
                Assert.InRange(run.ServedFraction, 0, 1 + 1e-12);
                Assert.InRange(run.AlternatorAh, -1e-9, offer.AlternatorA * stepS / 3600 + 1e-9);
                Assert.InRange(run.RefusedAh, 0, offer.AllA * stepS / 3600 + 1e-9);
                Assert.True(run.ServedFraction > 1 - 1e-9 || run.IsFlat || wasFlat);
            }
        });

    [Fact]
    public void Two_half_steps_of_a_charging_battery_are_one_whole_step() => Gen.Select(AnyBattery, AnyOffer, Surroundings, Gen.Double[0.01, 0.99]).Sample((battery, offer, round, share) =>
    {
        double loadW = offer.AllA * 12.8 * 0.3;
        BatteryRun whole = new(battery, round.StartC, 0.4), parts = new(battery, round.StartC, 0.4);
        whole.Step(round.StepS, loadW, offer, round.RoundC, null);
        parts.Step(round.StepS * share, loadW, offer, round.RoundC, null);
        (double padWh, double refusedAh) = (parts.PadWh, parts.RefusedAh);
        parts.Step(round.StepS * (1 - share), loadW, offer, round.RoundC, null);
        Assert.Equal(whole.BatteryC, parts.BatteryC, 1e-9);
        Assert.Equal(whole.StoredAh, parts.StoredAh, 1e-9 * battery.UsableAh);
        Assert.Equal(whole.PadWh, padWh + parts.PadWh, 1e-9 * (1 + whole.PadWh));
        Assert.Equal(whole.RefusedAh, refusedAh + parts.RefusedAh, 1e-9 * (1 + whole.RefusedAh));
    });

    /// <summary>Fuel, current and starts of any constant heat, however it is cut into steps, are those of the steady answer and one start.</summary>
    [Fact]
    public void A_running_heater_adds_up_to_the_steady_answer() => Gen.Select(Gen.Int[0, HeaterLibrary.All.Count - 1], Gen.Double[0.01, 1], Gen.Double[1e4, 1e6], Gen.Double[60, 900].Array[1, 30])
        .Sample((index, share, quick, steps) =>
        {
            HeaterClass heater = HeaterLibrary.All[index];
            double heatW = share * heater.HighestW, hours = steps.Sum() / 3600, electricWh = 0;
            HeaterRun run = new(heater, quick);
            foreach (double stepS in steps)
            {
                run.Step(stepS, heatW, heater.LowestW, heater.HighestW);
                electricWh += run.ElectricWh;
            }
            PartLoad steady = PartLoad.Of(heater, heater.LowestW, heater.HighestW, heatW, quick);
            Assert.Equal(heatW * hours / 1000, run.AllFuelAmount * heater.EfficiencyFraction.Value * Materials.FuelData.Of(heater.Fuel).NetHeatPerUnitKWh, 1e-9 * heatW * hours);
            Assert.Equal(1 + steady.StartsPerH * hours, run.AllStartsCount, 1e-9 * (1 + run.AllStartsCount));
            Assert.Equal(steady.ElectricW * hours + heater.StartWh.Value, electricWh, 1e-9 * (1 + electricWh));
        });

    [Fact]
    public void Nothing_is_allocated_on_the_way()
    {
        TankRun tank = new(new() { Name = "tank", WaterL = 100, AreaM2 = 1.6, PadW = 50, WarmAirM3PerH = 5 }, 5);
        PipeRun pipe = new(new() { Name = "pipe", BoreM = 0.01, OuterM = 0.012 }, 5);
        BatteryRun battery = new(new() { UsableAh = 100, PadW = 20 }, -3, 0.5);
        HeaterRun heater = new(HeaterLibrary.All[0], 1e5);
        Once();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++) Once();
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        void Once()
        {
            tank.Step(600, -10, null, 20, SeaLevelPa, true);
            pipe.Step(600, -10, 20);
            battery.Step(600, 40, new(10, 0, 0), -10, null);
            heater.Step(600, 500, 850, 2000);
        }
    }
}
