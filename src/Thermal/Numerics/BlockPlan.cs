using System.Runtime.InteropServices;

namespace Thermal.Numerics;

/// <summary>
/// Where the factor of a sparse matrix has entries, by blocks of columns that share their rows: each block is a dense panel, its own columns first and then
/// the rows below. Depends on the pattern and the order, not on the values.
/// </summary>
/// <remarks>The rows of a block are those of its own columns and those its children leave over; its parent is the block of its first row (elimination tree of blocks).</remarks>
internal sealed class BlockPlan
{
    private readonly int[] _position, _blockOf, _rowStart, _panelStart, _target;
    private readonly List<int> _rows = [];

    /// <summary>Plans the factor.</summary>
    /// <param name="matrix">Its pattern counts; the values do not.</param>
    /// <param name="dissection">The order.</param>
    /// <exception cref="ArgumentException">Matrix and order differ in size.</exception>
    internal BlockPlan(SparseSymmetric matrix, NestedDissection dissection)
    {
        int n = matrix.Count, blocks = dissection.BlockStart.Count - 1;
        if (dissection.Order.Length != n) throw new ArgumentException($"An order of {dissection.Order.Length} does not fit a matrix of {n}.", nameof(dissection));
        BlockStart = [.. dissection.BlockStart];
        (_position, _blockOf) = (new int[n], new int[n]);
        (_rowStart, _panelStart, _target) = (new int[blocks + 1], new int[blocks + 1], new int[matrix.Row.Length + n]);
        for (int k = 0; k < n; k++) _position[dissection.Order[k]] = k;
        for (int block = 0; block < blocks; block++) _blockOf.AsSpan(BlockStart[block]..BlockStart[block + 1]).Fill(block);
        FindRows(matrix);
        FindTargets(matrix);
    }

    internal int[] BlockStart { get; }
    internal int BlockCount => BlockStart.Length - 1;
    /// <summary>Place of each node in the order.</summary>
    internal ReadOnlySpan<int> Position => _position;
    internal ReadOnlySpan<int> BlockOf => _blockOf;
    /// <summary>First value of each panel, and the number of all; a panel is stored by columns of its whole height.</summary>
    internal ReadOnlySpan<int> PanelStart => _panelStart;
    /// <summary>Where each entry of the matrix goes: first the n of the diagonal, then those below.</summary>
    internal ReadOnlySpan<int> Target => _target;
    /// <summary>Most rows below any block.</summary>
    internal int MostRows { get; private set; }

    internal int Width(int block) => BlockStart[block + 1] - BlockStart[block];

    /// <summary>Rows below a block, ascending.</summary>
    internal ReadOnlySpan<int> Rows(int block) => CollectionsMarshal.AsSpan(_rows)[_rowStart[block].._rowStart[block + 1]];

    /// <summary>Places of rows in the panel of a block that holds them all; ascending, of equal number.</summary>
    internal void Locate(ReadOnlySpan<int> rows, int block, Span<int> place)
    {
        ReadOnlySpan<int> below = Rows(block);
        int start = BlockStart[block], end = BlockStart[block + 1], width = end - start;
        for (int i = 0, at = 0; i < rows.Length; i++)
        {
            if (rows[i] < end) place[i] = rows[i] - start;
            else
            {
                while (below[at] != rows[i]) at++;
                place[i] = width + at;
            }
        }
    }

    private void FindRows(SparseSymmetric matrix)
    {
        int[] seen = new int[matrix.Count], firstChild = new int[BlockCount], nextChild = new int[BlockCount], firstEntry = new int[BlockCount];
        int[] nextEntry = new int[matrix.Row.Length], farEnd = new int[matrix.Row.Length];
        Array.Fill(seen, -1);
        Array.Fill(firstChild, -1);
        Array.Fill(firstEntry, -1);
        GroupEntries(matrix, firstEntry, nextEntry, farEnd);
        long size = 0;
        for (int block = 0; block < BlockCount; block++)
        {
            int end = BlockStart[block + 1];
            for (int at = firstEntry[block]; at >= 0; at = nextEntry[at]) AddRow(farEnd[at], block, seen);
            for (int child = firstChild[block]; child >= 0; child = nextChild[child])
                for (int at = _rowStart[child]; at < _rowStart[child + 1]; at++)
                    if (_rows[at] >= end) AddRow(_rows[at], block, seen);
            Span<int> rows = CollectionsMarshal.AsSpan(_rows)[_rowStart[block]..];
            rows.Sort();
            _rowStart[block + 1] = _rows.Count;
            if (rows.Length > 0)
            {
                int parent = _blockOf[rows[0]];
                (nextChild[block], firstChild[parent]) = (firstChild[parent], block);
            }
            MostRows = Math.Max(MostRows, rows.Length);
            size += (long)Width(block) * (Width(block) + rows.Length);
            if (size > Array.MaxLength / 2) throw new InvalidOperationException($"The factor of {matrix.Count} unknowns does not fit into memory; iterate instead.");
            _panelStart[block + 1] = (int)size;
        }
    }

    private void GroupEntries(SparseSymmetric matrix, int[] first, int[] next, int[] farEnd)
    {
        for (int column = 0; column < matrix.Count; column++)
            for (int at = matrix.Start[column]; at < matrix.Start[column + 1]; at++)
            {
                int one = _position[column], other = _position[matrix.Row[at]], block = _blockOf[Math.Min(one, other)];
                farEnd[at] = Math.Max(one, other);
                if (_blockOf[farEnd[at]] == block) continue;
                (next[at], first[block]) = (first[block], at);
            }
    }

    private void AddRow(int row, int block, int[] seen)
    {
        if (seen[row] == block) return;
        seen[row] = block;
        _rows.Add(row);
    }

    private void FindTargets(SparseSymmetric matrix)
    {
        int n = matrix.Count;
        for (int column = 0; column < n; column++)
        {
            _target[column] = PlaceOf(_position[column], _position[column]);
            for (int at = matrix.Start[column]; at < matrix.Start[column + 1]; at++)
            {
                int one = _position[column], other = _position[matrix.Row[at]];
                _target[n + at] = PlaceOf(Math.Max(one, other), Math.Min(one, other));
            }
        }
    }

    private int PlaceOf(int row, int column)
    {
        int block = _blockOf[column], start = BlockStart[block], width = Width(block);
        ReadOnlySpan<int> rows = Rows(block);
        int within = row < BlockStart[block + 1] ? row - start : width + rows.BinarySearch(row);
        return _panelStart[block] + (column - start) * (width + rows.Length) + within;
    }
}
