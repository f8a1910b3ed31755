using Thermal.Bridges;

namespace Thermal.Tests.Published;

/// <summary>Rods and pins in air, solved as round sections, against textbook examples and their series solution.</summary>
public class FinTests
{
    public static IEnumerable<object[]> Fins => PublishedTable.Rows("fins.csv");

    /// <summary>A rod on a base of fixed temperature; its tip lets no heat through.</summary>
    private static Section Rod(double diameterM, double lengthM, double filmWPerM2K, double conductivityWPerMK) => new("rod", SectionShape.Round,
        [new("rod", new(0, diameterM / 2, 0, lengthM), conductivityWPerMK)],
        [new("base", new(0, diameterM / 2, -1, 0), 0), new("air", new(diameterM / 2, 1, 0, lengthM), 1 / filmWPerM2K)]);

    [Theory, MemberData(nameof(Fins))]
    public void A_rod_in_air_loses_and_cools_as_the_textbook_says(string quantity, double diameterM, double lengthM, double filmWPerM2K, double conductivityWPerMK,
        double value, double tolerance, double round, double roundTolerance)
    {
        SolvedSection solved = Conduction.Solve(Rod(diameterM, lengthM, filmWPerM2K, conductivityWPerMK), new(1e-4, 2e-5));
        double computed = quantity == "flow"
            ? 75 * solved.CouplingWPerK("base", "air")
            : solved.TemperatureC([.. solved.Environments.Select(name => name == "base" ? 120.0 : 20)], 0, lengthM);
        Assert.Equal(value, computed, tolerance);
        Assert.Equal(round, computed, roundTolerance);
    }
}
