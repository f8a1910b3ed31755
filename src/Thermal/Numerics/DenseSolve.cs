namespace Thermal.Numerics;

/// <summary>Small dense linear systems.</summary>
internal static class DenseSolve
{
    /// <summary>Solves A·x = b in place by elimination with row pivoting: matrix is n×n by rows and spent, rhs becomes x.</summary>
    /// <exception cref="InvalidOperationException">The matrix is singular.</exception>
    internal static void Solve(Span<double> matrix, Span<double> rhs)
    {
        int n = rhs.Length;
        for (int k = 0; k < n; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < n; i++)
                if (Math.Abs(matrix[i * n + k]) > Math.Abs(matrix[pivot * n + k])) pivot = i;
            if (!(Math.Abs(matrix[pivot * n + k]) > 0)) throw new InvalidOperationException("The system has no single solution.");
            if (pivot != k)
            {
                for (int j = 0; j < n; j++) (matrix[k * n + j], matrix[pivot * n + j]) = (matrix[pivot * n + j], matrix[k * n + j]);
                (rhs[k], rhs[pivot]) = (rhs[pivot], rhs[k]);
            }
            for (int i = k + 1; i < n; i++)
            {
                double w = matrix[i * n + k] / matrix[k * n + k];
                if (w == 0) continue;
                for (int j = k; j < n; j++) matrix[i * n + j] -= w * matrix[k * n + j];
                rhs[i] -= w * rhs[k];
            }
        }
        for (int i = n - 1; i >= 0; i--)
        {
            for (int j = i + 1; j < n; j++) rhs[i] -= matrix[i * n + j] * rhs[j];
            rhs[i] /= matrix[i * n + i];
        }
    }
}
