using Thermal.Air;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Climates;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Charts.Tests;

/// <summary>Made-up results that the pictures are drawn from: ordinary ones and awkward ones.</summary>
internal static class Samples
{
    private static readonly CutLayer
        Ply = new("Birch ply lining", 0.006, 1.2, MaterialGroup.Wood),
        Wool = new("Sheep's wool", 0.030, 0.03, MaterialGroup.Wool),
        Foam = new("Closed-cell foam", 0.020, 100, MaterialGroup.Foam),
        Steel = new("Steel skin", 0.001, 5000, MaterialGroup.Metal),
        Air = new("Air gap", 0.015, 0.015, MaterialGroup.Fluid),
        Foil = new("Vapour foil", 0.0002, 100, MaterialGroup.Film),
        Vinyl = new("Vinyl", 0.003, 15, MaterialGroup.Covering),
        FloorPly = new("Floor ply", 0.012, 2.4, MaterialGroup.Wood),
        Boards = new("Foam board", 0.030, 3, MaterialGroup.Foam, BattenFraction: 0.12),
        Grp = new("GRP skin", 0.003, 300, MaterialGroup.Plastic),
        Glass = new("Glass", 0.004, 1000, MaterialGroup.Pane);

    private static readonly Dictionary<CutLayer, double> ResistancesM2KPerW = new()
    {
        [Ply] = 0.05, [Wool] = 0.75, [Foam] = 0.56, [Steel] = 0.00002, [Air] = 0.16, [Foil] = 0.0005, [Vinyl] = 0.018,
        [FloorPly] = 0.09, [Boards] = 0.86, [Grp] = 0.015, [Glass] = 0.004,
    };

    internal static BuildUpCut Roof { get; } = Cut("Roof", Attitude.Roof, -12, 0.58, reaches: 2, Ply, Wool, Foam, Steel) with { RibsNotDrawn = "roof bow every 500 mm" };

    internal static BuildUpCut RoofWithBows { get; } = Roof with { Rib = new CutRib("Roof bows", 0.5, HatParts(0.056, 0.035, 0.04, 0.015, 0.0015)), RibsNotDrawn = "bolts of the roof rack" };

    internal static BuildUpCut SideWithRibs(Attitude attitude) => RoofWithBows with
    {
        Name = "Side", Attitude = attitude,
        Rib = RoofWithBows.Rib! with { Name = "Ribs behind the kitchen, from the sill to the edge of the roof", SpacingM = 0.3 },
    };

    internal static BuildUpCut Floor { get; } = Cut("Floor", Attitude.Floor, -12, 0.58, reaches: 0, Vinyl, FloorPly, Boards, FloorPly with { Name = "Old floor" }) with { OutsideName = "road side" };

    internal static BuildUpCut LeftSide { get; } = Cut("Left side", Attitude.OutsideLeft, -12, 0.58, reaches: 4, Ply, Foil, Wool, Air, Steel);

    internal static BuildUpCut RightSide { get; } = Cut("Right side", Attitude.OutsideRight, -12, 0.58, reaches: 2, Ply, Wool, Foam, Steel);

    internal static BuildUpCut OneLayer { get; } = Cut("Bare door", Attitude.OutsideRight, -25, 0.7, reaches: 0, Steel);

    internal static BuildUpCut OneLayerRoof { get; } = Cut("Bare roof", Attitude.Roof, -25, 0.7, reaches: 0, Steel);

    internal static BuildUpCut MildRoof { get; } = Cut("Roof on a mild night", Attitude.Roof, 12, 0.4, reaches: 2, Ply, Wool, Foam, Steel);

    internal static BuildUpCut LongNames(Attitude attitude) => Cut("Right side with the sliding door and the step below it, behind the kitchen", attitude, -22, 0.58, reaches: 2,
        Ply with { Name = "Lining of poplar plywood with a high-pressure laminate" }, Wool with { Name = "Wool of recycled textile fibres, two mats of half the thickness" },
        Foam with { Name = "Elastomeric foam sheet, closed cell, self-adhesive" }, Steel with { Name = "Steel sheet, painted outside and waxed inside" }) with
    { InsideName = "hold below the raised bed", OutsideName = "sheltered road side", RibsNotDrawn = "side ribs, pillar between the doors, bolts of the roof rack" };

    internal static BuildUpCut TwelveLayers(Attitude attitude) => Cut("Rear", attitude, -30, 0.65, reaches: 9,
        Vinyl, Ply, Foil, Wool, Air, Boards, Foil, Wool, Air, Foam, Glass, Grp);

    internal static Night ColdNight { get; } = NightOf(
        ("Air through vents and gaps", LossKind.Air, 21.4), ("Roof, between bows", LossKind.Panel, 9.8), ("Roof bows", LossKind.Bridge, 5.1),
        ("Left side", LossKind.Panel, 7.7), ("Right side", LossKind.Panel, 8.2), ("Windows left", LossKind.Opening, 6.4), ("Windscreen behind the curtain", LossKind.Opening, 12.9),
        ("Floor", LossKind.Panel, 4.3), ("Rear doors", LossKind.Panel, 3.6));

    internal static Night ManyParts { get; } = NightOf([.. Enumerable.Range(1, 40).Select(i => ($"Part {i} with quite a long name of its own", LossKind.Panel, 40.0 / i))]);

    internal static Night NoLoss { get; } = NightOf(("Roof", LossKind.Panel, 0), ("Floor", LossKind.Panel, 0));

    internal static Night WithGain { get; } = NightOf(("Left side", LossKind.Panel, 20), ("Floor over the warm hold", LossKind.Panel, -3));

    internal static YearDamp WetWinter { get; } = Year([118, 131, 96, 44, 12, 0, 0, 0, 0, 6, 38, 83], 12, 4, 0, [12, 1, 2]);

    internal static YearDamp NeverDries { get; } = Year([410, 460, 470, 430, 380, 330, 290, 260, 255, 275, 310, 362], 1, null, 42, [1]);

    internal static YearDamp DampYear { get; } = Year([17, 19, 12, 4, 0, 0, 0, 0, 0, 1, 6, 12], null, null, 0, []);

    internal static YearDamp DryYear { get; } = Year([0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0], null, null, 0, []);

    internal static HeaterNeed Need { get; } = new()
    {
        Points = [new(-12, new Between(2000, 2310, 2600)), new(-3, new Between(1280, 1490, 1700)), new(6, new Between(560, 690, 820))],
        Heater = "medium diesel air heater",
        LowestOutputW = 900,
        HighestOutputW = 4000,
        ColdC = -12,
        MildC = 6,
        WarmUpW = 2900,
    };

    internal static HeaterNeed TooSmall { get; } = Need with { LowestOutputW = 500, HighestOutputW = 2000, Heater = "small diesel air heater" };

    internal static ThicknessTable Thicknesses { get; } = Table(0.030,
        (0.010, 2710, 1.94, DampVerdict.StaysWet), (0.020, 2480, 1.93, DampVerdict.WetDries), (0.025, 2400, 1.925, DampVerdict.WetDries), (0.030, 2350, 1.92, DampVerdict.WetDries),
        (0.040, 2260, 1.91, DampVerdict.Dry), (0.050, 2205, 1.90, DampVerdict.Dry), (0.080, 2110, 1.87, DampVerdict.Dry));

    internal static ThicknessTable CrowdedThicknesses { get; } =
        Table(0.012, [.. new[] { 3, 4, 5, 6, 8, 10, 12, 15, 18, 20, 100 }.Select(mm => (mm / 1000.0, 2500.0 - mm * 3, (double?)null, DampVerdict.Dry))]);

    internal static ThicknessTable LongThicknesses { get; } = Thicknesses with { Panel = "right side with the sliding door and the step below it", Layer = "Elastomeric foam sheet, closed cell, self-adhesive" };

    internal static StripTable Strips { get; } = new("roof", "Roof bow", "closed-cell foam",
    [
        new(0, 0.31, 1.42, 4.8, -4.8, 0, 0, true), new(0.003, 0.24, 1.28, 8.1, -1.5, 14, 0, false), new(0.005, 0.21, 1.22, 9.9, 0.3, 20, 0, false),
        new(0.01, 0.16, 1.12, 11.8, 2.2, 29, 0.004, false), new(0.013, 0.14, 1.08, 12.5, 2.9, 33, 0.007, false), new(0.02, 0.11, 1.02, 13.6, 4.0, 39, 0.014, false),
    ]);

    internal static StripTable DryStrips { get; } = Strips with { Rows = [.. Strips.Rows.Select(row => row with { ToSpareK = row.ToSpareK + 6, HeadroomLostM = 0, IsKept = row.StripM == 0.005 })] };

    internal static StripTable FrostStrips { get; } = new("right side with the sliding door and the step below it", "Pillar between the doors", "cork tape",
        [new(0, 0.9, 2.42, -9.8, -7.8, 0, 0, false), new(0.02, 0.8, 2.28, -7.1, -5.1, 3, 0.02, false)]);

    internal static FillingTable Fillings { get; } = new("roof", "Roof bow",
        [new(null, 0.31, 1.42, 4.8, -4.8, 0, true), new("sheep's wool", 0.29, 1.38, 5.9, -3.7, 4, false), new("foam from a can", 0.28, 1.37, 9.9, 0.3, 5, false)]);

    internal static FillingTable WetFillings { get; } = new("right side with the sliding door and the step below it", "Pillar between the doors",
        [new(null, 0.31, 1.42, -4.8, -2.8, 0, false), new("wool of recycled textile fibres, two mats of half the thickness", 0.32, 1.43, -4.9, -2.9, -0.4, true)]);

    internal static ThicknessTable RibThicknesses { get; } = Thicknesses with
    {
        Rows = [.. Thicknesses.Rows.Skip(2).Select(row => row with { UWPerM2K = 0.034 / row.ThicknessM, UWithRibsWPerM2K = 0.4 + 0.034 / row.ThicknessM })],
        LeftOut = [.. Thicknesses.Rows.Take(2).Select(row => new ThicknessLeftOut(row.ThicknessM, DoesNotFit))],
    };

    private static UnfitDetail DoesNotFit => new("roof", "Roof bows", SectionSamples.Hat.Solved.Detail, new(DetailFault.DeeperThanWall, 0.035, 0.026));

    // An empty hat from the skin's inner face inwards.
    private static CutPart[] HatParts(double skinM, double depthM, double crownM, double footM, double sheetM)
    {
        double half = crownM / 2, inner = skinM - depthM;
        return
        [
            new(-half + sheetM, half - sheetM, inner + sheetM, skinM, MaterialGroup.Fluid),
            new(-half, half, inner, inner + sheetM, MaterialGroup.Metal),
            new(-half, -half + sheetM, inner, skinM, MaterialGroup.Metal), new(half - sheetM, half, inner, skinM, MaterialGroup.Metal),
            new(-half - footM, -half, skinM - sheetM, skinM, MaterialGroup.Metal), new(half, half + footM, skinM - sheetM, skinM, MaterialGroup.Metal),
        ];
    }

    private static ThicknessTable Table(double keptM, params (double ThicknessM, double LossW, double? HeadroomM, DampVerdict Verdict)[] rows) =>
        new("Roof", "Foam board", 1, keptM, "L", [.. rows.Select(row => new ThicknessRow
        {
            ThicknessM = row.ThicknessM, IsKept = row.ThicknessM == keptM, UWPerM2K = 1, UWithRibsWPerM2K = 1, LossW = row.LossW, FuelAmount = 2, HeadroomM = row.HeadroomM,
            InnerWidthM = 1.7, MassKg = 300, Verdict = row.Verdict, PeakGPerM2 = 10, ColdestC = 8, BridgesStale = false,
        })]);

    private static Night NightOf(params (string Name, LossKind Kind, double WPerK)[] parts)
    {
        LossPart[] losses = [.. parts.Select(part => new LossPart { Name = part.Name, Kind = part.Kind, Zone = "living space", AreaM2 = 1, CoefficientWPerK = part.WPerK, DifferenceK = 30 })];
        double lossW = losses.Sum(part => part.LossW);
        return new Night
        {
            Conditions = new NightConditions { OutsideC = -12, RelativeHumidityFraction = 0.85, WindMPerS = 3, SkyBelowAirK = 20, AltitudeM = 300 },
            Zones = [],
            Losses = losses,
            LossW = lossW,
            LossRangeW = new Between(lossW * 0.85, lossW, lossW * 1.2),
            VapourSourceGPerH = 120,
            Surfaces = [],
            CarbonDioxideAtDawnPpm = 1400,
            ColdestRangeC = new Between(2, 4, 6),
            HumidityRangeFraction = new Between(0.5, 0.58, 0.65),
        };
    }

    private static YearDamp Year(double[] heldGPerM2, int? wetFrom, int? dryIn, double gain, int[] ice) => new()
    {
        HeldGPerM2 = heldGPerM2,
        WettestFaceGPerM2 = [.. heldGPerM2.Select(held => held * 0.8)],
        PeakGPerM2 = heldGPerM2.Max(),
        WetFromMonth = wetFrom,
        DryInMonth = dryIn,
        GainPerYearGPerM2 = gain,
        IceMonths = ice,
        Months = [],
    };

    internal static BuildUpCut Cut(string name, Attitude attitude, double outsideC, double humidityFraction, int reaches, params CutLayer[] layers)
    {
        const double insideC = 18;
        double roomPa = humidityFraction * SaturationPressure.PairPa(insideC), outsidePa = 0.85 * SaturationPressure.PairPa(outsideC);
        double[] resistances = [0.10, .. layers.Select(layer => ResistancesM2KPerW[Known(layer)]), 0.04];
        double total = resistances.Sum(), totalM = layers.Sum(layer => layer.DiffusionThicknessM);
        double[] temperaturesC = new double[layers.Length + 1], pressuresPa = new double[layers.Length + 1];
        double gone = 0, goneM = 0;
        for (int face = 0; face <= layers.Length; face++)
        {
            gone += resistances[face];
            temperaturesC[face] = insideC + (outsideC - insideC) * gone / total;
            pressuresPa[face] = Math.Min(roomPa + (outsidePa - roomPa) * goneM / totalM, SaturationPressure.PairPa(temperaturesC[face]));
            goneM += face < layers.Length ? layers[face].DiffusionThicknessM : 0;
        }
        return new BuildUpCut
        {
            Name = name,
            Attitude = attitude,
            Layers = layers,
            TemperaturesAtFacesC = temperaturesC,
            VapourPressuresAtFacesPa = pressuresPa,
            SettlesByDiffusionGPerM2 = Enumerable.Range(1, layers.Length - 1).Any(face => pressuresPa[face] == SaturationPressure.PairPa(temperaturesC[face])) ? 4.2 : 0,
            ReachingDewPointsC = [.. Enumerable.Range(0, layers.Length + 1).Select(face => face <= reaches ? DewPoint.OfPressureC(roomPa) : (double?)null)],
            InsideC = insideC,
            InsideHumidityFraction = humidityFraction,
            OutsideC = outsideC,
            OutsideName = attitude == Attitude.Roof ? "sky and air" : "outside air",
            InsideName = "room",
        };
    }

    private static CutLayer Known(CutLayer layer) => ResistancesM2KPerW.Keys.First(known => known.Group == layer.Group && known.ThicknessM == layer.ThicknessM);
}
