namespace Thermal.Files.Yaml;

/// <summary>What to write instead of an unknown name.</summary>
internal static class Offer
{
    private const int MostListed = 12;

    /// <summary>"did you mean …?" with the nearest name, or the first few of all names.</summary>
    internal static string Of(string word, IEnumerable<string> known, string listWords)
    {
        string[] names = [.. known];
        if (Nearest.To(word, names) is { } near)
            return $"did you mean {near}?";
        return names.Length == 0 ? "none is given in this file" : $"{listWords} {string.Join(", ", names.Take(MostListed))}{(names.Length > MostListed ? ", …" : "")}";
    }
}
