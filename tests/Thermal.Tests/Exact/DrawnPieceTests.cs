using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Sections of described details against the rectangles that a draughtsman would put there: left, right, outer and inner edge in mm, and λ.</summary>
public class DrawnPieceTests
{
    private static readonly Material Steel = Sketches.Of(50, MaterialGroup.Metal, emissivityFraction: 0.25);

    private static readonly Stack Wall = new([Sheet(0.006, 0.15), Sheet(0.04, 0.04), Sheet(0.001, 50)]);

    private static readonly Stack Leaf = new([Sheet(0.004, 0.12), Sheet(0.03, 0.03), Sheet(0.001, 50)]);

    private static Rib Of(RibShape shape) => new()
    {
        Shape = shape, Material = Steel, SheetM = 0.0015, DepthM = 0.03, CrownM = shape == RibShape.Plate ? 0 : 0.04,
        FootM = shape is RibShape.Box or RibShape.Plate ? 0 : 0.02,
    };

    private static (double, double, double, double, double) Mm(double x0, double x1, double y0, double y1, double conductivityWPerMK) => (x0, x1, y0, y1, Math.Round(conductivityWPerMK, 9));

    private static (double, double, double, double, double) Written(Piece piece) => (Math.Round(1000 * piece.Where.X0M, 6), Math.Round(1000 * piece.Where.X1M, 6),
        Math.Round(1000 * piece.Where.Y0M, 6), Math.Round(1000 * piece.Where.Y1M, 6), Math.Round(piece.ConductivityWPerMK, 9));

    private static void Drawn(IEnumerable<Piece> pieces, params (double, double, double, double, double)[] expected) => Assert.Equal(expected.Order(), pieces.Select(Written).Order());

    /// <summary>All that is set into the layers.</summary>
    private static IEnumerable<Piece> Inset(Detail detail, DetailPlace place) => DetailSection.Of(detail, place, 0.13).Pieces.Where(piece => piece.IsInset);

    private static double AirWPerMK(double depthM, double widthM, double innerEmissivityFraction = 0.9, double outerEmissivityFraction = 0.9) =>
        AirCavity.ConductivityWPerMK(depthM, widthM, FlowDirection.Horizontal, innerEmissivityFraction, outerEmissivityFraction);

    private static double RoomFromM(Section section) => section.Boundaries.Single(boundary => boundary.Environment == DetailSection.Room).Where.Y0M;

    /// <summary>60 mm of Z in the middle of 500: its flange reaches to the left of the web, its foot to the right.</summary>
    [Fact]
    public void A_zed_has_flange_and_foot_on_opposite_sides() => Drawn(Inset(Of(RibShape.Zed), DetailPlace.InWall(Wall, 0.5)),
        Mm(258.5, 260, 1, 31, 50), Mm(220, 260, 29.5, 31, 50), Mm(260, 280, 1, 2.5, 50));

    /// <summary>40 mm of C in the middle of 500: flange and foot both to the right of the web.</summary>
    [Fact]
    public void A_channel_has_flange_and_foot_on_the_same_side() => Drawn(Inset(Of(RibShape.Channel), DetailPlace.InWall(Wall, 0.5)),
        Mm(230, 231.5, 1, 31, 50), Mm(230, 270, 29.5, 31, 50), Mm(231.5, 251.5, 1, 2.5, 50));

    [Fact]
    public void A_strip_lies_over_the_middle_of_a_zed_s_flange() => Drawn(
        Inset(Of(RibShape.Zed) with { Over = new() { Material = Sketches.Of(0.02), ThicknessM = 0.005, WidthM = 0.03 } }, DetailPlace.InWall(Wall, 0.5)),
        Mm(258.5, 260, 1, 31, 50), Mm(220, 260, 29.5, 31, 50), Mm(260, 280, 1, 2.5, 50), Mm(225, 255, 31, 36, 0.02));

    /// <summary>Its hollow goes down to the skin: 28.5 mm deep and 37 wide, between the crown's metal and the skin's paint.</summary>
    [Fact]
    public void Half_a_hat_has_one_web_one_foot_and_half_its_hollow() => Drawn(Inset(Of(RibShape.Hat), DetailPlace.InWall(Wall, 0.5)),
        Mm(0, 18.5, 1, 29.5, AirWPerMK(0.0285, 0.037, 0.25, 0.9)), Mm(0, 20, 29.5, 31, 50), Mm(18.5, 20, 1, 31, 50), Mm(20, 40, 1, 2.5, 50));

    [Fact]
    public void Half_a_box_has_a_bottom_of_its_own() => Drawn(Inset(Of(RibShape.Box), DetailPlace.InWall(Wall, 0.5)),
        Mm(0, 18.5, 2.5, 29.5, AirWPerMK(0.027, 0.037, 0.25, 0.25)), Mm(0, 20, 29.5, 31, 50), Mm(18.5, 20, 1, 31, 50), Mm(0, 20, 1, 2.5, 50));

    [Fact]
    public void Half_a_plate_is_half_its_sheet() => Drawn(Inset(Of(RibShape.Plate), DetailPlace.InWall(Wall, 0.5)), Mm(0, 0.75, 1, 31, 50));

    /// <summary>The skin runs down, along the bottom and up again as thick as it is; the air in it is as deep as the groove.</summary>
    [Fact]
    public void Half_a_groove_is_the_skin_pressed_outwards() => Drawn(DetailSection.Of(new Corrugation { DepthM = 0.01, GrooveM = 0.04 }, DetailPlace.InWall(Wall, 0.1), 0.13).Pieces,
        Mm(20, 50, 0, 1, 50), Mm(0, 50, 1, 41, 0.04), Mm(0, 50, 41, 47, 0.15), Mm(20, 21, -10, 0, 50), Mm(0, 20, -10, -9, 50), Mm(0, 20, -9, 1, AirWPerMK(0.01, 0.04)));

    /// <summary>300 mm of wall, 50 of post, 6 of gap, 1.5 of folded edge, 300 of leaf. Behind the seal the gap's air counts double.</summary>
    [Fact]
    public void A_door_s_edge_is_post_seal_and_folded_leaf()
    {
        DetailPlace place = DetailPlace.InWall(Wall) with { Opening = new() { Name = "door", WidthM = 1, HeightM = 2, Leaf = Leaf } };
        Section section = DetailSection.Of(new DoorEdge { Material = Steel, SheetM = 0.0015, PostM = 0.05, DepthM = 0.025, SealM = 0.006 }, place, 0.13);
        Drawn(section.Pieces,
            Mm(0, 350, 0, 1, 50), Mm(0, 350, 1, 41, 0.04), Mm(0, 350, 41, 47, 0.15),
            Mm(301.5, 348.5, 1, 24.5, AirWPerMK(0.0235, 0.047, 0.25, 0.9)), Mm(300, 301.5, 1, 26, 50), Mm(348.5, 350, 1, 26, 50), Mm(300, 350, 24.5, 26, 50),
            Mm(350, 356, 0, 6, MaterialLibrary.Find("epdm_seal")!.ConductivityWPerMK.Value), Mm(350, 356, 6, 35, 2 * AirWPerMK(0.029, 0.006)),
            Mm(356, 657.5, 0, 1, 50), Mm(356, 657.5, 1, 31, 0.03), Mm(356, 657.5, 31, 35, 0.12), Mm(356, 357.5, 1, 26, 50));
        Assert.Equal(0.035, RoomFromM(section), 12);
    }

    [Theory, InlineData(0.0101, 0.0101), InlineData(0.01, 0.035)]
    public void Beyond_a_centimetre_the_room_reaches_into_a_door_s_gap(double sealM, double roomFromM)
    {
        DetailPlace place = DetailPlace.InWall(Wall) with { Opening = new() { Name = "door", WidthM = 1, HeightM = 2, Leaf = Leaf } };
        Assert.Equal(roomFromM, RoomFromM(DetailSection.Of(new DoorEdge { Material = Steel, SheetM = 0.0015, PostM = 0.05, DepthM = 0.025, SealM = sealM }, place, 0.13)), 12);
    }

    /// <summary>300 mm of wall, 10 of gap, 1 of lip, 50 of frame; the gap runs from the skin to the lining and round the lip.</summary>
    [Fact]
    public void A_frame_s_edge_is_gap_lip_and_block()
    {
        Opening window = new() { Name = "window", WidthM = 1, HeightM = 1, FrameUWPerM2K = 4 };
        DrawnDetail drawn = DetailSection.Draw(new FrameEdge { FrameDepthM = 0.044, FrameWidthM = 0.05, GapM = 0.01, LipM = 0.02 }, DetailPlace.InWall(Wall) with { Opening = window }, 0.13);
        Drawn(drawn.Section.Pieces,
            Mm(0, 311, 0, 1, 50), Mm(0, 311, 1, 41, 0.04), Mm(0, 311, 41, 47, 0.15),
            Mm(300, 311, 1, 41, AirWPerMK(0.04, 0.01)), Mm(310, 311, 1, 21, 50), Mm(311, 361, 0, 44, 0.044 / (0.25 - 0.17)));
        Assert.Equal(0.044, RoomFromM(drawn.Section), 12);
        Assert.Equal(0.311 / (0.17 + 0.001 / 50 + 1 + 0.04) + 0.05 * 4, drawn.PlainWPerK, 12);
    }

    /// <summary>In a wall of 207 mm: half a plate of 1.5 mm and three thicknesses.</summary>
    [Fact]
    public void One_alone_has_three_thicknesses_of_wall_beside_it()
    {
        Section section = DetailSection.Of(Of(RibShape.Plate), DetailPlace.InWall(new([Sheet(0.006, 0.15), Sheet(0.2, 0.04), Sheet(0.001, 50)])), 0.13);
        Assert.Equal(0.00075 + 3 * 0.207, section.Pieces.Max(piece => piece.Where.X1M), 12);
    }

    /// <summary>Along 3 mm of aluminium with the room on one side and foam on the other heat runs √(λ·d·R) = 0.24 m far; four of that.</summary>
    [Fact]
    public void One_alone_has_four_lengths_of_its_metal_lining_beside_it()
    {
        Section section = DetailSection.Of(Of(RibShape.Plate), DetailPlace.InWall(new([Sheet(0.003, 160), Sheet(0.04, 0.04), Sheet(0.001, 50)])), 0.13);
        double inwards = 0.13 + 0.0015 / 160, outwards = 0.04 + 0.001 / 50 + 1 + 0.0015 / 160;
        Assert.Equal(0.00075 + 4 * Math.Sqrt(160 * 0.003 / (1 / inwards + 1 / outwards)), section.Pieces.Max(piece => piece.Where.X1M), 12);
    }

    /// <summary>Under the lining: the head takes 3 mm of the foam, its washer outside 3 mm of the air.</summary>
    [Fact]
    public void A_bolt_under_the_lining_has_its_head_in_the_foam() => Drawn(
        DetailSection.Of(new Bolt { Material = Steel, DiameterM = 0.008, HeadM = 0.02, HeadThicknessM = 0.003, OuterHeadM = 0.03, LayersOver = 1 }, DetailPlace.InWall(Wall), 0.13).Pieces,
        Mm(0, 315, 0, 1, 50), Mm(0, 315, 1, 41, 0.04), Mm(0, 315, 41, 47, 0.15), Mm(0, 4, 0, 41, 50), Mm(0, 10, 38, 41, 50), Mm(0, 15, -3, 0, 50));
}
