using System.Numerics;

namespace Thermal.Bridges;

/// <summary>Temperatures of the points of a lattice.</summary>
internal static class LatticeSolve
{
    // Relative residual of the iterative solve; its error enters powers squared.
    private const double Residual = 1e-10;

    /// <summary>For each environment but the last at 1 K and all others at 0: the temperature of every point; 0 where there is no piece.</summary>
    internal static double[][] Fields(Lattice lattice)
    {
        double[] diagonal = Diagonal(lattice);
        double[][] fields = [.. Enumerable.Range(0, Math.Max(0, lattice.EnvironmentCount - 1)).Select(e => Sources(lattice, e))];
        if (lattice.Edges[2].Length == 0) Band(lattice, diagonal, fields);
        else
            for (int e = 0; e < fields.Length; e++) fields[e] = Iterate(lattice, diagonal, fields[e]);
        for (int e = 0; e < fields.Length; e++)
            for (int i = 0; i < lattice.Count; i++)
                if (lattice.State[i] != Lattice.Free) fields[e][i] = lattice.State[i] == -2 - e ? 1 : 0;
        return fields;
    }

    private static double[] Diagonal(Lattice lattice)
    {
        double[] diagonal = new double[lattice.Count];
        for (int axis = 0; axis < 3; axis++)
            for (int i = 0; i < lattice.Edges[axis].Length; i++)
            {
                double edge = lattice.Edges[axis][i];
                if (edge == 0) continue;
                diagonal[i] += edge;
                diagonal[i + lattice.Strides[axis]] += edge;
            }
        foreach (Tie tie in lattice.Ties) diagonal[tie.Point] += tie.WPerK;
        return diagonal;
    }

    // What reaches each free point from the environment at 1 K.
    private static double[] Sources(Lattice lattice, int environment)
    {
        double[] sources = new double[lattice.Count];
        foreach (Tie tie in lattice.Ties)
            if (tie.Environment == environment) sources[tie.Point] += tie.WPerK;
        for (int axis = 0; axis < 3; axis++)
            for (int i = 0, stride = lattice.Strides[axis]; i + stride < lattice.Edges[axis].Length; i++)
            {
                if (lattice.State[i] == -2 - environment) sources[i + stride] += lattice.Edges[axis][i];
                if (lattice.State[i + stride] == -2 - environment) sources[i] += lattice.Edges[axis][i];
            }
        for (int i = 0; i < sources.Length; i++) if (lattice.State[i] != Lattice.Free) sources[i] = 0;
        return sources;
    }

    private static double Coupled(Lattice lattice, int axis, int i) =>
        i + lattice.Strides[axis] < lattice.Count && lattice.State[i] == Lattice.Free && lattice.State[i + lattice.Strides[axis]] == Lattice.Free ? lattice.Edges[axis][i] : 0;

    // LDLᵀ within a band as wide as the shorter side, in place.
    private static void Band(Lattice lattice, double[] diagonal, double[][] fields)
    {
        int nx = lattice.Strides[1], ny = lattice.Count / nx, w = Math.Min(nx, ny), n = lattice.Count, row = w + 1;
        int[] point = [.. Enumerable.Range(0, n).Select(at => nx <= ny ? at : at % ny * nx + at / ny)];
        double[] band = new double[n * row];
        for (int at = 0; at < n; at++)
        {
            int i = point[at];
            band[at * row] = lattice.State[i] == Lattice.Free ? diagonal[i] : 1;
            band[at * row + 1] = -Coupled(lattice, nx <= ny ? 0 : 1, i);
            band[at * row + w] -= Coupled(lattice, nx <= ny ? 1 : 0, i);
        }
        for (int k = 0; k < n; k++)
        {
            Span<double> pivot = band.AsSpan(k * row, row);
            for (int i = 1; i <= Math.Min(w, n - 1 - k); i++)
            {
                double l = pivot[i] / pivot[0];
                if (l != 0) Subtract(band.AsSpan((k + i) * row, row - i), pivot[i..], l);
            }
        }
        foreach (double[] field in fields)
        {
            double[] x = [.. point.Select(i => field[i])];
            for (int k = 0; k < n; k++)
                for (int i = 1; i <= Math.Min(w, n - 1 - k); i++) x[k + i] -= band[k * row + i] / band[k * row] * x[k];
            for (int k = n - 1; k >= 0; k--)
            {
                for (int i = 1; i <= Math.Min(w, n - 1 - k); i++) x[k] -= band[k * row + i] * x[k + i];
                x[k] /= band[k * row];
            }
            for (int at = 0; at < n; at++) field[point[at]] = x[at];
        }
    }

    private static void Subtract(Span<double> from, Span<double> what, double factor)
    {
        int i = 0;
        for (; i <= from.Length - Vector<double>.Count; i += Vector<double>.Count)
            (new Vector<double>(from[i..]) - factor * new Vector<double>(what[i..])).CopyTo(from[i..]);
        for (; i < from.Length; i++) from[i] -= factor * what[i];
    }

    private static double[] Iterate(Lattice lattice, double[] diagonal, double[] sources)
    {
        int n = lattice.Count;
        double[] x = new double[n], r = sources, p = new double[n], q = new double[n];
        double first = 0, old = 0;
        for (int step = 0; step < 20 * n + 100; step++)
        {
            double rz = 0;
            for (int i = 0; i < n; i++) if (r[i] != 0) rz += r[i] * r[i] / diagonal[i];
            if (step == 0) first = rz;
            if (!(rz > Residual * Residual * first)) break;
            for (int i = 0; i < n; i++) p[i] = (r[i] != 0 ? r[i] / diagonal[i] : 0) + (step == 0 ? 0 : rz / old * p[i]);
            old = rz;
            for (int i = 0; i < n; i++) q[i] = diagonal[i] * p[i];
            for (int axis = 0; axis < 3; axis++)
                for (int i = 0, stride = lattice.Strides[axis]; i + stride < n; i++)
                {
                    double edge = lattice.Edges[axis][i];
                    q[i] -= edge * p[i + stride];
                    q[i + stride] -= edge * p[i];
                }
            double pq = 0;
            for (int i = 0; i < n; i++) if (lattice.State[i] == Lattice.Free) pq += p[i] * q[i];
            double alpha = rz / pq;
            for (int i = 0; i < n; i++) if (lattice.State[i] == Lattice.Free) (x[i], r[i]) = (x[i] + alpha * p[i], r[i] - alpha * q[i]);
        }
        return x;
    }
}
