namespace Thermal.Numerics;

/// <summary>
/// An order of elimination for the points of a rectangular grid: the longer side is cut by a line (in three directions by a plane), both halves come first,
/// then the cut, and each half is cut again. Neighbours are neighbours along the grid's directions only. The order is divided into blocks that are eliminated together.
/// </summary>
/// <remarks>Source: OURS, after George's nested dissection of a regular mesh.</remarks>
internal sealed class NestedDissection
{
    // Chosen by us, by trial: boxes of at most so many points are not cut again, and no block is wider.
    private const int SmallestBox = 16, WidestBlock = 32;

    private readonly int[] _order;
    private readonly List<int> _blockStart = [0];
    private int _count;

    private NestedDissection(int nodeCount) => _order = new int[nodeCount];

    /// <summary>Order[k] is the node that is eliminated as the k-th.</summary>
    internal ReadOnlySpan<int> Order => _order;
    /// <summary>First place of each block, and the number of all nodes.</summary>
    internal IReadOnlyList<int> BlockStart => _blockStart;

    /// <summary>Orders the points of a grid.</summary>
    /// <param name="countX">Points along x, 1 or more; point (i, j, k) has the index i + countX·(j + countY·k).</param>
    /// <param name="countY">Points along y.</param>
    /// <param name="countZ">Points along z; 1 in two dimensions.</param>
    /// <param name="node">Node at each point, each from 0 to n − 1 once; negative where the point is no unknown.</param>
    /// <param name="nodeCount">n.</param>
    /// <exception cref="ArgumentException">The nodes are not 0 to n − 1.</exception>
    internal static NestedDissection Of(int countX, int countY, int countZ, ReadOnlySpan<int> node, int nodeCount)
    {
        NestedDissection dissection = new(nodeCount);
        dissection.Cut(new Box(0, countX, 0, countY, 0, countZ, countX, countX * countY), node);
        if (dissection._count != nodeCount) throw new ArgumentException($"{dissection._count} points are nodes, not {nodeCount}.", nameof(node));
        return dissection;
    }

    private readonly record struct Box(int X0, int X1, int Y0, int Y1, int Z0, int Z1, int StrideY, int StrideZ);

    private void Cut(Box box, ReadOnlySpan<int> node)
    {
        int x = box.X1 - box.X0, y = box.Y1 - box.Y0, z = box.Z1 - box.Z0;
        if ((long)x * y * z <= SmallestBox || Math.Max(x, Math.Max(y, z)) < 3)
        {
            Take(box, node);
            return;
        }
        (Box low, Box cut, Box high) = Parts(box, x, y, z);
        Cut(low, node);
        Cut(high, node);
        Take(cut, node);
    }

    private static (Box Low, Box Cut, Box High) Parts(Box box, int x, int y, int z)
    {
        if (x >= y && x >= z)
        {
            int at = box.X0 + x / 2;
            return (box with { X1 = at }, box with { X0 = at, X1 = at + 1 }, box with { X0 = at + 1 });
        }
        if (y >= z)
        {
            int at = box.Y0 + y / 2;
            return (box with { Y1 = at }, box with { Y0 = at, Y1 = at + 1 }, box with { Y0 = at + 1 });
        }
        int middle = box.Z0 + z / 2;
        return (box with { Z1 = middle }, box with { Z0 = middle, Z1 = middle + 1 }, box with { Z0 = middle + 1 });
    }

    private void Take(Box box, ReadOnlySpan<int> node)
    {
        for (int k = box.Z0; k < box.Z1; k++)
            for (int j = box.Y0; j < box.Y1; j++)
                for (int i = box.X0; i < box.X1; i++)
                {
                    int found = node[i + box.StrideY * j + box.StrideZ * k];
                    if (found < 0) continue;
                    if (_count == _order.Length) throw new ArgumentException($"More points are nodes than {_order.Length}.", nameof(node));
                    if (_count - _blockStart[^1] == WidestBlock) _blockStart.Add(_count);
                    _order[_count++] = found;
                }
        if (_count > _blockStart[^1]) _blockStart.Add(_count);
    }
}
