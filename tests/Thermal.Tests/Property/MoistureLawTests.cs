using CsCheck;
using Thermal.Air;
using Thermal.Moisture;

namespace Thermal.Tests.Property;

/// <summary>Laws that hold for every build-up and every climate in the ranges of the generators.</summary>
public class MoistureLawTests
{
    private const double Permeability = 2e-10;

    // A layer of anything from felt to a steel skin: R, then s_d over six orders of magnitude, sometimes none.
    private static readonly Gen<(double R, double Sd)> AnyLayer = Gen.Select(
        Gen.Double[0.0001, 2.5], Gen.Frequency((1, Gen.Const(0.0)), (5, Gen.Double[-2, 3.5].Select(e => Math.Pow(10, e)))));

    // Both films have a little s_d, so that no surface is left out of the account.
    private static readonly Gen<(double[] R, double[] Sd)> AnyStack = AnyLayer.Array[2, 6].Select(layers =>
        (R: (double[])[0.13, .. layers.Select(l => l.R), 0.04], Sd: (double[])[0.008, .. layers.Select(l => l.Sd), 0.002]));

    private static readonly Gen<(double OutsideC, double InsidePa, double OutsideHumidity, double SourceShare)> AnyMonth =
        Gen.Select(Gen.Double[-35, 25], Gen.Double[400, 2000], Gen.Double[0.4, 0.95], Gen.Frequency((2, Gen.Const(0.0)), (1, Gen.Double[0, 1])));

    // Air that wets in some months and dries in others.
    private static readonly Gen<(double OutsideC, double InsidePa, double OutsideHumidity, double SourceShare)> AnyMonthOfAir =
        Gen.Select(AnyMonth, Gen.Bool).Select((month, dries) => (month.OutsideC, month.InsidePa, month.OutsideHumidity, dries ? -month.SourceShare : month.SourceShare));

    private static GlaserResult Night((double[] R, double[] Sd) stack, double outsideC, double insidePa, double outsideHumidity) =>
        GlaserNight.Profile(stack.R, stack.Sd, 20, outsideC, insidePa, outsideHumidity * SaturationPressure.OverWaterPa(outsideC), Permeability);

    private static MonthConditions Month((double OutsideC, double InsidePa, double OutsideHumidity, double SourceShare) month, int faces, int sourceFace)
    {
        double[] sources = new double[faces];
        sources[sourceFace] = 3e-8 * month.SourceShare;
        return new(20, month.OutsideC, month.InsidePa, month.OutsideHumidity * SaturationPressure.OverWaterPa(month.OutsideC), 30 * 86_400, Permeability)
            { SourcesAtFacesKgPerM2S = sources };
    }

    // Both films have s_d, so every face between them can hold water.
    private static int SourceFace(double[] diffusionThicknesses, int anywhere) => 1 + anywhere % (diffusionThicknesses.Length - 1);

    [Fact]
    public void The_dew_point_undoes_the_saturation_pressure() => Gen.Double[-60, 100].Sample(temperatureC =>
        Math.Abs(DewPoint.OfPressureC(SaturationPressure.PairPa(temperatureC)) - temperatureC) < 1e-10
        && Math.Abs(DewPoint.DewPointOverWaterC(SaturationPressure.OverWaterPa(temperatureC)) - temperatureC) < 1e-10);

    [Fact]
    public void Vapour_pressure_and_humidity_ratio_undo_each_other() => Gen.Select(Gen.Double[1, 20_000], Gen.Double[50_000, 105_000])
        .Sample((vapourPa, airPa) => Math.Abs(MoistAir.VapourPressurePa(MoistAir.HumidityRatioKgPerKg(vapourPa, airPa), airPa) / vapourPa - 1) < 1e-12);

    [Fact]
    public void The_taut_string_lies_nowhere_above_saturation() => Gen.Select(AnyStack, AnyMonth).Sample((stack, month) =>
    {
        GlaserResult night = Night(stack, month.OutsideC, month.InsidePa, month.OutsideHumidity);
        for (int face = 1; face < stack.R.Length; face++)
            Assert.True(night.VapourPressuresAtFacesPa[face] <= night.SaturationsAtFacesPa[face] * (1 + 1e-12));
    });

    [Fact]
    public void What_enters_leaves_or_settles() => Gen.Select(AnyStack, AnyMonth).Sample((stack, month) =>
    {
        GlaserResult night = Night(stack, month.OutsideC, month.InsidePa, month.OutsideHumidity);
        double scale = Permeability * 2000 / 0.002; // the largest flow the films allow
        Assert.Equal(night.InKgPerM2S, night.OutKgPerM2S + night.SettlesKgPerM2S, 1e-14 * scale);
        Assert.All(night.RatesAtFacesKgPerM2S, rate => Assert.True(rate >= 0));
    });

    [Fact]
    public void More_vapour_inside_never_settles_less() => Gen.Select(AnyStack, AnyMonth, Gen.Double[0, 500]).Sample((stack, month, extraPa) =>
        Night(stack, month.OutsideC, month.InsidePa + extraPa, month.OutsideHumidity).SettlesKgPerM2S
        >= Night(stack, month.OutsideC, month.InsidePa, month.OutsideHumidity).SettlesKgPerM2S - 1e-20);

    [Fact]
    public void Dividing_a_layer_keeps_its_sums_and_never_settles_less() => Gen.Select(AnyStack, AnyMonth).Sample((stack, month) =>
    {
        FineLayers fine = FineLayers.Of(stack.R, stack.Sd);
        Assert.Equal(stack.R.Sum(), fine.ResistancesM2KPerW.Sum(), 1e-12 * stack.R.Sum());
        Assert.Equal(stack.Sd.Sum(), fine.DiffusionThicknessesM.Sum(), 1e-12 * stack.Sd.Sum());
        Assert.All(fine.ResistancesM2KPerW, part => Assert.True(part <= 0.25 * (1 + 1e-8)));
        double whole = Night(stack, month.OutsideC, month.InsidePa, month.OutsideHumidity).SettlesKgPerM2S;
        double divided = Night((fine.ResistancesM2KPerW, fine.DiffusionThicknessesM), month.OutsideC, month.InsidePa, month.OutsideHumidity).SettlesKgPerM2S;
        Assert.True(divided >= whole - 1e-14 * Permeability * 2000 / 0.002);
    });

    [Fact]
    public void Every_month_of_the_account_balances() => Gen.Select(AnyStack, AnyMonthOfAir.Array[12], Gen.Int[1, 7]).Sample((stack, climate, anywhere) =>
    {
        MonthlyAccountResult account = MonthlyAccount.Run(stack.R, stack.Sd, [.. climate.Select(m => Month(m, stack.R.Length + 1, SourceFace(stack.Sd, anywhere)))]);
        double scale = Permeability * 2000 / 0.002 * 30 * 86_400;
        Assert.All(account.Months, m => Assert.Equal(m.InKgPerM2 + m.SourceKgPerM2 - m.OutKgPerM2, m.GainAtFacesKgPerM2.Sum(), 1e-13 * scale));
        double gain = account.Months.Sum(m => m.GainAtFacesKgPerM2.Sum());
        Assert.Equal(account.GrowthKgPerM2PerYear > 0 ? account.Months[(account.StartMonth + 11) % 12].HeldKgPerM2 : 0, gain, MonthlyAccount.NothingKgPerM2); // less than a milligram a year counts as none
        Assert.All(account.Months, m => Assert.All(m.HeldAtFacesKgPerM2, held => Assert.True(held >= 0)));
    }, iter: 300);

    [Fact]
    public void Twelve_months_agree_with_an_independent_complementarity_solver() => Gen.Select(AnyStack, AnyMonth.Array[12], Gen.Int[1, 7]).Sample((stack, climate, anywhere) =>
    {
        // The other solver knows no planes without vapour resistance between them: give those a real one.
        double[] spacings = [.. stack.Sd.Select(s => Math.Max(s, 0.01))];
        int faces = stack.R.Length + 1, sourceFace = 1 + anywhere % (faces - 2);
        MonthConditions[] months = [.. climate.Select(m => Month(m, faces, sourceFace))];
        MonthlyAccountResult account = MonthlyAccount.Run(stack.R, spacings, months);
        if (account.Verdict == YearOutcome.Dry) return;

        double[] held = new double[faces];
        int reported = account.StillAccumulating ? 0 : account.YearsComputed - 1, last = account.StillAccumulating ? account.YearsComputed : reported;
        double growth = 0;
        for (int year = 0; year <= last; year++)
        {
            double before = held.Sum();
            for (int i = 0; i < 12; i++)
            {
                int month = (account.StartMonth + i) % 12;
                double[] ceilings = [months[month].InsidePa, .. Saturations(stack.R, months[month].OutsideC), months[month].OutsidePa];
                var other = ComplementarityMonth.Run(spacings, ceilings, [.. months[month].SourcesAtFacesKgPerM2S], held, Permeability, months[month].LengthS);
                held = other.Held;
                if (year != reported) continue;
                MonthWater own = account.Months[month];
                double tolerance = 1e-9 * (1 + held.Sum()); // a microgram: the other solver's pivoting across six orders of conductance
                for (int face = 0; face < faces; face++) Assert.Equal(held[face], own.HeldAtFacesKgPerM2[face], tolerance);
                Assert.Equal(other.In, own.InKgPerM2, tolerance);
                Assert.Equal(other.Out, own.OutKgPerM2, tolerance);
            }
            growth = held.Sum() - before;
        }
        // The year after the last one computed grows as reported, so the report did not come too early (unless the years ran out).
        if (account.YearsComputed < MonthlyAccount.MostYears) Assert.Equal(growth > MonthlyAccount.NothingKgPerM2 ? growth : 0, account.GrowthKgPerM2PerYear, 1e-8 * (1 + held.Sum()));
    }, iter: 300);

    // Written anew here, so that the account's own temperatures are checked too.
    private static IEnumerable<double> Saturations(double[] resistances, double outsideC)
    {
        double passed = 0;
        foreach (double resistance in resistances.SkipLast(1))
        {
            passed += resistance;
            double t = 20 + (outsideC - 20) * passed / resistances.Sum();
            yield return 610.5 * Math.Exp(t >= 0 ? 17.269 * t / (237.3 + t) : 21.875 * t / (265.5 + t));
        }
    }
}
