using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Details so wide, so alike or so conductive that their loss follows from resistances in series.</summary>
public class DetailLimitTests
{
    private const double Rounding = 1e-8;

    private static readonly Material Steel = Of(50, MaterialGroup.Metal);

    private static readonly Stack Wall = new([Sheet(0.006, 0.15), Sheet(0.04, 0.04), Sheet(0.001, 50)]);

    private static double U(params double[] resistances) => 1 / (0.13 + 0.04 + resistances.Sum());

    private static double Found(LineDetail detail, double spacingM) => DetailSolver.Solve(detail, DetailPlace.InWall(Wall, spacingM)).UWithRibsWPerM2K!.Value;

    /// <summary>25 mm of batten, 5 of strip, 10 of foam, the lining.</summary>
    [Fact]
    public void A_batten_as_wide_as_its_spacing_is_a_layer_and_so_is_a_strip_over_it() => Assert.Equal(
        U(0.001 / 50, 0.025 / 0.13, 0.005 / 0.02, 0.01 / 0.04, 0.006 / 0.15),
        Found(new Batten { Material = Of(0.13), WidthM = 0.3, DepthM = 0.025, Over = new() { Material = Of(0.02), ThicknessM = 0.005 } }, 0.3), Rounding);

    /// <summary>Where all is layers, f_Rsi is what R_si 0.25 leaves, and the coldest point what 0.13 leaves.</summary>
    [Fact]
    public void The_factors_of_layers_are_what_their_inside_films_leave()
    {
        SolvedLine solved = DetailSolver.Solve(new Batten { Material = Of(0.13), WidthM = 0.3, DepthM = 0.04 }, DetailPlace.InWall(Wall, 0.3));
        double beyond = 0.006 / 0.15 + 0.04 / 0.13 + 0.001 / 50 + 0.04;
        Assert.Equal(1 - 0.25 / (0.25 + beyond), solved.MouldFactor, Rounding);
        Assert.Equal(1 - 0.13 / (0.13 + beyond), solved.ColdestFactor, Rounding);
    }

    [Fact]
    public void A_bare_plate_as_thick_as_its_spacing_faces_the_room() => Assert.Equal(
        U(0.001 / 50, 0.03 / 50), Found(new Rib { Shape = RibShape.Plate, Material = Steel, SheetM = 0.02, DepthM = 0.03, IsBare = true }, 0.02), 1e-6);

    [Fact]
    public void Over_a_bare_plate_a_strip_faces_the_room() => Assert.Equal(
        U(0.001 / 50, 0.03 / 50, 0.005 / 0.04),
        Found(new Rib { Shape = RibShape.Plate, Material = Steel, SheetM = 0.02, DepthM = 0.03, IsBare = true, Over = new() { Material = Of(0.04), ThicknessM = 0.005 } }, 0.02), 1e-6);

    /// <summary>With the seal as thick as wall and leaf and all of one material, the section is one plate.</summary>
    [Fact]
    public void A_door_s_edge_of_one_material_adds_nothing()
    {
        Material rubber = MaterialLibrary.Find("epdm_seal")!;
        Stack plate = new([new SolidLayer { Name = "inner", ThicknessM = 0.03, Material = rubber }, new SolidLayer { Name = "outer", ThicknessM = 0.001, Material = rubber }]);
        Opening door = new() { Name = "door", WidthM = 1, HeightM = 2, Leaf = plate };
        SolvedLine solved = DetailSolver.Solve(new DoorEdge { Material = rubber, SheetM = 0.001, PostM = 0.05, DepthM = 0.03, SealM = 0.031, Filling = rubber }, DetailPlace.InWall(plate) with { Opening = door });
        Assert.Equal(0, solved.PsiWPerMK.Value, Rounding);
    }

    /// <summary>
    /// A groove filled with metal spreads its heat over bottom and sides: between the flat pan and one with R_se over W + 2h (all metal of one temperature,
    /// which by Rayleigh's principle lets through more than the truth). Air in it lets through less.
    /// </summary>
    [Fact]
    public void A_groove_full_of_metal_is_a_fin_of_no_resistance()
    {
        Corrugation groove = new() { DepthM = 0.01, GrooveM = 0.04, Filling = Of(400, MaterialGroup.Metal) };
        double flat = U(0.001 / 50, 1, 0.006 / 0.15), most = 1 / (0.13 + 1 + 0.006 / 0.15 + 0.04 * 0.1 / 0.12);
        double metal = Found(groove, 0.1);
        Assert.InRange(metal, flat + 0.8 * (most - flat), most + 0.01 * metal);
        Assert.True(Found(groove with { Filling = null }, 0.1) < metal);
    }

    /// <summary>Bare lengths run along the inner face of a steel skin: what the room sees of each panel, and the other's thickness inside its skin.</summary>
    [Fact]
    public void A_corner_counts_from_the_inner_face_of_its_skins()
    {
        Stack floor = new([Sheet(0.012, 0.13), Sheet(0.03, 0.035), new SolidLayer { Name = "pan", ThicknessM = 0.002, Material = Steel }]);
        Stack side = new([Sheet(0.006, 0.15), Sheet(0.04, 0.04), new SolidLayer { Name = "skin", ThicknessM = 0.001, Material = Steel }]);
        DetailPlace place = DetailPlace.InWall(side) with { OtherStack = floor, OtherTiltDeg = 180, OtherOutsideFilmM2KPerW = 0.1 };
        DrawnDetail drawn = DetailSection.Draw(new Corner { Other = "floor" }, place, 0.13);
        Boundary[] room = [.. drawn.Section.Boundaries.Where(boundary => boundary.Environment == DetailSection.Room)];
        double along = room[0].Where.X1M - room[0].Where.X0M + 0.042, up = room[^1].Where.Y1M - room[0].Where.Y0M + 0.046;
        double other = 1 / (0.17 + 0.012 / 0.13 + 0.03 / 0.035 + 0.002 / 50 + 0.1);
        Assert.Equal(U(0.001 / 50, 1, 0.006 / 0.15) * along + other * up, drawn.PlainWPerK, 12);
        Assert.Equal([0.13, 0.17], room.Select(boundary => boundary.SurfaceResistanceM2KPerW));
    }

    [Fact]
    public void A_bolt_loses_more_with_heads_and_less_with_the_lining_over_it()
    {
        DetailPlace place = DetailPlace.InWall(Wall);
        Bolt plain = new() { Material = Steel, DiameterM = 0.008, HeadM = 0.008 };
        double Chi(Bolt bolt) => DetailSolver.Solve(bolt, place, accuracy: new(0.002)).ChiWPerK.Value;
        double shank = Chi(plain), head = Chi(plain with { HeadM = 0.03, HeadThicknessM = 0.003 });
        Assert.True(head > 1.3 * shank);
        Assert.True(Chi(plain with { HeadM = 0.03, HeadThicknessM = 0.003, OuterHeadM = 0.03 }) > head);
        Assert.InRange(Chi(plain with { LayersOver = 1 }), 0.1 * shank, 0.95 * shank);
    }
}
