using Thermal.Bridges;

namespace Thermal.Tests.Published;

/// <summary>The four validation cases of ISO 10211, within the annex's tolerances and, refined, within those of converged solutions.</summary>
public class Iso10211Tests
{
    private static readonly Accuracy Close = new(5e-4, 2e-4);
    private static readonly Lazy<SolvedSection> Column = new(() => Conduction.Solve(SectionTable.Of("iso-10211", "1"), new(1e-2, 5e-4)));
    private static readonly Lazy<SolvedSection> Composite = new(() => Conduction.Solve(SectionTable.Of("iso-10211", "2")));
    private static readonly Lazy<SolvedSection> CompositeClose = new(() => Conduction.Solve(SectionTable.Of("iso-10211", "2"), Close));
    private static readonly Lazy<SolvedSection> Corner = new(() => Conduction.Solve(SectionTable.Of("iso-10211", "3", SectionShape.Solid), new(5e-3, 2e-3)));
    private static readonly Lazy<SolvedSection> Bar = new(() => Conduction.Solve(SectionTable.Of("iso-10211", "4", SectionShape.Solid), new(2e-3, 1e-3)));

    public static IEnumerable<object[]> ColumnRows => PublishedTable.Rows("iso-10211-case-1.csv");

    public static IEnumerable<object[]> Temperatures => PublishedTable.Rows("iso-10211-temperatures.csv");

    public static IEnumerable<object[]> Flows => PublishedTable.Rows("iso-10211-flows.csv");

    public static IEnumerable<object[]> Shares => PublishedTable.Rows("iso-10211-case-3-shares.csv");

    private static SolvedSection Solved(string number) => number switch { "2" => Composite.Value, "3" => Corner.Value, _ => Bar.Value };

    private static SolvedSection SolvedClosely(string number) => number == "2" ? CompositeClose.Value : Solved(number);

    internal static double[] AirC(SolvedSection solved, string number) => [.. solved.Environments.Select(name => (number, name) switch
    {
        ("1", "top") or ("2", "inside") or ("3", "below") => 20.0,
        ("3", "above") => 15,
        ("4", "inside") => 1,
        _ => 0,
    })];

    /// <summary>Temperature of the whole column, 2 m × 2 m with its top at 20 °C and three sides at 0 °C, by separation of variables.</summary>
    private static double ColumnC(double xM, double belowTopM)
    {
        double sum = 0;
        for (int n = 1; n < 400; n += 2)
        {
            double k = n * Math.PI / 2;
            sum += 80 / (n * Math.PI) * Math.Sin(k * xM) * Math.Exp(-k * belowTopM) * (1 - Math.Exp(-2 * k * (2 - belowTopM))) / (1 - Math.Exp(-4 * k));
        }
        return sum;
    }

    [Theory, MemberData(nameof(ColumnRows))]
    public void Case_1_comes_back_at_its_28_points(double row, double quarter, double half, double threeQuarters, double middle, double toleranceK)
    {
        double[] printed = [quarter, half, threeQuarters, middle];
        for (int i = 0; i < 4; i++)
            Assert.Equal(printed[i], Column.Value.TemperatureC(AirC(Column.Value, "1"), 0.25 * (i + 1), 2 - 0.25 * row), toleranceK);
    }

    /// <summary>0.02 K: a thousandth of the step between the fixed sides. The series itself is good to 1e-9 at these points.</summary>
    [Theory, MemberData(nameof(ColumnRows))]
    public void Case_1_refined_follows_its_Fourier_series(double row, double quarter, double half, double threeQuarters, double middle, double toleranceK)
    {
        double[] printed = [quarter, half, threeQuarters, middle];
        for (int i = 0; i < 4; i++)
        {
            double x = 0.25 * (i + 1), series = ColumnC(x, 0.25 * row);
            Assert.Equal(printed[i], series, toleranceK / 2 + 1e-6); // the table is the series rounded
            Assert.Equal(series, Column.Value.TemperatureC(AirC(Column.Value, "1"), x, 2 - 0.25 * row), 0.02);
        }
    }

    [Theory, MemberData(nameof(Temperatures))]
    public void Surface_and_corner_temperatures_of_cases_2_to_4_come_back(string number, string point, double xM, double yM, double zM, double valueC, double toleranceK, double convergedC, double convergedToleranceK)
    {
        Assert.NotEmpty(point);
        double TemperatureC(SolvedSection solved) => solved.TemperatureC(AirC(solved, number), xM, yM, zM);
        Assert.Equal(valueC, TemperatureC(Solved(number)), toleranceK);
        Assert.Equal(convergedC, TemperatureC(SolvedClosely(number)), convergedToleranceK);
    }

    [Theory, MemberData(nameof(Flows))]
    public void Heat_flows_of_cases_2_to_4_come_back(string number, string environment, double valueW, double toleranceW, double convergedW, double convergedToleranceW)
    {
        double FlowW(SolvedSection solved) => solved.FlowsW(AirC(solved, number))[solved.Place(environment)];
        Assert.Equal(valueW, FlowW(Solved(number)), toleranceW);
        Assert.Equal(convergedW, FlowW(SolvedClosely(number)), convergedToleranceW);
    }

    [Theory, MemberData(nameof(Shares))]
    public void Couplings_and_weighting_factors_of_case_3_come_back(string quantity, double below, double above, double outside, double tolerance)
    {
        SolvedSection solved = Corner.Value;
        string[] names = ["below", "above", "outside"];
        double[] printed = [below, above, outside];
        string of = quantity.Split(' ')[^1];
        for (int i = 0; i < 3; i++)
        {
            if (quantity.StartsWith("coupling", StringComparison.Ordinal))
            {
                double computed = names[i] == of ? 0 : solved.CouplingWPerK(of, names[i]);
                Assert.Equal(printed[i], computed, tolerance * Math.Max(printed[i], 1e-9));
            }
            else
                Assert.Equal(printed[i], solved.WeightsFraction(0.2, 0.2, of == "below" ? 1 : 1.2)[solved.Place(names[i])], tolerance);
        }
    }

    /// <summary>The corner where both walls meet the slab is the coldest place of each room, the bar's axis the warmest outside.</summary>
    [Fact]
    public void The_coldest_and_warmest_places_are_found_where_the_standard_says()
    {
        SurfacePoint below = Corner.Value.Coldest("below", AirC(Corner.Value, "3")), above = Corner.Value.Coldest("above", AirC(Corner.Value, "3"));
        Assert.Equal((0.2, 0.2, 1.0), (below.XM, below.YM, below.ZM));
        Assert.Equal((0.2, 0.2, 1.2), (above.XM, above.YM, above.ZM));
        Assert.Equal(11.32, below.TemperatureC, 0.1);
        Assert.Equal(11.11, above.TemperatureC, 0.1);
        SurfacePoint bar = Bar.Value.Warmest("outside", AirC(Bar.Value, "4"));
        Assert.Equal((0.0, 0.0, 0.0), (bar.XM, bar.YM, bar.ZM));
        Assert.Equal(0.805, bar.TemperatureC, 0.005);
    }
}
