using Thermal.Air;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Charts.Tests;

/// <summary>Solved sections that pictures are drawn from: ordinary ones and awkward ones.</summary>
internal static class SectionSamples
{
    private static readonly SolidLayer
        Steel = Layer("Steel skin", 0.001, "steel_sheet"), Foam = Layer("Closed-cell foam", 0.02, "elastomeric_foam"),
        Wool = Layer("Sheep's wool", 0.04, "sheep_wool"), Ply = Layer("Birch ply lining", 0.006, "birch_plywood");

    private static readonly Stack Wall = new([Ply, Wool, Foam, Steel]);

    internal static SectionOnNight Hat { get; } = Solved("Roof bow", "Roof", Attitude.Roof, HatRib, Wall, 0.5);

    internal static SectionOnNight FloorHat { get; } = Hat with { Name = "Floor runner", Panel = "Floor", Attitude = Attitude.Floor, OutsideName = "road side" };

    internal static SectionOnNight ZedLeft { get; } = Solved("Side rib", "Left side", Attitude.OutsideLeft, ZedRib, Wall, 0.45);

    internal static SectionOnNight ZedRight { get; } = ZedLeft with { Panel = "Right side", Attitude = Attitude.OutsideRight };

    internal static SectionOnNight DeepBow { get; } = Solved("Deep bow", "Roof", Attitude.Roof, HatRib with { DepthM = 0.12, SheetM = 0.003 },
        new Stack([Ply with { ThicknessM = 0.012 }, Foam with { ThicknessM = 0.12 }, Steel]), 0.6) with
    { InsideC = 20, OutsideC = -25 };

    internal static SectionOnNight ThinStrip { get; } = Solved("Roof bow", "Roof", Attitude.Roof, HatRib with { Over = new OverRib { Material = Of("elastomeric_foam"), ThicknessM = 0.003 } }, Wall, 0.5);

    internal static SectionOnNight Batten { get; } = Solved("Battens", "Floor", Attitude.Floor, new Batten { Material = Of("softwood"), WidthM = 0.04, DepthM = 0.04 }, Wall, 0.4);

    internal static SectionOnNight Frost { get; } = Solved("Roof bow", "Roof", Attitude.Roof, HatRib with { IsBare = true }, Wall, 0.5) with { InsideC = 2, OutsideC = -20, DewPointC = -4 };

    internal static SectionOnNight Bare { get; } = Frost with { Name = "Bare bow", InsideC = 18, OutsideC = -12, DewPointC = RoomDewPointC };

    internal static SectionOnNight Isothermal { get; } = Hat with { InsideC = 18.02, OutsideC = 18, DewPointC = 9 };

    internal static SectionOnNight NoDifference { get; } = Hat with { InsideC = 18, OutsideC = 18, DewPointC = 18.5 };

    internal static SectionOnNight Dry { get; } = Hat with { DewPointC = -19 };

    internal static SectionOnNight Summer { get; } = Hat with { InsideC = 26, OutsideC = 55, DewPointC = 14 };

    internal static SectionOnNight LongNames { get; } = ZedLeft with
    {
        Name = "Pillar between the sliding door and the step below it, behind the kitchen",
        Panel = "Right side with the sliding door and the step below it",
        InsideName = "hold below the raised bed",
        OutsideName = "sheltered road side",
    };

    internal static SectionOnNight Bolt { get; } = Solved("Roof rack bolts", "Roof", Attitude.Roof, RackBolt, new Stack([Ply with { ThicknessM = 0.009 }, Foam with { ThicknessM = 0.03 }, Steel]), null);

    internal static SectionOnNight CoveredBolt { get; } = Solved("Step bolts", "Right side", Attitude.OutsideRight, RackBolt with { LayersOver = 1 }, Wall, null);

    internal static SectionOnNight Edge { get; } = Solved("Left window", "Left side", Attitude.OutsideLeft, new FrameEdge { FrameDepthM = 0.03, FrameWidthM = 0.04, LipM = 0.015, GapM = 0.005 }, Wall, null);

    internal static SectionOnNight Corner { get; } = Solved("Corner with the side", "Roof", Attitude.Roof, new Corner { Other = "Left side", AngleSheetM = 0.0015, AngleLegM = 0.03, AngleMaterial = Of("steel_sheet") }, Wall, null);

    internal static SectionOnNight CornerBelow { get; } = Corner with { Name = "Sill", Panel = "Left side", Attitude = Attitude.OutsideLeft, OtherAttitude = Attitude.Floor, OutsideName = "outside air" };

    private const double RoomDewPointC = 9.6;

    private static Rib HatRib => new() { Shape = RibShape.Hat, Material = Of("steel_sheet"), SheetM = 0.0015, DepthM = 0.04, CrownM = 0.04, FootM = 0.015 };

    private static Rib ZedRib => new() { Shape = RibShape.Zed, Material = Of("steel_sheet"), SheetM = 0.001, DepthM = 0.045, CrownM = 0.02, FootM = 0.02 };

    private static Bolt RackBolt => new() { Material = Of("stainless_steel"), DiameterM = 0.008, HeadM = 0.02, HeadThicknessM = 0.005, OuterHeadM = 0.02 };

    private static Material Of(string key) => MaterialLibrary.Find(key)!;

    private static SolidLayer Layer(string name, double thicknessM, string key) => new() { Name = name, ThicknessM = thicknessM, Material = Of(key) };

    private static SectionOnNight Solved(string name, string panel, Attitude attitude, Detail detail, Stack stack, double? spacingM)
    {
        double tilt = attitude switch { Attitude.Roof => 0, Attitude.Floor => 180, _ => 90 };
        var place = new DetailPlace
        {
            Stack = stack, TiltDeg = tilt, OutsideFilmM2KPerW = 0.04, SpacingM = spacingM,
            OtherStack = detail is Corner ? stack : null, OtherTiltDeg = 90, OtherOutsideFilmM2KPerW = 0.04,
            Opening = detail is FrameEdge ? new Opening { Name = "window", WidthM = 0.6, HeightM = 0.4, FrameFraction = 0.2, FrameUWPerM2K = 3 } : null,
        };
        return new SectionOnNight
        {
            Name = name, Panel = panel, Attitude = attitude, InsideC = 18, OutsideC = -12, DewPointC = RoomDewPointC,
            Solved = detail is LineDetail line ? DetailSolver.Solve(line, place) : DetailSolver.Solve((PointDetail)detail, place),
            InsideName = "room", OutsideName = attitude == Attitude.Roof ? "sky and air" : "outside air",
        };
    }
}
