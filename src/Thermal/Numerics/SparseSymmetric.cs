namespace Thermal.Numerics;

/// <summary>
/// A sparse symmetric matrix by columns of its lower triangle: the diagonal, and below it the rows and values of each column, in the order they were given.
/// Filled again and again; it takes new memory only when it grows.
/// </summary>
internal sealed class SparseSymmetric
{
    private double[] _diagonal = [], _value = [];
    private int[] _start = [0, 0], _row = [];

    internal int Count { get; private set; }
    internal ReadOnlySpan<double> Diagonal => _diagonal.AsSpan(0, Count);
    /// <summary>First entry of each column, and the number of all; n + 1.</summary>
    internal ReadOnlySpan<int> Start => _start.AsSpan(0, Count + 1);
    internal ReadOnlySpan<int> Row => _row.AsSpan(0, _start[Count]);
    internal ReadOnlySpan<double> Value => _value.AsSpan(0, _start[Count]);

    /// <summary>
    /// The matrix of a network: the diagonal holds each node's own conductance plus those of its edges, off the diagonal stands −conductance.
    /// An edge given twice counts twice.
    /// </summary>
    /// <param name="own">Conductance of each node to what is known; length n, the number of nodes.</param>
    /// <param name="from">One end of each edge, 0 to n − 1.</param>
    /// <param name="to">The other end, not the same node.</param>
    /// <param name="conductance">Of each edge.</param>
    internal void Assemble(ReadOnlySpan<double> own, ReadOnlySpan<int> from, ReadOnlySpan<int> to, ReadOnlySpan<double> conductance)
    {
        int n = Count = own.Length, edges = conductance.Length;
        if (_diagonal.Length < n) (_diagonal, _start) = (new double[n], new int[n + 2]);
        if (_value.Length < edges) (_value, _row) = (new double[edges], new int[edges]);
        own.CopyTo(_diagonal);
        // Counted two places on, so that filling moves each start to its place.
        Span<int> next = _start.AsSpan(0, n + 2);
        next.Clear();
        for (int i = 0; i < edges; i++) next[Math.Min(from[i], to[i]) + 2]++;
        for (int i = 2; i < n + 2; i++) next[i] += next[i - 1];
        for (int i = 0; i < edges; i++)
        {
            double value = conductance[i];
            int one = Math.Min(from[i], to[i]), other = Math.Max(from[i], to[i]), at = next[one + 1]++;
            (_row[at], _value[at]) = (other, -value);
            _diagonal[one] += value;
            _diagonal[other] += value;
        }
    }

    /// <summary>Adds A·x to y.</summary>
    internal void MultiplyAdd(ReadOnlySpan<double> x, Span<double> y)
    {
        for (int column = 0; column < Count; column++)
        {
            double sum = _diagonal[column] * x[column], own = x[column];
            for (int at = _start[column]; at < _start[column + 1]; at++)
            {
                sum += _value[at] * x[_row[at]];
                y[_row[at]] += _value[at] * own;
            }
            y[column] += sum;
        }
    }
}
