using Thermal.Bridges;
using static Thermal.Tests.SampleSections;

namespace Thermal.Tests.Exact;

/// <summary>Sections with known solutions, and the bounds that must hold them.</summary>
public class ConductionTests
{
    /// <summary>L = A/ΣR. Both schemes are exact for heat that flows one way, so only rounding remains: 1e-12 of the flow.</summary>
    [Theory]
    [InlineData(SectionShape.Plane, 0.3)]
    [InlineData(SectionShape.Solid, 0.15)]
    [InlineData(SectionShape.Round, Math.PI * 0.09)]
    public void Layers_side_by_side_conduct_as_one_over_their_resistance(SectionShape shape, double areaM2)
    {
        double expected = areaM2 / (0.04 + 0.04 / 0.036 + 0.01 / 0.13 + 0.13);
        SolvedSection solved = Conduction.Solve(Layers(shape));
        Assert.Equal(1, solved.CouplingWPerK("room", "outside") / expected, 1e-12);
        Assert.InRange(solved.CouplingErrorsWPerK[1] / expected, 0, 1e-12);
        Assert.True(solved.IsConverged);
    }

    /// <summary>Temperature between foam and wood: the share of the resistance outside of it. Exact but for rounding.</summary>
    [Fact]
    public void The_temperature_between_two_layers_follows_their_resistances()
    {
        double outer = 0.04 + 0.04 / 0.036, inner = 0.01 / 0.13 + 0.13;
        Assert.Equal(-10 + 30 * outer / (outer + inner), Conduction.Solve(Layers(SectionShape.Plane)).TemperatureC([-10, 20], 0.123, 0.04), 1e-10);
    }

    /// <summary>On both surfaces, between vertices too: the share of the resistance on either side. Exact but for rounding.</summary>
    [Theory]
    [InlineData(0, 0.04)]
    [InlineData(0.05, 0.04 + 0.04 / 0.036 + 0.01 / 0.13)]
    public void The_temperature_of_a_surface_follows_its_film(double yM, double outsideOfItM2KPerW) =>
        Assert.Equal(-10 + 30 * outsideOfItM2KPerW / (0.04 + 0.04 / 0.036 + 0.01 / 0.13 + 0.13), Conduction.Solve(Layers(SectionShape.Plane)).TemperatureC([-10, 20], 0.123, yM), 1e-10);

    /// <summary>Cylinder shell with films: 1/L = R_i/(2πr_i h) + Σ ln(r/r)/(2πλh) + R_e/(2πr_e h). Both schemes are exact for shells by their choice of functions.</summary>
    [Fact]
    public void A_pipe_loses_by_the_logarithm_of_its_radii()
    {
        double[] r = [0.011, 0.012, 0.031];
        Section pipe = new("pipe", SectionShape.Round, [new("copper", new(r[0], r[1], 0, 0.5), 380), new("foam", new(r[1], r[2], 0, 0.5), 0.04)],
            [new("water", new(0, r[0], 0, 0.5), 0.002), new("air", new(r[2], Far, 0, 0.5), 0.11)]);
        double resistance = (0.002 / r[0] + Math.Log(r[1] / r[0]) / 380 + Math.Log(r[2] / r[1]) / 0.04 + 0.11 / r[2]) / (Math.Tau * 0.5);
        SolvedSection solved = Conduction.Solve(pipe);
        Assert.Equal(1, solved.CouplingWPerK("water", "air") * resistance, 1e-11);
        Assert.InRange(solved.CouplingErrorsWPerK[1] * resistance, 0, 1e-11);
    }

    /// <summary>
    /// Half a square column, 1 × 2, 0 °C at left and below, 20 °C above, no flow at right: Fourier series
    /// Σ over odd n of 80/(nπ)·sin(nπx/2)·sinh(nπ(2−d)/2)/sinh(nπ), d from the top. 0.02 K: the temperatures still change by 0.01 K in the last doubling.
    /// </summary>
    [Fact]
    public void A_square_column_follows_its_series_although_its_corner_has_no_flow()
    {
        Section column = new("column", SectionShape.Plane, [new("stone", new(0, 1, 0, 2), 1)],
            [new("top", new(-Far, Far, 2, Far), 0), new("sides", new(-Far, 0, -Far, Far), 0), new("sides", new(-Far, Far, -Far, 0), 0)]);
        SolvedSection solved = Conduction.Solve(column, new(TemperatureK: 0.0005));
        for (int row = 1; row < 8; row++)
            for (int at = 1; at <= 4; at++)
                Assert.Equal(Series(at / 4.0, row / 4.0), solved.TemperatureC([20, 0], at / 4.0, 2 - row / 4.0), 0.02);
        Assert.False(solved.IsConverged);
        Assert.Equal(double.PositiveInfinity, solved.CouplingErrorsWPerK[1]);
    }

    private static double Series(double x, double depth)
    {
        double sum = 0;
        for (int n = 1; n < 80; n += 2) sum += 80 / (n * Math.PI) * Math.Sin(n * Math.PI * x / 2) * Math.Sinh(n * Math.PI * (2 - depth) / 2) / Math.Sinh(n * Math.PI);
        return sum;
    }

    /// <summary>
    /// Half a fin: a sheet of half thickness s = 1 mm, λ 50,
    /// length 100 mm, h = 10 along it, base held: L = √(hλs)·tanh(mL), m = √(h/(λs)). The fin equation leaves out the slope across the sheet,
    /// a share of about hs/(3λ) = 7e-5 of the flow; 2e-4 leaves room for that and the stated error of 1e-4.
    /// </summary>
    [Fact]
    public void A_fin_passes_on_what_the_fin_equation_says()
    {
        const double s = 0.001, length = 0.1, h = 10, k = 50;
        Section fin = new("fin", SectionShape.Plane, [new("fin", new(0, length, 0, s), k)], [new("base", new(-Far, 0, -Far, Far), 0), new("air", new(0, length, s, Far), 1 / h)]);
        double expected = Math.Sqrt(h * k * s) * Math.Tanh(Math.Sqrt(h / (k * s)) * length);
        SolvedSection solved = Conduction.Solve(fin, new(FlowFraction: 1e-4, TemperatureK: 1e-3));
        Assert.True(solved.IsConverged);
        Assert.Equal(1, solved.CouplingWPerK("base", "air") / expected, 2e-4);
    }

    /// <summary>
    /// Unit square, 1 K along the bottom from x = 0 to a, 0 K along the left from y = a up and along the whole top; elsewhere no flow. Mirrored at the
    /// diagonal, held and free edges change places, so the field and its stream lines do too, and L = λ exactly for every a. Slopes are infinite at
    /// both ends of the held edges: the hardest case for the bounds, at every accuracy.
    /// </summary>
    [Theory]
    [InlineData(0.5, 0.1)]
    [InlineData(0.5, 0.03)]
    [InlineData(0.5, 0.003)]
    [InlineData(0.1, 0.01)]
    [InlineData(0.93, 0.01)]
    public void The_bounds_hold_the_exact_flow_of_a_square_that_is_its_own_mirror_image(double a, double fraction)
    {
        SolvedSection solved = Conduction.Solve(Mirrored(a, SectionShape.Plane), new(FlowFraction: fraction, TemperatureK: 1));
        Assert.True(solved.IsConverged);
        double error = solved.CouplingErrorsWPerK[1];
        Assert.InRange(error / 0.7, 0, fraction);
        Assert.InRange(solved.CouplingWPerK("warm", "cold") / 0.7, 1 - error / 0.7, 1 + error / 0.7);
    }

    private static Section Mirrored(double a, SectionShape shape) => new("square", shape, [new("square", new(0, 1, 0, 1), 0.7)],
        [new("warm", new(0, a, -Far, 0, -Far, Far), 0), new("cold", new(-Far, 0, a, Far, -Far, Far), 0), new("cold", new(0, 1, 1, Far, -Far, Far), 0)]);

    /// <summary>The bounds themselves on even grids of 8, 16 and 32 cells a side: L = λ lies between them, and their span halves where slopes are infinite (order 1).</summary>
    [Fact]
    public void Halving_all_cells_halves_the_span_where_slopes_are_infinite()
    {
        (double Upper, double Lower)[] bounds = [.. new[] { 8, 16, 32 }.Select(count => Bounds(Mirrored(0.5, SectionShape.Plane), count))];
        foreach ((double upper, double lower) in bounds) Assert.True(lower < 0.7 && 0.7 < upper);
        Assert.InRange(Order(bounds), 0.9, 1.1);
    }

    /// <summary>The same with films all along the left and the top: no slope is infinite, order 2.</summary>
    [Fact]
    public void Halving_all_cells_quarters_the_span_where_slopes_are_finite() =>
        Assert.InRange(Order([.. new[] { 8, 16, 32 }.Select(count => Bounds(new("block", SectionShape.Plane, [new("block", new(0, 1, 0, 1), 1)],
            [new("base", new(-Far, 0, -Far, Far), 1), new("air", new(0, 1, 1, Far), 0.5)]), count))]), 1.9, 2.05);

    private static double Order((double Upper, double Lower)[] bounds) => Math.Log2((bounds[1].Upper - bounds[1].Lower) / (bounds[2].Upper - bounds[2].Lower));

    private static (double Upper, double Lower) Bounds(Section section, int count)
    {
        double[] even = [.. Enumerable.Range(0, count + 1).Select(i => (double)i / count)];
        Refinement solved = new(new Grid(new Blocks(section), [even, even, [0, 1]]));
        return (solved.UpperWPerK[0], solved.LowerWPerK[0]);
    }

    /// <summary>
    /// A solid, and a round one far from its axis, of the same section as a plane one: with depth 0.1 m the solid has a tenth of it; the ring of mean radius 1000 m
    /// has 2π·1000 times it, but for the curvature of 1e-4. Both answers within the sum of their errors.
    /// </summary>
    [Fact]
    public void A_solid_and_a_wide_ring_conduct_like_the_plane_section_they_extend()
    {
        SolvedSection plane = Conduction.Solve(Rib()), solid = Conduction.Solve(Rib(SectionShape.Solid));
        Section ring = Rib(SectionShape.Round) with
        {
            Pieces = [.. Rib().Pieces.Select(piece => piece with { Where = piece.Where with { X0M = 900 + piece.Where.X0M, X1M = 900 + piece.Where.X1M } })],
        };
        SolvedSection round = Conduction.Solve(ring);
        double expected = plane.CouplingsWPerK[1], error = plane.CouplingErrorsWPerK[1];
        Assert.Equal(expected, solid.CouplingsWPerK[1] / 0.1, error + solid.CouplingErrorsWPerK[1] / 0.1);
        Assert.Equal(expected, round.CouplingsWPerK[1] / (Math.Tau * 900), error + round.CouplingErrorsWPerK[1] / (Math.Tau * 900) + expected * 3e-4);
    }

    /// <summary>A disc with an axis: film below, held above over a smaller radius. Each of two accuracies must lie within the other's bounds, and the finer within a tenth of the coarser span.</summary>
    [Fact]
    public void Bounds_of_a_round_section_nest()
    {
        Section bolt = new("bolt", SectionShape.Round, [new("foam", new(0, 0.1, 0, 0.04), 0.036), new("bolt", new(0, 0.004, 0, 0.04), 50) { IsInset = true }],
            [new("outside", new(-Far, Far, -Far, 0), 0.04), new("room", new(-Far, Far, 0.04, Far), 0.13)]);
        SolvedSection coarse = Conduction.Solve(bolt), fine = Conduction.Solve(bolt, new(FlowFraction: 1e-3, TemperatureK: 1e-3));
        Assert.InRange(fine.CouplingErrorsWPerK[1], 0, coarse.CouplingErrorsWPerK[1] / 5);
        Assert.Equal(fine.CouplingsWPerK[1], coarse.CouplingsWPerK[1], coarse.CouplingErrorsWPerK[1] + fine.CouplingErrorsWPerK[1]);
    }
}
