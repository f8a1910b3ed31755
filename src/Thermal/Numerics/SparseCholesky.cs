namespace Thermal.Numerics;

/// <summary>
/// Factor L·Lᵀ of a sparse symmetric positive definite matrix by blocks of columns, and solutions with it. Whoever makes it owns it; new values of the same
/// pattern are factored in the same memory. Not for several threads at once.
/// </summary>
internal sealed class SparseCholesky
{
    // Chosen by us: a pivot this much smaller than its diagonal entry has lost all but its last few digits.
    private const double SmallestPivotRatio = 1e-13;

    private readonly BlockPlan _plan;
    private readonly double[] _values, _product, _vector, _below;
    private readonly int[] _place;

    /// <param name="plan">Pattern and order.</param>
    /// <param name="memory">Memory for the factor, <see cref="MemoryLength"/> or more and whatever in it; null takes its own.</param>
    internal SparseCholesky(BlockPlan plan, double[]? memory = null)
    {
        _plan = plan;
        _values = memory ?? GC.AllocateUninitializedArray<double>(MemoryLength(plan));
        int highest = 0;
        for (int block = 0; block < plan.BlockCount; block++) highest = Math.Max(highest, plan.Width(block) + plan.Rows(block).Length);
        _product = new double[4 * Panels.Padded(highest)];
        _vector = new double[plan.Position.Length];
        _below = new double[plan.MostRows];
        _place = new int[plan.MostRows];
    }

    /// <summary>Numbers that the factor of a plan needs.</summary>
    internal static int MemoryLength(BlockPlan plan) => plan.PanelStart[^1] + Panels.Slack;

    /// <summary>Factors a matrix of the planned pattern.</summary>
    /// <exception cref="ArgumentException">The matrix has another number of unknowns or entries than the planned one.</exception>
    /// <exception cref="InvalidOperationException">The matrix is singular, or not positive definite, or has a value that is not a number.</exception>
    internal void Factor(SparseSymmetric matrix)
    {
        int n = matrix.Count;
        if (n != _vector.Length || n + matrix.Row.Length != _plan.Target.Length) throw new ArgumentException("The plan is for another pattern.", nameof(matrix));
        Array.Clear(_values, 0, MemoryLength(_plan));
        ReadOnlySpan<int> target = _plan.Target;
        for (int i = 0; i < n; i++) _values[target[i]] = matrix.Diagonal[i];
        for (int i = 0; i < matrix.Value.Length; i++) _values[target[n + i]] += matrix.Value[i];
        // Pivots are judged by their own diagonal entries.
        for (int i = 0; i < n; i++) _vector[_plan.Position[i]] = matrix.Diagonal[i];
        for (int block = 0; block < _plan.BlockCount; block++)
        {
            FactorPanel(block);
            UpdateAncestors(block);
        }
    }

    /// <summary>Solves A·x = b in place; allocates nothing.</summary>
    /// <param name="rhs">b by nodes becomes x; length n.</param>
    internal void Solve(Span<double> rhs)
    {
        ReadOnlySpan<int> position = _plan.Position;
        for (int i = 0; i < rhs.Length; i++) _vector[position[i]] = rhs[i];
        for (int block = 0; block < _plan.BlockCount; block++) Forward(block);
        for (int block = _plan.BlockCount - 1; block >= 0; block--) Back(block);
        for (int i = 0; i < rhs.Length; i++) rhs[i] = _vector[position[i]];
    }

    private void FactorPanel(int block)
    {
        int width = _plan.Width(block), height = width + _plan.Rows(block).Length, start = _plan.BlockStart[block];
        Span<double> panel = _values.AsSpan(_plan.PanelStart[block]);
        for (int group = 0; group < width; group += 4)
        {
            int groupEnd = Math.Min(group + 4, width), rows = height - group;
            if (group > 0)
            {
                Panels.FourProducts(panel, group, height, group, rows, _product);
                for (int j = group; j < groupEnd; j++)
                    Panels.AddMultiple(-1, _product.AsSpan((j - group) * Panels.Padded(rows) + j - group, height - j), panel.Slice(j * height + j, height - j));
            }
            for (int j = group; j < groupEnd; j++)
            {
                Span<double> column = panel.Slice(j * height + j, height - j);
                if (!(column[0] > SmallestPivotRatio * _vector[start + j])) throw Refusal(start + j, column[0]);
                double inverse = 1 / Math.Sqrt(column[0]);
                for (int i = 0; i < column.Length; i++) column[i] *= inverse;
                for (int next = j + 1; next < groupEnd; next++)
                    Panels.AddMultiple(-column[next - j], column[(next - j)..], panel.Slice(next * height + next, height - next));
            }
        }
    }

    private InvalidOperationException Refusal(int place, double pivot) => new(string.Create(System.Globalization.CultureInfo.InvariantCulture,
        $"The system has no single solution: at unknown {_plan.Position.IndexOf(place)} a pivot of {pivot:R} is left of {_vector[place]:R}."));

    private void UpdateAncestors(int block)
    {
        ReadOnlySpan<int> rows = _plan.Rows(block), blockOf = _plan.BlockOf;
        int width = _plan.Width(block), height = width + rows.Length;
        ReadOnlySpan<double> panel = _values.AsSpan(_plan.PanelStart[block]);
        for (int first = 0, end; first < rows.Length; first = end)
        {
            int ancestor = blockOf[rows[first]], ancestorEnd = _plan.BlockStart[ancestor + 1];
            for (end = first + 1; end < rows.Length && rows[end] < ancestorEnd;) end++;
            Span<int> place = _place.AsSpan(0, rows.Length - first);
            _plan.Locate(rows[first..], ancestor, place);
            int ancestorHeight = _plan.Width(ancestor) + _plan.Rows(ancestor).Length;
            for (int group = first; group < end; group += 4)
            {
                int count = rows.Length - group;
                Panels.FourProducts(panel, width + group, height, width, count, _product);
                for (int j = group; j < end && j < group + 4; j++)
                {
                    Span<double> column = _values.AsSpan(_plan.PanelStart[ancestor] + place[j - first] * ancestorHeight, ancestorHeight);
                    Panels.Subtract(_product.AsSpan((j - group) * Panels.Padded(count) + j - group, rows.Length - j), place[(j - first)..], column);
                }
            }
        }
    }

    private void Forward(int block)
    {
        ReadOnlySpan<int> rows = _plan.Rows(block);
        int width = _plan.Width(block), height = width + rows.Length;
        Span<double> own = _vector.AsSpan(_plan.BlockStart[block], width), below = _below.AsSpan(0, rows.Length);
        below.Clear();
        for (int k = 0; k < width; k++)
        {
            ReadOnlySpan<double> column = _values.AsSpan(_plan.PanelStart[block] + k * height, height);
            double value = own[k] /= column[k];
            Panels.AddMultiple(-value, column[(k + 1)..width], own[(k + 1)..]);
            Panels.AddMultiple(value, column[width..], below);
        }
        for (int i = 0; i < rows.Length; i++) _vector[rows[i]] -= below[i];
    }

    private void Back(int block)
    {
        ReadOnlySpan<int> rows = _plan.Rows(block);
        int width = _plan.Width(block), height = width + rows.Length;
        Span<double> own = _vector.AsSpan(_plan.BlockStart[block], width), below = _below.AsSpan(0, rows.Length);
        for (int i = 0; i < rows.Length; i++) below[i] = _vector[rows[i]];
        for (int k = width - 1; k >= 0; k--)
        {
            ReadOnlySpan<double> column = _values.AsSpan(_plan.PanelStart[block] + k * height, height);
            own[k] = (own[k] - Panels.Dot(column[width..], below) - Panels.Dot(column[(k + 1)..width], own[(k + 1)..])) / column[k];
        }
    }
}
