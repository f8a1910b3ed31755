using Thermal.Moisture;

namespace Thermal.Tests.Published;

/// <summary>Twelve months against the recorded run of a general linear program solver (general-solver-run.py beside the data).</summary>
public class GeneralSolverTests
{
    private const double ToleranceKgPerM2 = 2e-6; // the recorded solver's feasibility tolerance over a year

    private static readonly int[] DaysOfMonths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    private static MonthlyAccountResult Run(string name, double[] resistances, double[] diffusionThicknesses, out IReadOnlyList<object[]> rows)
    {
        rows = [.. PublishedTable.Rows("general-solver-months.csv").Where(row => (string)row[0] == name)];
        return MonthlyAccount.Run(resistances, diffusionThicknesses, [.. rows.Select(row => new MonthConditions(
            20, (double)row[2], (double)row[3], (double)row[4], 86_400.0 * DaysOfMonths[(int)(double)row[1]], 1.9e-10)
            { SourcesAtFacesKgPerM2S = [0, 0, 0, 0, (double)row[5], 0, 0] })]);
    }

    private static void SameWater(IReadOnlyList<object[]> rows, MonthlyAccountResult account)
    {
        for (int month = 0; month < 12; month++)
            for (int face = 1; face <= 5; face++)
                Assert.Equal((double)rows[month][5 + face], account.Months[month].HeldAtFacesKgPerM2[face], ToleranceKgPerM2);
    }

    [Fact]
    public void Several_planes_wet_dry_and_feed_each_other_as_the_general_solver_says()
    {
        MonthlyAccountResult account = Run("several planes", [0.13, 0.5, 0.7, 0.7, 0.02, 0.04], [0.05, 0.4, 0.8, 0.8, 0.7, 0.01], out IReadOnlyList<object[]> rows);
        SameWater(rows, account);
        Assert.Equal((YearOutcome.WetDriesByMonth, 10, 7, 4), (account.Verdict, account.StartMonth, account.DryMonth, account.PeakFace));
    }

    [Fact]
    public void Water_brought_by_air_to_a_tight_skin_dries_inwards_as_the_general_solver_says()
    {
        MonthlyAccountResult account = Run("tight skin with air behind", [0.13, 0.05, 0.7, 0.7, 0.0001, 0.04], [0.01, 0.9, 0.03, 0.03, 1500, 0.01], out IReadOnlyList<object[]> rows);
        SameWater(rows, account);
        Assert.Equal((YearOutcome.WetDriesByMonth, 11, 8, 2), (account.Verdict, account.StartMonth, account.DryMonth, account.PeakMonth));
    }

    [Fact]
    public void A_build_up_that_stays_wet_reports_its_first_year_and_the_yearly_growth()
    {
        MonthlyAccountResult account = Run("stays wet", [0.13, 0.05, 0.5, 0.9, 0.0001, 0.04], [0.01, 0.9, 0.5, 1.2, 2000, 0.01], out IReadOnlyList<object[]> rows);
        SameWater(rows, account);
        Assert.Equal((YearOutcome.StaysWet, 8, null, true), (account.Verdict, account.StartMonth, account.DryMonth, account.StillAccumulating));
        Assert.Equal((double)rows[7][9], account.GrowthKgPerM2PerYear, ToleranceKgPerM2); // wet all year: each year adds what the first one did
    }
}
