namespace Thermal.Tests.Property;

/// <summary>
/// A second, unrelated way to the monthly account: one complementarity problem a month, solved by trying every set of dry planes.
/// </summary>
/// <remarks>
/// With x = saturation − mean pressure of the month and M = water at its end: M = M₀ + h·(g + source + A·x), x ≥ 0, M ≥ 0, x·M = 0, where g is
/// what settles with every plane at saturation and A the matrix of the vapour conductances. A plane that is wet at the month's end was at
/// saturation throughout, one that is dry then had a lower mean, so one step a month is exact. A is an M-matrix: exactly one set fits.
/// </remarks>
internal static class ComplementarityMonth
{
    /// <summary>Water at the end of one month, and what diffused in and out, kg/m². All spacings above zero; the ends of the ceilings are the air.</summary>
    internal static (double[] Held, double In, double Out) Run(
        double[] spacingsM, double[] ceilingsPa, double[] sourcesKgPerM2S, double[] heldKgPerM2, double permeability, double lengthS)
    {
        int n = spacingsM.Length - 1;
        double[] g = [.. spacingsM.Select(s => permeability / s)];
        double[] allWet = new double[n];
        for (int j = 0; j < n; j++)
        {
            double arrives = g[j] * (ceilingsPa[j] - ceilingsPa[j + 1]), leaves = g[j + 1] * (ceilingsPa[j + 1] - ceilingsPa[j + 2]);
            allWet[j] = heldKgPerM2[j + 1] / lengthS + arrives - leaves + sourcesKgPerM2S[j + 1];
        }
        for (int set = 0; set < 1 << n; set++)
        {
            double[] below = Below(set, n, g, allWet);
            double[] water = [.. Enumerable.Range(0, n).Select(j => (set >> j & 1) == 1
                ? 0
                : allWet[j] + (g[j] + g[j + 1]) * below[j] - (j > 0 ? g[j] * below[j - 1] : 0) - (j < n - 1 ? g[j + 1] * below[j + 1] : 0))];
            if (below.Any(x => x < -1e-8) || water.Any(w => w < -1e-8 * g.Max())) continue;
            double first = n > 0 ? ceilingsPa[1] - below[0] : ceilingsPa[1], last = n > 0 ? ceilingsPa[n] - below[n - 1] : ceilingsPa[0];
            return ([0, .. water.Select(w => w * lengthS), 0], g[0] * (ceilingsPa[0] - first) * lengthS, g[n] * (last - ceilingsPa[n + 1]) * lengthS);
        }
        throw new InvalidOperationException("No set of dry planes fits.");
    }

    /// <summary>How far the dry planes of a set lie below saturation, so that none of them holds water.</summary>
    private static double[] Below(int set, int n, double[] g, double[] allWet)
    {
        int[] dry = [.. Enumerable.Range(0, n).Where(j => (set >> j & 1) == 1)];
        double[][] rows = [.. dry.Select(r => (double[])[.. dry.Select(c => r == c ? g[r] + g[r + 1] : Math.Abs(r - c) == 1 ? -g[Math.Max(r, c)] : 0), -allWet[r]])];
        double[] below = new double[n], solved = Gauss(rows);
        for (int r = 0; r < dry.Length; r++) below[dry[r]] = solved[r];
        return below;
    }

    private static double[] Gauss(double[][] rows)
    {
        for (int k = 0; k < rows.Length; k++)
        {
            int pivot = k;
            for (int r = k + 1; r < rows.Length; r++) if (Math.Abs(rows[r][k]) > Math.Abs(rows[pivot][k])) pivot = r;
            (rows[k], rows[pivot]) = (rows[pivot], rows[k]);
            for (int r = 0; r < rows.Length; r++)
            {
                double w = r == k ? 0 : rows[r][k] / rows[k][k];
                for (int c = k; c <= rows.Length; c++) rows[r][c] -= w * rows[k][c];
            }
        }
        return [.. rows.Select((row, k) => row[^1] / row[k])];
    }
}
