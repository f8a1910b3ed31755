using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Details whose loss is known without solving them.</summary>
public class DetailSectionTests
{
    private static readonly Material Foam = Of(0.04);

    /// <summary>What rounding leaves of a flow of about 1 W/(m·K), through matrices whose entries differ by four powers of ten.</summary>
    private const double Rounding = 1e-8;

    private static Stack Wall => new([Sheet(0.006, 0.15), new SolidLayer { Name = "foam", ThicknessM = 0.04, Material = Foam }, Sheet(0.001, 50)]);

    [Theory, InlineData(0.5), InlineData(null)]
    public void A_batten_of_the_foam_s_own_material_adds_nothing(double? spacingM) =>
        Assert.Equal(0, DetailSolver.Solve(new Batten { Material = Foam, WidthM = 0.04, DepthM = 0.03 }, DetailPlace.InWall(Wall, spacingM)).PsiWPerMK.Value, Rounding);

    [Fact]
    public void A_rib_of_the_foam_s_own_material_adds_nothing()
    {
        foreach (RibShape shape in Enum.GetValues<RibShape>())
        {
            Rib rib = new()
            {
                Shape = shape, Material = Foam, SheetM = 0.002, DepthM = 0.03, CrownM = shape == RibShape.Plate ? 0 : 0.04,
                FootM = shape is RibShape.Box or RibShape.Plate ? 0 : 0.015, Filling = shape is RibShape.Hat or RibShape.Box ? Foam : null,
                Over = new() { Material = Foam, ThicknessM = 0.005, WidthM = 0.06 },
            };
            Assert.Equal(0, DetailSolver.Solve(rib, DetailPlace.InWall(Wall, 0.5)).PsiWPerMK.Value, Rounding);
        }
    }

    [Fact]
    public void A_bolt_of_the_wall_s_own_material_adds_nothing()
    {
        Stack plain = new([new SolidLayer { Name = "inner", ThicknessM = 0.02, Material = Foam }, new SolidLayer { Name = "outer", ThicknessM = 0.02, Material = Foam }]);
        Assert.Equal(0, DetailSolver.Solve(new Bolt { Material = Foam, DiameterM = 0.01, HeadM = 0.01 }, DetailPlace.InWall(plain)).ChiWPerK.Value, Rounding);
    }

    /// <summary>Frame as deep as the wall and of its resistance: 0.04/0.04 + 0.17 m²·K/W.</summary>
    [Fact]
    public void A_frame_that_resists_as_the_wall_adds_nothing()
    {
        Stack plain = new([new SolidLayer { Name = "foam", ThicknessM = 0.04, Material = Foam }]);
        Opening window = new() { Name = "window", WidthM = 1, HeightM = 1, FrameUWPerM2K = 1 / 1.17 };
        Assert.Equal(0, DetailSolver.Solve(new FrameEdge { FrameDepthM = 0.04, FrameWidthM = 0.05 }, DetailPlace.InWall(plain) with { Opening = window }).PsiWPerMK.Value, Rounding);
    }

    /// <summary>A ring of metal round a bolt's own foam is no path: an air layer in the build-up keeps the resistance that U counts, whatever its films.</summary>
    [Fact]
    public void An_air_layer_in_the_build_up_resists_as_its_U_says()
    {
        Stack stack = new([Sheet(0.006, 0.15), new AirLayer { Name = "air", ThicknessM = 0.02 }, new SolidLayer { Name = "foam", ThicknessM = 0.03, Material = Foam }, Sheet(0.001, 50)]);
        SolvedLine solved = DetailSolver.Solve(new Batten { Material = Foam, WidthM = 0.04, DepthM = 0.03 }, DetailPlace.InWall(stack, 0.4));
        double plain = Transmittance.Of(stack, FlowDirection.Horizontal, 0.13, 0.04).UWPerM2K;
        Assert.Equal(plain, solved.PlainUWPerM2K, 12);
        Assert.Equal(plain, solved.UWithRibsWPerM2K!.Value, Rounding);
    }

    /// <summary>
    /// Two equal plates at a right angle with both faces held at their temperatures: the edge adds 1 − (2/π)·ln 2 = 0.5587 widths to the inner lengths
    /// (conformal mapping of a bent strip; Langmuir measured 0.54); outer lengths count two widths more.
    /// </summary>
    [Fact]
    public void A_square_edge_of_one_material_adds_what_mapping_it_says()
    {
        Stack plate = new([Sheet(0.1, 1)]);
        DetailPlace place = DetailPlace.InWall(plate) with { OutsideFilmM2KPerW = 0, OtherStack = plate, OtherTiltDeg = 90, OtherOutsideFilmM2KPerW = 0 };
        DrawnDetail drawn = DetailSection.Draw(new Corner { Other = "other" }, place, 0);
        double psi = Conduction.Solve(drawn.Section, new(0.0005)).CouplingWPerK(DetailSection.Room, DetailSection.Outside) - drawn.PlainWPerK;
        Assert.Equal(1 - 2 / Math.PI * Math.Log(2) - 2, psi, 0.0005 * drawn.PlainWPerK);
    }

    [Fact]
    public void A_mirrored_channel_is_the_same_rib()
    {
        Rib channel = new() { Shape = RibShape.Channel, Material = Of(50, MaterialGroup.Metal), SheetM = 0.0015, DepthM = 0.03, CrownM = 0.04, FootM = 0.02 };
        Section section = DetailSection.Of(channel, DetailPlace.InWall(Wall, 0.5), 0.13);
        Section mirrored = section with { Pieces = [.. section.Pieces.Select(piece => piece with { Where = piece.Where with { X0M = 0.5 - piece.Where.X1M, X1M = 0.5 - piece.Where.X0M } })] };
        double one = Conduction.Solve(section).CouplingWPerK("room", "outside"), other = Conduction.Solve(mirrored).CouplingWPerK("room", "outside");
        Assert.Equal(one, other, 1e-6 * one);
    }

    /// <summary>A round bolt in a round piece of wall against a square one of the same areas in a square piece: what flows hardly knows the outline.</summary>
    [Fact]
    public void A_round_bolt_lets_through_what_a_square_one_of_its_section_does()
    {
        Stack stack = new([Sheet(0.006, 0.15), Sheet(0.04, 0.04)]);
        DetailPlace place = DetailPlace.InWall(stack);
        DrawnDetail drawn = DetailSection.Draw(new Bolt { Material = Of(17, MaterialGroup.Metal), DiameterM = 0.012, HeadM = 0.012 }, place, 0.13);
        double round = Conduction.Solve(drawn.Section).CouplingWPerK("room", "outside") - drawn.PlainWPerK;
        double side = Math.Sqrt(Math.PI) * 0.006 / 2, half = 0.15, area = 4 * half * half, u = drawn.PlainUWPerM2K;
        Section square = new("square bolt", SectionShape.Solid,
            [
                new("foam", new(0, half, 0, 0.04, 0, half), 0.04), new("lining", new(0, half, 0.04, 0.046, 0, half), 0.15),
                new("bolt", new(0, side, 0, 0.046, 0, side), 17) { IsInset = true },
            ],
            [new("outside", new(0, half, -1, 0, 0, half), 0.04), new("room", new(0, half, 0.046, 1, 0, half), 0.13)]);
        double solid = 4 * Conduction.Solve(square).CouplingWPerK("room", "outside") - u * area;
        Assert.InRange(solid / round, 0.93, 1.07);
    }
}
