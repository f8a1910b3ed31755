using Thermal.Envelope.Details;
using Thermal.Numerics;

namespace Thermal.Bridges;

/// <summary>ψ and coldest points of a detail over the thickness of one layer of its build-up: solved at some thicknesses, a smooth curve between, checked in between.</summary>
public sealed class PsiOverThickness
{
    // A curve with kinks (a crown that passes from one layer into the next) needs more thicknesses than this only if something is wrong.
    private const int MostSolved = 129;

    private const int FirstSpans = 4;

    private readonly MonotoneCurve _psi, _coldest, _mould;

    private PsiOverThickness(List<Knot> knots, double psiOff, double factorOff)
    {
        double[] thicknesses = [.. knots.Select(knot => knot.ThicknessM)];
        MonotoneCurve Through(Func<Knot, double> value) => new(thicknesses, [.. knots.Select(value)]);
        (_psi, _coldest, _mould) = (Through(knot => knot.Psi), Through(knot => knot.Coldest), Through(knot => knot.Mould));
        (FromM, ToM, SolvedCount) = (thicknesses[0], thicknesses[^1], knots.Count);
        (ErrorWPerMK, ErrorFactor) = (psiOff + knots.Max(knot => knot.PsiError), factorOff + knots.Max(knot => knot.FactorError));
    }

    /// <summary>Thinnest, m.</summary>
    public double FromM { get; }
    /// <summary>Thickest, m.</summary>
    public double ToM { get; }
    /// <summary>Thicknesses that were solved.</summary>
    public int SolvedCount { get; }
    /// <summary>Largest distance of ψ between curve and solution at the checks, plus the largest half span of the solutions' bounds, W/(m·K).</summary>
    public double ErrorWPerMK { get; }
    /// <summary>Largest distance of the two factors between curve and solution at the checks, plus the largest error of the solutions.</summary>
    public double ErrorFactor { get; }

    /// <summary>Solves a detail at as many thicknesses as it takes.</summary>
    /// <param name="detail">The detail; it must fit at all thicknesses.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="layer">Index of the layer whose thickness changes, 0 at the room.</param>
    /// <param name="fromM">Thinnest, m, 1e-6 to 1.</param>
    /// <param name="toM">Thickest, m, beyond fromM, to 1.</param>
    /// <param name="toleranceWPerMK">How far the curve of ψ may be off a solution at a check, W/(m·K), 1e-5 to 0.1.</param>
    /// <param name="toleranceFactor">The same for both factors, 1e-4 to 0.1.</param>
    /// <param name="cache">Sections solved before; null starts an empty one.</param>
    /// <param name="accuracy">How closely each is solved; null for a fifth of the standard's one per cent, so that the curve does not follow the solver's steps.</param>
    /// <exception cref="ArgumentException">The detail does not fit at one of the thicknesses.</exception>
    /// <exception cref="InvalidOperationException">129 thicknesses did not reach the tolerance: it is finer than the solutions are.</exception>
    /// <remarks>
    /// Every span between two thicknesses is halved until the solution in its middle lies on the curve within the tolerance. That middle then joins the
    /// curve, so the error stated is one that the final curve no longer has where it was checked. Source: OURS.
    /// </remarks>
    public static PsiOverThickness Of(LineDetail detail, DetailPlace place, int layer, double fromM, double toM,
        double toleranceWPerMK = 0.001, double toleranceFactor = 0.005, BridgeCache? cache = null, Accuracy? accuracy = null)
    {
        Guard.InRange(fromM, 1e-6, 1, "m");
        Guard.InRange(toM, fromM + 1e-6, 1, "m");
        Guard.InRange(toleranceWPerMK, 1e-5, 0.1, "W/(m·K)");
        Guard.InRange(toleranceFactor, 1e-4, 0.1, "(factor)");
        BridgeCache kept = cache ?? new();
        Accuracy asked = accuracy ?? new(Accuracy.OnePerCent.FlowFraction / 5, 0.002);
        return Refined(thicknessM => Knot.Of(thicknessM, DetailSolver.Solve(detail, place with { Stack = place.Stack.WithThicknessM(layer, thicknessM) }, kept, asked)),
            fromM, toM, toleranceWPerMK, toleranceFactor);
    }

    private static PsiOverThickness Refined(Func<double, Knot> solve, double fromM, double toM, double psiTolerance, double factorTolerance)
    {
        List<Knot> knots = [.. Enumerable.Range(0, FirstSpans + 1).Select(i => solve(i == FirstSpans ? toM : fromM + i * (toM - fromM) / FirstSpans))];
        List<(double LowM, double HighM)> open = [.. knots.Zip(knots.Skip(1)).Select(pair => (pair.First.ThicknessM, pair.Second.ThicknessM))];
        double psiOff = 0, factorOff = 0;
        while (open.Count > 0)
        {
            if (knots.Count + open.Count > MostSolved) throw new InvalidOperationException($"{MostSolved} thicknesses do not reach the tolerance of {psiTolerance} W/(m·K).");
            PsiOverThickness curve = new(knots, psiOff, factorOff);
            List<(double LowM, double HighM)> next = [];
            foreach ((double low, double high) in open)
            {
                Knot middle = solve((low + high) / 2);
                (double psi, double factor) = curve.Off(middle);
                if (psi <= psiTolerance && factor <= factorTolerance) (psiOff, factorOff) = (Math.Max(psiOff, psi), Math.Max(factorOff, factor));
                else next.AddRange([(low, middle.ThicknessM), (middle.ThicknessM, high)]);
                knots.Add(middle);
            }
            knots.Sort((one, other) => one.ThicknessM.CompareTo(other.ThicknessM));
            open = next;
        }
        return new(knots, psiOff, factorOff);
    }

    /// <summary>ψ at a thickness, W/(m·K).</summary>
    /// <param name="thicknessM">Thickness of the layer, m, from the thinnest to the thickest.</param>
    public double PsiWPerMK(double thicknessM) => _psi.At(Guard.InRange(thicknessM, FromM, ToM, "m"));

    /// <summary>Factor of the coldest inner point with the loss films at a thickness.</summary>
    /// <inheritdoc cref="PsiWPerMK"/>
    public double ColdestFactor(double thicknessM) => _coldest.At(Guard.InRange(thicknessM, FromM, ToM, "m"));

    /// <summary>Factor f_Rsi with the films for mould at a thickness.</summary>
    /// <inheritdoc cref="PsiWPerMK"/>
    public double MouldFactor(double thicknessM) => _mould.At(Guard.InRange(thicknessM, FromM, ToM, "m"));

    private (double Psi, double Factor) Off(Knot solved) => (Math.Abs(_psi.At(solved.ThicknessM) - solved.Psi),
        Math.Max(Math.Abs(_coldest.At(solved.ThicknessM) - solved.Coldest), Math.Abs(_mould.At(solved.ThicknessM) - solved.Mould)));

    private readonly record struct Knot(double ThicknessM, double Psi, double Coldest, double Mould, double PsiError, double FactorError)
    {
        internal static Knot Of(double thicknessM, SolvedLine solved) => new(thicknessM, solved.PsiWPerMK.Value, solved.ColdestFactor, solved.MouldFactor,
            (solved.PsiWPerMK.High - solved.PsiWPerMK.Low) / 2, Math.Max(solved.ColdestErrorFactor, solved.Mould.TemperatureChangeK));
    }
}
