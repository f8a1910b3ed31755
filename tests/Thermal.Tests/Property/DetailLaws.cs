using CsCheck;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Property;

/// <summary>Laws of described details in any build-up they fit.</summary>
public class DetailLaws
{
    private const int Few = 12; // each try solves sections

    private static readonly Material Steel = Sketches.Of(50, MaterialGroup.Metal);

    private static readonly Gen<Stack> AnyWall = Gen.Select(Gen.Double[0.003, 0.02], Gen.Double[0.02, 0.08], Gen.Double[0.025, 0.05], Gen.Double[0.0006, 0.002])
        .Select((lining, foam, conductivity, skin) => new Stack([Sheet(lining, 0.15, "lining"), Sheet(foam, conductivity, "foam"), Sheet(skin, 50, "skin")]));

    private static readonly Gen<RibShape> AnyShape = Gen.Enum<RibShape>();

    private static Rib Of(RibShape shape, double depthM) => new()
    {
        Shape = shape, Material = Steel, SheetM = 0.0015, DepthM = depthM, CrownM = shape == RibShape.Plate ? 0 : 0.04,
        FootM = shape is RibShape.Box or RibShape.Plate ? 0 : 0.015,
    };

    private static double FoamM(Stack wall) => wall.Layers[1].ThicknessM;

    private static SolvedLine Solve(LineDetail detail, Stack wall) => DetailSolver.Solve(detail, DetailPlace.InWall(wall, 0.4));

    [Fact]
    public void A_deeper_rib_of_filled_section_never_loses_less() => Gen.Select(AnyWall, AnyShape, Gen.Double[0.3, 1], Gen.Double[0.3, 1]).Sample((wall, shape, one, other) =>
    {
        Material foam = ((SolidLayer)wall.Layers[1]).Material;
        Rib Filled(double share) => Of(shape, share * FoamM(wall)) with { Filling = shape is RibShape.Hat or RibShape.Box ? foam : null };
        SolvedLine shallow = Solve(Filled(Math.Min(one, other)), wall), deep = Solve(Filled(Math.Max(one, other)), wall);
        return deep.PsiWPerMK.High >= shallow.PsiWPerMK.Low && deep.ColdestFactor <= shallow.ColdestFactor + deep.ColdestErrorFactor + shallow.ColdestErrorFactor + 0.003;
    }, iter: Few);

    /// <summary>A strip that insulates at least as well as what it takes the place of.</summary>
    [Fact]
    public void A_strip_over_a_rib_never_makes_it_worse() => Gen.Select(AnyWall, AnyShape, Gen.Double[0.1, 0.9], Gen.Double[0.015, 0.025]).Sample((wall, shape, share, conductivity) =>
    {
        Rib rib = Of(shape, 0.7 * FoamM(wall));
        OverRib strip = new() { Material = Sketches.Of(conductivity), ThicknessM = share * 0.3 * FoamM(wall), WidthM = 0.05 };
        SolvedLine without = Solve(rib, wall), with = Solve(rib with { Over = strip }, wall);
        return with.PsiWPerMK.Low <= without.PsiWPerMK.High && with.ColdestFactor >= without.ColdestFactor - with.ColdestErrorFactor - without.ColdestErrorFactor - 0.003;
    }, iter: Few);

    /// <summary>ISO 6946: true U lies between the limits that let heat spread nowhere and everywhere.</summary>
    [Fact]
    public void Battens_lie_between_the_limits_of_the_combined_method() => Gen.Select(AnyWall, Gen.Double[0.1, 0.3], Gen.Double[0.01, 0.1]).Sample((wall, conductivity, widthM) =>
    {
        Material timber = Sketches.Of(conductivity, MaterialGroup.Wood);
        SolvedLine solved = Solve(new Batten { Material = timber, WidthM = widthM, DepthM = FoamM(wall) }, wall);
        StackTransmittance limits = Transmittance.Of(wall.WithLayer(1, (SolidLayer)wall.Layers[1] with { Battens = new(timber, widthM / 0.4) }), FlowDirection.Horizontal, 0.13, 0.04);
        double play = (solved.PsiWPerMK.High - solved.PsiWPerMK.Low) / 2 / 0.4, found = solved.UWithRibsWPerM2K!.Value;
        return found + play >= 1 / limits.UpperLimitM2KPerW && found - play <= 1 / limits.LowerLimitM2KPerW;
    }, iter: Few);

    [Fact]
    public void The_coldest_point_is_colder_than_the_plain_wall_and_colder_still_with_the_films_for_mould() => Gen.Select(AnyWall, AnyShape).Sample((wall, shape) =>
    {
        SolvedLine solved = Solve(Of(shape, 0.9 * FoamM(wall)), wall);
        double plain = 1 - 0.13 * solved.PlainUWPerM2K;
        return solved.MouldFactor < solved.ColdestFactor && solved.ColdestFactor < plain && solved.MouldFactor > 0;
    }, iter: Few);

    private static readonly Gen<double> Share = Gen.Double[0.02, 1];

    private static readonly Gen<Detail> AnyDetail = Gen.OneOf<Detail>(
        Gen.Select(AnyShape, Gen.Double[0.0004, 0.01], Share, Share, Gen.Double[0, 0.1], Gen.Bool, Gen.Select(Share, Share)).Select((shape, sheet, depth, crown, foot, bare, over) => (Detail)new Rib
        {
            Shape = shape, Material = Steel, SheetM = sheet, DepthM = 0.01 + 0.1 * depth, CrownM = shape == RibShape.Plate ? 0 : 0.01 + 0.2 * crown,
            FootM = shape is RibShape.Box or RibShape.Plate ? 0 : foot, IsBare = bare, Over = new() { Material = Sketches.Of(0.035), ThicknessM = 0.001 + 0.02 * over.Item1, WidthM = 0.01 + 0.2 * over.Item2 },
        }),
        Gen.Select(Share, Share).Select((width, depth) => (Detail)new Batten { Material = Sketches.Of(0.13), WidthM = 0.4 * width, DepthM = 0.003 + 0.1 * depth }),
        Gen.Select(Share, Share).Select((depth, width) => (Detail)new Corrugation { DepthM = 0.002 + 0.04 * depth, GrooveM = 0.01 + 0.2 * width }),
        Gen.Select(Gen.Double[0.0004, 0.01], Share).Select((sheet, leg) => (Detail)new Corner { Other = "other", AngleSheetM = sheet, AngleLegM = 0.3 * leg, AngleMaterial = Steel }),
        Gen.Const((Detail)new Corner { Other = "other" }),
        Gen.Select(Share, Share, Gen.Double[0, 0.1], Gen.Double[0, 0.05]).Select((depth, width, lip, gap) => (Detail)new FrameEdge { FrameDepthM = 0.005 + 0.15 * depth, FrameWidthM = 0.01 + 0.15 * width, LipM = lip, GapM = gap }),
        Gen.Select(Gen.Double[0.0004, 0.005], Share, Share, Share).Select((sheet, post, depth, seal) => (Detail)new DoorEdge { Material = Steel, SheetM = sheet, PostM = 0.01 + 0.2 * post, DepthM = 0.01 + 0.06 * depth, SealM = 0.003 + 0.04 * seal }),
        Gen.Select(Gen.Double[0.001, 0.02], Share, Gen.Double[0, 0.02], Gen.Int[0, 2]).Select((shank, head, thickness, over) => (Detail)new Bolt { Material = Steel, DiameterM = shank, HeadM = shank + 0.1 * head, HeadThicknessM = thickness, OuterHeadM = over == 1 ? null : shank + 0.05, LayersOver = over }));

    /// <summary>Sections are drawn without overlaps, leaks and slivers from every detail that fits: nobody meets a fault of a drawing he did not make.</summary>
    [Fact]
    public void Whatever_fits_can_be_drawn() => Gen.Select(AnyDetail, AnyWall, AnyWall, Gen.Double[0, 180], Gen.Double[0, 180], Gen.Double[0.05, 1], Gen.Bool).Sample((detail, wall, other, tilt, otherTilt, spacing, alone) =>
    {
        Opening opening = new() { Name = "opening", WidthM = 1, HeightM = 1, FrameUWPerM2K = 3, Leaf = other };
        DetailPlace place = new() { Stack = wall, TiltDeg = tilt, OutsideFilmM2KPerW = 0.04, SpacingM = alone ? null : spacing, OtherStack = other, OtherTiltDeg = otherTilt, OtherOutsideFilmM2KPerW = 0.1, Opening = opening };
        return DetailFit.Problems(detail, wall, place.SpacingM, other, opening).Count > 0
            || new[] { SurfaceResistance.InsideM2KPerW(SurfaceResistance.DirectionOf(tilt)), 0.25 }.All(film => DetailSection.Of(detail, place, film).Problems.Count == 0);
    }, iter: 2000);

    [Fact]
    public void Only_what_repeats_has_a_U_with_ribs()
    {
        Stack wall = new([Sheet(0.006, 0.15), Sheet(0.04, 0.04), Sheet(0.001, 50)]);
        DetailPlace place = DetailPlace.InWall(wall, 0.5) with { OtherStack = wall, OtherTiltDeg = 90, OtherOutsideFilmM2KPerW = 0.04 };
        Assert.NotNull(DetailSolver.Solve(Of(RibShape.Hat, 0.04), place).UWithRibsWPerM2K);
        Assert.Null(DetailSolver.Solve(new Corner { Other = "other" }, place).UWithRibsWPerM2K);
    }

    /// <summary>Half a hat is drawn and counted twice, a Z is drawn whole; its bounds are those of the section and hold what ten times the work finds.</summary>
    [Theory, InlineData(RibShape.Hat, 2), InlineData(RibShape.Zed, 1)]
    public void The_bounds_of_a_rib_are_those_of_its_section(RibShape shape, int drawnTimes)
    {
        DetailPlace place = DetailPlace.InWall(new([Sheet(0.006, 0.15), Sheet(0.04, 0.04), Sheet(0.001, 50)]), 0.4);
        SolvedLine rough = DetailSolver.Solve(Of(shape, 0.036), place, accuracy: new(0.1, 1)), near = DetailSolver.Solve(Of(shape, 0.036), place, accuracy: new(0.001));
        Bounded(rough.PsiWPerMK, near.PsiWPerMK, drawnTimes * rough.Loss.CouplingErrorsWPerK[1]);
        Assert.Equal(near.Loss.TemperatureChangeK, near.ColdestErrorFactor);
        Assert.InRange(near.ColdestErrorFactor, 1e-12, 0.02);
    }

    [Fact]
    public void The_bounds_of_a_bolt_are_those_of_its_section()
    {
        DetailPlace place = DetailPlace.InWall(new([Sheet(0.006, 0.15), Sheet(0.04, 0.04), Sheet(0.001, 50)]));
        Bolt bolt = new() { Material = Steel, DiameterM = 0.008, HeadM = 0.02, HeadThicknessM = 0.005 };
        SolvedPoint rough = DetailSolver.Solve(bolt, place, accuracy: new(0.1, 1)), near = DetailSolver.Solve(bolt, place, accuracy: new(0.001));
        Bounded(rough.ChiWPerK, near.ChiWPerK, rough.Loss.CouplingErrorsWPerK[1]);
    }

    private static void Bounded(Bounded rough, Bounded near, double errorW)
    {
        Assert.InRange(near.Value, rough.Low, rough.High);
        Assert.Equal(errorW, rough.High - rough.Value, 1e-12);
        Assert.Equal(errorW, rough.Value - rough.Low, 1e-12);
        Assert.True(near.High - near.Low < rough.High - rough.Low);
    }

    /// <summary>Along a thick lining of aluminium heat runs far, in a thick wall it spreads wide: what stands alone has that much wall drawn beside it.</summary>
    [Theory, InlineData(0.003, 160, 0.04, 0.04), InlineData(0.006, 0.15, 0.3, 0.15)]
    public void One_alone_has_as_much_wall_beside_it_as_it_needs(double liningM, double liningWPerMK, double foamM, double depthM)
    {
        Stack wall = new([Sheet(liningM, liningWPerMK), Sheet(foamM, 0.04), Sheet(0.001, 50)]);
        Rib rib = Of(RibShape.Hat, depthM);
        Accuracy fine = new(0.0005, 0.001);
        SolvedLine alone = DetailSolver.Solve(rib, DetailPlace.InWall(wall), accuracy: fine), apart = DetailSolver.Solve(rib, DetailPlace.InWall(wall, 4), accuracy: fine);
        Assert.Equal(apart.PsiWPerMK.Value, alone.PsiWPerMK.Value, 0.002 * apart.PsiWPerMK.Value);
    }

    /// <summary>Far enough apart neighbours do not feel each other: ψ is that of one alone.</summary>
    [Fact]
    public void One_alone_is_as_one_of_many_far_apart() => Gen.Select(AnyWall, AnyShape).Sample((wall, shape) =>
    {
        Rib rib = Of(shape, 0.9 * FoamM(wall));
        SolvedLine alone = DetailSolver.Solve(rib, DetailPlace.InWall(wall)), apart = DetailSolver.Solve(rib, DetailPlace.InWall(wall, 1.5));
        return alone.PsiWPerMK.Low <= apart.PsiWPerMK.High && apart.PsiWPerMK.Low <= alone.PsiWPerMK.High && alone.UWithRibsWPerM2K is null;
    }, iter: Few);
}
