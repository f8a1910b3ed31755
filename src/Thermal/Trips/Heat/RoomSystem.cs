namespace Thermal.Trips.Heat;

/// <summary>The small dense system of a stage: air and radiant node of each room, all else eliminated.</summary>
internal sealed class RoomSystem
{
    private readonly int n;
    private readonly double[] matrix, response;

    internal RoomSystem(int roomCount)
    {
        n = 2 * roomCount;
        (matrix, response, SourceW) = (new double[n * n], new double[n], new double[n]);
    }

    /// <summary>Right-hand side, W; after solving the temperatures, °C.</summary>
    internal double[] SourceW { get; }

    internal static int Air(int room) => 2 * room;
    internal static int Radiant(int room) => 2 * room + 1;

    internal void Clear()
    {
        Array.Clear(matrix);
        Array.Clear(SourceW);
    }

    internal void Add(int row, int column, double conductanceWPerK) => matrix[row * n + column] += conductanceWPerK;

    /// <summary>A conductance between two nodes.</summary>
    internal void Couple(int a, int b, double conductanceWPerK)
    {
        matrix[a * n + a] += conductanceWPerK;
        matrix[b * n + b] += conductanceWPerK;
        matrix[a * n + b] -= conductanceWPerK;
        matrix[b * n + a] -= conductanceWPerK;
    }

    /// <summary>A conductance from a node to a given temperature.</summary>
    internal void Ground(int node, double conductanceWPerK, double temperatureC)
    {
        matrix[node * n + node] += conductanceWPerK;
        SourceW[node] += conductanceWPerK * temperatureC;
    }

    /// <summary>Solves for no heat of the heater, then adds that which brings a room to the operative temperature wanted, within the limits; returns it, W.</summary>
    /// <remarks>Columns add up to what is stored and lost, never below zero: elimination needs no pivoting.</remarks>
    internal double Solve(int heatedRoom, double wantedC, double highestW)
    {
        bool heats = highestW > 0 && !double.IsNaN(wantedC);
        Array.Clear(response);
        response[Air(heatedRoom)] = 1;
        Eliminate();
        Back(SourceW);
        double isC = (SourceW[Air(heatedRoom)] + SourceW[Radiant(heatedRoom)]) / 2;
        if (!heats || isC >= wantedC) return 0;
        Back(response);
        double heaterW = Math.Min(highestW, (wantedC - isC) / ((response[Air(heatedRoom)] + response[Radiant(heatedRoom)]) / 2));
        for (int i = 0; i < n; i++) SourceW[i] += heaterW * response[i];
        return heaterW;
    }

    private void Eliminate()
    {
        for (int k = 0; k < n; k++)
        {
            double inverse = matrix[k * n + k] = 1 / matrix[k * n + k];
            for (int i = k + 1; i < n; i++)
            {
                double w = matrix[i * n + k] * inverse;
                if (w == 0) continue;
                for (int j = k + 1; j < n; j++) matrix[i * n + j] -= w * matrix[k * n + j];
                SourceW[i] -= w * SourceW[k];
                response[i] -= w * response[k];
            }
        }
    }

    private void Back(double[] rhs)
    {
        for (int i = n - 1; i >= 0; i--)
        {
            double sum = rhs[i];
            for (int j = i + 1; j < n; j++) sum -= matrix[i * n + j] * rhs[j];
            rhs[i] = sum * matrix[i * n + i];
        }
    }
}
