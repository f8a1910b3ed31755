using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Tests.Property;

/// <summary>Laws of what is tried on described ribs.</summary>
public class RibChoiceLaws
{
    private static readonly BridgeCache Cache = new();
    private static readonly Assessment Found = Assess.Of(DescribedVan.Case, Cache);

    /// <summary>The crown ends where the foam ends: whatever is stuck on it pushes the lining in by its whole thickness.</summary>
    [Fact]
    public void More_strip_warms_the_coldest_line_saves_heat_and_costs_the_room_it_needs()
    {
        StripTable table = RibChoices.Strips(Found, "right side", "ribs", Cache)!;
        Assert.Equal([0, 0.003, 0.006, 0.010, 0.015, 0.020], table.Rows.Select(row => row.StripM));
        Assert.Equal(table.Rows.Select(row => row.StripM), table.Rows.Select(row => Math.Round(row.HeadroomLostM, 9)));
        Assert.Equal(0, Assert.Single(table.Rows, row => row.IsKept).StripM);
        Assert.Equal(0, table.Rows[0].SavedW);
        foreach ((StripRow thin, StripRow thick) in table.Rows.Zip(table.Rows.Skip(1)))
            Assert.True(thick.ColdestC > thin.ColdestC && thick.SavedW > thin.SavedW && thick.UWithRibsWPerM2K < thin.UWithRibsWPerM2K, thick.ToString());
    }

    [Fact]
    public void The_kept_row_says_what_the_assessment_says()
    {
        StripRow kept = RibChoices.Strips(Found, "right side", "ribs", Cache)!.Rows.First(row => row.IsKept);
        BridgeAnswer bridge = Found.Bridges.First(answer => answer is { Panel: "right side", Name: "ribs" });
        Assert.Equal((bridge.ColdestC, bridge.ToSpareK), (kept.ColdestC, kept.ToSpareK));
        Assert.Equal(bridge.LossWPerK, kept.PsiWPerMK * bridge.LengthM!.Value);
        Assert.Equal(Assert.IsType<SolvedLine>(bridge.Solved).UWithRibsWPerM2K, kept.UWithRibsWPerM2K);
        Assert.Equal(kept.UWithRibsWPerM2K, RibChoices.Fillings(Found, "right side", "ribs", Cache)!.Rows.First(row => row.IsKept).UWithRibsWPerM2K);
    }

    /// <summary>40 mm of foam over a crown at 25 mm have room for strips up to 15 mm.</summary>
    [Fact]
    public void A_strip_that_fits_under_the_lining_costs_no_room()
    {
        Assessment deep = Assess.Of(DescribedVan.Case with { Vehicle = DescribedVan.With("right side", side => side with { Stack = PlausibleVan.Wall(0.04) }) }, Cache);
        Assert.Equal([0, 0, 0, 0, 0, 0.005], RibChoices.Strips(deep, "right side", "ribs", Cache)!.Rows.Select(row => Math.Round(row.HeadroomLostM, 9)));
    }

    private static Assessment WithRightSide(Stack stack, double depthM) => Assess.Of(DescribedVan.Case with
    {
        Vehicle = DescribedVan.With("right side", side => side with { Stack = stack, Ribs = [side.Ribs[0] with { Detail = DescribedVan.Hat with { DepthM = depthM } }] }),
    }, Cache);

    private static SolidLayer Layer(string key, double thicknessM) => new() { Name = key, ThicknessM = thicknessM, Material = MaterialLibrary.Find(key)! };

    /// <summary>Air behind the lining is room as well: 10 mm of it take a strip of 10, and 5 of one of 15 are missing.</summary>
    [Fact]
    public void A_strip_uses_the_air_behind_the_lining_before_it_moves_it()
    {
        Stack stack = new([Layer("birch_plywood", 0.006), new AirLayer { Name = "air", ThicknessM = 0.010 }, Layer("elastomeric_foam", 0.025), Layer("steel_sheet", 0.001)]);
        Assert.Equal([0, 0, 0, 0, 0.005, 0.010], RibChoices.Strips(WithRightSide(stack, 0.025), "right side", "ribs", Cache)!.Rows.Select(row => Math.Round(row.HeadroomLostM, 9)));
    }

    /// <summary>A crown 5 mm deep in a board over 25 mm of foam, and a strip of 15: the foam grows by both, and with it the rib is solved as drawn here.</summary>
    [Fact]
    public void Where_a_crown_ends_in_a_board_the_foam_behind_it_grows()
    {
        Stack Wall(double foamM) => new([Layer("birch_plywood", 0.006), Layer("birch_plywood", 0.010), Layer("elastomeric_foam", foamM), Layer("steel_sheet", 0.001)]);
        Assessment found = WithRightSide(Wall(0.025), 0.030);
        StripRow row = RibChoices.Strips(found, "right side", "ribs", Cache)!.Rows.First(row => row.StripM == 0.015);
        Surface side = found.Case.Vehicle.Surfaces.First(surface => surface.Name == "right side") with { Stack = Wall(0.045) };
        Rib rib = DescribedVan.Hat with { DepthM = 0.030, Over = new() { Material = MaterialLibrary.Find("elastomeric_foam")!, ThicknessM = 0.015 } };
        SolvedLine drawn = DetailSolver.Solve(rib, DetailPlace.In(found.Case.Vehicle, side, rib, found.Case.ColdNight.WindMPerS, 0.5), Cache);
        Assert.Equal((0.020, drawn.PsiWPerMK.Value), (Math.Round(row.HeadroomLostM, 9), row.PsiWPerMK));
        Assert.Equal(drawn.UWithRibsWPerM2K, row.UWithRibsWPerM2K);
    }

    /// <summary>25 mm of cork and 5 mm of foam beside a rib of 30 mm.</summary>
    [Fact]
    public void A_rib_is_filled_with_what_most_of_it_stands_in()
    {
        Stack stack = new([Layer("birch_plywood", 0.006), Layer("elastomeric_foam", 0.010), Layer("cork_board", 0.025), Layer("steel_sheet", 0.001)]);
        Assert.Equal(MaterialLibrary.Find("cork_board")!.Name, RibChoices.Fillings(WithRightSide(stack, 0.030), "right side", "ribs", Cache)!.Rows[1].Filling);
    }

    /// <summary>Where the lining stays, heat is saved by ψ alone: its change times the length and the kelvins between room and outside.</summary>
    [Fact]
    public void Where_the_lining_stays_what_is_saved_is_the_change_of_psi()
    {
        Assessment deep = WithRightSide(new([Layer("birch_plywood", 0.006), Layer("cork_board", 0.05), Layer("steel_sheet", 0.001)]), 0.025);
        BridgeAnswer rib = deep.Bridges.First(answer => answer is { Panel: "right side", Name: "ribs" });
        double wattsPerPsi = rib.LengthM!.Value * (rib.InsideC - rib.OutsideC);
        StripTable strips = RibChoices.Strips(deep, "right side", "ribs", Cache)!;
        FillingTable fillings = RibChoices.Fillings(deep, "right side", "ribs", Cache)!;
        Assert.All(strips.Rows, row => Assert.Equal((strips.Rows[0].PsiWPerMK - row.PsiWPerMK) * wattsPerPsi, row.SavedW, 1e-9));
        Assert.All(fillings.Rows, row => Assert.Equal((fillings.Rows[0].PsiWPerMK - row.PsiWPerMK) * wattsPerPsi, row.SavedW, 1e-9));
        Assert.True(Math.Min(Math.Abs(strips.Rows[^1].SavedW), Math.Abs(fillings.Rows[^1].SavedW)) > 0.001);
    }

    [Fact]
    public void A_strip_of_its_own_is_kept_among_the_rows()
    {
        OverRib cork = new() { Material = MaterialLibrary.Find("cork_board")!, ThicknessM = 0.004 };
        Assessment found = Assess.Of(DescribedVan.Case with { Vehicle = DescribedVan.With("right side", side => side with { Ribs = [side.Ribs[0] with { Detail = DescribedVan.Hat with { Over = cork } }] }) }, Cache);
        StripTable table = RibChoices.Strips(found, "right side", "ribs", Cache)!;
        Assert.Equal(cork.Material.Name, table.Material);
        Assert.Equal((0.004, 0.0), Assert.Single(table.Rows, row => row.IsKept) is var row ? (row.StripM, row.HeadroomLostM) : default);
        Assert.Equal(7, table.Rows.Count);
    }

    /// <summary>Air in a hollow of 40 by 25 mm carries about 0.2 W/(m·K), foam 0.03.</summary>
    [Fact]
    public void A_filled_rib_loses_less_than_an_empty_one()
    {
        FillingTable table = RibChoices.Fillings(Found, "right side", "ribs", Cache)!;
        Assert.Equal([null, "elastomeric foam", "closed-cell sprayed foam"], table.Rows.Select(row => row.Filling));
        Assert.True(table.Rows[0].IsKept && table.Rows[0].SavedW == 0);
        Assert.True(table.Rows[1].SavedW > 0 && table.Rows[2].SavedW > table.Rows[1].SavedW);
    }

    [Fact]
    public void There_is_no_table_for_what_cannot_be_tried()
    {
        Assert.Null(RibChoices.Strips(Found, "left side", "lower corner", Cache));
        Assert.Null(RibChoices.Fillings(Found, "left side", "lower corner", Cache));
        Assessment given = Assess.Of(PlausibleVan.Case);
        Assert.Null(RibChoices.Strips(given, "roof", "ribs", Cache));
        Assert.Null(RibChoices.Fillings(given, "roof", "ribs", Cache));
        Assert.Throws<ArgumentException>(() => RibChoices.Strips(Found, "right side", "no such", Cache));
    }

    /// <summary>A hat of 25 mm in foam of 10 mm behind a board of 6 mm.</summary>
    [Fact]
    public void Thicknesses_too_thin_for_the_rib_are_left_out_and_say_why()
    {
        ThicknessTable table = Thicknesses.Of(DescribedVan.Case, "right side", 1, Cache);
        Assert.NotEmpty(table.LeftOut);
        Assert.All(table.LeftOut, left => Assert.True(left.ThicknessM + 0.006 < 0.025 && left.Reason is { Panel: "right side", Name: "ribs", Problem.Fault: DetailFault.DeeperThanWall }));
        Assert.All(table.Rows, row => Assert.True(row.ThicknessM + 0.006 >= 0.025 && !row.BridgesStale));
        Assert.Single(table.Rows, row => row.IsKept);
    }

    [Fact]
    public void Strips_over_the_ribs_are_among_what_is_tried()
    {
        AdviceItem item = Advice.Of(Found, Cache).First(item => item is { Change: Change.StripOverRibs, Where: "roof" });
        Assert.True(item.LossSavedW > 0);
        Assert.Equal(Advice.TrialStripM, item.HeadroomLostM, 1e-9);
    }
}
