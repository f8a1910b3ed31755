using System.Globalization;
using System.Text;
using Thermal.Climates;

namespace Thermal.Files;

/// <summary>The places that can be named: the built-in ones and those of a person's own folder. Immutable.</summary>
public sealed class PlaceLibrary
{
    private const string ResourcePrefix = "climate:";

    private readonly Lazy<IReadOnlyList<Place>> all;

    private PlaceLibrary(Func<IEnumerable<Place>> places) =>
        all = new(() => [.. places().OrderBy(place => Folded(place.Name), StringComparer.Ordinal)]);

    /// <summary>The places that come with the program.</summary>
    public static PlaceLibrary BuiltIn { get; } = new(ReadEmbedded);

    /// <summary>All places, in the order of their names without accents.</summary>
    public IReadOnlyList<Place> All => all.Value;

    /// <summary>The place of this name; capitals and accents may be left out, hyphens may be blanks.</summary>
    /// <param name="name">Such as "zurich" or "north-west italy".</param>
    /// <returns>The place, or null when none has this name: then <see cref="NearestName"/> may help.</returns>
    public Place? Find(string name) =>
        (ReferenceEquals(this, BuiltIn) && !all.IsValueCreated ? OneEmbedded(name) : null) ?? All.FirstOrDefault(place => Folded(place.Name) == Folded(name));

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
            : new(new PlaceLibrary(() => own.Values.Select(entry => entry.Place).Concat(BuiltIn.All.Where(place => !own.ContainsKey(Folded(place.Name))))), []);
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

    private static IEnumerable<Place> ReadEmbedded() =>
        from resource in typeof(PlaceLibrary).Assembly.GetManifestResourceNames()
        where resource.StartsWith(ResourcePrefix, StringComparison.Ordinal)
        select ReadResource(resource);

    // A program that is asked for one vehicle in one place must not read all of them first: most files are named as their place is.
    private static Place? OneEmbedded(string name)
    {
        string resource = ResourcePrefix + Folded(name).Replace(' ', '-');
        if (typeof(PlaceLibrary).Assembly.GetManifestResourceInfo(resource) is null) return null;
        Place place = ReadResource(resource);
        return Folded(place.Name) == Folded(name) ? place : null;
    }

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
            if (char.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
                folded.Append(Plain(letter) ?? letter.ToString());
        }
        return folded.ToString();
    }

    // Letters that people leave the accent off; written out because a build without culture data cannot take accents apart.
    private static string? Plain(char letter) => letter switch
    {
        'à' or 'á' or 'â' or 'ã' or 'ä' or 'å' or 'ā' => "a",
        'æ' => "ae",
        'ç' or 'ć' or 'č' => "c",
        'ď' or 'đ' or 'ð' => "d",
        'è' or 'é' or 'ê' or 'ë' or 'ē' or 'ę' or 'ě' => "e",
        'ì' or 'í' or 'î' or 'ï' or 'ī' or 'ı' => "i",
        'ł' or 'ľ' => "l",
        'ñ' or 'ń' or 'ň' => "n",
        'ò' or 'ó' or 'ô' or 'õ' or 'ö' or 'ø' or 'ō' => "o",
        'œ' => "oe",
        'ŕ' or 'ř' => "r",
        'ś' or 'š' or 'ş' => "s",
        'ß' => "ss",
        'ť' or 'þ' => "t",
        'ù' or 'ú' or 'û' or 'ü' or 'ū' or 'ů' => "u",
        'ý' or 'ÿ' => "y",
        'ź' or 'ż' or 'ž' => "z",
        '-' or '_' or ',' => " ",
        _ => null,
    };
}
