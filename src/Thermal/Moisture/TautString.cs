namespace Thermal.Moisture;

/// <summary>The vapour flow into the inside face and out of the outside face, kg/(m²·s); positive from inside to outside.</summary>
internal readonly record struct VapourFlows(double InKgPerM2S, double OutKgPerM2S);

/// <summary>The steady vapour pressure in a build-up whose planes can hold no more than saturation: a string pulled tight under the ceilings.</summary>
/// <remarks>
/// Nodes 0 to m stand at growing s_d; 0 is the inside and m the outside. At a dry node that stays dry what comes equals what goes;
/// a node at its ceiling takes what settles; a pinned node (it still holds water) is at its ceiling whatever flows.
/// Without sources the answer is the lower convex hull between pinned nodes. Sources are taken out first by subtracting
/// u, with u″ = −source/δ0, u = 0 and u′ = 0 at the inside: q = p − u is again the lower convex hull of the ceilings less u.
/// Every slope is a difference over the s_d it stands for, so a skin of thousands of metres costs no digits.
/// </remarks>
internal static class TautString
{
    /// <summary>Fills pressures, Pa, and what settles (positive) or leaves (negative) at each node, kg/(m²·s).</summary>
    /// <param name="spacingsM">s_d between neighbouring nodes, m, each above zero; length m.</param>
    /// <param name="ceilingsPa">Saturation at the nodes; at both ends the pressure of the air; length m + 1.</param>
    /// <param name="heldKgPerM2">Water at the nodes: above zero pins; length m + 1, or empty where all are dry.</param>
    /// <param name="sourcesKgPerM2S">Water brought to the nodes by air; length m + 1, or empty. Ends are not read.</param>
    /// <param name="permeabilityKgPerMSPa">δ0.</param>
    /// <param name="pressuresPa">Result, length m + 1.</param>
    /// <param name="ratesKgPerM2S">Result, length m + 1, zero at both ends.</param>
    internal static VapourFlows Solve(
        ReadOnlySpan<double> spacingsM, ReadOnlySpan<double> ceilingsPa, ReadOnlySpan<double> heldKgPerM2,
        ReadOnlySpan<double> sourcesKgPerM2S, double permeabilityKgPerMSPa, Span<double> pressuresPa, Span<double> ratesKgPerM2S)
    {
        int last = spacingsM.Length;
        Span<double> shifts = stackalloc double[last + 1];
        double sourceKgPerM2S = Shifts(spacingsM, sourcesKgPerM2S, permeabilityKgPerMSPa, shifts);

        Span<int> hull = stackalloc int[last + 1];
        Span<double> gapsM = stackalloc double[last + 1];
        Span<double> slopes = stackalloc double[last + 1];
        int top = 0;
        for (int node = 1; node <= last; node++)
        {
            double heightPa = ceilingsPa[node] - shifts[node], gapM = spacingsM[node - 1];
            double slope = (heightPa - ceilingsPa[hull[top]] + shifts[hull[top]]) / gapM;
            while (top > 0 && slopes[top] >= slope && !(heldKgPerM2.Length > 0 && heldKgPerM2[hull[top]] > 0))
            {
                gapM += gapsM[top--];
                slope = (heightPa - ceilingsPa[hull[top]] + shifts[hull[top]]) / gapM;
            }
            hull[++top] = node;
            gapsM[top] = gapM;
            slopes[top] = slope;
        }

        ratesKgPerM2S.Clear();
        for (int i = 1; i < top; i++) ratesKgPerM2S[hull[i]] = permeabilityKgPerMSPa * (slopes[i + 1] - slopes[i]);
        pressuresPa[0] = ceilingsPa[0];
        for (int i = 1; i <= top; i++)
        {
            double alongM = 0;
            for (int node = hull[i - 1] + 1; node < hull[i]; node++)
            {
                alongM += spacingsM[node - 1];
                pressuresPa[node] = ceilingsPa[hull[i - 1]] - shifts[hull[i - 1]] + slopes[i] * alongM + shifts[node];
            }
            pressuresPa[hull[i]] = ceilingsPa[hull[i]];
        }
        return new(-permeabilityKgPerMSPa * slopes[1], sourceKgPerM2S - permeabilityKgPerMSPa * slopes[top]);
    }

    /// <summary>Fills u at the nodes and returns the sum of the sources.</summary>
    private static double Shifts(ReadOnlySpan<double> spacingsM, ReadOnlySpan<double> sourcesKgPerM2S, double permeabilityKgPerMSPa, Span<double> shifts)
    {
        shifts.Clear();
        double sum = 0;
        for (int node = 1; node < sourcesKgPerM2S.Length; node++)
        {
            shifts[node] = shifts[node - 1] - sum / permeabilityKgPerMSPa * spacingsM[node - 1];
            if (node < sourcesKgPerM2S.Length - 1) sum += sourcesKgPerM2S[node];
        }
        return sum;
    }
}
