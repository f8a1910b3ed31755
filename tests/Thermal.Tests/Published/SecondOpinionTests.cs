using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Tests.Published;

/// <summary>Three described details against recorded runs of general finite-element solvers on the same rectangles.</summary>
public class SecondOpinionTests
{
    public static IEnumerable<object[]> Opinions => PublishedTable.Rows("second-opinion-results.csv");

    private static SolidLayer Layer(string key, double thicknessM) => new() { Name = key, ThicknessM = thicknessM, Material = MaterialLibrary.Find(key)! };

    private static readonly Stack Side = new([Layer("birch_plywood", 0.0065), Layer("cross_linked_pe_foam", 0.04), Layer("steel_sheet", 0.001)]);
    private static readonly Stack Floor = new([Layer("birch_plywood", 0.012), Layer("xps", 0.03), Layer("steel_sheet", 0.0012)]);

    private static (Detail Detail, DetailPlace Place, double FilmM2KPerW) Described(string name) => name switch
    {
        "hat" => (new Rib { Shape = RibShape.Hat, Material = MaterialLibrary.Find("steel_sheet")!, SheetM = 0.0012, DepthM = 0.036, CrownM = 0.04, FootM = 0.015 },
            DetailPlace.InWall(Side, 0.5), 0.13),
        "bolt" => (new Bolt { Material = MaterialLibrary.Find("steel_sheet")!, DiameterM = 0.008, HeadM = 0.02, HeadThicknessM = 0.006, OuterHeadM = 0.024 },
            new() { Stack = Floor, TiltDeg = 180, OutsideFilmM2KPerW = 0.1 }, 0.17),
        _ => (new Corner { Other = "floor", AngleMaterial = MaterialLibrary.Find("steel_sheet")!, AngleSheetM = 0.0015, AngleLegM = 0.02 },
            DetailPlace.InWall(Side) with { OtherStack = Floor, OtherTiltDeg = 180, OtherOutsideFilmM2KPerW = 0.1 }, 0.13),
    };

    private static SectionShape ShapeOf(string name) => name == "bolt" ? SectionShape.Round : SectionShape.Plane;

    private static double ColdestFactor(SolvedSection solved) =>
        solved.Coldest(DetailSection.Room, [.. solved.Environments.Select(environment => environment == DetailSection.Room ? 1.0 : 0)]).TemperatureC;

    /// <summary>A piece to the tenth of a micrometre, as the table has it.</summary>
    private static (double, double, double, double, double, bool) Written(Piece piece) =>
        (Math.Round(piece.Where.X0M, 7), Math.Round(piece.Where.X1M, 7), Math.Round(piece.Where.Y0M, 7), Math.Round(piece.Where.Y1M, 7), Math.Round(piece.ConductivityWPerMK, 7), piece.IsInset);

    [Theory, MemberData(nameof(Opinions))]
    public void A_detail_of_rectangles_comes_out_as_general_solvers_find_it(string name, double couplingWPerK, double relative, double coldestFactor, double tolerance)
    {
        SolvedSection solved = Conduction.Solve(SectionTable.Of("second-opinion", name, ShapeOf(name)), new(2e-3, 5e-4));
        Assert.InRange(solved.CouplingWPerK(DetailSection.Room, DetailSection.Outside) / couplingWPerK, 1 - relative, 1 + relative);
        Assert.Equal(coldestFactor, ColdestFactor(solved), tolerance);
    }

    /// <summary>The section drawn from the words is still the one that the general solvers were given.</summary>
    [Theory, MemberData(nameof(Opinions))]
    public void A_described_detail_is_drawn_as_the_general_solvers_had_it(string name, double couplingWPerK, double relative, double coldestFactor, double tolerance)
    {
        (Detail detail, DetailPlace place, double filmM2KPerW) = Described(name);
        Section drawn = DetailSection.Of(detail, place, filmM2KPerW), given = SectionTable.Of("second-opinion", name, ShapeOf(name));
        Assert.Equal(given.Pieces.Select(Written), drawn.Pieces.Select(Written));
        SolvedSection solved = Conduction.Solve(drawn, new(2e-3, 5e-4));
        Assert.InRange(solved.CouplingWPerK(DetailSection.Room, DetailSection.Outside) / couplingWPerK, 1 - relative, 1 + relative);
        Assert.Equal(coldestFactor, ColdestFactor(solved), tolerance);
    }

    public static IEnumerable<object[]> BehindFoam => PublishedTable.Rows("ribs-behind-foam.csv");

    [Theory, MemberData(nameof(BehindFoam))]
    public void Ribs_spoil_thick_foam_more_than_thin_by_as_much_as_estimated(double foamM, double leastRatio, double mostRatio)
    {
        Rib rib = new() { Shape = RibShape.Hat, Material = MaterialLibrary.Find("steel_sheet")!, SheetM = 0.001, DepthM = foamM, CrownM = 0.04, FootM = 0.015 };
        SolvedLine solved = DetailSolver.Solve(rib, DetailPlace.InWall(new([Layer("birch_plywood", 0.006), Layer("cross_linked_pe_foam", foamM), Layer("steel_sheet", 0.0008)]), 0.5));
        Assert.InRange(solved.UWithRibsWPerM2K!.Value / solved.PlainUWPerM2K, leastRatio, mostRatio);
    }
}
