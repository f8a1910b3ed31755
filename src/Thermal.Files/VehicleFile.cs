using System.Globalization;
using System.Text;
using Thermal.Assessments;
using Thermal.Files.VehicleKeys;
using Thermal.Files.Yaml;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files;

/// <summary>Reads and writes vehicle files: YAML with <c>format: 1</c>, snake_case keys and values with units.</summary>
public static class VehicleFile
{
    /// <summary>Largest file that is read, bytes; a large vehicle needs 30 000. Limit chosen by us.</summary>
    public const int MostBytes = 1_000_000;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The vehicle of a file on disk, or every problem in it.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    /// <returns>A case, or all problems; a file that is missing, locked or too large is a problem too.</returns>
    public static Reading<Case> Open(string path, PlaceLibrary? places = null)
    {
        try
        {
            long length = new FileInfo(path).Length;
            return length > MostBytes ? TooLarge(path, length) : Read(File.ReadAllBytes(path), path, places);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refused(path, fault is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : "the file cannot be opened; check that it is a file and may be read");
        }
    }

    /// <summary>The vehicle in the bytes of a file, or every problem in them.</summary>
    /// <param name="bytes">Content, UTF-8 with or without byte order mark.</param>
    /// <param name="fileName">Name shown in problems.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    public static Reading<Case> Read(ReadOnlySpan<byte> bytes, string fileName, PlaceLibrary? places = null)
    {
        if (bytes.Length > MostBytes)
            return TooLarge(fileName, bytes.Length);
        try
        {
            return Read(StrictUtf8.GetString(bytes), fileName, places);
        }
        catch (DecoderFallbackException)
        {
            return Refused(fileName, "this is not a text file in UTF-8; save it as plain text");
        }
    }

    /// <summary>The vehicle in a text, or every problem in it.</summary>
    /// <param name="text">YAML.</param>
    /// <param name="fileName">Name shown in problems.</param>
    /// <param name="places">Places that may be named; the built-in ones where left out.</param>
    /// <returns>A case and no problem, or no case and all problems in the order of their lines. Never throws for any text.</returns>
    public static Reading<Case> Read(string text, string fileName, PlaceLibrary? places = null)
    {
        if (text.Length > MostBytes)
            return TooLarge(fileName, text.Length);
        text = text.TrimStart('\uFEFF');
        if (!IsText(text))
            return Refused(fileName, "this is not a text file; save the vehicle as plain text");
        var scope = new Scope(fileName, places ?? PlaceLibrary.BuiltIn);
        Case? value = YamlTree.Read(text, scope) is { } root && CaseKeys.Map.TryRead(new Spot(root, "", scope), out Case? read) ? read : null;
        return scope.ProblemCount == 0 ? new(value, []) : new(null, scope.Problems);
    }

    /// <summary>A file that <see cref="Read(string, string, PlaceLibrary?)"/> reads as an equal vehicle; comments are not kept.</summary>
    /// <param name="value">The case.</param>
    public static string Write(Case value)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        new YamlStream(new YamlDocument(CaseKeys.Map.Write(value))).Save(writer, assignAnchors: false);
        string text = writer.ToString().ReplaceLineEndings("\n");
        return text.EndsWith("...\n", StringComparison.Ordinal) ? text[..^4] : text;
    }

    /// <summary>A commented vehicle to begin with, for the command that writes a new file.</summary>
    public static string Starter() => VehicleLibrary.Resource("starter")!.ReplaceLineEndings("\n");

    // Control characters and halves of a letter stand in no text that was saved as one.
    private static bool IsText(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]))
                i++;
            else if (char.IsSurrogate(text[i]) || (char.IsControl(text[i]) && text[i] is not ('\n' or '\r' or '\t')))
                return false;
        }
        return true;
    }

    private static Reading<Case> TooLarge(string fileName, long bytes) =>
        Refused(fileName, string.Create(CultureInfo.InvariantCulture, $"{bytes} bytes are too many for a vehicle; a file has at most {MostBytes}"));

    private static Reading<Case> Refused(string fileName, string what) => new(null, [new Problem(fileName, 1, 1, "file", what)]);
}
