using SkiaSharp;

namespace Thermal.Charts;

/// <summary>The stream function of the heat in a section: the same amount flows between any two lines whose values differ by the same amount.</summary>
/// <remarks>
/// Built of the flows that the solver's own grid has between its points, each side of a line with its own material, so that it closes around every
/// point and along sheets a thousand times more conductive than what lies beside them. In a round section, of what flows in the whole ring.
/// </remarks>
internal sealed class HeatWays
{
    private readonly SectionCells cells;
    private readonly double[] middles;

    private HeatWays(SectionCells cells)
    {
        this.cells = cells;
        middles = new double[cells.Pieces.Length];
    }

    /// <summary>The function on a grid of lines and middles of the cells: every second point is a middle.</summary>
    /// <param name="cells">The section.</param>
    /// <param name="px">Where a place of the section stands on the sheet.</param>
    /// <param name="isShown">For each cell: true where it is drawn.</param>
    internal static ContourGrid Of(SectionCells cells, Func<double, double, SKPoint> px, bool[] isShown)
    {
        var ways = new HeatWays(cells);
        ways.Spread();
        return ways.Doubled(px, isShown);
    }

    // From cell to cell across their common face; around any point the steps add up to nothing, so the way taken does not matter.
    private void Spread()
    {
        bool[] isDone = new bool[middles.Length];
        Stack<int> open = new();
        for (int start = 0; start < middles.Length; start++)
        {
            if (isDone[start] || cells.Pieces[start] is null)
                continue;
            isDone[start] = true;
            open.Push(start);
            while (open.TryPop(out int cell))
            {
                int i = cell % cells.Across, j = cell / cells.Across;
                Reach(i + 1, j, middles[cell] + Up(i, j, 1), +1, 0);
                Reach(i - 1, j, middles[cell] - Up(i, j, 0), -1, 0);
                Reach(i, j + 1, middles[cell] - Right(i, j, 1), 0, +1);
                Reach(i, j - 1, middles[cell] + Right(i, j, 0), 0, -1);
            }
        }

        void Reach(int i, int j, double onFace, int right, int up)
        {
            if (i < 0 || j < 0 || i >= cells.Across || j >= cells.YsM.Length - 1)
                return;
            int cell = i + j * cells.Across;
            if (isDone[cell] || cells.Pieces[cell] is null)
                return;
            middles[cell] = onFace + (right != 0 ? right * Up(i, j, right > 0 ? 0 : 1) : -up * Right(i, j, up > 0 ? 0 : 1));
            isDone[cell] = true;
            open.Push(cell);
        }
    }

    // Heat that flows towards higher y in the half of a cell at its left (0) or right (1) line.
    private double Up(int i, int j, int side)
    {
        double middle = cells.MidXM(i), line = cells.XsM[i + side];
        double measure = cells.IsRound ? Math.PI * Math.Abs(middle * middle - line * line) : Math.Abs(middle - line);
        return Conductivity(i, j) * measure / (cells.YsM[j + 1] - cells.YsM[j]) * (Temperature(i + side, j) - Temperature(i + side, j + 1));
    }

    // Heat that flows towards higher x in the lower (0) or upper (1) half of a cell.
    private double Right(int i, int j, int side)
    {
        double measure = (cells.YsM[j + 1] - cells.YsM[j]) / 2 * (cells.IsRound ? Math.Tau * Math.Abs(cells.MidXM(i)) : 1);
        return Conductivity(i, j) * measure / (cells.XsM[i + 1] - cells.XsM[i]) * (Temperature(i, j + side) - Temperature(i + 1, j + side));
    }

    private double Conductivity(int i, int j) => cells.Pieces[i + j * cells.Across]!.ConductivityWPerMK;

    private double Temperature(int i, int j) => cells.TemperaturesC[i + j * cells.XsM.Length];

    private ContourGrid Doubled(Func<double, double, SKPoint> px, bool[] isShown)
    {
        int columns = 2 * cells.Across + 1, rows = 2 * cells.YsM.Length - 1;
        double[] sums = new double[columns * rows];
        int[] counts = new int[columns * rows];
        bool[] isIn = new bool[(columns - 1) * (rows - 1)];
        for (int cell = 0; cell < middles.Length; cell++)
        {
            if (!isShown[cell])
                continue;
            int i = cell % cells.Across, j = cell / cells.Across;
            for (int up = -1; up <= 1; up++)
                for (int right = -1; right <= 1; right++)
                {
                    int point = 2 * i + 1 + right + (2 * j + 1 + up) * columns;
                    sums[point] += middles[cell] + (right == 0 ? 0 : right * Up(i, j, (right + 1) / 2)) - (up == 0 ? 0 : up * Right(i, j, (up + 1) / 2));
                    counts[point]++;
                }
            foreach (int quarter in (ReadOnlySpan<int>)[0, 1, columns - 1, columns])
                isIn[2 * i + 2 * j * (columns - 1) + quarter] = true;
        }
        double[] values = [.. sums.Select((sum, k) => counts[k] > 0 ? sum / counts[k] : 0)];
        SKPoint[] at = [.. Enumerable.Range(0, values.Length).Select(k => px(Place(cells.XsM, k % columns), Place(cells.YsM, k / columns)))];
        return new ContourGrid(at, columns, values, isIn);
    }

    private static double Place(double[] lines, int k) => k % 2 == 0 ? lines[k / 2] : (lines[k / 2] + lines[k / 2 + 1]) / 2;
}
