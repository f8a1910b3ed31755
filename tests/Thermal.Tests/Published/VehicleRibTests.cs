using Thermal.Bridges;

namespace Thermal.Tests.Published;

/// <summary>A steel rib in a van wall against the converged values of independent codes.</summary>
public class VehicleRibTests
{
    public static IEnumerable<object[]> Ribs => PublishedTable.Rows("vehicle-rib-results.csv");

    [Theory, MemberData(nameof(Ribs))]
    public void A_steel_rib_comes_back_with_its_loss_and_its_coldest_point(string rib, double l2d, double l2dRelative, double coldestC, double coldestToleranceK,
        double convergedL2d, double convergedRelative, double convergedC, double convergedToleranceK)
    {
        Section section = SectionTable.Of("vehicle-rib", rib);
        SolvedSection quick = Conduction.Solve(section), close = Conduction.Solve(section, new(1e-3, 5e-4));
        Assert.InRange(quick.CouplingWPerK("room", "outside") / l2d, 1 - l2dRelative, 1 + l2dRelative);
        Assert.Equal(coldestC, OverTheWebC(quick), coldestToleranceK);
        Assert.InRange(close.CouplingWPerK("room", "outside") / convergedL2d, 1 - convergedRelative, 1 + convergedRelative);
        Assert.Equal(convergedC, OverTheWebC(close), convergedToleranceK);
        SurfacePoint found = close.Coldest("room", AirC(close));
        Assert.Equal(0.0468, found.YM);
        Assert.Equal(0.2, found.XM, 0.00075); // half the web
        Assert.Equal(convergedC, found.TemperatureC, convergedToleranceK);
    }

    private static double OverTheWebC(SolvedSection solved) => solved.TemperatureC(AirC(solved), 0.2, 0.0468);

    private static double[] AirC(SolvedSection solved) => [.. solved.Environments.Select(name => name == "room" ? 20.0 : -10)];
}
