using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Power;
using Thermal.Water;

namespace Thermal.Tests.Refusals;

/// <summary>Nonsense about batteries, panels, loads, pipes and running heaters is refused by name.</summary>
public class PowerRefusals
{
    private static readonly Battery Hundred = new() { UsableAh = 100 };

    private static readonly SolarPanel Panel = new() { Name = "roof", PeakW = 100 };

    private static readonly Load Lamps = new() { Name = "lamps", PowerW = 20, Rhythm = LoadRhythm.Evenings };

    private static readonly Pipe Pipe = new() { Name = "pipe", BoreM = 0.01, OuterM = 0.012 };

    private static void Refused(string parameter, Func<object?> make) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(() => { make(); }).ParamName);

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(1e6), InlineData(double.PositiveInfinity)]
    public void Batteries_and_what_feeds_them_are_those_of_a_vehicle(double value)
    {
        Refused("UsableAh", () => Hundred with { UsableAh = value });
        Refused("PadW", () => Hundred with { PadW = value });
        Refused("InsulationM2KPerW", () => Hundred with { InsulationM2KPerW = value });
        Refused("startFraction", () => new BatteryRun(Hundred, 20, value));
        Refused("batteryC", () => BatteryFigures.CapacityFraction(Chemistry.Lead, value is -1 ? -61 : value));
        Refused("sunW", () => ChargeOffer.Of(new() { Battery = Hundred }, value, null, false));
        Refused("shoreW", () => ChargeOffer.Of(new() { Battery = Hundred }, 0, value, false));
        Refused("AlternatorA", () => new BoardPower { Battery = Hundred, AlternatorA = value });
        Refused("ShoreChargerA", () => new BoardPower { Battery = Hundred, ShoreChargerA = value });
    }

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(1e6), InlineData(double.PositiveInfinity)]
    public void Panels_and_loads_are_those_of_a_vehicle(double value)
    {
        Refused("PeakW", () => Panel with { PeakW = value });
        Refused("TiltDeg", () => Panel with { TiltDeg = value });
        Refused("FacingDeg", () => Panel with { FacingDeg = value });
        Refused("sunWPerM2", () => SolarYield.PanelW(Panel, value, 10));
        Refused("airC", () => SolarYield.PanelW(Panel, 500, value is -1 ? 250 : value));
        Refused("PowerW", () => Lamps with { PowerW = value });
        Refused("HoursPerDay", () => Lamps with { HoursPerDay = value });
        Refused("clockH", () => LoadPower.MeanW(Lamps, value, 1, 22, 20));
        Refused("stepH", () => LoadPower.MeanW(Lamps, 20, value, 22, 20));
        Refused("bedtimeH", () => LoadPower.MeanW(Lamps, 20, 1, value, 20));
        Refused("roomC", () => LoadPower.FridgeFraction(value is -1 ? 293.15 : value));
    }

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(1e7), InlineData(double.PositiveInfinity)]
    public void Pipes_hot_water_and_running_heaters_are_those_of_a_vehicle(double value)
    {
        Refused("BoreM", () => Pipe with { BoreM = value });
        Refused("OuterM", () => Pipe with { OuterM = value });
        Refused("LengthM", () => Pipe with { LengthM = value });
        Refused("InsulationM", () => Pipe with { InsulationM = value });
        Refused("InsulationWPerMK", () => Pipe with { InsulationWPerMK = value });
        Refused("filmM2KPerW", () => PipeLoss.WPerMK(Pipe, value));
        Refused("waterL", () => ShowerWater.HeatKWh(value, 10));
        Refused("coldC", () => ShowerWater.HeatKWh(12, value));
        Refused("heatKWh", () => HeaterFuel.FuelAmount(HeaterLibrary.All[0], value));
        Refused("quickJPerK", () => new HeaterRun(HeaterLibrary.All[0], value is 1e7 ? 1e10 : value));
        Refused("windMPerS", () => SurfaceResistance.UnderFloorM2KPerW(value));
        Refused("heatW", () => { new HeaterRun(HeaterLibrary.All[0], 1e5).Step(600, value is -1 ? 1e7 : value, 850, 2000); return null; });
    }

    [Fact]
    public void Air_that_is_no_temperature_never_reaches_a_tank_or_a_battery()
    {
        Refused("roundC", () => { new TankRun(new() { Name = "tank", WaterL = 100, AreaM2 = 1 }, 10).Step(600, double.NaN, null, 20, 101_325, true); return null; });
        Refused("roundC", () => { new PipeRun(Pipe, 10).Step(600, double.NaN, null); return null; });
        Refused("batteryC", () => { new BatteryRun(Hundred, 10, 1).Step(600, 10, default, double.NaN, null); return null; });
    }

    [Fact]
    public void A_pipe_is_wider_outside_than_inside()
    {
        Refused("OuterM", () => PipeLoss.WaterKgPerM(Pipe with { OuterM = 0.009 }));
        Refused("OuterM", () => new PipeRun(Pipe with { OuterM = 0.009 }, 10));
    }
}
