using Thermal.Bridges;
using static Thermal.Tests.SampleSections;

namespace Thermal.Tests.Refusals;

/// <summary>Sections that cannot be solved, each by the name of its fault.</summary>
public class SectionRefusals
{
    private static readonly Section Sound = Rib();

    private static SectionProblem Only(SectionFault fault, Section section)
    {
        SectionProblem problem = Assert.Single(section.Problems);
        Assert.Equal(fault, problem.Fault);
        if (fault != SectionFault.TemperatureJump) Assert.Equal([problem], Assert.Throws<SectionException>(() => Conduction.Solve(section)).Problems);
        return problem;
    }

    private static Section With(params Piece[] more) => Sound with { Pieces = [.. Sound.Pieces, .. more] };

    private static Section WithBoundary(params Boundary[] more) => Sound with { Boundaries = [.. Sound.Boundaries, .. more] };

    [Fact]
    public void A_sound_section_has_no_problem() => Assert.Empty(Sound.Problems);

    [Fact]
    public void A_section_without_pieces_is_refused() => Assert.Contains(new Section("nothing", SectionShape.Plane, [], []).Problems, problem => problem.Fault == SectionFault.NoPieces);

    [Theory]
    [InlineData(0.5, 0.5)]
    [InlineData(0.5, 0.4)]
    [InlineData(0.5, double.NaN)]
    [InlineData(double.NaN, 0.5)]
    [InlineData(0.5, double.PositiveInfinity)]
    [InlineData(0.5, 0.5 + 1e-8)]
    [InlineData(-5000, 0.5)]
    public void A_piece_without_a_sound_thickness_is_refused(double x0M, double x1M) =>
        Assert.Equal("odd", Only(SectionFault.NoThickness, With(new Piece("odd", new(x0M, x1M, 0, 0.04), 1))).Name);

    [Fact]
    public void A_boundary_without_a_sound_place_is_refused() =>
        Assert.Equal("odd", Only(SectionFault.NoThickness, WithBoundary(new Boundary("odd", new(1, 0, 0, 1), 0.1))).Name);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(0.0009)]
    [InlineData(501)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_conductivity_out_of_range_is_refused(double conductivityWPerMK) =>
        Assert.Equal("web", Only(SectionFault.ConductivityOutOfRange, Sound with { Pieces = [.. Sound.Pieces.Select(piece => piece.Name == "web" ? piece with { ConductivityWPerMK = conductivityWPerMK } : piece)] }).Name);

    [Fact]
    public void Conductivities_too_far_apart_are_refused()
    {
        SectionProblem problem = Only(SectionFault.ConductivityRatio, With(new Piece("silver", new(0.1, 0.11, 0, 0.04), 430) { IsInset = true }, new Piece("vacuum", new(0.12, 0.13, 0, 0.04), 0.004) { IsInset = true }));
        Assert.Equal(("silver", "vacuum"), (problem.Name, problem.Other));
    }

    [Fact]
    public void Pieces_that_overlap_without_being_inset_are_refused_with_the_place()
    {
        SectionProblem problem = Only(SectionFault.Overlap, With(new Piece("batten", new(0.1, 0.12, 0.03, 0.0408, 0, 0.1), 0.13)));
        Assert.Equal(("batten", "foam", new Box(0.1, 0.12, 0.03, 0.0408, 0, 0.1)), (problem.Name, problem.Other, problem.Where!.Value));
    }

    [Fact]
    public void Boundaries_that_claim_one_face_with_other_films_are_refused() =>
        Assert.All(WithBoundary(new Boundary("cab", new(0, 0.1, 0.0468, 1), 0.13)).Problems, problem => Assert.Equal((SectionFault.Overlap, "room", "cab"), (problem.Fault, problem.Name, problem.Other)));

    [Fact]
    public void An_inset_piece_with_nothing_to_be_set_into_is_refused() =>
        Assert.Equal("bolt", Only(SectionFault.InsetOutside, With(new Piece("bolt", new(0.1, 0.11, -0.02, 0), 50) { IsInset = true })).Name);

    [Fact]
    public void A_gap_inside_without_air_is_a_leak_with_its_place()
    {
        Section split = new("split", SectionShape.Plane, [new("left", new(0, 0.1, 0, 0.04), 1), new("right", new(0.11, 0.2, 0, 0.04), 1)], Sound.Boundaries);
        split = split with { Boundaries = [new("outside", new(-Far, Far, -Far, 0), 0.04), new("room", new(-Far, Far, 0.04, Far), 0.13)] };
        Assert.Equal([("left", new Box(0.1, 0.1, 0, 0.04)), ("right", new Box(0.11, 0.11, 0, 0.04))],
            split.Problems.Select(problem => (problem.Name, problem.Where!.Value)));
        Assert.All(split.Problems, problem => Assert.Equal(SectionFault.Leak, problem.Fault));
    }

    [Fact]
    public void An_environment_that_touches_nothing_is_refused() =>
        Assert.Equal("cab", Only(SectionFault.TouchesNothing, WithBoundary(new Boundary("cab", new(5, 6, 0, 1), 0.13))).Name);

    [Theory]
    [InlineData(-0.01)]
    [InlineData(10.1)]
    [InlineData(double.NaN)]
    public void A_surface_resistance_out_of_range_is_refused(double resistanceM2KPerW) =>
        Assert.Equal("room", Only(SectionFault.ResistanceOutOfRange, Sound with { Boundaries = [Sound.Boundaries[0], Sound.Boundaries[1] with { SurfaceResistanceM2KPerW = resistanceM2KPerW }] }).Name);

    [Fact]
    public void Pieces_that_no_environment_reaches_are_refused()
    {
        Section apart = new("apart", SectionShape.Plane, [new("held", new(0, 0.1, 0, 0.04), 1), new("loose", new(0.2, 0.3, 0, 0.04), 1)],
            [new("outside", new(-Far, 0.1, -Far, 0), 0.04), new("room", new(-Far, 0.1, 0.04, Far), 0.13)]);
        SectionProblem afloat = Assert.Single(apart.Problems, problem => problem.Fault == SectionFault.Afloat);
        Assert.Equal(("loose", 0.2), (afloat.Name, afloat.Where!.Value.X0M));
    }

    [Fact]
    public void A_round_section_below_radius_zero_is_refused() =>
        Assert.Equal("foam", Only(SectionFault.NegativeRadius, new("bolt", SectionShape.Round, [new("foam", new(-0.1, 0.1, 0, 0.04), 0.036)], Sound.Boundaries)).Name);

    [Fact]
    public void Two_fixed_surfaces_that_meet_are_told_with_their_corner_but_solved()
    {
        Section jump = new("jump", SectionShape.Plane, [new("stone", new(0, 1, 0, 1), 1)], [new("left", new(-1, 0, 0, 1), 0), new("top", new(0, 1, 1, 2), 0)]);
        SectionProblem problem = Only(SectionFault.TemperatureJump, jump);
        Assert.Equal((0.0, 1.0), (problem.Where!.Value.X0M, problem.Where.Value.Y0M));
        Assert.False(Conduction.Solve(jump).IsConverged);
    }

    [Fact]
    public void All_problems_are_told_at_once()
    {
        Section bad = With(new Piece("none", new(0.1, 0.1, 0, 0.1), 1), new Piece("hot", new(0.1, 0.2, 0, 0.04), 1000));
        bad = bad with { Boundaries = [bad.Boundaries[0], bad.Boundaries[1] with { SurfaceResistanceM2KPerW = -1 }] };
        Assert.Equal([SectionFault.NoThickness, SectionFault.ConductivityOutOfRange, SectionFault.ResistanceOutOfRange], bad.Problems.Select(problem => problem.Fault));
    }

    [Fact]
    public void A_point_in_no_piece_and_an_unknown_environment_are_refused()
    {
        SolvedSection solved = Conduction.Solve(Sound);
        Assert.Throws<ArgumentOutOfRangeException>(() => solved.WeightsFraction(0.1, 0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => solved.WeightsFraction(double.NaN, 0.02));
        Assert.Throws<ArgumentOutOfRangeException>(() => solved.FlowsW([double.NaN, 0]));
        Assert.Throws<ArgumentException>(() => solved.FlowsW([0]));
        Assert.Throws<ArgumentException>(() => solved.CouplingWPerK("room", "cellar"));
    }

    [Theory]
    [InlineData(1e-6, 0.02)]
    [InlineData(0.2, 0.02)]
    [InlineData(double.NaN, 0.02)]
    [InlineData(0.01, 0)]
    [InlineData(0.01, double.NaN)]
    public void An_accuracy_out_of_range_is_refused(double flowFraction, double temperatureK) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Conduction.Solve(Sound, new(flowFraction, temperatureK)));

    [Fact]
    public void Too_few_cells_are_owned_up_to()
    {
        SolvedSection solved = Conduction.Solve(Sound, new(FlowFraction: 1e-5, LargestCellCount: 500));
        Assert.False(solved.IsConverged);
        Assert.InRange(solved.CellCount, 1, 500);
        Assert.InRange(solved.CouplingErrorsWPerK[1] / solved.CouplingsWPerK[1], 1e-5, 0.05);
    }
}
