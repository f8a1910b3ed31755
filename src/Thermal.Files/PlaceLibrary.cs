using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using Thermal.Climates;

namespace Thermal.Files;

/// <summary>The places that can be named: the built-in ones and those of a person's own folder. Immutable.</summary>
public sealed class PlaceLibrary
{
    private const string ResourcePrefix = "climate:";

    // Letters that people leave the accent off; written out because a build without culture data cannot take accents apart.
    private static readonly FrozenDictionary<char, string> Plain = new Dictionary<string, string>
    {
        ["àáâãäåā"] = "a", ["æ"] = "ae", ["çćč"] = "c", ["ďđð"] = "d", ["èéêëēęě"] = "e", ["ìíîïīı"] = "i", ["łľ"] = "l", ["ñńň"] = "n", ["òóôõöøō"] = "o",
        ["œ"] = "oe", ["ŕř"] = "r", ["śšş"] = "s", ["ß"] = "ss", ["ťþ"] = "t", ["ùúûüūů"] = "u", ["ýÿ"] = "y", ["źżž"] = "z", ["-_,"] = " ",
    }.SelectMany(pair => pair.Key.Select(letter => KeyValuePair.Create(letter, pair.Value))).ToFrozenDictionary();

    private static readonly Lazy<PlaceLibrary> Embedded = new(ReadEmbedded);

    private PlaceLibrary(IEnumerable<Place> places) => All = [.. places.OrderBy(place => Folded(place.Name), StringComparer.Ordinal)];

    /// <summary>The places that come with the program.</summary>
    public static PlaceLibrary BuiltIn => Embedded.Value;

    /// <summary>All places, in the order of their names without accents.</summary>
    public IReadOnlyList<Place> All { get; }

    /// <summary>The place of this name; capitals and accents may be left out, hyphens may be blanks.</summary>
    /// <param name="name">Such as "zurich" or "north-west italy".</param>
    /// <returns>The place, or null when none has this name: then <see cref="NearestName"/> may help.</returns>
    public Place? Find(string name) => All.FirstOrDefault(place => Folded(place.Name) == Folded(name));

    /// <summary>The name that was probably meant; null when none is near.</summary>
    /// <param name="name">A name that <see cref="Find"/> does not know.</param>
    public string? NearestName(string name) =>
        Nearest.To(Folded(name), All.Select(place => Folded(place.Name))) is string near ? Find(near)!.Name : null;

    /// <summary>These places and those in the *.csv files of a folder; a person's own place stands in for a built-in one of the same name.</summary>
    /// <param name="path">The folder; its own folders are not searched.</param>
    /// <returns>The larger library, or the problems of all files; a folder that cannot be read is a problem too.</returns>
    public static Reading<PlaceLibrary> WithFolder(string path)
    {
        List<Problem> problems = [];
        Dictionary<string, (Place Place, string File)> own = [];
        foreach (string file in FilesIn(path, problems))
        {
            Reading<Place> reading = ReadOne(file);
            problems.AddRange(reading.Problems);
            if (reading.Value is Place place && !own.TryAdd(Folded(place.Name), (place, file)))
                problems.Add(new(file, 1, 1, "name", $"'{place.Name}' is already the name of the place in {own[Folded(place.Name)].File}; rename one of them."));
        }
        return problems.Count > 0
            ? new(null, problems)
            : new(new PlaceLibrary(own.Values.Select(entry => entry.Place).Concat(BuiltIn.All.Where(place => !own.ContainsKey(Folded(place.Name))))), []);
    }

    private static string[] FilesIn(string path, List<Problem> problems)
    {
        try
        {
            string[] files = Directory.GetFiles(path, "*.csv");
            Array.Sort(files, StringComparer.Ordinal);
            return files;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            problems.Add(new(path, 1, 1, "folder", $"cannot be read ({fault.Message}); name a folder that holds *.csv place files."));
            return [];
        }
    }

    private static Reading<Place> ReadOne(string file)
    {
        try
        {
            // Four bytes is the longest a character takes; a longer file is refused before it fills the memory.
            return new FileInfo(file).Length > 4 * PlaceFile.LongestCharacterCount
                ? new(null, [new(file, 1, 1, "file", $"is too long for a place; keep it under {PlaceFile.LongestCharacterCount} characters.")])
                : PlaceFile.Read(File.ReadAllText(file, Encoding.UTF8), file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new(null, [new(file, 1, 1, "file", $"cannot be read ({fault.Message}); check that it may be opened.")]);
        }
    }

    private static PlaceLibrary ReadEmbedded() => new(
        from resource in typeof(PlaceLibrary).Assembly.GetManifestResourceNames()
        where resource.StartsWith(ResourcePrefix, StringComparison.Ordinal)
        select ReadResource(resource));

    private static Place ReadResource(string resource)
    {
        using var reader = new StreamReader(typeof(PlaceLibrary).Assembly.GetManifestResourceStream(resource)!, Encoding.UTF8);
        Reading<Place> reading = PlaceFile.Read(reader.ReadToEnd(), resource);
        return reading.Value ?? throw new InvalidDataException(string.Join(Environment.NewLine, reading.Problems));
    }

    private static string Folded(string name)
    {
        var folded = new StringBuilder(name.Length);
        foreach (char letter in name.Trim().ToLowerInvariant())
        {
            if (char.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark) continue;
            if (Plain.TryGetValue(letter, out string? plain)) folded.Append(plain);
            else folded.Append(letter);
        }
        return folded.ToString();
    }
}
