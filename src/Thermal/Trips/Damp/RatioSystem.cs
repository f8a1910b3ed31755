using Thermal.Numerics;

namespace Thermal.Trips.Damp;

/// <summary>Humidity ratios of the rooms in one stage: linear exchange, and places that give no more water than they hold.</summary>
/// <remarks>
/// What settles at a place is max(K·(w − w_sat), −all there is): piecewise linear, growing and convex in w, beside a matrix whose off-diagonal
/// terms are never positive and whose rows keep a surplus. Newton's rounds then lie above the solution from the first on and fall: a place that
/// has left the exchange stays out, so it ends after finitely many rounds at the exact solution.
/// </remarks>
internal sealed class RatioSystem(int roomCount)
{
    private readonly double[] matrix = new double[roomCount * roomCount], source = new double[roomCount], work = new double[roomCount * roomCount];

    internal void Clear()
    {
        Array.Clear(matrix);
        Array.Clear(source);
    }

    /// <summary>Exchange of a room with air of a given humidity ratio, kg/s.</summary>
    internal void Exchange(int room, double kgPerS, double ratioKgPerKg)
    {
        matrix[room * roomCount + room] += kgPerS;
        source[room] += kgPerS * ratioKgPerKg;
    }

    /// <summary>Exchange between two rooms, kg/s.</summary>
    internal void Couple(int a, int b, double kgPerS)
    {
        matrix[a * roomCount + a] += kgPerS;
        matrix[b * roomCount + b] += kgPerS;
        matrix[a * roomCount + b] -= kgPerS;
        matrix[b * roomCount + a] -= kgPerS;
    }

    /// <summary>Vapour given to a room, kg/s.</summary>
    internal void Give(int room, double kgPerS) => source[room] += kgPerS;

    /// <summary>Solves for the humidity ratios and what settles at each place.</summary>
    internal void Solve(WetPlaces places, Span<double> ratiosKgPerKg)
    {
        bool changed = true;
        for (int round = 0; changed; round++)
        {
            Linear(places, ratiosKgPerKg);
            changed = false;
            for (int i = 0; i < places.Count; i++)
            {
                bool follows = places.CarryKgPerS[i] * (ratiosKgPerKg[places.Room[i]] - places.SaturatedKgPerKg[i]) > -places.DriesAtMostKgPerS[i];
                // Only the first round may bring places back: later ones fall, and a tie must not swing by rounding.
                if (follows == places.Follows[i] || follows && round > 0) continue;
                places.Follows[i] = follows;
                changed = true;
            }
        }
        for (int i = 0; i < places.Count; i++)
            places.RateKgPerS[i] = places.Follows[i] ? places.CarryKgPerS[i] * (ratiosKgPerKg[places.Room[i]] - places.SaturatedKgPerKg[i]) : -places.DriesAtMostKgPerS[i];
    }

    private void Linear(WetPlaces places, Span<double> ratiosKgPerKg)
    {
        matrix.CopyTo(work, 0);
        source.CopyTo(ratiosKgPerKg);
        for (int i = 0; i < places.Count; i++)
        {
            int room = places.Room[i];
            if (places.Follows[i])
            {
                work[room * roomCount + room] += places.CarryKgPerS[i];
                ratiosKgPerKg[room] += places.CarryKgPerS[i] * places.SaturatedKgPerKg[i];
            }
            else ratiosKgPerKg[room] += places.DriesAtMostKgPerS[i];
        }
        DenseSolve.Solve(work, ratiosKgPerKg);
    }
}
