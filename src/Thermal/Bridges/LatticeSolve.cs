using System.Buffers;
using Thermal.Numerics;

namespace Thermal.Bridges;

/// <summary>Temperatures of the points of a lattice: directly in two directions, by iteration in three, where a factor would not fit into memory.</summary>
internal sealed class LatticeSolve
{
    // Chosen by us: the error of a field enters powers squared, so this leaves bounds exact to rounding and temperatures to far below any accuracy asked for.
    private const double Residual = 1e-10;
    private const int MostIterations = 20_000;

    private readonly Lattice _lattice;
    private readonly int[] _node;
    private readonly double[] _own;
    private readonly SparseSymmetric _matrix = new();

    private LatticeSolve(Lattice lattice)
    {
        _lattice = lattice;
        _node = new int[lattice.Count];
        int count = 0;
        for (int i = 0; i < _node.Length; i++) _node[i] = lattice.State[i] == Lattice.Free ? count++ : -1;
        _own = new double[count];
        foreach (Tie tie in lattice.Ties)
            if (_node[tie.Point] >= 0) _own[_node[tie.Point]] += tie.WPerK;
        Assemble();
    }

    /// <summary>For each environment but the last at 1 K and all others at 0: the temperature of every point; 0 where there is no piece.</summary>
    internal static double[][] Fields(Lattice lattice)
    {
        LatticeSolve solve = new(lattice);
        double[][] nodes = [.. Enumerable.Range(0, Math.Max(0, lattice.EnvironmentCount - 1)).Select(solve.Sources)];
        if (solve._own.Length > 0 && nodes.Length > 0)
        {
            if (lattice.Edges[2].Length == 0) solve.Factor(nodes);
            else solve.Iterate(nodes);
        }
        return [.. nodes.Select(solve.AtPoints)];
    }

    private void Assemble()
    {
        int most = 3 * _lattice.Count, count = 0;
        int[] from = new int[most], to = new int[most];
        double[] conductances = new double[most];
        for (int axis = 0; axis < 3; axis++)
        {
            double[] edges = _lattice.Edges[axis];
            for (int i = 0, stride = _lattice.Strides[axis]; i + stride < edges.Length; i++)
            {
                int one = _node[i], other = _node[i + stride];
                if (edges[i] == 0) continue;
                if (one >= 0 && other >= 0) (from[count], to[count], conductances[count++]) = (one, other, edges[i]);
                else if (one >= 0) _own[one] += edges[i];
                else if (other >= 0) _own[other] += edges[i];
            }
        }
        _matrix.Assemble(_own, from.AsSpan(0, count), to.AsSpan(0, count), conductances.AsSpan(0, count));
    }

    // What reaches each node from the environment at 1 K.
    private double[] Sources(int environment)
    {
        double[] sources = new double[_own.Length];
        foreach (Tie tie in _lattice.Ties)
            if (tie.Environment == environment && _node[tie.Point] >= 0) sources[_node[tie.Point]] += tie.WPerK;
        for (int axis = 0; axis < 3; axis++)
        {
            double[] edges = _lattice.Edges[axis];
            for (int i = 0, stride = _lattice.Strides[axis]; i + stride < edges.Length; i++)
            {
                if (_lattice.State[i] == -2 - environment && _node[i + stride] >= 0) sources[_node[i + stride]] += edges[i];
                if (_lattice.State[i + stride] == -2 - environment && _node[i] >= 0) sources[_node[i]] += edges[i];
            }
        }
        return sources;
    }

    private void Factor(double[][] nodes)
    {
        int nx = _lattice.Strides[1];
        BlockPlan plan = new(_matrix, NestedDissection.Of(nx, _lattice.Count / nx, 1, _node, _own.Length));
        // A factor of some hundred cells is a large object already: lent memory spares a whole collection for every few sections.
        double[] memory = ArrayPool<double>.Shared.Rent(SparseCholesky.MemoryLength(plan));
        try
        {
            SparseCholesky factor = new(plan, memory);
            factor.Factor(_matrix);
            foreach (double[] rhs in nodes) factor.Solve(rhs);
        }
        finally
        {
            ArrayPool<double>.Shared.Return(memory);
        }
    }

    private void Iterate(double[][] nodes)
    {
        ConjugateGradients gradients = new(_matrix);
        double[] scratch = new double[gradients.ScratchLength], found = new double[_own.Length];
        foreach (double[] rhs in nodes)
        {
            Array.Clear(found);
            gradients.Solve(rhs, found, scratch, Residual, MostIterations);
            found.CopyTo(rhs, 0);
        }
    }

    private double[] AtPoints(double[] nodes, int environment)
    {
        double[] field = new double[_node.Length];
        for (int i = 0; i < field.Length; i++) field[i] = _node[i] >= 0 ? nodes[_node[i]] : _lattice.State[i] == -2 - environment ? 1 : 0;
        return field;
    }
}
