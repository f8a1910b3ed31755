using SkiaSharp;

namespace Thermal.Charts;

/// <summary>Values on a grid of lines, and where they take a level: bilinear in each cell, so that a thin sheet with steep sides keeps its own cells.</summary>
/// <param name="at">Points of the grid on the sheet, px; the first index runs fastest.</param>
/// <param name="columns">Points in the direction that runs fastest.</param>
/// <param name="values">Values at the points.</param>
/// <param name="isIn">For each cell: true where it belongs to the field.</param>
internal sealed class ContourGrid(SKPoint[] at, int columns, double[] values, bool[] isIn)
{
    // How far a simplified line may leave the exact one, px: less than can be seen.
    private const float TolerancePx = 0.15f;

    private readonly int rows = at.Length / columns;

    internal double[] Values => values;

    /// <summary>Outlines of where the values are at a level or above, closed, holes running the other way; at minus infinity the outline of the field.</summary>
    internal IReadOnlyList<SKPoint[]> Areas(double level) => Chains(level, withEdges: true);

    /// <summary>Lines along which the values take the level, with the higher values at the left for an eye on a sheet whose second index runs upwards.</summary>
    internal IReadOnlyList<SKPoint[]> Lines(double level) => Chains(level, withEdges: false);

    /// <summary>Smallest and largest value at the corners of the cells of the field.</summary>
    internal (double Low, double High) Span()
    {
        (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int cell = 0; cell < isIn.Length; cell++)
        {
            if (!isIn[cell])
                continue;
            foreach (int corner in Corners(cell))
                (low, high) = (Math.Min(low, values[corner]), Math.Max(high, values[corner]));
        }
        return (low, high);
    }

    private List<SKPoint[]> Chains(double level, bool withEdges)
    {
        List<(int From, int To)> pieces = [];
        for (int cell = 0; cell < isIn.Length; cell++)
            if (isIn[cell])
                AddCell(pieces, cell, level, withEdges);
        return [.. Chain.Of(pieces).Select(chain => Simplified.Line([.. chain.Select(key => PointOf(key, level))], TolerancePx)).Where(line => line.Length > 1)];
    }

    private int[] Corners(int cell)
    {
        int corner = cell % (columns - 1) + cell / (columns - 1) * columns;
        return [corner, corner + 1, corner + 1 + columns, corner + columns];
    }

    private void AddCell(List<(int From, int To)> pieces, int cell, double level, bool withEdges)
    {
        int[] corners = Corners(cell);
        List<int> crossings = new(4);
        int firstExit = -1;
        for (int side = 0; side < 4; side++)
        {
            int from = corners[side], to = corners[(side + 1) % 4];
            bool isFrom = values[from] >= level, isTo = values[to] >= level;
            int crossing = isFrom == isTo ? 0 : Crossing(from, to);
            if (withEdges && (isFrom || isTo) && IsOuter(cell, side))
                pieces.Add(isFrom && isTo ? (3 * from, 3 * to) : isFrom ? (3 * from, crossing) : (crossing, 3 * to));
            if (isFrom == isTo)
                continue;
            if (isFrom && firstExit < 0)
                firstExit = crossings.Count;
            crossings.Add(crossing);
        }
        if (crossings.Count == 2)
            pieces.Add((crossings[firstExit], crossings[1 - firstExit]));
        else if (crossings.Count == 4)
        {
            // The middle decides whether the two high corners of a saddle are one area.
            int step = corners.Average(corner => values[corner]) >= level ? 1 : 3;
            pieces.Add((crossings[firstExit], crossings[(firstExit + step) % 4]));
            pieces.Add((crossings[(firstExit + 2) % 4], crossings[(firstExit + 2 + step) % 4]));
        }
    }

    private bool IsOuter(int cell, int side)
    {
        int across = columns - 1, i = cell % across, j = cell / across;
        return side switch
        {
            0 => j == 0 || !isIn[cell - across],
            1 => i == across - 1 || !isIn[cell + 1],
            2 => j == rows - 2 || !isIn[cell + across],
            _ => i == 0 || !isIn[cell - 1],
        };
    }

    // Points are told by number: 3 times a grid point, one more on the line to its neighbour in the row, two more to that in the column.
    private static int Crossing(int from, int to)
    {
        int low = Math.Min(from, to);
        return 3 * low + (Math.Max(from, to) == low + 1 ? 1 : 2);
    }

    private SKPoint PointOf(int key, double level)
    {
        int low = key / 3;
        if (key % 3 == 0)
            return at[low];
        int high = key % 3 == 1 ? low + 1 : low + columns;
        float part = (float)((level - values[low]) / (values[high] - values[low]));
        return new SKPoint(at[low].X + (at[high].X - at[low].X) * part, at[low].Y + (at[high].Y - at[low].Y) * part);
    }
}
