using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.People;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>A missing key takes the default that its record has, so that the two cannot drift apart.</summary>
public sealed class DefaultTests
{
    private const string Least = """
        format: 1
        name: least
        site: {cold_night: {outside: -10 °C}}
        people: {sleepers: 2}
        heater: {class: diesel_air_small}
        body: {length: 3 m, width: 2 m, height: 2 m}
        zones:
          - {name: living, kind: living}
          - {name: cab, kind: cab, volume: 3 m³, floor_area: 2 m², height: 1.4 m}
        passages:
          - {from: living, to: cab, area: 2 m², at_night: closed}
        surfaces:
          - name: left
            place: left
            zone: living
            outside: air
            layers:
              - {material: birch_plywood, thickness: 6 mm}
              - {material: xps, thickness: 44 mm}
            lining: taped
            openings:
              - name: window
                width: 500 mm
                height: 400 mm
                glazing: [{pane: glass, thickness: 4 mm}, {gap: air, thickness: 10 mm}, {pane: glass, thickness: 4 mm}]
                covers: [{name: curtain, side: inside, resistance: 0.1 m²K/W}]
          - {name: cab roof, place: cab, zone: cab, outside: air, area: 2 m², layers: [{material: steel_sheet, thickness: 1 mm}], lining: bonded}
        """;

    private static readonly Case Read = Assert.IsType<Case>(VehicleFile.Read(Least, "least.yaml").Value);

    [Fact]
    public void People_have_the_usual_habits() => Assert.Equal(Described.Of(new Habits { SleepersCount = 2 }), Described.Of(Read.Habits));

    [Fact]
    public void A_window_and_its_cover_have_the_usual_figures()
    {
        Opening opening = Assert.Single(Read.Vehicle.Surfaces[0].Openings);
        var usual = new Opening
        {
            Name = opening.Name,
            WidthM = 0.5,
            HeightM = 0.4,
            Glazing = new Glazing(
                [new Pane { Material = opening.Glazing!.Panes[0].Material, ThicknessM = 0.004 }, new Pane { Material = opening.Glazing.Panes[0].Material, ThicknessM = 0.004 }],
                [new GlazingGap { ThicknessM = 0.01 }]),
            Coverings = [new Covering { Name = "curtain", Side = CoveringSide.Inside, AddedResistanceM2KPerW = Materials.Bounded.Stated(0.1) }],
        };
        Assert.Equal(Described.Of(usual), Described.Of(opening));
    }

    [Fact]
    public void A_curtain_across_a_passage_has_the_usual_figures() => Assert.Equal(
        Described.Of(new ZoneLink { From = "living", To = "cab", AreaM2 = 2, State = LinkState.Closed, AirM3PerM2H = ZoneLink.CurtainAirM3PerM2H }),
        Described.Of(Assert.Single(Read.Vehicle.Links)));

    [Fact]
    public void The_vehicle_and_its_case_have_the_usual_figures()
    {
        Vehicle vehicle = new() { Name = "least", Zones = Read.Vehicle.Zones, Surfaces = Read.Vehicle.Surfaces };
        Case usual = new() { Vehicle = vehicle, Habits = Read.Habits, Heater = HeaterLibrary.Find("diesel_air_small")!, ColdNight = Read.ColdNight, MildNight = NightConditions.Mild(0) };
        Assert.Equal((usual.WarmUpH, usual.HeaterOnFreshAir, usual.BatteryAh, usual.MildNight), (Read.WarmUpH, Read.HeaterOnFreshAir, Read.BatteryAh, Read.MildNight));
        Assert.Equal((vehicle.FurnishingsJPerM2K, vehicle.WindPressureFactor, vehicle.Description), (Read.Vehicle.FurnishingsJPerM2K, Read.Vehicle.WindPressureFactor, Read.Vehicle.Description));
        Assert.Equal(LeakDefaults.UsualM2, Read.Vehicle.Living.LeakEachM2);
    }

    /// <summary>By hand: a side of 50 mm takes from the width alone; 3 × (2 − 0.05) × 2 = 11.7 m³; a side is length × height.</summary>
    [Fact]
    public void Panel_and_air_volume_come_from_the_body()
    {
        Assert.Equal(11.7, Read.Vehicle.Living.VolumeM3, 1e-12); // rounding of three products
        Assert.Equal((3.0, 2.0, 6.0, 90.0, 270.0), (Read.Vehicle.Surfaces[0].WidthM, Read.Vehicle.Surfaces[0].HeightM, Read.Vehicle.Surfaces[0].AreaM2, Read.Vehicle.Surfaces[0].TiltDeg, Read.Vehicle.Surfaces[0].FacingDeg));
    }

    /// <summary>At −10 °C given alone: 85 % humidity, 3 m/s, clear sky 20 K below the air, at sea level.</summary>
    [Fact]
    public void A_temperature_given_alone_makes_a_clear_cold_night() => Assert.Equal(
        new NightConditions { OutsideC = -10, RelativeHumidityFraction = 0.85, WindMPerS = 3, SkyBelowAirK = 20, AltitudeM = 0 }, Read.ColdNight);
}
