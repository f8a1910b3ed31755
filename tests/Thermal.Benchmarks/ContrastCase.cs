using Thermal.Numerics;

namespace Thermal.Benchmarks;

/// <summary>
/// A square wall cut into n × n cells: board inside, steel skin outside, foam between, and a steel post from board to skin. Films on both sides, nothing through
/// the cuts. Conductivities 50, 0.035 and 0.13 W/(m·K). Five points a cell.
/// </summary>
internal sealed class ContrastCase
{
    private const double SizeM = 0.1, InnerFilmWPerM2K = 1 / 0.13, OuterFilmWPerM2K = 1 / 0.04;
    private readonly int _count;
    private readonly double[] _own;
    private readonly int[] _node, _from, _to;
    private readonly double[] _edges;

    internal ContrastCase(int count)
    {
        _count = count;
        _node = [.. Enumerable.Range(0, count * count)];
        (_own, Rhs) = (new double[count * count], new double[count * count]);
        List<int> from = [], to = [];
        List<double> edges = [];
        for (int j = 0; j < count; j++)
            for (int i = 0; i < count; i++)
            {
                if (i + 1 < count) Add(i, j, i + 1, j);
                if (j + 1 < count) Add(i, j, i, j + 1);
            }
        for (int i = 0; i < count; i++)
        {
            double width = SizeM / count;
            Rhs[i] = _own[i] = width / (1 / InnerFilmWPerM2K + width / 2 / Conductivity(i, 0));
            _own[i + count * (count - 1)] = width / (1 / OuterFilmWPerM2K + width / 2 / Conductivity(i, count - 1));
        }
        (_from, _to, _edges) = ([.. from], [.. to], [.. edges]);

        void Add(int i, int j, int nextI, int nextJ)
        {
            from.Add(i + count * j);
            to.Add(nextI + count * nextJ);
            edges.Add(2 / (1 / Conductivity(i, j) + 1 / Conductivity(nextI, nextJ)));
        }
    }

    /// <summary>Heat from inside at 1 K, outside at 0 K.</summary>
    internal double[] Rhs { get; }

    private double Conductivity(int i, int j)
    {
        double x = (i + 0.5) / _count, y = (j + 0.5) / _count;
        if (y < 0.1) return 0.13;
        return y > 0.98 || x is > 0.49 and < 0.51 ? 50 : 0.035;
    }

    internal SparseSymmetric Assemble()
    {
        SparseSymmetric matrix = new();
        matrix.Assemble(_own, _from, _to, _edges);
        return matrix;
    }

    internal NestedDissection Order() => NestedDissection.Of(_count, _count, 1, _node, _node.Length);

    /// <summary>Assembles, orders, plans, factors and solves.</summary>
    internal double[] Solve()
    {
        SparseSymmetric matrix = Assemble();
        SparseCholesky factor = new(new BlockPlan(matrix, Order()));
        factor.Factor(matrix);
        double[] x = [.. Rhs];
        factor.Solve(x);
        return x;
    }

    internal double[] Iterate()
    {
        ConjugateGradients iteration = new(Assemble());
        double[] x = new double[Rhs.Length];
        iteration.Solve(Rhs, x, new double[iteration.ScratchLength], 1e-10, 5000);
        return x;
    }
}
