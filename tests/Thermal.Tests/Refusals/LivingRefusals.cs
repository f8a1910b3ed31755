using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Heating;
using Thermal.People;
using Thermal.Ventilation;
using Thermal.Water;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Refusals;

/// <summary>Nonsense about people, air, water, heat and trials is refused by name.</summary>
public class LivingRefusals
{
    private static readonly Habits Usual = new() { SleepersCount = 2 };

    private static readonly TwoNode Room = new(60_000, 400_000, 80, 30, 5);

    private static void Refused(string parameter, Func<object?> make) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(() => { make(); }).ParamName);

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(20_000), InlineData(double.PositiveInfinity)]
    public void Habits_are_those_of_people_in_a_vehicle(double value)
    {
        Refused("SetPointC", () => Usual with { SetPointC = value });
        Refused("NightH", () => Usual with { NightH = value });
        Refused("AtHomeH", () => Usual with { AtHomeH = value });
        Refused("MealsPerDay", () => Usual with { MealsPerDay = value });
        Refused("SteamPerMealG", () => Usual with { SteamPerMealG = Exactly(value) });
        Refused("FlamePerMealKWh", () => Usual with { FlamePerMealKWh = value });
        Refused("ShowersPerDay", () => Usual with { ShowersPerDay = value });
        Refused("VapourPerShowerG", () => Usual with { VapourPerShowerG = Exactly(value) });
        Refused("WaterPerShowerL", () => Usual with { WaterPerShowerL = value });
        Refused("DryingPerDayG", () => Usual with { DryingPerDayG = value });
        Refused("PetsGPerH", () => Usual with { PetsGPerH = value });
        Refused("FanAtNightM3PerH", () => Usual with { FanAtNightM3PerH = value });
        Refused("FanCurrentA", () => Usual with { FanCurrentA = value });
    }

    [Theory, InlineData(-1), InlineData(13)]
    public void Sleepers_are_counted(int sleepers) => Refused("SleepersCount", () => Usual with { SleepersCount = sleepers });

    [Theory, InlineData(double.NaN), InlineData(0), InlineData(60)]
    public void Humidity_is_a_fraction_and_not_a_percentage(double fraction)
    {
        Refused("HumidityAimFraction", () => Usual with { HumidityAimFraction = fraction });
        Refused("FixedHumidityFraction", () => Usual with { FixedHumidityFraction = fraction });
    }

    [Theory, InlineData(0), InlineData(6)]
    public void A_humidity_class_is_one_to_five(int steps) => Refused("HumidityClass", () => Usual with { HumidityClass = steps });

    [Fact]
    public void Nights_lived_in_are_twelve_shares()
    {
        Assert.Throws<ArgumentException>(() => Usual with { NightsLivedInFraction = [1, 1] });
        Refused("NightsLivedInFraction", () => Usual with { NightsLivedInFraction = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 31] });
    }

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(1e6)]
    public void Air_is_that_of_a_vehicle(double value)
    {
        Refused("airM3PerH", () => BodyLoads.CarbonDioxideAtDawnPpm(Usual, 10, value));
        Refused("volumeM3", () => BodyLoads.CarbonDioxideAtDawnPpm(Usual, value, 10));
        Refused("heightM", () => AirFlow.StackPa(value, 20, 0, 1.3));
        Refused("insideC", () => AirFlow.StackPa(1.6, value is -1 ? 293.15 : value, 0, 1.3));
        Refused("outsideDensityKgPerM3", () => AirFlow.StackPa(1.6, 20, 0, value));
        Refused("windMPerS", () => AirFlow.WindPa(value, 0.4, 1.3));
        Refused("pressureFactor", () => AirFlow.WindPa(3, value, 1.3));
        Refused("lowM2", () => AirFlow.ThroughPairM3PerS(value, 0.001, 2, 1.3));
        Refused("highM2", () => AirFlow.ThroughPairM3PerS(0.001, value, 2, 1.3));
        Refused("pressurePa", () => AirFlow.ThroughPairM3PerS(0.001, 0.001, value, 1.3));
        Refused("floorAreaM2", () => SafetyVents.For(value, true));
    }

    [Fact]
    public void A_closed_opening_lets_nothing_through() => Assert.Equal(0, AirFlow.ThroughPairM3PerS(0, 0.01, 2, 1.3));

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(0), InlineData(1e6)]
    public void Water_is_that_of_a_vehicle(double value)
    {
        Refused("WaterL", () => new Tank { Name = "tank", WaterL = value, AreaM2 = 1 });
        Refused("AreaM2", () => new Tank { Name = "tank", WaterL = 100, AreaM2 = value });
        Refused("waterKg", () => TankFreezing.HoursToZeroH(value, 5, 10, -5));
        Refused("lossWPerK", () => TankFreezing.HoursToIceH(100, value, -5, 0.1));
        Refused("startC", () => TankFreezing.HoursToZeroH(100, 5, value == 0 ? -0.1 : value, -5));
    }

    [Fact]
    public void A_tank_in_mild_air_never_freezes()
    {
        Assert.Null(TankFreezing.HoursToZeroH(100, 5, 10, 0));
        Assert.Null(TankFreezing.HoursToIceH(100, 5, 3, 0.1));
    }

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(1e7)]
    public void A_warm_up_has_a_time_and_a_difference(double value)
    {
        Refused("hours", () => Room.After(value, 1000));
        Refused("hours", () => Room.WarmUpW(30, value));
        Refused("differenceK", () => Room.WarmUpW(value, 2));
        Refused("differenceK", () => Room.WarmUpH(value, 2000));
        Refused("heatW", () => Room.WarmUpH(30, value));
        Refused("heatW", () => PartLoad.Of(HeaterLibrary.All[0], 850, 2000, value, 1e5));
        Refused("WarmUpH", () => PlausibleVan.Case with { WarmUpH = value });
    }

    [Fact]
    public void A_heater_that_is_not_in_the_table_is_not_found() => Assert.Null(HeaterLibrary.Find("Diesel air small"));

    [Theory, InlineData("ceiling", 1), InlineData("roof", -1), InlineData("roof", 3)]
    public void A_panel_or_layer_that_is_not_there_is_refused(string panel, int layer) => Assert.Throws<ArgumentException>(() => Thicknesses.Of(PlausibleVan.Case, panel, layer));

    [Fact]
    public void A_humidity_rule_without_its_figure_names_the_figure()
    {
        Case With(HumidityRule rule) => PlausibleVan.Case with { Habits = PlausibleVan.Case.Habits with { Humidity = rule } };
        Assert.Contains("FixedHumidityFraction", Assert.Throws<ArgumentException>(() => Assess.Of(With(HumidityRule.Fixed))).Message, StringComparison.Ordinal);
        Assert.Contains("HumidityClass", Assert.Throws<ArgumentException>(() => Assess.Of(With(HumidityRule.Class))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tank_in_a_zone_that_is_not_there_names_the_zone()
    {
        Case asked = PlausibleVan.Case with { Tanks = [new() { Name = "tank", WaterL = 50, AreaM2 = 1, Zone = "garage" }] };
        Assert.Contains("garage", Assert.Throws<ArgumentException>(() => Assess.Of(asked)).Message, StringComparison.Ordinal);
    }
}
