using Thermal.Bridges;

namespace Thermal.Tests.Published;

/// <summary>What must hold for every solved section, on the published cases: balance, reciprocity, shares, bounds and order of accuracy.</summary>
public class SectionLawTests
{
    private static readonly Accuracy Usual = new(5e-3, 5e-3);

    private static readonly Lazy<SolvedSection> Corner = new(() => Conduction.Solve(SectionTable.Of("iso-10211", "3", SectionShape.Solid), Usual));

    public static TheoryData<string, string> Cases => new()
    {
        { "iso-10211", "2" }, { "iso-10211", "3" }, { "iso-10211", "4" }, { "vehicle-rib", "a" }, { "vehicle-rib", "b" }, { "vehicle-rib", "c" },
    };

    private static SectionShape ShapeOf(string name, string number) => name == "iso-10211" && number != "2" ? SectionShape.Solid : SectionShape.Plane;

    private static SolvedSection Solved(string name, string number) =>
        (name, number) == ("iso-10211", "3") ? Corner.Value : Conduction.Solve(SectionTable.Of(name, number, ShapeOf(name, number)), Usual);

    private static double[] OneWarm(SolvedSection solved, int warm) => [.. solved.Environments.Select((_, i) => i == warm ? 1.0 : 0)];

    /// <summary>Far below the standard's own criterion of 1e-4 of half the absolute flows.</summary>
    [Theory, MemberData(nameof(Cases))]
    public void Heat_that_enters_leaves_again(string name, string number)
    {
        SolvedSection solved = Solved(name, number);
        for (int warm = 0; warm < solved.Environments.Count; warm++)
        {
            IReadOnlyList<double> flowsW = solved.FlowsW(OneWarm(solved, warm));
            Assert.True(flowsW[warm] > 0);
            Assert.Equal(0, flowsW.Sum() / flowsW[warm], 1e-8);
        }
    }

    [Fact]
    public void Warm_and_cold_may_swap_places_without_changing_the_flow()
    {
        SolvedSection solved = Corner.Value;
        for (int one = 0; one < 3; one++)
            for (int other = 0; other < one; other++)
            {
                double thereW = solved.FlowsW(OneWarm(solved, one))[other], backW = solved.FlowsW(OneWarm(solved, other))[one];
                Assert.Equal(1, thereW / backW, 1e-8);
                Assert.Equal(-thereW, solved.CouplingWPerK(solved.Environments[one], solved.Environments[other]), 1e-8);
            }
    }

    /// <summary>Shares add up to one and none is negative: no place is warmer or colder than all air around.</summary>
    [Theory, MemberData(nameof(Cases))]
    public void Every_temperature_is_a_mean_of_the_temperatures_around(string name, string number)
    {
        SolvedSection solved = Solved(name, number);
        foreach (Piece piece in solved.Section.Pieces)
            foreach (double at in (double[])[0, 0.3, 0.5, 1])
            {
                Box box = piece.Where;
                IReadOnlyList<double> shares = solved.WeightsFraction(box.X0M + at * (box.X1M - box.X0M), box.Y0M + at * (box.Y1M - box.Y0M), box.Z0M + at * (box.Z1M - box.Z0M));
                Assert.Equal(1, shares.Sum(), 1e-7);
                Assert.All(shares, share => Assert.InRange(share, -1e-9, 1 + 1e-9));
            }
    }

    /// <summary>The flow summed here from film and surface temperature along the room's face; 1 %: ten times the flow's own accuracy, for the rule of trapezoids on its grid.</summary>
    [Theory, InlineData("iso-10211", "2", "inside", 0), InlineData("vehicle-rib", "a", "room", 0.0468), InlineData("vehicle-rib", "c", "room", 0.0468)]
    public void The_flow_is_what_passes_the_film(string name, string number, string warm, double faceM)
    {
        SolvedSection solved = Conduction.Solve(SectionTable.Of(name, number), new(1e-3, 5e-4));
        double[] airC = OneWarm(solved, solved.Place(warm));
        double filmM2KPerW = solved.Section.Boundaries.Single(boundary => boundary.Environment == warm).SurfaceResistanceM2KPerW, sumW = 0;
        for (int i = 1; i < solved.XsM.Count; i++)
        {
            double meanC = (solved.TemperatureC(airC, solved.XsM[i - 1], faceM) + solved.TemperatureC(airC, solved.XsM[i], faceM)) / 2;
            sumW += (1 - meanC) / filmM2KPerW * (solved.XsM[i] - solved.XsM[i - 1]);
        }
        Assert.Equal(1, sumW / solved.FlowsW(airC)[solved.Place(warm)], 0.01);
    }

    /// <summary>Published by quadratic elements, good to 1e-5 themselves.</summary>
    [Theory]
    [InlineData("iso-10211", "2", "inside", 9.49146 / 20)]
    [InlineData("vehicle-rib", "a", "room", 0.389425)]
    [InlineData("vehicle-rib", "b", "room", 0.501209)]
    [InlineData("vehicle-rib", "c", "room", 0.372325)]
    public void The_bounds_of_a_solution_hold_the_true_value_at_every_accuracy(string name, string number, string warm, double truth)
    {
        Section section = SectionTable.Of(name, number);
        foreach (double fraction in (double[])[0.1, 1e-2, 1e-3])
        {
            SolvedSection solved = Conduction.Solve(section, new(fraction, 1));
            int at = solved.Place(warm) * 2 + solved.Place("outside");
            double error = solved.CouplingErrorsWPerK[at];
            Assert.True(solved.IsConverged);
            Assert.InRange(error / solved.CouplingsWPerK[at], 0, fraction);
            Assert.InRange(truth, solved.CouplingsWPerK[at] - error - 1e-5 * truth, solved.CouplingsWPerK[at] + error + 1e-5 * truth);
        }
    }
}
