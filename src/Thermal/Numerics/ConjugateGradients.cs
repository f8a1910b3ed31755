namespace Thermal.Numerics;

/// <summary>
/// Conjugate gradients for the matrix of a network, preconditioned by its modified incomplete factor without fill, both applied in one pass down and one pass up.
/// </summary>
/// <remarks>Source: OURS, after Gustafsson's modified incomplete factorisation and Eisenstat's joint use of the two triangles.</remarks>
internal sealed class ConjugateGradients
{
    // Chosen by us, by trial: how much of the dropped fill goes to the diagonal.
    private const double Relaxation = 0.97;

    private readonly SparseSymmetric _matrix;
    private readonly double[] _scale, _spare, _value;

    /// <summary>Prepares the incomplete factor.</summary>
    /// <exception cref="InvalidOperationException">The factor breaks down: the matrix is not that of a network, or has a value that is not a number.</exception>
    internal ConjugateGradients(SparseSymmetric matrix)
    {
        _matrix = matrix;
        int n = matrix.Count;
        (_scale, _spare, _value) = (new double[n], new double[n], new double[matrix.Value.Length]);
        ReadOnlySpan<int> start = matrix.Start, row = matrix.Row;
        ReadOnlySpan<double> value = matrix.Value;
        double[] pivot = _scale;
        matrix.Diagonal.CopyTo(pivot);
        for (int k = 0; k < n; k++)
        {
            if (!(pivot[k] > 0)) throw new InvalidOperationException($"No incomplete factor: the pivot of unknown {k} is {pivot[k]}.");
            double sum = 0;
            for (int at = start[k]; at < start[k + 1]; at++) sum += value[at];
            for (int at = start[k]; at < start[k + 1]; at++)
                pivot[row[at]] -= value[at] / pivot[k] * (value[at] + Relaxation * (sum - value[at]));
        }
        for (int i = 0; i < n; i++) _scale[i] = 1 / Math.Sqrt(pivot[i]);
        for (int i = 0; i < n; i++) _spare[i] = matrix.Diagonal[i] * _scale[i] * _scale[i] - 2;
        for (int k = 0; k < n; k++)
            for (int at = start[k]; at < start[k + 1]; at++) _value[at] = value[at] * _scale[k] * _scale[row[at]];
    }

    /// <summary>Values of scratch that <see cref="Solve"/> needs.</summary>
    internal int ScratchLength => 4 * _matrix.Count;

    /// <summary>Solves A·x = b; allocates nothing.</summary>
    /// <param name="rhs">b; length n.</param>
    /// <param name="x">A first guess becomes the solution; length n.</param>
    /// <param name="scratch">Of <see cref="ScratchLength"/>.</param>
    /// <param name="relativeResidual">When to stop: residual over right-hand side, both in the norm of the preconditioner.</param>
    /// <param name="mostIterations">When to give up.</param>
    /// <returns>Iterations taken.</returns>
    /// <exception cref="InvalidOperationException">Not there after the most iterations; tells the last residual.</exception>
    internal int Solve(ReadOnlySpan<double> rhs, Span<double> x, Span<double> scratch, double relativeResidual, int mostIterations)
    {
        int n = _matrix.Count;
        Span<double> residual = scratch[..n], direction = scratch[n..(2 * n)], image = scratch[(2 * n)..(3 * n)], upper = scratch[(3 * n)..(4 * n)];
        for (int i = 0; i < n; i++) residual[i] = rhs[i] * _scale[i];
        Down(residual);
        double limit = relativeResidual * relativeResidual * Panels.Dot(residual, residual);
        Start(rhs, x, residual, image);
        for (int i = 0; i < n; i++) x[i] /= _scale[i];
        residual.CopyTo(direction);
        double size = Panels.Dot(residual, residual);
        int iterations = 0;
        for (; !(size <= limit); iterations++)
        {
            if (iterations == mostIterations) throw Refusal(iterations, relativeResidual * Math.Sqrt(size / limit), relativeResidual);
            Apply(direction, image, upper);
            double step = size / Panels.Dot(direction, image);
            Panels.AddMultiple(step, upper, x);
            Panels.AddMultiple(-step, image, residual);
            double next = Panels.Dot(residual, residual), share = next / size;
            for (int i = 0; i < n; i++) direction[i] = residual[i] + share * direction[i];
            size = next;
        }
        for (int i = 0; i < n; i++) x[i] *= _scale[i];
        return iterations;
    }

    private static InvalidOperationException Refusal(int iterations, double reached, double asked) => new(string.Create(
        System.Globalization.CultureInfo.InvariantCulture, $"Not solved after {iterations} iterations: relative residual {reached:0.0E+0}, asked for {asked:0.0E+0}."));

    private void Start(ReadOnlySpan<double> rhs, ReadOnlySpan<double> x, Span<double> residual, Span<double> image)
    {
        image.Clear();
        _matrix.MultiplyAdd(x, image);
        for (int i = 0; i < image.Length; i++) residual[i] = (rhs[i] - image[i]) * _scale[i];
        Down(residual);
    }

    // With A = L + K + Lᵀ scaled to pivots of 1: (1+L)⁻¹·A·(1+L)⁻ᵀ·p = t + (1+L)⁻¹·(p + (K−2)·t), t = (1+L)⁻ᵀ·p.
    private void Apply(ReadOnlySpan<double> direction, Span<double> image, Span<double> upper)
    {
        direction.CopyTo(upper);
        Up(upper);
        for (int i = 0; i < image.Length; i++) image[i] = direction[i] + _spare[i] * upper[i];
        Down(image);
        for (int i = 0; i < image.Length; i++) image[i] += upper[i];
    }

    private void Down(Span<double> vector)
    {
        ReadOnlySpan<int> start = _matrix.Start, row = _matrix.Row;
        for (int k = 0; k < vector.Length; k++)
        {
            double own = vector[k];
            for (int at = start[k]; at < start[k + 1]; at++) vector[row[at]] -= _value[at] * own;
        }
    }

    private void Up(Span<double> vector)
    {
        ReadOnlySpan<int> start = _matrix.Start, row = _matrix.Row;
        for (int k = vector.Length - 1; k >= 0; k--)
        {
            double own = vector[k];
            for (int at = start[k]; at < start[k + 1]; at++) own -= _value[at] * vector[row[at]];
            vector[k] = own;
        }
    }
}
