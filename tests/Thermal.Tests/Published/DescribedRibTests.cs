using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Published;

/// <summary>Ribs and timbers against values that other solvers found.</summary>
public class DescribedRibTests
{
    private static Material Known(string key) => MaterialLibrary.Find(key)!;

    private static SolidLayer Layer(string key, double thicknessM) => new() { Name = key, ThicknessM = thicknessM, Material = Known(key) };

    private static DetailPlace Roof(Stack stack, double? spacingM = null) => DetailPlace.InWall(stack, spacingM) with { TiltDeg = 0 };

    private static Rib Hat(double crownM, double depthM, double sheetM) =>
        new() { Shape = RibShape.Hat, Material = Known("steel_sheet"), SheetM = sheetM, DepthM = depthM, CrownM = crownM };

    private static Batten Timber(double depthM) => new() { Material = Known("softwood"), WidthM = 0.045, DepthM = depthM };

    private static Stack Panel(double coreM) => new([Layer("grp", 0.002), Layer("xps", coreM), Layer("grp", 0.0015)]);

    private static (LineDetail, DetailPlace) Described(string name) => name switch
    {
        "library roof bow" => (Hat(0.04, 0.03, 0.001), Roof(new([Layer("poplar_plywood", 0.005), Layer("sheep_wool", 0.06), Layer("steel_sheet", 0.0008)]), 0.6)),
        "library side rib" => (Hat(0.04, 0.036, 0.0012),
            DetailPlace.InWall(new([Layer("birch_plywood", 0.0065), Layer("cross_linked_pe_foam", 0.04), Layer("steel_sheet", 0.001)]), 0.5)),
        "weekend roof bow" => (Hat(0.04, 0.022, 0.001), Roof(new([Layer("poplar_plywood", 0.005), Layer("elastomeric_foam", 0.025), Layer("steel_sheet", 0.0008)]), 0.7)),
        "weekend side rib" => (Hat(0.05, 0.03, 0.0012), DetailPlace.InWall(new(
            [Layer("poplar_plywood", 0.005), new AirLayer { Name = "air", ThicknessM = 0.011 }, Layer("elastomeric_foam", 0.019), Layer("steel_sheet", 0.0009)]), 0.55)),
        "box-body roof timber" => (Timber(0.05), Roof(Panel(0.05))),
        _ => (Timber(0.04), DetailPlace.InWall(Panel(0.04))),
    };

    public static IEnumerable<object[]> Ribs => PublishedTable.Rows("described-ribs.csv");

    public static IEnumerable<object[]> Wall => PublishedTable.Rows("described-plate.csv");

    [Theory, MemberData(nameof(Ribs))]
    public void A_rib_of_a_built_in_vehicle_comes_out_as_found_before(string name, double psiWPerMK, double psiTolerance, double coldest, double coldestTolerance)
    {
        (LineDetail detail, DetailPlace place) = Described(name);
        SolvedLine solved = DetailSolver.Solve(detail, place);
        Assert.Equal(psiWPerMK, solved.PsiWPerMK.Value, psiTolerance);
        Assert.Equal(coldest, solved.ColdestFactor, coldestTolerance);
    }

    [Theory, MemberData(nameof(Wall))]
    public void A_plate_behind_the_lining_comes_out_as_in_the_reference(double couplingWPerMK, double psiWPerMK, double coldestC)
    {
        Stack stack = new([Sheet(0.006, 0.13), Sheet(0.04, 0.036), Sheet(0.0008, 50)]);
        SolvedLine solved = DetailSolver.Solve(new Rib { Shape = RibShape.Plate, Material = Of(50, MaterialGroup.Metal), SheetM = 0.0015, DepthM = 0.04 },
            DetailPlace.InWall(stack, 0.4), accuracy: new(0.002));
        Assert.InRange(solved.UWithRibsWPerM2K!.Value * 0.4 / couplingWPerMK, 0.99, 1.01);
        Assert.InRange(solved.PsiWPerMK.Value, psiWPerMK - 0.01 * couplingWPerMK, psiWPerMK + 0.01 * couplingWPerMK);
        Assert.Equal(coldestC, -10 + 30 * solved.ColdestFactor, 0.2);
    }

    /// <summary>
    /// The same reference with a flange of 40 mm on the plate, half to either side: ψ 0.1995, coldest 3.77 °C. With all of it to one side, as a C or a Z has it,
    /// its edge is twice as far from the web, so it collects a little less, and where web and flange meet it is warmer by a little: up to a fiftieth of the difference.
    /// </summary>
    [Theory, InlineData(RibShape.Channel), InlineData(RibShape.Zed)]
    public void A_flange_to_one_side_collects_nearly_what_one_to_both_sides_does(RibShape shape)
    {
        Stack stack = new([Sheet(0.006, 0.13), Sheet(0.04, 0.036), Sheet(0.0008, 50)]);
        SolvedLine solved = DetailSolver.Solve(new Rib { Shape = shape, Material = Of(50, MaterialGroup.Metal), SheetM = 0.0015, DepthM = 0.04, CrownM = 0.04 },
            DetailPlace.InWall(stack, 0.4), accuracy: new(0.002));
        Assert.InRange(solved.PsiWPerMK.Value / 0.1995, 0.93, 1.005);
        Assert.InRange(-10 + 30 * solved.ColdestFactor, 3.77, 3.77 + 30.0 / 50);
    }

    /// <summary>
    /// Orders of magnitude found for a typical van: hats of 40 mm every 500 mm multiply the wall's U by so much. Lining and sheet were not
    /// written down; here the hat stands right behind 6 mm of plywood, so a twentieth of play at both ends.
    /// </summary>
    [Theory, InlineData(0.015, 1.2, 1.3), InlineData(0.025, 1.4, 1.5), InlineData(0.04, 1.6, 1.8), InlineData(0.06, 1.9, 2.1)]
    public void Ribs_spoil_thick_insulation_more_than_thin(double foamM, double low, double high)
    {
        Stack stack = new([Sheet(0.006, 0.13), Sheet(foamM, 0.036), Sheet(0.001, 50)]);
        SolvedLine solved = DetailSolver.Solve(Hat(0.04, foamM, 0.0012), DetailPlace.InWall(stack, 0.5));
        Assert.InRange(solved.UWithRibsWPerM2K!.Value / solved.PlainUWPerM2K, 0.95 * low, 1.05 * high);
    }
}
