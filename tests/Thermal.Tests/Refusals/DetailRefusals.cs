using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Refusals;

/// <summary>A detail that does not fit its build-up is refused with every reason and its numbers.</summary>
public class DetailRefusals
{
    private static readonly Material Steel = Of(50, MaterialGroup.Metal), Foam = Of(0.04);

    // 6 mm of lining, 40 mm of foam: 46 mm inside a skin of 1 mm.
    private static readonly Stack Wall = new([Sheet(0.006, 0.15), Sheet(0.04, 0.04), Sheet(0.001, 50)]);

    private static readonly Rib Hat = new() { Shape = RibShape.Hat, Material = Steel, SheetM = 0.001, DepthM = 0.04, CrownM = 0.04, FootM = 0.02 };
    private static readonly Bolt Bolt = new() { Material = Steel, DiameterM = 0.008, HeadM = 0.02, HeadThicknessM = 0.003 };
    private static readonly Opening Window = new() { Name = "window", WidthM = 1, HeightM = 1, FrameUWPerM2K = 4 };
    private static readonly Opening Door = new() { Name = "door", WidthM = 1, HeightM = 2, Leaf = new([Sheet(0.02, 0.04), Sheet(0.001, 50)]) };

    private static void Fits(Detail detail, double? spacingM = null, Opening? opening = null, Stack? other = null, Stack? wall = null) =>
        Assert.Empty(DetailFit.Problems(detail, wall ?? Wall, spacingM, other, opening));

    private static void Refused(DetailFault fault, double givenM, double limitM, Detail detail, double? spacingM = null, Opening? opening = null, Stack? other = null, Stack? wall = null)
    {
        DetailProblem problem = Assert.Single(DetailFit.Problems(detail, wall ?? Wall, spacingM, other, opening));
        Assert.Equal(fault, problem.Fault);
        Assert.Equal(givenM, problem.GivenM, 12);
        Assert.Equal(limitM, problem.LimitM, 12);
    }

    [Fact]
    public void What_fits_has_no_problems()
    {
        Fits(Hat, 0.08);
        Fits(Hat with { DepthM = 0.046 });
        Fits(Hat with { Over = new() { Material = Foam, ThicknessM = 0.006 } });
        Fits(Bolt with { LayersOver = 1 });
        Fits(Bolt with { LayersOver = 2, HeadM = 0.008, HeadThicknessM = 0 });
        Fits(new FrameEdge { FrameDepthM = 0.08, FrameWidthM = 0.05, LipM = 0.046 }, opening: Window);
        Fits(new DoorEdge { Material = Steel, SheetM = 0.001, PostM = 0.05, DepthM = 0.02, SealM = 0.008 }, opening: Door);
        Fits(new Corner { Other = "floor", AngleSheetM = 0.002, AngleLegM = 0.03, AngleMaterial = Steel }, other: Wall);
        Fits(new Corrugation { DepthM = 0.01, GrooveM = 0.03 }, 0.032);
    }

    [Fact]
    public void Nothing_reaches_deeper_than_the_build_up_inside_the_skin()
    {
        Refused(DetailFault.DeeperThanWall, 0.047, 0.046, Hat with { DepthM = 0.047 });
        Refused(DetailFault.DeeperThanWall, 0.05, 0.046, new Batten { Material = Foam, WidthM = 0.04, DepthM = 0.05 });
        Refused(DetailFault.DeeperThanWall, 0.05, 0.046, new FrameEdge { FrameDepthM = 0.03, FrameWidthM = 0.05, LipM = 0.05 }, opening: Window);
        Refused(DetailFault.DeeperThanWall, 0.03, 0.02, new DoorEdge { Material = Steel, SheetM = 0.001, PostM = 0.05, DepthM = 0.03, SealM = 0.008 }, opening: Door);
        Refused(DetailFault.DeeperThanWall, 0.045, 0.04, Bolt with { LayersOver = 1, HeadThicknessM = 0.045 });
    }

    [Fact]
    public void A_strip_fits_between_crown_and_room()
    {
        OverRib strip = new() { Material = Foam, ThicknessM = 0.01 };
        Refused(DetailFault.StripTooThick, 0.01, 0.006, Hat with { Over = strip });
        Refused(DetailFault.StripTooThick, 0.01, 0.006, new Batten { Material = Foam, WidthM = 0.04, DepthM = 0.04, Over = strip });
    }

    [Theory, InlineData(0.06), InlineData(double.NaN)]
    public void Neighbours_do_not_overlap(double spacingM)
    {
        Refused(DetailFault.WiderThanSpacing, 0.08, spacingM, Hat, spacingM);
        Refused(DetailFault.WiderThanSpacing, 0.0605, spacingM, Hat with { Shape = RibShape.Zed, FootM = 0.0205 }, spacingM);
        Refused(DetailFault.WiderThanSpacing, 0.061, spacingM, Hat with { Shape = RibShape.Channel, FootM = 0.06 }, spacingM);
        Refused(DetailFault.WiderThanSpacing, 0.061, spacingM, Hat with { Shape = RibShape.Channel, CrownM = 0.061 }, spacingM);
        Refused(DetailFault.WiderThanSpacing, 0.07, spacingM, Hat with { FootM = 0, Over = new() { Material = Foam, ThicknessM = 0.002, WidthM = 0.07 } }, spacingM);
        Refused(DetailFault.WiderThanSpacing, 0.062, spacingM, new Corrugation { DepthM = 0.01, GrooveM = 0.06 }, spacingM);
    }

    [Fact]
    public void A_sheet_leaves_two_tenths_of_a_millimetre_open_in_its_shape()
    {
        Refused(DetailFault.SheetTooThick, 0.02, 0.0199, Hat with { SheetM = 0.02 });
        Refused(DetailFault.SheetTooThick, 0.012, 0.0099, new DoorEdge { Material = Steel, SheetM = 0.012, PostM = 0.05, DepthM = 0.02, SealM = 0.008 }, opening: Door);
        Refused(DetailFault.SheetTooThick, 0.008, 0.0074, Hat with { SheetM = 0.008, CrownM = 0.015 });
        Fits(Hat with { Shape = RibShape.Zed, SheetM = 0.008, CrownM = 0.015 });
        Refused(DetailFault.SheetTooThick, 0.008, 0.0074, new DoorEdge { Material = Steel, SheetM = 0.008, PostM = 0.015, DepthM = 0.02, SealM = 0.008 }, opening: Door);
        Refused(DetailFault.SheetTooThick, 0.015, 0.012, new Corner { Other = "floor", AngleSheetM = 0.015, AngleLegM = 0.03, AngleMaterial = Steel }, other: new([Sheet(0.012, 0.1), Sheet(0.001, 50)]));
        Refused(DetailFault.SheetTooThick, 0.02, 0.01, new Corner { Other = "floor", AngleSheetM = 0.02, AngleLegM = 0.01, AngleMaterial = Steel });
    }

    [Fact]
    public void A_shape_has_the_parts_it_has()
    {
        Refused(DetailFault.CrownUnfit, 0.04, 0, Hat with { Shape = RibShape.Plate, FootM = 0 });
        Assert.Contains(DetailFit.Problems(Hat with { CrownM = 0 }, Wall, null), problem => problem.Fault == DetailFault.CrownUnfit);
        Fits(Hat with { Shape = RibShape.Channel, CrownM = 0.003 });
        Refused(DetailFault.CrownUnfit, 0.0029, 0.003, Hat with { Shape = RibShape.Channel, CrownM = 0.0029 });
        Fits(new Corner { Other = "floor", AngleSheetM = 0.001, AngleLegM = 0.003, AngleMaterial = Steel });
        Refused(DetailFault.AngleUnfit, 0.0029, 0.003, new Corner { Other = "floor", AngleSheetM = 0.001, AngleLegM = 0.0029, AngleMaterial = Steel });
        Refused(DetailFault.FootUnfit, 0.02, 0, Hat with { Shape = RibShape.Box });
        Refused(DetailFault.NothingToFill, 0, 0, Hat with { Shape = RibShape.Zed, Filling = Foam });
        Refused(DetailFault.AngleUnfit, 0, 0.003, new Corner { Other = "floor", AngleMaterial = Steel });
    }

    [Fact]
    public void A_bolt_has_its_head_where_there_is_room()
    {
        Refused(DetailFault.TooManyLayersOver, 0, 0, Bolt with { LayersOver = 3 });
        Refused(DetailFault.HeadNarrowerThanShank, 0.006, 0.008, Bolt with { HeadM = 0.006 });
        Refused(DetailFault.HeadNarrowerThanShank, 0.005, 0.008, Bolt with { OuterHeadM = 0.005 });
        Refused(DetailFault.HeadWithoutThickness, 0, 0, Bolt with { HeadThicknessM = 0 });
    }

    [Fact]
    public void A_frame_lets_no_more_through_than_a_flat_block_can() =>
        Refused(DetailFault.FrameTooOpen, 0, 0, new FrameEdge { FrameDepthM = 0.03, FrameWidthM = 0.05 }, opening: Window with { FrameUWPerM2K = 7 });

    [Fact]
    public void A_ventilated_layer_is_not_crossed()
    {
        Stack open = new([Sheet(0.04, 0.04), new AirLayer { Name = "air", ThicknessM = 0.02, OpeningsMm2 = 900 }, Sheet(0.001, 50)]);
        Refused(DetailFault.CrossesVentilatedLayer, 0, 0, Hat, wall: open);
        Refused(DetailFault.CrossesVentilatedLayer, 0, 0, new Corner { Other = "floor" }, other: open);
    }

    [Fact]
    public void The_solver_names_everything_that_does_not_fit()
    {
        Rib worse = Hat with { Shape = RibShape.Box, DepthM = 0.06 };
        string said = Assert.Throws<ArgumentException>(() => DetailSolver.Solve(worse, DetailPlace.InWall(Wall, 0.03))).Message;
        foreach (string part in new[] { "FootUnfit", "DeeperThanWall (0.06 m", "WiderThanSpacing (0.04 m, limit 0.03 m)" }) Assert.Contains(part, said, StringComparison.Ordinal);
    }

    [Fact]
    public void An_edge_needs_its_opening_and_a_corner_its_other_panel()
    {
        DetailPlace place = DetailPlace.InWall(Wall);
        Assert.Throws<ArgumentException>(() => DetailSolver.Solve(new Corner { Other = "floor" }, place));
        Assert.Throws<ArgumentException>(() => DetailSolver.Solve(new FrameEdge { FrameDepthM = 0.03, FrameWidthM = 0.05 }, place));
        Assert.Throws<ArgumentException>(() => DetailSolver.Solve(new DoorEdge { Material = Steel, SheetM = 0.001, PostM = 0.05, DepthM = 0.02, SealM = 0.008 }, place with { Opening = Window }));
    }
}
