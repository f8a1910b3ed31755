using MathNet.Numerics.LinearAlgebra;
using Thermal.Numerics;

namespace Thermal.Tests;

/// <summary>A network of conductances on a rectangular grid, some of whose points may be missing; nodes are numbered along x, then y, then z.</summary>
internal sealed class GridNetwork
{
    /// <param name="conductance">Of the edge from a point of the grid to its next neighbour along an axis (0, 1, 2).</param>
    /// <param name="own">Of a point to what is known.</param>
    /// <param name="present">Whether a point is a node.</param>
    internal GridNetwork(int countX, int countY, int countZ, Func<int, int, double> conductance, Func<int, double> own, Func<int, bool>? present = null)
    {
        (CountX, CountY, CountZ) = (countX, countY, countZ);
        int points = countX * countY * countZ, count = 0;
        Node = [.. Enumerable.Range(0, points).Select(point => present?.Invoke(point) != false ? count++ : -1)];
        Own = [.. Enumerable.Range(0, points).Where(point => Node[point] >= 0).Select(own)];
        List<int> from = [], to = [];
        List<double> edges = [];
        (int Step, int Count)[] axes = [(1, countX), (countX, countY), (countX * countY, countZ)];
        for (int point = 0; point < points; point++)
            for (int axis = 0; axis < 3; axis++)
            {
                int next = point + axes[axis].Step;
                if (point / axes[axis].Step % axes[axis].Count == axes[axis].Count - 1 || Node[point] < 0 || Node[next] < 0) continue;
                from.Add(Node[point]);
                to.Add(Node[next]);
                edges.Add(conductance(point, axis));
            }
        (From, To, Edges) = ([.. from], [.. to], [.. edges]);
        Matrix.Assemble(Own, From, To, Edges);
    }

    internal int CountX { get; }
    internal int CountY { get; }
    internal int CountZ { get; }
    internal int[] Node { get; }
    internal double[] Own { get; }
    internal int[] From { get; }
    internal int[] To { get; }
    internal double[] Edges { get; }
    internal SparseSymmetric Matrix { get; } = new();

    internal NestedDissection Dissection => NestedDissection.Of(CountX, CountY, CountZ, Node, Own.Length);

    internal SparseCholesky Factored()
    {
        SparseCholesky factor = new(new BlockPlan(Matrix, Dissection));
        factor.Factor(Matrix);
        return factor;
    }

    /// <summary>The same matrix in full, put together from the edges and not from <see cref="Matrix"/>.</summary>
    internal Matrix<double> Dense()
    {
        Matrix<double> dense = Matrix<double>.Build.DenseOfDiagonalArray(Own);
        for (int i = 0; i < Edges.Length; i++)
        {
            dense[From[i], From[i]] += Edges[i];
            dense[To[i], To[i]] += Edges[i];
            dense[From[i], To[i]] -= Edges[i];
            dense[To[i], From[i]] -= Edges[i];
        }
        return dense;
    }
}
