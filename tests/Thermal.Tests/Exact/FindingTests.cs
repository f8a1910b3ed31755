using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Each finding comes up where its cause is put in, and not without it.</summary>
public class FindingTests
{
    /// <summary>The drawn van with everything that could be found put right.</summary>
    private static readonly Case Sound = PlausibleVan.Case with
    {
        Vehicle = PlausibleVan.Vehicle with
        {
            Zones = [.. PlausibleVan.Vehicle.Zones.Select(zone => zone with { Vents = zone.Kind == ZoneKind.Living ? [new("high", 110e-4, true), new("low", 20e-4, false)] : [] })],
            Surfaces = [.. PlausibleVan.Vehicle.Surfaces.Select(surface => surface with { LiningFit = LiningFit.Bonded, Ribs = [.. surface.Ribs.Select(rib => rib with { GivenFor = surface.Stack.Signature })], WidthM = surface.WidthM ?? 2, HeightM = surface.HeightM ?? surface.AreaM2 / 2 })],
        },
        Habits = PlausibleVan.Case.Habits with { SleepersCount = 1 },
        Heater = HeaterLibrary.Find("diesel_air_and_water")!,
        Tanks = [],
    };

    private static Finding? First(Case asked, FindingKind kind) => Assess.Of(asked).Findings.FirstOrDefault(finding => finding.Kind == kind);

    private static Case WithRoof(Func<Surface, Surface> change) => Sound with
    {
        Vehicle = Sound.Vehicle with { Surfaces = [.. Sound.Vehicle.Surfaces.Select(surface => surface.Name == "roof" ? change(surface) : surface)] },
    };

    public static TheoryData<FindingKind> Causes => [.. new[]
    {
        FindingKind.HeaterTooSmall, FindingKind.StaleAir, FindingKind.VentsTooSmall, FindingKind.WaterTrapped, FindingKind.StaleBridge, FindingKind.BridgeWithoutBuildUp, FindingKind.BridgeFrosts, FindingKind.BridgeDrips,
        FindingKind.TankFreezes, FindingKind.DieselWaxes, FindingKind.ButaneDoesNotBoil, FindingKind.BatteryTooSmall, FindingKind.LimitsFarApart, FindingKind.AreaAlone,
    }];

    private static (Case Asked, string Where) Cause(FindingKind kind) => kind switch
    {
        FindingKind.HeaterTooSmall => (Sound with { Heater = HeaterLibrary.Find("electric_1kw")! }, "electric fan heater on shore power (1 kW)"),
        FindingKind.StaleAir => (Sound with
        {
            Habits = Sound.Habits with { SleepersCount = 6 },
            Vehicle = Sound.Vehicle with { Zones = [.. Sound.Vehicle.Zones.Select(zone => zone with { AirChangesPerH = 0.3 })] },
        }, "living"),
        FindingKind.VentsTooSmall => (Sound with { Vehicle = Sound.Vehicle with { Zones = [.. Sound.Vehicle.Zones.Select(zone => zone with { Vents = [] })] } }, "living"),
        FindingKind.WaterTrapped => (WithRoof(surface => surface with
        {
            LiningFit = LiningFit.Loose,
            Stack = new([Sheet(0.001, 0.2, "vinyl") with { Material = MaterialLibrary.Find("aluminium_foil")! }, Sheet(0.03, 0.04, "wool") with { Material = MaterialLibrary.Find("sheep_wool")! }, surface.Stack.Layers[2]]),
        }), "roof, wool"),
        FindingKind.StaleBridge => (WithRoof(surface => surface with { Stack = PlausibleVan.Wall(0.040) }), "roof, ribs"),
        FindingKind.BridgeWithoutBuildUp => (WithRoof(surface => surface with { LiningFit = LiningFit.Bonded, Ribs = [surface.Ribs[0] with { GivenFor = null }] }), "roof, ribs"),
        FindingKind.BridgeFrosts => (WithRoof(surface => surface with { Ribs = [surface.Ribs[0] with { ColdestFactor = 0.1 }] }), "roof, ribs"),
        FindingKind.BridgeDrips => (WithRoof(surface => surface with { Ribs = [surface.Ribs[0] with { ColdestFactor = 0.1 }] }) with { ColdNight = Sound.ColdNight with { OutsideC = 3 } }, "roof, ribs"),
        FindingKind.TankFreezes => (Sound with { Tanks = [new() { Name = "bare tank", WaterL = 20, AreaM2 = 0.6 }] }, "bare tank"),
        FindingKind.DieselWaxes => (Sound with { ColdNight = Sound.ColdNight with { OutsideC = -25 } }, "diesel air and water heater (6 kW)"),
        FindingKind.ButaneDoesNotBoil => (Sound with { Habits = Sound.Habits with { CookerFuel = Fuel.Butane } }, "gas bottle outside"),
        FindingKind.BatteryTooSmall => (Sound with { Power = new() { Battery = new() { UsableAh = 5 } } }, "battery"),
        FindingKind.LimitsFarApart => (WithRoof(surface => surface with
        {
            Stack = new([surface.Stack.Layers[0], Sheet(0.1, 0.02, "foam") with { Battens = new(Of(2), 0.3) }, surface.Stack.Layers[2]]),
        }), "roof"),
        _ => (WithRoof(surface => surface with { WidthM = null }), "roof"),
    };

    [Theory, MemberData(nameof(Causes))]
    public void A_finding_comes_with_its_cause_and_not_without(FindingKind kind)
    {
        Assert.Null(First(Sound, kind));
        (Case asked, string where) = Cause(kind);
        Assert.Equal(where, First(asked, kind)?.Where);
    }

    /// <summary>Missing vent area against 100 and 15 cm² for a cooker on 6.9 m²: 85 and 5 cm².</summary>
    [Fact]
    public void A_finding_carries_its_figure()
    {
        Case few = Sound with { Vehicle = Sound.Vehicle with { Zones = [.. Sound.Vehicle.Zones.Select(zone => zone with { Vents = [new("high", 15e-4, true), new("low", 10e-4, false)] })] } };
        Assert.Equal(90e-4, First(few, FindingKind.VentsTooSmall)!.FigureInItsUnit, 1e-9);
        Assessment weak = Assess.Of(Cause(FindingKind.HeaterTooSmall).Asked);
        Assert.Equal(weak.Heating.NeedW.Value - 1000, weak.Findings.First(finding => finding.Kind == FindingKind.HeaterTooSmall).FigureInItsUnit, 1e-9);
    }

    [Fact]
    public void Findings_stand_worst_first() => Assert.Equal(Assess.Of(PlausibleVan.Case).Findings.Select(finding => finding.Kind).Order(), Assess.Of(PlausibleVan.Case).Findings.Select(finding => finding.Kind));
}
