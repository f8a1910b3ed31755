using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Zones;

namespace Thermal.Tests.Property;

/// <summary>
/// Plausibility, not proof: the drawn van of 6 m must come out where owners and measurements say vans are.
/// The marks are those of the trade; a result outside them is wrong or needs an explanation.
/// </summary>
public class PlausibleVanTests
{
    private static readonly Assessment Found = Assess.Of(PlausibleVan.Case);

    private static double FuelAtL(double outsideC) => Assess.Of(PlausibleVan.Case with { ColdNight = PlausibleVan.Case.ColdNight with { OutsideC = outsideC } }).Heating.Cold.FuelAmount.Value;

    [Fact]
    public void It_loses_one_to_three_kilowatts_at_10_degrees_of_frost() => Assert.InRange(Found.ColdNight.LossW, 1000, 3000);

    /// <summary>Owners' notes: 0.21 to 0.25 L/h from −7 to +4 °C, 1.4 to 2.0 L in a frosty night of 8 h in well insulated vans; a third more for a cab of bare metal and single glass.</summary>
    [Fact]
    public void A_frosty_night_burns_one_and_a_half_to_two_and_a_half_litres()
    {
        Assert.InRange(FuelAtL(-10), 1.4, 2.7);
        Assert.InRange(FuelAtL(0), 0.8, 2.0);
        Assert.InRange(FuelAtL(-20), 2.0, 3.6);
    }

    /// <summary>A rib of the generic kind multiplies a wall's U by 1.4 to 1.5 at 25 mm of foam; the drawn ψ is round.</summary>
    [Fact]
    public void Ribs_multiply_the_roof_s_U()
    {
        PanelAnswer roof = Found.Panels.First(panel => panel.Surface.Name == "roof");
        Assert.InRange(roof.UWithRibsWPerM2K / roof.Transmittance.UWPerM2K, 1.25, 1.6);
    }

    /// <summary>Measured over closed boxes on very clear nights: 3 to 8 K below the air.</summary>
    [Fact]
    public void An_unheated_bare_plate_stands_3_to_8_degrees_below_the_air_on_a_clear_night()
    {
        Vehicle box = Sketches.Body([Sketches.Room("living", ZoneKind.Living, 1, 0)], [Sketches.Panel("plate", 1, "living", new([Sketches.Sheet(0.001, 50)]), tiltDeg: 0)]);
        foreach (double wind in new[] { 1.0, 2, 3 })
        {
            // Nobody heats: the room takes the temperature at which the plate gives nothing, found between two held ones.
            double At(double livingC) => ZoneBalance.Solve(Shell.Of(box, wind, 1.2), Sketches.Still(0, 500, livingC) with { WindMPerS = wind, SkyBelowAirK = 20 }).HeaterW;
            double belowK = 10 * At(0) / (At(0) - At(-10));
            Assert.InRange(belowK, 3, 8);
        }
    }

    /// <summary>A heated van's skin over 25 mm of foam: 2 to 7 K below the air.</summary>
    [Fact]
    public void A_heated_van_s_roof_skin_stands_2_to_7_degrees_below_the_air()
    {
        PanelAnswer roof = Found.Panels.First(panel => panel.Surface.Name == "roof");
        Assert.InRange(PlausibleVan.Case.ColdNight.OutsideC - roof.TemperaturesAtFacesC[^1], 1.5, 7);
    }

    [Fact]
    public void Behind_its_curtain_the_cab_is_cold_and_its_glass_takes_water()
    {
        ZoneNight cab = Found.ColdNight.Zones[1];
        Assert.InRange(cab.TemperatureC, -9, 2);
        Assert.InRange(cab.SettlingGPerH * 8, 20, 800);
    }

    /// <summary>Parked and closed: 0.5 to 3 changes an hour with usual seals and vents in wind of 3 m/s.</summary>
    [Fact]
    public void It_breathes_as_parked_vans_do()
    {
        Assert.InRange(Found.ColdNight.Zones[0].AirChangesPerH, 0.5, 4);
        Assert.InRange(Found.ColdNight.CarbonDioxideAtDawnPpm, 700, 3000);
    }

    [Fact]
    public void Mild_damp_weather_is_more_humid_than_frost() =>
        Assert.True(Found.MildNight.Zones[0].RelativeHumidityFraction > Found.ColdNight.Zones[0].RelativeHumidityFraction);

    [Fact]
    public void Its_body_lies_between_an_insulated_body_and_a_bare_one() => Assert.InRange(Found.MeanK.MeanKWPerM2K, 1, 3.5);

    [Fact]
    public void Behind_the_locker_it_is_colder_than_beside_it()
    {
        SurfaceNight behind = Found.ColdNight.Surfaces.First(surface => surface.Kind == SurfaceKind.Behind), bare = Found.ColdNight.Surfaces.First(surface => surface is { Kind: SurfaceKind.Bare, Panel: "left side" });
        Assert.InRange(bare.TemperatureC - behind.TemperatureC, 2, 15);
    }

    [Fact]
    public void A_smaller_heater_is_enough_only_where_it_gives_the_need()
    {
        Assert.InRange(Found.Heating.NeedW.Value, Found.Heating.SteadyW.Value, 6000);
        Assert.Equal(Found.Heating.HighestOutputW >= Found.Heating.NeedW.Value, Found.Heating.IsEnough);
        Assert.InRange(Found.Heating.AltitudeFactor, 0.92, 0.94); // 600 m: 0.931 of sea-level pressure
    }

    /// <summary>A set point below the mild night asks for no heat, and every figure stays a number.</summary>
    [Fact]
    public void A_night_warmer_than_the_set_point_asks_for_no_heat()
    {
        Case cool = PlausibleVan.Case with { Habits = PlausibleVan.Case.Habits with { SetPointC = NightConditions.MildC - 1 } };
        NightHeating mild = Assess.Of(cool).Heating.Mild;
        Assert.Equal(0, mild.HeatW.Value, 1e-6);
        Assert.Equal(0, mild.FuelAmount.Value, 1e-6);
        Assert.InRange(mild.AtLowestOutputC, NightConditions.MildC, 60);
    }

    /// <summary>Calm, covered and as warm inside as the chamber: a hold that touches nothing heated exchanges no air at all, and the chamber grades still come out.</summary>
    [Fact]
    public void A_hold_that_nothing_warms_does_not_stop_the_assessment()
    {
        Vehicle van = PlausibleVan.Vehicle with
        {
            Zones = [.. PlausibleVan.Vehicle.Zones, Sketches.Room("hold", ZoneKind.Hold, 1, leakM2: 0.001)],
            Surfaces = [.. PlausibleVan.Vehicle.Surfaces, Sketches.Panel("hold wall", 3, "hold", PlausibleVan.Wall())],
        };
        Assert.Equal(2, Assess.Of(PlausibleVan.Case with { Vehicle = van }).Heating.Grades.Count);
    }

    [Fact]
    public void A_sealed_van_settles_its_people_s_water_on_its_cold_places()
    {
        Vehicle van = PlausibleVan.Vehicle with { Zones = [.. PlausibleVan.Vehicle.Zones.Select(zone => zone with { AirChangesPerH = 0 })] };
        Night night = Assess.Of(PlausibleVan.Case with { Vehicle = van }).ColdNight;
        Assert.Equal(night.VapourSourceGPerH, night.Zones.Sum(zone => zone.SettlingGPerH), 0.01);
    }
}
