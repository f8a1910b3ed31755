using Thermal.Files.Yaml;

namespace Thermal.Files;

/// <summary>The trips that come with the program, all of our own invention.</summary>
public static class TripLibrary
{
    private const string Prefix = "trip:";

    /// <summary>The one that is meant where none is named.</summary>
    public const string UsualName = "ski-week";

    /// <summary>Their names, in alphabetical order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. typeof(TripLibrary).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal)).Select(name => name[Prefix.Length..]).Order(StringComparer.Ordinal)];

    /// <summary>The text of a built-in trip, or null where there is none of that name.</summary>
    /// <param name="name">A name such as ski-week.</param>
    public static string? Text(string name) => VehicleLibrary.Resource(Prefix + name);

    /// <summary>A built-in trip, or null where there is none of that name.</summary>
    /// <param name="name">A name such as ski-week.</param>
    /// <exception cref="InvalidDataException">The built-in file is damaged; the message holds its problems.</exception>
    public static TripRequest? Find(string name)
    {
        if (Text(name) is not { } text)
            return null;
        Reading<TripRequest> reading = TripFile.Read(text, name + ".yaml");
        return reading.Value ?? throw new InvalidDataException(string.Join('\n', reading.Problems));
    }

    /// <summary>A file or the name of a built-in trip, whichever a person gave.</summary>
    /// <param name="fileOrName">Path of a file, or a name such as ski-week.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    public static Reading<TripRequest> Open(string fileOrName, PlaceLibrary? places = null)
    {
        if (Text(fileOrName) is { } text)
            return TripFile.Read(text, fileOrName + ".yaml", places);
        if (File.Exists(fileOrName) || Path.HasExtension(fileOrName) || fileOrName.Contains('/', StringComparison.Ordinal))
            return TripFile.Open(fileOrName, places);
        return new(null, [new Problem(fileOrName, 1, 1, "file", $"there is no such file, nor a built-in trip of this name; {Offer.Of(fileOrName, Names, "built in are")}")]);
    }
}
