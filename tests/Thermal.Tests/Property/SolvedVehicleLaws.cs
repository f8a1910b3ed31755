using CsCheck;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using Thermal.Zones;

namespace Thermal.Tests.Property;

/// <summary>Laws of vehicles with described details, through the whole assessment.</summary>
public class SolvedVehicleLaws
{
    private static readonly BridgeCache Cache = new();
    private static readonly Assessment Found = Assess.Of(DescribedVan.Case, Cache);

    private static Surface Panel(Assessment found, string name) => found.Case.Vehicle.Surfaces.First(surface => surface.Name == name);

    [Fact]
    public void A_vehicle_without_details_comes_back_as_it_is_and_costs_nothing()
    {
        BridgeCache cache = new();
        Assert.Same(PlausibleVan.Vehicle, SolvedVehicle.Of(PlausibleVan.Vehicle, 3, cache));
        Assert.Same(PlausibleVan.Vehicle, Assess.Of(PlausibleVan.Case, cache).Case.Vehicle);
        Assert.Equal((0, 0), (cache.SolvedCount, cache.FoundCount));
    }

    /// <summary>Two sections each, with loss and with mould films: hats of roof and (once) of both sides, bolt, corner, window, door leaf.</summary>
    [Fact]
    public void Equal_details_are_solved_once_and_a_changed_thickness_solves_its_own_panel_alone()
    {
        BridgeCache cache = new();
        Vehicle once = SolvedVehicle.Of(DescribedVan.Vehicle, 3, cache);
        Assert.Equal(2 * 6, cache.SolvedCount);
        SolvedVehicle.Of(once, 3, cache);
        Assert.Equal(2 * 6, cache.SolvedCount);
        SolvedVehicle.Of(DescribedVan.With("right side", side => side with { Stack = PlausibleVan.Wall(0.04) }), 3, cache);
        Assert.Equal(2 * 7, cache.SolvedCount);
        SolvedVehicle.Of(DescribedVan.With("floor", floor => floor with { Stack = floor.Stack.WithThicknessM(2, 0.03) }), 3, cache);
        Assert.Equal(2 * 8, cache.SolvedCount);
    }

    [Fact]
    public void A_described_rib_keeps_its_description_and_gets_its_figures()
    {
        Surface side = Panel(Found, "left side");
        Assert.Same(DescribedVan.Hat, side.Ribs[0].Detail);
        Assert.InRange(side.Ribs[0].PsiWPerMK!.Value, 0.05, 0.5);
        Assert.InRange(side.Ribs[0].ColdestFactor!.Value, 0.2, 0.9);
        Assert.True(side.Ribs[0].MouldFactor < side.Ribs[0].ColdestFactor);
        Assert.NotNull(side.Openings[0].EdgeColdestFactor);
    }

    /// <summary>Bare dimensions count a corner twice, so that its ψ has to give heat back.</summary>
    [Fact]
    public void A_corner_finds_its_other_panel_and_gives_back_what_bare_dimensions_count_twice() =>
        Assert.True(Panel(Found, "left side").Ribs[1].PsiWPerMK!.High < 0);

    [Fact]
    public void Parts_panels_and_night_tell_the_same_loss_with_described_details()
    {
        Assert.Equal(Found.ColdNight.LossW, Found.ColdNight.Losses.Sum(part => part.LossW), 1e-6);
        double air = Found.ColdNight.Losses.Where(part => part.Kind == LossKind.Air).Sum(part => part.LossW);
        Assert.Equal(Found.ColdNight.LossW, air + Found.Panels.Sum(panel => panel.LossW), 1e-6);
        Assert.Equal(Found.ColdNight.Losses.Where(part => part.Kind == LossKind.Bridge).Sum(part => part.LossW),
            Found.Bridges.Where(bridge => bridge.Solved?.Place.Opening is null).Sum(bridge => bridge.LossW), 1e-9);
    }

    [Fact]
    public void A_described_rib_and_the_same_figure_given_cost_the_same()
    {
        Vehicle given = Found.Case.Vehicle with
        {
            Surfaces = [.. Found.Case.Vehicle.Surfaces.Select(surface => surface with
            {
                Ribs = [.. surface.Ribs.Select(rib => rib with { Detail = null, GivenFor = surface.Stack.Signature })],
                Bolts = [.. surface.Bolts.Select(bolt => bolt with { Detail = null, GivenFor = surface.Stack.Signature })],
                Openings = [.. surface.Openings.Select(opening => opening with { Edge = null })],
            })],
        };
        BridgeCache cache = new();
        Assessment found = Assess.Of(Found.Case with { Vehicle = given }, cache);
        Assert.Equal(0, cache.SolvedCount);
        Assert.Equal(Found.ColdNight.Losses, found.ColdNight.Losses);
        Assert.Equal(Found.ColdNight.Surfaces, found.ColdNight.Surfaces);
        Assert.Equal(Found.MildNight.LossW, found.MildNight.LossW);
        Assert.Equal(Found.Mould, found.Mould);
        Assert.Equal(Found.Panels.Select(panel => panel.UWithRibsWPerM2K), found.Panels.Select(panel => panel.UWithRibsWPerM2K));
        // The edge of an opening is told of only where it is described.
        Assert.Equal(Found.Findings.Where(finding => finding.Where != "rear doors, rear leaf"), found.Findings);
    }

    [Fact]
    public void What_is_told_of_a_rib_bolt_or_edge_is_what_was_counted()
    {
        foreach (BridgeAnswer bridge in Found.Bridges)
        {
            double each = bridge.Solved is SolvedPoint point ? point.ChiWPerK.Value : Assert.IsType<SolvedLine>(bridge.Solved).PsiWPerMK.Value;
            Assert.Equal(each * (bridge.LengthM ?? bridge.Count!.Value), bridge.LossWPerK, 1e-12);
            Assert.Equal(bridge.OutsideC + bridge.Solved!.ColdestFactor * (bridge.InsideC - bridge.OutsideC), bridge.ColdestC!.Value, 1e-12);
        }
    }

    /// <summary>Found again one by one: materials at that end, and of the solution's bounds that end too.</summary>
    [Theory, InlineData(Extreme.Low), InlineData(Extreme.High)]
    public void In_the_runs_for_least_and_most_heat_every_detail_is_at_that_end(Extreme extreme)
    {
        CaseRuns runs = CaseRuns.Of(DescribedVan.Case, Cache);
        Case run = extreme == Extreme.Low ? runs.LeastHeat : runs.MostHeat;
        double At(Bounded bounded) => extreme == Extreme.Low ? bounded.Low : bounded.High;
        foreach ((Surface usual, Surface moved) in DescribedVan.Vehicle.Surfaces.Zip(run.Vehicle.Surfaces))
        {
            DetailPlace Place(Detail detail, double? spacingM = null, Opening? opening = null) =>
                DetailPlace.In(run.Vehicle, usual with { Stack = usual.Stack.WithConductivity(extreme) }, detail, run.ColdNight.WindMPerS, spacingM, opening);
            double Psi(LineDetail detail, double? spacingM = null, Opening? opening = null) =>
                At(DetailSolver.Solve(detail.WithConductivity(extreme), Place(detail, spacingM, opening), Cache).PsiWPerMK);
            foreach ((LinearBridge rib, LinearBridge at) in usual.Ribs.Zip(moved.Ribs))
                if (rib.Detail is { } detail) Assert.Equal(Psi(detail, rib.SpacingM), at.PsiWPerMK!.Value);
            foreach ((PointBridge bolt, PointBridge at) in usual.Bolts.Zip(moved.Bolts))
                if (bolt.Detail is { } detail) Assert.Equal(At(DetailSolver.Solve((PointDetail)detail.WithConductivity(extreme), Place(detail), Cache).ChiWPerK), at.ChiWPerK!.Value);
            foreach ((Opening opening, Opening at) in usual.Openings.Zip(moved.Openings))
                if (opening.Edge is { } edge) Assert.Equal(Psi(edge, null, opening with { Leaf = opening.Leaf?.WithConductivity(extreme) }), at.EdgePsiWPerMK);
        }
    }

    /// <summary>A batten as wide as its spacing is a layer: what it adds a metre is the difference of two sums of resistances, times the spacing.</summary>
    [Fact]
    public void Ribs_of_a_vehicle_know_their_spacing()
    {
        Stack stack = new([Sketches.Sheet(0.006, 0.15), Sketches.Sheet(0.04, 0.04), Sketches.Sheet(0.001, 50)]);
        LinearBridge battens = new() { Name = "battens", Detail = new Batten { Material = Sketches.Of(0.13), WidthM = 0.3, DepthM = 0.04 }, LengthM = 10, SpacingM = 0.3 };
        Surface roof = Sketches.Panel("roof", 4, "living", stack, 0) with { Ribs = [battens] };
        Vehicle vehicle = PlausibleVan.Vehicle with { Surfaces = [roof] };
        double films = 0.10 + roof.OutsideFilmM2KPerW(3) + 0.006 / 0.15 + 0.001 / 50, expected = 0.3 * (1 / (films + 0.04 / 0.13) - 1 / (films + 1));
        Assert.Equal(expected, SolvedVehicle.Of(vehicle, 3, new()).Surfaces[0].Ribs[0].PsiWPerMK!.Value, 1e-8);
        Assert.Equal(expected, SolvedVehicle.ForHeat(vehicle, 3, new()).Surfaces[0].Ribs[0].PsiWPerMK!.Value, 1e-8);
    }

    [Fact]
    public void A_corner_takes_tilt_and_outside_film_of_its_other_panel()
    {
        Surface side = Panel(Found, "left side"), floor = Panel(Found, "floor");
        DetailPlace place = DetailPlace.In(DescribedVan.Vehicle, side, side.Ribs[1].Detail!, 3);
        Assert.Equal((90.0, 180.0), (place.TiltDeg, place.OtherTiltDeg));
        Assert.Equal((side.OutsideFilmM2KPerW(3), floor.OutsideFilmM2KPerW(3)), (place.OutsideFilmM2KPerW, place.OtherOutsideFilmM2KPerW));
        Assert.NotEqual(place.OutsideFilmM2KPerW, place.OtherOutsideFilmM2KPerW);
    }

    [Fact]
    public void Equal_cases_with_details_give_equal_answers_to_the_bit()
    {
        Assessment again = Assess.Of(DescribedVan.Case);
        Assert.Equal(Found.Heating.NeedW, again.Heating.NeedW);
        Assert.Equal(Found.ColdNight.Surfaces, again.ColdNight.Surfaces);
        Assert.Equal(Found.Bridges.Select(bridge => (bridge.Name, bridge.LossW, bridge.ColdestC)), again.Bridges.Select(bridge => (bridge.Name, bridge.LossW, bridge.ColdestC)));
        Assert.Equal(Found.Findings, again.Findings);
    }

    [Fact]
    public void An_assessed_vehicle_assessed_again_gives_the_same_answer()
    {
        int solved = Cache.SolvedCount;
        Assert.Equal(Found.ColdNight.LossRangeW, Assess.Of(Found.Case, Cache).ColdNight.LossRangeW);
        Assert.Equal(solved, Cache.SolvedCount);
    }

    /// <summary>With conductivities of foam, board and steel at their ends ψ and panel together lose less and more; nothing else of the van is moved here.</summary>
    [Fact]
    public void The_all_low_and_all_high_runs_hold_the_usual_one_between_them()
    {
        Assert.True(Found.ColdNight.LossRangeW.Low < Found.ColdNight.LossW && Found.ColdNight.LossW < Found.ColdNight.LossRangeW.High);
        Assert.True(LossWPerK(Extreme.Low) < LossWPerK(Extreme.Usual) && LossWPerK(Extreme.Usual) < LossWPerK(Extreme.High));

        static double LossWPerK(Extreme extreme) => Shell.Of(
            SolvedVehicle.Of(Extremes.OfHeat(DescribedVan.Case, extreme).Vehicle, 3, Cache), 3, 1.2).Paths.Where(path => path.Kind != PathKind.Passage).Sum(path => path.CoefficientWPerK);
    }

    [Fact]
    public void Ribs_come_with_the_largest_loss_first_and_their_degrees_to_spare()
    {
        Assert.Equal(7, Found.Bridges.Count);
        Assert.Equal(Found.Bridges.OrderByDescending(bridge => bridge.LossW), Found.Bridges);
        foreach (BridgeAnswer bridge in Found.Bridges)
        {
            Assert.Equal(bridge.LossWPerK * (bridge.InsideC - bridge.OutsideC), bridge.LossW);
            Assert.Equal(bridge.ColdestC - bridge.DewPointC, bridge.ToSpareK);
            Assert.Equal(bridge.ColdestC < 0, bridge.IsFrost);
        }
    }

    /// <summary>Zeds of any depth in any wall: what is drawn, solved and counted stays a loss between none and that of steel right through.</summary>
    [Fact]
    public void Parts_add_up_in_any_vehicle_with_a_described_rib() => Gen.Select(AnyVehicle.AnyDescribedBody, AnyVehicle.AnyNight).Sample((vehicle, night) =>
    {
        ZoneState state = vehicle.StateIn(night);
        double outW = NightAnswers.Losses(state).Sum(part => part.LossW);
        return Math.Abs(outW - state.HeaterW) < 1e-6 * Math.Max(1, Math.Abs(outW));
    }, iter: 20);
}
