using System.Text;
using Thermal.Assessments;

namespace Thermal.Files;

/// <summary>The vehicles that come with the program, all of our own invention.</summary>
public static class VehicleLibrary
{
    private const string Prefix = "vehicle:";

    /// <summary>The one that is meant where none is named.</summary>
    public const string UsualName = "library-van";

    /// <summary>Their names, in alphabetical order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. typeof(VehicleLibrary).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal)).Select(name => name[Prefix.Length..]).Order(StringComparer.Ordinal)];

    /// <summary>The text of a built-in vehicle, or null where there is none of that name.</summary>
    /// <param name="name">A name such as library-van.</param>
    public static string? Text(string name) => Resource(Prefix + name);

    /// <summary>A built-in vehicle, or null where there is none of that name.</summary>
    /// <param name="name">A name such as library-van.</param>
    /// <exception cref="InvalidDataException">The built-in file is damaged; the message holds its problems.</exception>
    public static Case? Find(string name)
    {
        if (Text(name) is not { } text)
            return null;
        Reading<Case> reading = VehicleFile.Read(text, name + ".yaml");
        return reading.Value ?? throw new InvalidDataException(string.Join('\n', reading.Problems));
    }

    /// <summary>A file or the name of a built-in vehicle, whichever a person gave.</summary>
    /// <param name="fileOrName">Path of a file, or a name such as library-van.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    public static Reading<Case> Open(string fileOrName, PlaceLibrary? places = null)
    {
        if (Text(fileOrName) is { } text)
            return VehicleFile.Read(text, fileOrName + ".yaml", places);
        if (File.Exists(fileOrName) || Path.HasExtension(fileOrName) || fileOrName.Contains('/', StringComparison.Ordinal))
            return VehicleFile.Open(fileOrName, places);
        return new(null, [new Problem(fileOrName, 1, 1, "file", $"there is no such file, nor a built-in vehicle of this name; {Yaml.Offer.Of(fileOrName, Names, "built in are")}")]);
    }

    internal static string? Resource(string name)
    {
        using Stream? stream = typeof(VehicleLibrary).Assembly.GetManifestResourceStream(name);
        if (stream is null)
            return null;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
