namespace Thermal.Files;

/// <summary>The known name that a misspelt one was probably meant to be.</summary>
public static class Nearest
{
    /// <summary>The known name with the fewest letters to change, if it is near enough to be worth offering.</summary>
    /// <param name="word">What the person wrote; capitals do not matter.</param>
    /// <param name="known">The names that would be right.</param>
    /// <returns>The nearest name, the earlier one on a tie; null when every name needs more changes than a third of the longer word's letters.</returns>
    /// <remarks>A change is one letter inserted, removed, replaced, or two neighbours swapped. Words beyond 64 letters are not names and get no offer. Source: OURS, limit chosen by us.</remarks>
    public static string? To(string word, IEnumerable<string> known)
    {
        if (word.Length > LongestWordCount) return null;
        string? nearest = null;
        int fewest = int.MaxValue;
        foreach (string name in known)
        {
            if (name.Length > LongestWordCount) continue;
            int changes = ChangesCount(word.ToUpperInvariant(), name.ToUpperInvariant());
            if (changes < fewest && changes * 3 <= Math.Max(word.Length, name.Length))
                (nearest, fewest) = (name, changes);
        }
        return nearest;
    }

    private const int LongestWordCount = 64;

    /// <summary>Optimal string alignment distance, by rows.</summary>
    private static int ChangesCount(string a, string b)
    {
        int[] twoBack = new int[b.Length + 1], back = [.. Enumerable.Range(0, b.Length + 1)], row = new int[b.Length + 1];
        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = back[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(replaced, 1 + Math.Min(back[j], row[j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    row[j] = Math.Min(row[j], 1 + twoBack[j - 2]);
            }
            (twoBack, back, row) = (back, row, twoBack);
        }
        return back[b.Length];
    }
}
