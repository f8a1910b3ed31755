using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.People;
using Thermal.Water;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests;

/// <summary>
/// A van of 6 m as many people build one: 25 mm of glued foam, steel ribs, a cab behind a curtain, two sleepers, 10 K of frost.
/// Sizes by the classes of the trade, everything else invented here.
/// </summary>
internal static class PlausibleVan
{
    internal const double LengthM = 3.7, WidthM = 1.87, HeightM = 1.93;

    private static Material Known(string key) => MaterialLibrary.Find(key)!;

    private static SolidLayer Layer(string key, double thicknessM, bool isBonded = false) => new() { Name = Known(key).Name, Material = Known(key), ThicknessM = thicknessM, IsBonded = isBonded };

    internal static Stack Wall(double foamM = 0.025) => new([Layer("birch_plywood", 0.006), Layer("elastomeric_foam", foamM, isBonded: true), Layer("steel_sheet", 0.001)]);

    private static Stack Floor => new([Layer("vinyl_floor", 0.002), Layer("birch_plywood", 0.012), Layer("xps", 0.02), Layer("steel_sheet", 0.001)]);

    private static Stack Trim => new([Sheet(0.004, 0.2, "trim"), Layer("steel_sheet", 0.001)]);

    private static Surface Side(string name, SurfacePlace place, double tiltDeg, double widthM, double heightM, Stack stack) =>
        Panel(name, widthM * heightM, "living", stack, tiltDeg, place == SurfacePlace.Floor ? OuterSide.Road : OuterSide.Air) with
        {
            Place = place,
            WidthM = widthM,
            HeightM = heightM,
            LiningFit = LiningFit.Taped,
            AirBehindLiningM3PerM2H = LiningDefaults.AirBehindM3PerM2H(LiningFit.Taped),
            Ribs = place == SurfacePlace.Floor ? [] : [new() { Name = "ribs", PsiWPerMK = new(0.1, 0.2, 0.3, "OURS", "drawn for a test"), LengthM = widthM * heightM / 0.5, SpacingM = 0.5 }],
        };

    private static Opening Glass(string name, double widthM, double heightM, int count = 1) => new()
    {
        Name = name,
        WidthM = widthM,
        HeightM = heightM,
        Count = count,
        Glazing = new([new() { Material = Known("glass"), ThicknessM = 0.005 }], []),
    };

    private static Opening AcrylicWindow => new()
    {
        Name = "side window",
        WidthM = 0.9,
        HeightM = 0.5,
        Glazing = new([new() { Material = Known("acrylic"), ThicknessM = 0.003 }, new() { Material = Known("acrylic"), ThicknessM = 0.003 }], [new() { ThicknessM = 0.02 }]),
        FrameFraction = 0.15,
        FrameUWPerM2K = 4,
        Coverings = [new() { Name = "inside blind", Side = CoveringSide.Inside, AddedResistanceM2KPerW = new(0.1, 0.15, 0.25, "OURS", "drawn for a test") }],
        CoverAtNight = "inside blind",
    };

    internal static Vehicle Vehicle { get; } = new()
    {
        Name = "plausible van",
        LengthM = LengthM,
        WidthM = WidthM,
        HeightM = HeightM,
        Zones =
        [
            Room("living", ZoneKind.Living, 11) with { FloorAreaM2 = LengthM * WidthM, LeakEachM2 = LeakDefaults.UsualM2, Vents = [new("roof vent", 15e-4, true), new("floor vent", 10e-4, false)] },
            Room("cab", ZoneKind.Cab, 3.5) with { FloorAreaM2 = 2, LeakEachM2 = LeakDefaults.UsualM2, HeightM = 1.2 },
        ],
        Links = [new() { From = "living", To = "cab", AreaM2 = 2.2, State = LinkState.Closed, AirM3PerM2H = ZoneLink.CurtainAirM3PerM2H }],
        Surfaces =
        [
            Side("roof", SurfacePlace.Roof, 0, LengthM, WidthM, Wall()),
            Side("floor", SurfacePlace.Floor, 180, LengthM, WidthM, Floor),
            Side("left side", SurfacePlace.Left, 90, LengthM, HeightM, Wall()) with { Openings = [AcrylicWindow], Against = [new() { Name = "locker", AddedResistanceM2KPerW = 0.5, AreaFraction = 0.3 }] },
            Side("right side", SurfacePlace.Right, 90, LengthM, HeightM, Wall()),
            Side("rear doors", SurfacePlace.Rear, 90, WidthM, HeightM, Wall()),
            Panel("cab skin", 6, "cab", Trim) with { Place = SurfacePlace.Cab, Openings = [Glass("windscreen", 1.7, 0.85), Glass("door window", 0.7, 0.6, 2)] },
        ],
    };

    private static readonly double[] MeansC = [-4, -3, 1, 5, 10, 14, 16, 16, 12, 7, 1, -3];

    internal static Place Place { get; } = new()
    {
        Name = "drawn valley",
        Country = "nowhere",
        LatitudeDeg = 47,
        LongitudeDeg = 10,
        AltitudeM = 600,
        Months = [.. MeansC.Select(mean => new MonthNormals { MeanC = mean, RelativeHumidityFraction = 0.8 })],
        Design = new() { TemperatureC = -10, Kind = DesignKind.Estimated, PlusMinusK = 3, Note = "drawn for a test" },
        Source = "drawn for a test",
        Period = "none",
        Licence = "none",
    };

    internal static Case Case { get; } = new()
    {
        Vehicle = Vehicle,
        Habits = new() { SleepersCount = 2, NightH = 8, AtHomeH = 14 },
        Heater = HeaterLibrary.Find("diesel_air_medium")!,
        Place = Place,
        Tanks = [new Tank { Name = "slung tank", WaterL = 100, AreaM2 = 1.6, InsulationM2KPerW = 0.5 }],
        ColdNight = NightConditions.Design(Place),
        MildNight = NightConditions.Mild(600),
    };
}
