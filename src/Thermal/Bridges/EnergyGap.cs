namespace Thermal.Bridges;

/// <summary>
/// What lumping adds to the energies of both schemes: wherever a slope, a step across a film or a flux changes from one side of a cell to the other,
/// the trapezoidal sum is larger than the integral of the square by the squared change times an overlap. Taken off again, both bounds come closer
/// and stay bounds, because the fields stay the same. The same sums, gathered by columns, rows and slabs, say which of them to halve.
/// </summary>
/// <remarks>Source: OURS, after the hypercircle of Prager and Synge.</remarks>
internal sealed class EnergyGap
{
    private readonly Grid _grid;
    private readonly int _environmentCount;
    private double[] _weights = [];

    internal EnergyGap(Grid grid, int environmentCount)
    {
        (_grid, _environmentCount) = (grid, environmentCount);
        (HatWPerK, FluxWPerK) = (new double[environmentCount * environmentCount], new double[environmentCount * environmentCount]);
        ByLine = [.. grid.Axes.Select(axis => new double[axis.CellCount])];
    }

    /// <summary>What lumping added to the power matrices of the vertex and of the cell scheme, n × n, W/K.</summary>
    internal double[] HatWPerK { get; }
    internal double[] FluxWPerK { get; }
    /// <summary>Both by columns, rows and slabs: those of all environments by their weights.</summary>
    internal double[][] ByLine { get; }

    /// <summary>Adds up both.</summary>
    /// <param name="vertices">Fields at the vertices.</param>
    /// <param name="cells">The cell scheme.</param>
    /// <param name="inCells">Its fields.</param>
    /// <param name="weights">Of each environment in <see cref="ByLine"/>.</param>
    internal void Add(double[][] vertices, Lattice cells, double[][] inCells, double[] weights)
    {
        _weights = weights;
        for (int k = 0, cell = 0; k < _grid.Z.CellCount; k++)
            for (int j = 0; j < _grid.Y.CellCount; j++)
                for (int i = 0; i < _grid.X.CellCount; i++, cell++)
                    if (_grid.ConductivitiesWPerMK[cell] > 0) AddSlopes([i, j, k], _grid.ConductivitiesWPerMK[cell], vertices);
        foreach (SurfaceFace face in _grid.Surfaces())
            if (_grid.Blocks.Section.Boundaries[face.Boundary].SurfaceResistanceM2KPerW > 0) AddSteps(face, vertices);
        for (int axis = 0; axis < _grid.Dimensions; axis++) AddFluxes(axis, cells, inCells);
        Lattice.WithLast(HatWPerK, _environmentCount);
        Lattice.WithLast(FluxWPerK, _environmentCount);
    }

    private void AddSlopes(ReadOnlySpan<int> at, double conductivity, double[][] fields)
    {
        for (int axis = 0; axis < _grid.Dimensions; axis++)
        {
            double along = conductivity * _grid.Axes[axis].Along[at[axis]];
            int first = axis == 0 ? 1 : 0, second = 3 - axis - first;
            AddChanges(at, first, second, along, fields, Stride(axis), 0);
        }
    }

    private void AddSteps(SurfaceFace face, double[][] fields)
    {
        ReadOnlySpan<int> at = [face.I, face.J, face.K];
        int first = face.Axis == 0 ? 1 : 0;
        double film = _grid.Axes[face.Axis].Face[at[face.Axis] + face.Side] / _grid.Blocks.Section.Boundaries[face.Boundary].SurfaceResistanceM2KPerW;
        AddChanges(at, first, 3 - face.Axis - first, film, fields, 0, face.Side * Stride(face.Axis));
    }

    private int Stride(int axis) => axis == 0 ? 1 : axis == 1 ? _grid.X.VertexCount : _grid.X.VertexCount * _grid.Y.VertexCount;

    // Changes of a slope (difference over one stride) or of a value (no stride) across a cell in two directions; the twist is in both and taken off once.
    private void AddChanges(ReadOnlySpan<int> at, int first, int second, double factor, double[][] fields, int stride, int shift)
    {
        Axis one = _grid.Axes[first], other = _grid.Axes[second];
        int start = _grid.Vertex(at[0], at[1], at[2]) + shift, a = Stride(first), b = other.VertexCount > 1 ? Stride(second) : 0;
        double overlapOne = factor * one.HatOverlap[at[first]], overlapOther = factor * other.HatOverlap[at[second]];
        Span<double> low = stackalloc double[_environmentCount], high = stackalloc double[_environmentCount], left = stackalloc double[_environmentCount], right = stackalloc double[_environmentCount];
        for (int e = 0; e < _environmentCount - 1; e++)
        {
            double[] u = fields[e];
            double v00 = Value(u, start, stride), v10 = Value(u, start + a, stride), v01 = Value(u, start + b, stride), v11 = Value(u, start + a + b, stride);
            (low[e], high[e], left[e], right[e]) = (v10 - v00, v11 - v01, v01 - v00, v11 - v10);
            ByLine[first][at[first]] += _weights[e] * overlapOne * (other.LowShare[at[second]] * low[e] * low[e] + other.HighShare[at[second]] * high[e] * high[e]);
            ByLine[second][at[second]] += _weights[e] * overlapOther * (one.LowShare[at[first]] * left[e] * left[e] + one.HighShare[at[first]] * right[e] * right[e]);
        }
        for (int e = 0; e < _environmentCount - 1; e++)
            for (int f = 0; f <= e; f++)
                AddTo(HatWPerK, e, f, overlapOne * (other.LowShare[at[second]] * low[e] * low[f] + other.HighShare[at[second]] * high[e] * high[f])
                    + overlapOther * (one.LowShare[at[first]] * left[e] * left[f] + one.HighShare[at[first]] * right[e] * right[f])
                    - overlapOne * other.HatOverlap[at[second]] * (high[e] - low[e]) * (high[f] - low[f]));
    }

    private static double Value(double[] u, int at, int stride) => stride == 0 ? u[at] : u[at + stride] - u[at];

    private void AddTo(double[] matrix, int e, int f, double power)
    {
        matrix[e * _environmentCount + f] += power;
        if (e != f) matrix[f * _environmentCount + e] += power;
    }

    private void AddFluxes(int axis, Lattice cells, double[][] inCells)
    {
        double[][] gains = [.. inCells.Take(_environmentCount - 1).Select((field, e) => Gains(cells, axis, field, e))];
        Axis along = _grid.Axes[axis];
        for (int k = 0, cell = 0; k < _grid.Z.CellCount; k++)
            for (int j = 0; j < _grid.Y.CellCount; j++)
                for (int i = 0; i < _grid.X.CellCount; i++, cell++)
                {
                    if (!(_grid.ConductivitiesWPerMK[cell] > 0)) continue;
                    int at = axis == 0 ? i : axis == 1 ? j : k;
                    double cross = (axis == 0 ? 1 : _grid.X.Measure[i]) * (axis == 1 ? 1 : _grid.Y.Measure[j]) * (axis == 2 ? 1 : _grid.Z.Measure[k]);
                    double overlap = along.FluxOverlap[at] / (cross * _grid.ConductivitiesWPerMK[cell]);
                    for (int e = 0; e < gains.Length; e++)
                    {
                        ByLine[axis][at] += _weights[e] * overlap * gains[e][cell] * gains[e][cell];
                        for (int f = 0; f <= e; f++) AddTo(FluxWPerK, e, f, overlap * gains[e][cell] * gains[f][cell]);
                    }
                }
    }

    // What flows into each cell through both of its faces along an axis.
    private static double[] Gains(Lattice cells, int axis, double[] field, int environment)
    {
        double[] gains = new double[field.Length], edges = cells.Edges[axis];
        int stride = cells.Strides[axis];
        for (int i = 0; i + stride < edges.Length; i++)
        {
            double flow = edges[i] * (field[i + stride] - field[i]);
            gains[i] += flow;
            gains[i + stride] -= flow;
        }
        foreach (Tie tie in cells.Ties)
            if (tie.Axis == axis) gains[tie.Point] += tie.WPerK * ((tie.Environment == environment ? 1 : 0) - field[tie.Point]);
        return gains;
    }
}
