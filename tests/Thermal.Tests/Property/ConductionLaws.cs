using CsCheck;
using Thermal.Bridges;
using static Thermal.Tests.SampleSections;

namespace Thermal.Tests.Property;

/// <summary>Laws of conduction in any section: a block of up to four by four materials between three environments.</summary>
public class ConductionLaws
{
    private const int Runs = 60;

    private static readonly Gen<double> AnyConductivity = Gen.Double[-2, 2].Select(power => Math.Pow(10, power));
    private static readonly Gen<double> AnyWidth = Gen.Double[0.001, 0.2];

    private static readonly Gen<Section> AnySection = Sections(Gen.Bool), AnyPlaneSection = Sections(Gen.Const(false));

    private static Gen<Section> Sections(Gen<bool> isRound) =>
        Gen.Select(AnyWidth.Array[1, 4], AnyWidth.Array[1, 4], AnyConductivity.Array[16], Gen.Double[0.01, 1].Array[3], isRound).Select((widths, heights, conductivities, films, round) =>
        {
            double[] xs = Edges(widths), ys = Edges(heights);
            List<Piece> pieces = [];
            for (int i = 0; i < widths.Length; i++)
                for (int j = 0; j < heights.Length; j++) pieces.Add(new($"{i} {j}", new(xs[i], xs[i + 1], ys[j], ys[j + 1]), conductivities[4 * i + j]));
            return new Section("any", round ? SectionShape.Round : SectionShape.Plane, pieces,
                [new("below", new(-Far, Far, -Far, 0), films[0]), new("above", new(-Far, Far, ys[^1], Far), films[1]), new("right", new(xs[^1], Far, 0, ys[^1]), films[2])]);
        });

    private static double[] Edges(double[] widths)
    {
        double[] edges = new double[widths.Length + 1];
        for (int i = 0; i < widths.Length; i++) edges[i + 1] = edges[i] + widths[i];
        return edges;
    }

    private static readonly Accuracy Coarse = new(FlowFraction: 0.05, TemperatureK: 0.1, LargestCellCount: 4000), Fine = new(FlowFraction: 0.01, TemperatureK: 0.1, LargestCellCount: 30000);

    /// <summary>Rounding of sums of some thousand terms: 1e-10 of the largest coefficient.</summary>
    [Fact]
    public void Couplings_are_symmetric_and_flows_add_up_to_nothing() => AnySection.Sample(section =>
    {
        SolvedSection solved = Conduction.Solve(section, Coarse);
        double largest = solved.CouplingsWPerK.Max();
        for (int e = 0; e < 3; e++)
            for (int f = 0; f < 3; f++) Assert.Equal(solved.CouplingsWPerK[3 * e + f], solved.CouplingsWPerK[3 * f + e]);
        Assert.InRange(solved.FlowsW([20, -10, 3]).Sum() / (30 * largest), -1e-10, 1e-10);
    }, iter: Runs);

    [Fact]
    public void Weights_lie_between_nothing_and_one_and_add_up_to_one() => Gen.Select(AnySection, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((section, across, up) =>
    {
        SolvedSection solved = Conduction.Solve(section, Coarse);
        IReadOnlyList<double> weights = solved.WeightsFraction(across * solved.XsM[^1], up * solved.YsM[^1]);
        Assert.Equal(1, weights.Sum(), 1e-12);
        Assert.All(weights, weight => Assert.InRange(weight, -1e-9, 1 + 1e-9));
    }, iter: Runs);

    /// <summary>A flow from the room's side of a temperature difference only: no environment takes heat from a colder one.</summary>
    [Fact]
    public void No_coupling_is_negative_beyond_its_error() => AnySection.Sample(section =>
    {
        SolvedSection solved = Conduction.Solve(section, Coarse);
        for (int i = 0; i < 9; i++) Assert.True(solved.CouplingsWPerK[i] >= -solved.CouplingErrorsWPerK[i] - 1e-12);
    }, iter: Runs);

    /// <summary>Every coefficient lies within the error stated at either accuracy. 1e-9 for rounding.</summary>
    [Fact]
    public void A_finer_answer_lies_within_the_bounds_of_a_coarser_one() => AnySection.Sample(section =>
    {
        SolvedSection coarse = Conduction.Solve(section, Coarse), fine = Conduction.Solve(section, Fine);
        for (int i = 0; i < 9; i++)
            Assert.InRange(fine.CouplingsWPerK[i] - coarse.CouplingsWPerK[i], -coarse.CouplingErrorsWPerK[i] - fine.CouplingErrorsWPerK[i] - 1e-9, coarse.CouplingErrorsWPerK[i] + fine.CouplingErrorsWPerK[i] + 1e-9);
    }, iter: Runs);

    /// <summary>The stated bound of the standard's criterion against the trial itself, on the last grid and on that with every cell halved.</summary>
    [Fact]
    public void Halving_every_cell_changes_no_flow_by_more_than_stated() => AnyPlaneSection.Sample(section =>
    {
        SolvedSection solved = Conduction.Solve(section, Coarse);
        Refinement halved = new(new Grid(new Blocks(section), [Halved(solved.XsM), Halved(solved.YsM), [0, 1]]));
        for (int e = 0; e < 3; e++)
        {
            double before = solved.CouplingsWPerK[3 * e] + solved.CouplingsWPerK[3 * e + 1] + solved.CouplingsWPerK[3 * e + 2];
            double after = (halved.UpperWPerK[4 * e] + halved.LowerWPerK[4 * e]) / 2;
            Assert.InRange(Math.Abs(after / before - 1), 0, solved.DoublingChangeFraction + 1e-9);
        }
    }, iter: Runs);

    private static double[] Halved(IReadOnlyList<double> linesM) => StartGrid.Halved([.. linesM], [.. linesM.Skip(1).Select(_ => true)]);

    /// <summary>Two pieces apart, each with an environment of its own: nothing couples them, and the search for accuracy must end.</summary>
    [Fact]
    public void Environments_without_a_path_between_them_exchange_nothing()
    {
        SolvedSection solved = Conduction.Solve(new("apart", SectionShape.Plane, [new("one", new(0, 0.1, 0, 0.1), 1), new("other", new(0.2, 0.3, 0, 0.1), 1)],
            [new("left", new(-Far, 0.15, -Far, Far), 0.1), new("right", new(0.15, Far, -Far, Far), 0.1)]));
        Assert.True(solved.IsConverged);
        Assert.Equal(0, solved.CouplingWPerK("left", "right"), 1e-12);
        Assert.Equal(1, solved.WeightsFraction(0.05, 0.05)[0], 1e-12);
    }

    /// <summary>Raising one λ lowers no environment's own flow: compared by bounds, upper before against lower after.</summary>
    [Fact]
    public void Better_insulation_never_lets_more_heat_out() => Gen.Select(AnySection, Gen.Int[0, 15], Gen.Double[0.05, 0.9]).Sample((section, which, factor) =>
    {
        which %= section.Pieces.Count;
        Section better = section with { Pieces = [.. section.Pieces.Select((piece, i) => i == which ? piece with { ConductivityWPerMK = factor * piece.ConductivityWPerMK } : piece)] };
        (Refinement Was, Refinement Is) = (Solved(section), Solved(better));
        for (int e = 0; e < 3; e++) Assert.True(Is.LowerWPerK[4 * e] <= Was.UpperWPerK[4 * e] * (1 + 1e-12));
        // On the same grid each scheme obeys the law by itself.
        for (int e = 0; e < 3; e++) Assert.True(Is.UpperWPerK[4 * e] >= Is.LowerWPerK[4 * e] * (1 - 1e-12));
    }, iter: Runs);

    private static Refinement Solved(Section section)
    {
        Blocks blocks = new(section);
        return new(new Grid(blocks, StartGrid.Of(blocks)));
    }

    [Fact]
    public void The_same_section_gives_the_same_bits() => AnySection.Sample(section =>
        Assert.Equal(Conduction.Solve(section, Coarse).CouplingsWPerK, Conduction.Solve(section with { Pieces = [.. section.Pieces] }, Coarse).CouplingsWPerK), iter: 10);

    [Fact]
    public void The_cache_finds_equal_content_and_tells_any_other_number_apart()
    {
        BridgeCache cache = new();
        SolvedSection first = cache.Solve(Rib());
        Assert.Same(first, cache.Solve(Rib()));
        Assert.NotSame(first, cache.Solve(Rib(), new(FlowFraction: 0.02)));
        Assert.NotSame(first, cache.Solve(Rib() with { Boundaries = [Rib().Boundaries[0], Rib().Boundaries[1] with { SurfaceResistanceM2KPerW = 0.25 }] }));
        Assert.NotSame(first, cache.Solve(Rib() with { Pieces = [.. Rib().Pieces.Select(piece => piece.Name == "web" ? piece with { Where = piece.Where with { X1M = 0.00076 } } : piece)] }));
        Assert.Equal((4, 1), (cache.SolvedCount, cache.FoundCount));
    }
}
