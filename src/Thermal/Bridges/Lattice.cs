namespace Thermal.Bridges;

/// <summary>A lattice of points with conductances to their neighbours and to environments, as either scheme makes it.</summary>
internal sealed class Lattice
{
    /// <summary>A point to be found, and one where there is no piece; -2 - e is a point held by environment e.</summary>
    internal const int Free = 0, Empty = -1;

    internal Lattice(int nx, int ny, int nz, int environmentCount)
    {
        int n = nx * ny * nz;
        EnvironmentCount = environmentCount;
        Strides = [1, nx, nx * ny];
        Edges = [new double[n], new double[n], nz > 1 ? new double[n] : []];
        State = new int[n];
        Array.Fill(State, Empty);
    }

    internal int EnvironmentCount { get; }
    internal int Count => State.Length;
    /// <summary>Distance of neighbours in the arrays, by axis.</summary>
    internal int[] Strides { get; }
    /// <summary>Conductance of every point to its next neighbour along each axis, W/K; 0 where there is none.</summary>
    internal double[][] Edges { get; }
    internal int[] State { get; }
    /// <summary>Conductances to environments.</summary>
    internal List<Tie> Ties { get; } = [];

    /// <summary>
    /// Power matrix G, n × n by rows: temperatures T of the environments dissipate Tᵀ·G·T, W/K. As a product of fields it is symmetric to the bit,
    /// and an error of the fields enters squared.
    /// </summary>
    /// <param name="fieldsK">Temperatures of all points for each environment but the last at 1 K and all others at 0.</param>
    internal double[] PowerWPerK(double[][] fieldsK)
    {
        double[] power = new double[EnvironmentCount * EnvironmentCount];
        for (int e = 0; e < EnvironmentCount - 1; e++)
            for (int f = 0; f <= e; f++) power[e * EnvironmentCount + f] = power[f * EnvironmentCount + e] = Product(fieldsK[e], fieldsK[f], e, f);
        return WithLast(power, EnvironmentCount);
    }

    /// <summary>Fills the last row and column so that all temperatures equal mean no power.</summary>
    internal static double[] WithLast(double[] power, int n)
    {
        for (int e = 0; e < n - 1; e++)
        {
            double sum = 0;
            for (int f = 0; f < n - 1; f++) sum += power[e * n + f];
            power[e * n + n - 1] = power[(n - 1) * n + e] = -sum;
            power[n * n - 1] += sum;
        }
        return power;
    }

    private double Product(double[] one, double[] other, int e, int f)
    {
        double sum = 0;
        for (int axis = 0; axis < 3; axis++)
        {
            double[] edges = Edges[axis];
            int stride = Strides[axis];
            for (int i = 0; i + stride < edges.Length; i++) sum += edges[i] * (one[i + stride] - one[i]) * (other[i + stride] - other[i]);
        }
        foreach (Tie tie in Ties) sum += tie.WPerK * (one[tie.Point] - (tie.Environment == e ? 1 : 0)) * (other[tie.Point] - (tie.Environment == f ? 1 : 0));
        return sum;
    }
}

/// <summary>A conductance from a point of a lattice to an environment, W/K, across the face it stands for.</summary>
internal readonly record struct Tie(int Point, int Environment, double WPerK, int Axis);
