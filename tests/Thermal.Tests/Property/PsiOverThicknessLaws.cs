using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using Thermal.Numerics;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Property;

/// <summary>The curve of ψ over a thickness stays as near to the solutions as it says.</summary>
public class PsiOverThicknessLaws
{
    private static readonly Stack Wall = new([Sheet(0.006, 0.15), Sheet(0.04, 0.036), Sheet(0.001, 50)]);

    private static readonly Rib Hat = new() { Shape = RibShape.Hat, Material = Of(50, MaterialGroup.Metal), SheetM = 0.0012, DepthM = 0.03, CrownM = 0.04, FootM = 0.015 };

    [Fact]
    public void The_curve_is_as_near_to_a_solution_as_it_says()
    {
        DetailPlace place = DetailPlace.InWall(Wall, 0.5);
        PsiOverThickness curve = PsiOverThickness.Of(Hat, place, 1, 0.03, 0.1);
        Assert.InRange(curve.ErrorWPerMK, 1e-9, 0.002);
        foreach (double thicknessM in new[] { 0.03, 0.0317, 0.0371, 0.0422, 0.0567, 0.0731, 0.0933, 0.1 })
        {
            SolvedLine solved = DetailSolver.Solve(Hat, place with { Stack = Wall.WithThicknessM(1, thicknessM) }, accuracy: new(0.002, 0.002));
            Assert.Equal(solved.PsiWPerMK.Value, curve.PsiWPerMK(thicknessM), curve.ErrorWPerMK);
            Assert.Equal(solved.ColdestFactor, curve.ColdestFactor(thicknessM), curve.ErrorFactor);
            Assert.Equal(solved.MouldFactor, curve.MouldFactor(thicknessM), curve.ErrorFactor);
        }
    }

    /// <summary>Five thicknesses and the four in between: found again one by one, with the curve through the five drawn here.</summary>
    [Fact]
    public void Its_error_is_that_at_the_checks_and_that_of_the_solutions()
    {
        DetailPlace place = DetailPlace.InWall(Wall, 0.5);
        BridgeCache cache = new();
        Accuracy accuracy = new(0.005, 0.002);
        PsiOverThickness curve = PsiOverThickness.Of(Hat, place, 1, 0.04, 0.1, 0.1, 0.1, cache, accuracy);
        Assert.Equal(9, curve.SolvedCount);
        double[] at = [.. Enumerable.Range(0, 9).Select(i => 0.04 + i * 0.0075)];
        SolvedLine[] solved = [.. at.Select(thicknessM => DetailSolver.Solve(Hat, place with { Stack = Wall.WithThicknessM(1, thicknessM) }, cache, accuracy))];
        double Off(Func<SolvedLine, double> value)
        {
            MonotoneCurve through = new([.. at.Where((_, i) => i % 2 == 0)], [.. solved.Where((_, i) => i % 2 == 0).Select(value)]);
            return Enumerable.Range(0, 9).Max(i => Math.Abs(through.At(at[i]) - value(solved[i])));
        }
        double psiOff = Off(line => line.PsiWPerMK.Value), factorOff = Math.Max(Off(line => line.ColdestFactor), Off(line => line.MouldFactor));
        double psiError = solved.Max(line => line.PsiWPerMK.High - line.PsiWPerMK.Value), factorError = solved.Max(line => Math.Max(line.ColdestErrorFactor, line.Mould.TemperatureChangeK));
        Assert.True(Math.Min(psiOff, psiError) > 1e-5 && Math.Min(factorOff, factorError) > 1e-5);
        Assert.Equal(psiOff + psiError, curve.ErrorWPerMK, 1e-6);
        Assert.Equal(factorOff + factorError, curve.ErrorFactor, 1e-5);
    }

    /// <summary>Rising by 1 and then falling by 10, the three points would start with a slope of 6.5: three times the first secant is the steepest that makes no bump.</summary>
    [Fact]
    public void A_monotone_curve_starts_no_steeper_than_three_secants()
    {
        MonotoneCurve curve = new([0, 1, 2], [0, 1, -9]);
        Assert.Equal(3, curve.At(1e-7) / 1e-7, 1e-5);
    }

    [Fact]
    public void More_foam_over_a_crown_makes_it_warmer_without_a_bump()
    {
        PsiOverThickness curve = PsiOverThickness.Of(Hat, DetailPlace.InWall(Wall, 0.5), 1, 0.03, 0.1);
        double[] factors = [.. Enumerable.Range(0, 141).Select(i => curve.ColdestFactor(0.03 + i * 0.0005))];
        Assert.All(factors.Zip(factors.Skip(1)), pair => Assert.True(pair.Second >= pair.First));
    }

    [Fact]
    public void A_thickness_at_which_the_rib_does_not_fit_is_refused() =>
        Assert.Throws<ArgumentException>(() => PsiOverThickness.Of(Hat, DetailPlace.InWall(Wall, 0.5), 1, 0.01, 0.1));

    [Fact]
    public void A_thickness_beyond_the_curve_is_refused()
    {
        PsiOverThickness curve = PsiOverThickness.Of(Hat, DetailPlace.InWall(Wall, 0.5), 1, 0.03, 0.06, 0.01, 0.05, accuracy: new());
        foreach (double thicknessM in new[] { 0.029, 0.061, double.NaN })
            Assert.Equal("thicknessM", Assert.Throws<ArgumentOutOfRangeException>(() => curve.PsiWPerMK(thicknessM)).ParamName);
    }

    /// <summary>Third order at least: halving the spacing of the points brings exp(x) nearer by eight.</summary>
    [Fact]
    public void A_monotone_curve_through_twice_as_many_points_is_eight_times_as_near()
    {
        double Off(int spans)
        {
            double[] x = [.. Enumerable.Range(0, spans + 1).Select(i => 2.0 * i / spans)];
            MonotoneCurve curve = new(x, [.. x.Select(Math.Exp)]);
            return Enumerable.Range(0, 1001).Max(i => Math.Abs(curve.At(i * 0.002) - Math.Exp(i * 0.002)));
        }
        Assert.InRange(Off(32) / Off(64), 6, 20);
    }

    [Fact]
    public void A_monotone_curve_turns_only_at_its_points()
    {
        MonotoneCurve curve = new([0, 1, 1.5, 4, 5], [0, 1, 1, 1, 0]);
        Assert.Equal(1, curve.At(1.2));
        Assert.Equal(1, curve.At(3.3));
        Assert.All(Enumerable.Range(0, 501), i => Assert.InRange(curve.At(i * 0.01), 0, 1));
    }
}
