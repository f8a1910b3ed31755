namespace Thermal.Moisture;

/// <summary>Twelve months of wetting and drying inside a build-up, several planes at once.</summary>
/// <remarks>
/// Each month is at rest (vapour is not stored, only water). A plane that holds water is at saturation, over ice below 0 °C; a dry plane
/// that would pass saturation becomes wet; water that leaves one plane may settle on another. Where a plane runs dry within a month, the
/// month is split at that moment, so no water is lost or invented. Water stays where it settled: run-off, capillary flow, sun and stored
/// moisture are left out. Air that moves through the build-up is left out by the source; here it may be added as a stated flow of water.
/// Source: ISO-13788, clause 6, from memory; event-exact months and several years are chosen by us.
/// </remarks>
public static class MonthlyAccount
{
    /// <summary>Less water than this counts as none, kg/m²: one milligram; limit chosen by us.</summary>
    public const double NothingKgPerM2 = 1e-6;

    /// <summary>Most years computed before a slow drift is reported as it stands; limit chosen by us.</summary>
    public const int MostYears = 200;

    private const double SteadyKgPerM2 = 1e-10; // years repeat when no plane differs by more: far below a milligram, far above rounding

    /// <summary>Runs the months until the years repeat or grow steadily.</summary>
    /// <param name="resistancesM2KPerW">Thermal resistances R inside to outside, both surface films included, m²·K/W, 0 to 100 each, not all zero; 1 to 200 entries.</param>
    /// <param name="diffusionThicknessesM">s_d of the same layers, m, 0 to 1e6 each, not all zero; with a film of 0 wetting of the surface itself is not counted.</param>
    /// <param name="months">Twelve months, in the order of the calendar from any month on.</param>
    /// <returns>The account, month by month.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, NaN, or not twelve months.</exception>
    /// <exception cref="ArgumentException">The lists differ in length, or air brings water to a face that can hold none.</exception>
    public static MonthlyAccountResult Run(
        ReadOnlySpan<double> resistancesM2KPerW, ReadOnlySpan<double> diffusionThicknessesM, IReadOnlyList<MonthConditions> months)
    {
        StackChecks.Layers(resistancesM2KPerW, diffusionThicknessesM);
        Guard.InRange(months.Count, 12, 12, "months", "month count");
        PlaneYear year = new(resistancesM2KPerW, diffusionThicknessesM, months);
        int start = year.FirstWettingMonth();
        if (start < 0) return Dry(year);

        double[] held = new double[year.NodeCount], before = new double[year.NodeCount], change = new double[year.NodeCount];
        YearWater first = year.Run(start, held), latest = first;
        for (int computed = 1; ; computed++)
        {
            if (computed > 1) latest = year.Run(start, held);
            double most = 0, least = 0, bend = 0, growth = 0;
            for (int node = 0; node < held.Length; node++)
            {
                double now = held[node] - before[node];
                most = Math.Max(most, now);
                least = Math.Min(least, now);
                bend = Math.Max(bend, Math.Abs(now - change[node]));
                growth += now;
                change[node] = now;
            }
            held.CopyTo(before, 0);
            bool repeats = most <= SteadyKgPerM2 && least >= -SteadyKgPerM2;
            bool growsSteadily = computed > 1 && bend <= SteadyKgPerM2 && least >= -SteadyKgPerM2;
            if (repeats) return Report(latest, start, 0, computed);
            if (growsSteadily || computed == MostYears)
                return growth > NothingKgPerM2 ? Report(first, start, growth, computed) : Report(latest, start, 0, computed);
        }
    }

    private static MonthlyAccountResult Dry(PlaneYear year)
    {
        YearWater water = year.Run(0, new double[year.NodeCount]);
        return new(YearOutcome.Dry, water.Months, 0, null, 0, 0, null, 0, 1);
    }

    private static MonthlyAccountResult Report(YearWater water, int startMonth, double growthKgPerM2PerYear, int years)
    {
        bool dries = water.DryMonth is not null && growthKgPerM2PerYear <= 0;
        return new(dries ? YearOutcome.WetDriesByMonth : YearOutcome.StaysWet, water.Months, startMonth, dries ? water.DryMonth : null,
            water.PeakKgPerM2, water.PeakMonth, water.PeakFace, growthKgPerM2PerYear, years);
    }
}
