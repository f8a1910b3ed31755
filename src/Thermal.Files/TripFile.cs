using Thermal.Files.TripKeys;
using Thermal.Files.Yaml;

namespace Thermal.Files;

/// <summary>Reads and writes trip files: YAML with <c>format: 1</c>, snake_case keys, values with units, times as 22:30 in local standard time.</summary>
public static class TripFile
{
    /// <summary>Largest file that is read, bytes. Limit chosen by us.</summary>
    public const int MostBytes = YamlFile<TripRequest>.MostBytes;

    private static readonly YamlFile<TripRequest> Yaml = new("trip", TripTable.Map);

    /// <summary>The trip of a file on disk, or every problem in it; files it names are looked for from its own folder.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    /// <returns>A trip, or all problems; a file that is missing, locked or too large is a problem too.</returns>
    public static Reading<TripRequest> Open(string path, PlaceLibrary? places = null) => Yaml.Open(path, places, FolderOf(path));

    /// <summary>The trip in the bytes of a file, or every problem in them.</summary>
    /// <param name="bytes">Content, UTF-8 with or without byte order mark.</param>
    /// <param name="fileName">Name shown in problems.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    /// <param name="folder">Folder that names of files are relative to; null where none may be named.</param>
    public static Reading<TripRequest> Read(ReadOnlySpan<byte> bytes, string fileName, PlaceLibrary? places = null, string? folder = null) => Yaml.Read(bytes, fileName, places, folder);

    /// <summary>The trip in a text, or every problem in it.</summary>
    /// <param name="text">YAML.</param>
    /// <param name="fileName">Name shown in problems.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    /// <param name="folder">Folder that names of files are relative to; null where none may be named.</param>
    /// <returns>A trip and no problem, or no trip and all problems in the order of their lines. Never throws for any text.</returns>
    public static Reading<TripRequest> Read(string text, string fileName, PlaceLibrary? places = null, string? folder = null) => Yaml.Read(text, fileName, places, folder);

    /// <summary>A file that is read as an equal trip from the same folder; comments are not kept, and every leg is written with its end.</summary>
    /// <param name="value">The trip with where its weather comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time that is not whole minutes.</exception>
    public static string Write(TripRequest value) => Yaml.Write(value);

    // A path that is none is refused when it is opened.
    private static string FolderOf(string path)
    {
        try
        {
            return Path.GetDirectoryName(path) ?? "";
        }
        catch (ArgumentException)
        {
            return "";
        }
    }
}
