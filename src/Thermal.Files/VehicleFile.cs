using Thermal.Assessments;
using Thermal.Files.VehicleKeys;
using Thermal.Files.Yaml;

namespace Thermal.Files;

/// <summary>Reads and writes vehicle files: YAML with <c>format: 1</c>, snake_case keys and values with units.</summary>
public static class VehicleFile
{
    /// <summary>Largest file that is read, bytes; a large vehicle needs 30 000. Limit chosen by us.</summary>
    public const int MostBytes = YamlFile<Case>.MostBytes;

    private static readonly YamlFile<Case> Yaml = new("vehicle", CaseKeys.Map);

    /// <summary>The vehicle of a file on disk, or every problem in it.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    /// <returns>A case, or all problems; a file that is missing, locked or too large is a problem too.</returns>
    public static Reading<Case> Open(string path, PlaceLibrary? places = null) => Yaml.Open(path, places);

    /// <summary>The vehicle in the bytes of a file, or every problem in them.</summary>
    /// <param name="bytes">Content, UTF-8 with or without byte order mark.</param>
    /// <param name="fileName">Name shown in problems.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    public static Reading<Case> Read(ReadOnlySpan<byte> bytes, string fileName, PlaceLibrary? places = null) => Yaml.Read(bytes, fileName, places);

    /// <summary>The vehicle in a text, or every problem in it.</summary>
    /// <param name="text">YAML.</param>
    /// <param name="fileName">Name shown in problems.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    /// <returns>A case and no problem, or no case and all problems in the order of their lines. Never throws for any text.</returns>
    public static Reading<Case> Read(string text, string fileName, PlaceLibrary? places = null) => Yaml.Read(text, fileName, places);

    /// <summary>A file that <see cref="Read(string, string, PlaceLibrary?)"/> reads as an equal vehicle; comments are not kept.</summary>
    /// <param name="value">The case.</param>
    public static string Write(Case value) => Yaml.Write(value);

    /// <summary>A commented vehicle to begin with, for the command that writes a new file.</summary>
    public static string Starter() => VehicleLibrary.Resource("starter")!.ReplaceLineEndings("\n");
}
