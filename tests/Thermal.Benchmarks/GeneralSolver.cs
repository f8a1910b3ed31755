using System.Globalization;
using Thermal.Numerics;

namespace Thermal.Benchmarks;

/// <summary>Scipy's direct solver on the same matrix, where the system's python3 has scipy.</summary>
internal static class GeneralSolver
{
    private const int RepeatCount = 3;

    /// <summary>Processor time of the middle of three solves, s, and the sum of the solution, for each ordering; null with the reason where scipy is not to be had.</summary>
    internal static (IReadOnlyList<(string Ordering, double Seconds, double Sum)>? Times, string Note) Measure(SparseSymmetric matrix, double[] rhs, params string[] orderings)
    {
        string file = Path.GetTempFileName();
        try
        {
            Write(file, matrix, rhs);
            (string[]? printed, string why) = SystemPython.Run("spsolve.py", [file, .. orderings]);
            if (printed is null) return (null, why);
            string[][] lines = [.. printed.Select(line => line.Split(' '))];
            return ([.. lines.Select(line => (line[0], Number(line[1]), Number(line[2])))], $"scipy {lines[0][3]}");
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static void Write(string file, SparseSymmetric matrix, double[] rhs)
    {
        using BinaryWriter to = new(File.Create(file));
        to.Write(matrix.Count);
        to.Write(matrix.Row.Length);
        to.Write(RepeatCount);
        foreach (int start in matrix.Start) to.Write(start);
        foreach (int row in matrix.Row) to.Write(row);
        foreach (double value in matrix.Value) to.Write(value);
        foreach (double value in matrix.Diagonal) to.Write(value);
        foreach (double value in rhs) to.Write(value);
    }
}
