using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.People;
using Thermal.Ventilation;
using Thermal.Water;
using Thermal.Zones;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Published;

/// <summary>Figures of the trade that follow from a formula: tanks, vents, carbon dioxide, air to stay dry, water of a flame.</summary>
public class LivingTests
{
    public static IEnumerable<object[]> Tanks => PublishedTable.Rows("tank-times.csv");

    public static IEnumerable<object[]> Vents => PublishedTable.Rows("vent-flows.csv");

    public static IEnumerable<object[]> AirToStayDry => PublishedTable.Rows("air-to-stay-dry.csv");

    [Theory, MemberData(nameof(Tanks))]
    public void A_tank_freezes_and_is_held_as_the_sheet_says(double u, double outsideC, double toZeroH, double toIceH, double holdW, double relative, double halfDigit)
    {
        Assert.Equal(toZeroH, TankFreezing.HoursToZeroH(100, u * 1.6, 10, outsideC)!.Value, relative * toZeroH + halfDigit);
        Assert.Equal(toIceH, TankFreezing.HoursToIceH(100, u * 1.6, outsideC, 0.1)!.Value, relative * toIceH + halfDigit);
        if (1 / u < SurfaceResistance.ShelteredRoadM2KPerW) return; // bare in the wind: no tank of ours hangs that openly
        Case asked = PlausibleVan.Case with
        {
            ColdNight = PlausibleVan.Case.ColdNight with { OutsideC = outsideC },
            Tanks = [new() { Name = "tank", WaterL = 100, AreaM2 = 1.6, InsulationM2KPerW = 1 / u - SurfaceResistance.ShelteredRoadM2KPerW }],
        };
        TankAnswer tank = HeatingAnswers.Tanks(asked, Balances.Night(asked, asked.ColdNight))[0];
        Assert.Equal(holdW, tank.HoldW, relative * holdW + 0.5);
        Assert.Equal(TankFreezing.HoursToZeroH(100, u * 1.6, 10, outsideC)!.Value, tank.HoursToZeroH!.Value, 1e-9);
    }

    /// <summary>A pipe of 10/12 mm at −10 °C, h 10: from 10 to 0 °C in 10 min bare and 23 min in 13 mm of foam, frozen through after 2 h and 4.4 h. Foam λ 0.035 fits; half the last digit.</summary>
    [Theory, InlineData(0, 10, 2, 0.5), InlineData(0.013, 23, 4.4, 0.05)]
    public void A_pipe_freezes_as_the_sheet_says(double foamM, double minutes, double hours, double halfDigit)
    {
        Pipe pipe = new() { Name = "pipe", BoreM = 0.010, OuterM = 0.012, InsulationM = foamM, InsulationWPerMK = 0.035 };
        double waterKg = 10 * PipeLoss.WaterKgPerM(pipe), lossWPerK = 10 * PipeLoss.WPerMK(pipe, 0.1);
        Assert.Equal(minutes, TankFreezing.HoursToZeroH(waterKg, lossWPerK, 10, -10)!.Value * 60, 0.5);
        Assert.Equal(hours, TankFreezing.HoursToIceH(waterKg, lossWPerK, -10, 1)!.Value, halfDigit);
    }

    [Theory, MemberData(nameof(Vents))]
    public void Two_vents_let_through_what_the_sheet_says(double highM2, double lowM2, double calm, double lightWind, double wind)
    {
        double Flow(double pressurePa) => 3600 * AirFlow.ThroughPairM3PerS(lowM2, highM2, pressurePa, 1.3);
        Assert.Equal(calm, Flow(1.4), 0.02 * calm + 0.05);
        Assert.Equal(lightWind, Flow(1.7), 0.02 * lightWind + 0.05);
        Assert.Equal(wind, Flow(3.4), 0.02 * wind + 0.05);
    }

    /// <summary>1.6 m and 20 K: 1.4 Pa; 3 m/s with 0.3 and 0.6: 1.7 and 3.4 Pa. Half the last digit, and 0.02 for a density that the sheet does not state.</summary>
    [Fact]
    public void Warm_air_and_wind_press_as_the_sheet_says()
    {
        Assert.Equal(1.4, AirFlow.StackPa(1.6, 20, 0, 1.29), 0.05);
        Assert.Equal(1.7, AirFlow.WindPa(3, 0.3, 1.26), 0.05);
        Assert.Equal(3.4, AirFlow.WindPa(3, 0.6, 1.26), 0.05);
    }

    /// <summary>13 L/h a sleeper over 420 ppm: 22, 12, 8 and 3 m³/h for 1000, 1500, 2000 and 5000 ppm. Each printed flow is rounded: half a unit less passes the mark, half a unit more stays below.</summary>
    [Theory, InlineData(1000, 22), InlineData(1500, 12), InlineData(2000, 8), InlineData(5000, 3)]
    public void A_sleeper_needs_the_air_that_the_sheet_says(double markPpm, double airM3PerH)
    {
        Habits alone = new() { SleepersCount = 1, NightH = 24, AtHomeH = 24 };
        Assert.InRange(BodyLoads.CarbonDioxideAtDawnPpm(alone, 1, airM3PerH - 0.5), markPpm, double.MaxValue);
        Assert.InRange(BodyLoads.CarbonDioxideAtDawnPpm(alone, 1, airM3PerH + 0.5), BodyLoads.OutsideCarbonDioxidePpm, markPpm);
    }

    /// <summary>Air that keeps a tight box without cold places at 60 %.</summary>
    [Theory, MemberData(nameof(AirToStayDry))]
    public void Staying_dry_takes_a_little_less_air_than_concentrations_say(double outsideC, double vapourGPerH, double air, double least, double most)
    {
        double outsidePa = 0.85 * 610.5 * Math.Exp(17.269 * outsideC / (237.3 + outsideC));
        Vehicle box = Body([Room("living", ZoneKind.Living, 10, 1)], [Panel("wall", 30, "living", new([Resisting(2)]))]);
        ZoneState state = ZoneBalance.Solve(Shell.Of(box, 0, 1.2), Still(outsideC, outsidePa, 18, vapourGPerH / 3.6e6));
        Case asked = PlausibleVan.Case with { Vehicle = box };
        AirNeeded needed = NightAnswers.AirNeeded(asked, state);
        Assert.InRange(needed.AirM3PerH!.Value / air, least, most);
        Assert.Equal(needed.AirM3PerH.Value / 3600 * DryAirKgPerM3(outsideC, outsidePa) * 1006 * (18 - outsideC), needed.HeatW!.Value, 1e-9 * needed.HeatW.Value);
    }

    /// <summary>C3H8 + 5 O2 → 3 CO2 + 4 H2O and C4H10 + 6.5 O2 → 4 CO2 + 5 H2O with atomic masses 12.011, 1.008 and 15.999. Tolerance: the digits kept in the table.</summary>
    [Theory, InlineData(Fuel.Propane, 3, 8, 127), InlineData(Fuel.Butane, 4, 10, 122)]
    public void An_open_flame_makes_the_water_and_carbon_dioxide_of_its_equation(Fuel fuel, int carbon, int hydrogen, double waterPerKWhG)
    {
        double massOfMole = carbon * 12.011 + hydrogen * 1.008;
        FuelData data = FuelData.Of(fuel);
        Assert.Equal(hydrogen / 2.0 * (2 * 1.008 + 15.999) / massOfMole, data.WaterKgPerKg, 0.0005);
        Assert.Equal(carbon * (12.011 + 2 * 15.999) / massOfMole, data.CarbonDioxideKgPerKg, 0.0005);
        Assert.Equal(waterPerKWhG, data.WaterPerKWhG, 0.5); // whole grams are printed
    }

    /// <summary>Diesel 9.905 kWh/L, petrol 8.9 to 9.0 kWh/L, propane 12.87 and butane 12.69 to 12.71 kWh/kg; a kilowatt-hour of propane gives 0.13 m³ of carbon dioxide. Half the last digits.</summary>
    [Fact]
    public void Fuels_hold_the_heat_that_is_printed()
    {
        Assert.Equal(9.905, FuelData.Of(Fuel.Diesel).NetHeatPerUnitKWh, 0.005);
        Assert.InRange(FuelData.Of(Fuel.Petrol).NetHeatPerUnitKWh, 8.9, 9.0);
        Assert.Equal(12.87, FuelData.Of(Fuel.Propane).NetHeatPerUnitKWh, 0.006);
        Assert.Equal(12.70, FuelData.Of(Fuel.Butane).NetHeatPerUnitKWh, 0.015);
        Assert.Equal(0.13, FuelData.Of(Fuel.Propane).CarbonDioxidePerKWhL / 1000, 0.005);
    }

    /// <summary>An inspection leaflet on EN 721, quoted in a forum, in cm²; above 10 m² from memory.</summary>
    [Theory]
    [InlineData(4.9, true, 75, 10)]
    [InlineData(5.1, true, 100, 15)]
    [InlineData(10, true, 100, 15)]
    [InlineData(14, true, 125, 20)]
    [InlineData(18, true, 150, 30)]
    [InlineData(25, true, 200, 50)]
    [InlineData(4.9, false, 15, 5)]
    [InlineData(9, false, 15, 5)]
    public void Safety_vents_are_those_of_the_leaflet(double floorM2, bool burnsRoomAir, double highCm2, double lowCm2) =>
        Assert.Equal(new SafetyVents(highCm2 / 1e4, lowCm2 / 1e4), SafetyVents.For(floorM2, burnsRoomAir));

    /// <summary>0.89, 0.78 and 0.69 of the output at sea level at 1000, 2000 and 3000 m, by air pressure; half the last digit, and the third is cut off, not rounded.</summary>
    [Theory, InlineData(1000, 0.89), InlineData(2000, 0.78), InlineData(3000, 0.69)]
    public void A_burning_heater_gives_less_in_thin_air_and_an_electric_one_does_not(double altitudeM, double share)
    {
        Assert.Equal(share, Derating.Factor(HeaterLibrary.Find("diesel_air_small")!, altitudeM), 0.006);
        Assert.Equal(1, Derating.Factor(HeaterLibrary.Find("electric_1kw")!, altitudeM));
    }

    /// <summary>Fuel of the 2 kW class: 0.10 to 0.24–0.28 L/h; of the 4 kW class 0.11–0.15 to 0.49–0.51 L/h. Published spans of the trade.</summary>
    [Theory, InlineData("diesel_air_small", 0.10, 0.12, 0.24, 0.28), InlineData("diesel_air_medium", 0.11, 0.15, 0.49, 0.52)]
    public void Diesel_heaters_burn_what_their_class_burns(string key, double lowFrom, double lowTo, double highFrom, double highTo)
    {
        HeaterClass heater = HeaterLibrary.Find(key)!;
        double LPerH(double heatW) => heatW / 1000 / heater.EfficiencyFraction.Value / FuelData.Of(heater.Fuel).NetHeatPerUnitKWh;
        Assert.InRange(LPerH(heater.LowestW), lowFrom, lowTo);
        Assert.InRange(LPerH(heater.HighestW), highFrom, highTo);
    }

    /// <summary>Two asleep for 8 h of 14 h at home, electric cooking: (2·(8·40 + 6·55) + 2·150)/14 by hand.</summary>
    [Fact]
    public void Vapour_is_spread_over_the_hours_at_home()
    {
        Habits habits = new() { SleepersCount = 2, NightH = 8, AtHomeH = 14, CookerFuel = null };
        Assert.Equal((2 * (8 * 40 + 6 * 55) + 2 * 150) / 14.0, BodyLoads.VapourGPerH(habits), 1e-9);
        double flameG = 2 * 0.5 * 4 * 18.015 / 44.097 * 1000 / 12.875; // two meals of 0.5 kWh of propane
        Assert.Equal(flameG / 14, BodyLoads.VapourGPerH(habits with { CookerFuel = Fuel.Propane }) - BodyLoads.VapourGPerH(habits), 0.01);
    }
}
