using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.People;
using Thermal.Water;

namespace Thermal.Cli.Tests;

/// <summary>A small van made up for tests of words and pages: wool behind a loose lining, ribs, a cab behind a curtain, one of everything.</summary>
internal static class SampleCase
{
    /// <summary>The van in Zurich.</summary>
    internal static Case Van { get; } = Create("Marsh van", PlaceLibrary.BuiltIn.Find("zurich"));

    internal static Case Create(string name, Place? place) => new()
    {
        Vehicle = new Vehicle
        {
            Name = name,
            Description = "A made-up van.",
            LengthM = 3.5,
            WidthM = 1.8,
            HeightM = 1.95,
            Zones =
            [
                new Zone { Name = "living space", Kind = ZoneKind.Living, VolumeM3 = 11, FloorAreaM2 = 6.3, HeightM = 1.9, LeakEachM2 = LeakDefaults.UsualM2, Vents = [new("roof vent", 15e-4, true), new("floor vent", 5e-4, false)] },
                new Zone { Name = "cab", Kind = ZoneKind.Cab, VolumeM3 = 3, FloorAreaM2 = 2, HeightM = 1.2, LeakEachM2 = LeakDefaults.LeakyM2 },
            ],
            Links = [new ZoneLink { From = "living space", To = "cab", AreaM2 = 2.2, State = LinkState.Closed, AirM3PerM2H = ZoneLink.CurtainAirM3PerM2H }],
            Surfaces =
            [
                Panel("roof", SurfacePlace.Roof, 0, 3.5, 1.8, LiningFit.Slatted, [Solid("plywood", "birch_plywood", 6), Solid("sheep's wool", "sheep_wool", 40), Solid("steel skin", "steel_sheet", 0.8)]) with
                {
                    Ribs = [new LinearBridge { Name = "roof bow", PsiWPerMK = Bounded.Stated(0.12), LengthM = 10.8, SpacingM = 0.55, ColdestFactor = 0.45 }],
                    Openings = [new Opening { Name = "roof light", WidthM = 0.4, HeightM = 0.4, FromLeftM = 1, FromBottomM = 0.7, Glazing = Single("acrylic", 4) }],
                },
                Panel("floor", SurfacePlace.Floor, 180, 3.5, 1.8, LiningFit.Taped, [Solid("vinyl", "vinyl_floor", 2), Solid("floor plywood", "plywood_500", 12), Battened("foam between battens", "xps", 30), Solid("steel floor", "steel_sheet", 1.2)]) with { Outside = OuterSide.Road },
                Panel("left side", SurfacePlace.Left, 90, 3.5, 1.95, LiningFit.Loose, [Solid("plywood", "birch_plywood", 6), Solid("sheep's wool", "sheep_wool", 50), Solid("steel skin", "steel_sheet", 0.8)]) with
                {
                    Openings = [new Opening { Name = "side window", WidthM = 0.9, HeightM = 0.5, FromLeftM = 1, FromBottomM = 1.1, Glazing = Double(), FrameFraction = 0.1, Coverings = [new Covering { Name = "quilted blind", Side = CoveringSide.Inside, AddedResistanceM2KPerW = Bounded.Stated(0.4) }], CoverAtNight = "quilted blind" }],
                    Against = [new Against { Name = "clothes locker", AddedResistanceM2KPerW = LiningDefaults.LockerM2KPerW, AreaFraction = 0.3 }],
                },
                Panel("right side", SurfacePlace.Right, 90, 3.5, 1.95, LiningFit.Bonded, [Solid("plywood", "birch_plywood", 6), Bonded("closed-cell foam", "elastomeric_foam", 38), Solid("steel skin", "steel_sheet", 0.8)]),
                Panel("rear", SurfacePlace.Rear, 90, 1.8, 1.95, LiningFit.Loose, [Solid("plywood", "birch_plywood", 6), Solid("sheep's wool", "sheep_wool", 40), Solid("steel skin", "steel_sheet", 0.8)]) with
                {
                    Openings = [new Opening { Name = "door leaf", WidthM = 0.7, HeightM = 1.6, FromLeftM = 0.1, FromBottomM = 0.1, Leaf = new Stack([Solid("lining", "birch_plywood", 6), Solid("door foam", "cross_linked_pe_foam", 20), Solid("steel skin", "steel_sheet", 0.8)]) }],
                },
                Panel("cab shell", SurfacePlace.Cab, 90, 3, 1.5, LiningFit.Loose, [Solid("felt", "wool_felt", 5), Solid("steel skin", "steel_sheet", 0.8)], "cab") with
                {
                    Openings = [new Opening { Name = "windscreen", WidthM = 1.6, HeightM = 0.8, FromLeftM = 0.5, FromBottomM = 0.5, Glazing = Single("glass", 5) }],
                },
            ],
        },
        Habits = new Habits { SleepersCount = 2, MealsPerDay = 2, DryingPerDayG = 300 },
        Heater = HeaterLibrary.Find("diesel_air_small")!,
        BatteryAh = 100,
        Tanks = [new Tank { Name = "fresh water", WaterL = 70, AreaM2 = 1.2, InsulationM2KPerW = 0.5 }],
        Place = place,
        ColdNight = place is null ? Night(-12) : NightConditions.Design(place),
        MildNight = NightConditions.Mild(place?.AltitudeM ?? 400),
    };

    private static NightConditions Night(double outsideC) => new() { OutsideC = outsideC, RelativeHumidityFraction = 0.85, WindMPerS = 3, SkyBelowAirK = 20, AltitudeM = 400 };

    private static Surface Panel(string name, SurfacePlace place, double tiltDeg, double widthM, double heightM, LiningFit fit, StackLayer[] layers, string zone = "living space") => new()
    {
        Name = name,
        Place = place,
        TiltDeg = tiltDeg,
        WidthM = widthM,
        HeightM = heightM,
        AreaM2 = widthM * heightM,
        Zone = zone,
        Outside = OuterSide.Air,
        Stack = new Stack(layers),
        AirBehindLiningM3PerM2H = LiningDefaults.AirBehindM3PerM2H(fit),
        LiningFit = fit,
    };

    private static SolidLayer Solid(string name, string material, double thicknessMm) =>
        new() { Name = name, Material = MaterialLibrary.Find(material)!, ThicknessM = thicknessMm / 1000 };

    private static SolidLayer Bonded(string name, string material, double thicknessMm) => Solid(name, material, thicknessMm) with { IsBonded = true };

    private static SolidLayer Battened(string name, string material, double thicknessMm) =>
        Solid(name, material, thicknessMm) with { Battens = new Battens(MaterialLibrary.Find("softwood")!, 0.12) };

    private static Glazing Single(string material, double thicknessMm) => new([Pane(material, thicknessMm)], []);

    private static Glazing Double() => new([Pane("acrylic", 3), Pane("acrylic", 3)], [new GlazingGap { ThicknessM = 0.02 }]);

    private static Pane Pane(string material, double thicknessMm) => new() { Material = MaterialLibrary.Find(material)!, ThicknessM = thicknessMm / 1000 };
}
