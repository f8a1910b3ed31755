namespace Thermal.Charts;

/// <summary>Joins directed pieces end to end.</summary>
internal static class Chain
{
    /// <param name="pieces">From where to where, by number of the point.</param>
    /// <returns>Chains of points; open ones first, closed ones end where they begin. Equal pieces in equal order give equal chains.</returns>
    internal static IEnumerable<IReadOnlyList<int>> Of(IReadOnlyList<(int From, int To)> pieces)
    {
        Dictionary<int, List<int>> leaving = [];
        HashSet<int> arrived = [];
        for (int i = pieces.Count - 1; i >= 0; i--)
        {
            if (!leaving.TryGetValue(pieces[i].From, out List<int>? list))
                leaving[pieces[i].From] = list = [];
            list.Add(pieces[i].To);
            arrived.Add(pieces[i].To);
        }
        foreach ((int from, _) in pieces.Where(piece => !arrived.Contains(piece.From)))
            if (leaving[from].Count > 0)
                yield return From(from, leaving);
        foreach ((int from, _) in pieces)
            while (leaving[from].Count > 0)
                yield return From(from, leaving);
    }

    private static List<int> From(int start, Dictionary<int, List<int>> leaving)
    {
        List<int> chain = [start];
        while (leaving.TryGetValue(chain[^1], out List<int>? list) && list.Count > 0)
        {
            chain.Add(list[^1]);
            list.RemoveAt(list.Count - 1);
            if (chain[^1] == start)
                break;
        }
        return chain;
    }
}
