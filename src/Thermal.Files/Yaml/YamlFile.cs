using System.Globalization;
using System.Text;
using Thermal.Files.Keys;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Yaml;

/// <summary>What vehicle and trip files share: from bytes to text to a reading, and from a value to text.</summary>
/// <typeparam name="T">What a file becomes.</typeparam>
/// <param name="what">What a file describes, without article, such as "vehicle".</param>
/// <param name="map">The table of its keys.</param>
internal sealed class YamlFile<T>(string what, Node<T> map) where T : class
{
    /// <summary>Largest file that is read, bytes; a large vehicle needs 30 000. Limit chosen by us.</summary>
    internal const int MostBytes = 1_000_000;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads a file on disk; one that is missing, locked or too large is a problem too.</summary>
    internal Reading<T> Open(string path, PlaceLibrary? places, string? folder = null)
    {
        try
        {
            long length = new FileInfo(path).Length;
            return length > MostBytes ? TooLarge(path, length) : Read(File.ReadAllBytes(path), path, places, folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refused(path, fault is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : "the file cannot be opened; check that it is a file and may be read");
        }
    }

    /// <summary>Reads the bytes of a file.</summary>
    internal Reading<T> Read(ReadOnlySpan<byte> bytes, string fileName, PlaceLibrary? places, string? folder = null)
    {
        if (bytes.Length > MostBytes)
            return TooLarge(fileName, bytes.Length);
        try
        {
            return Read(StrictUtf8.GetString(bytes), fileName, places, folder);
        }
        catch (DecoderFallbackException)
        {
            return Refused(fileName, "this is not a text file in UTF-8; save it as plain text");
        }
    }

    /// <summary>Reads a text; never throws for any text.</summary>
    internal Reading<T> Read(string text, string fileName, PlaceLibrary? places, string? folder = null)
    {
        if (text.Length > MostBytes)
            return TooLarge(fileName, text.Length);
        text = text.TrimStart('\uFEFF');
        if (!IsText(text))
            return Refused(fileName, $"this is not a text file; save the {what} as plain text");
        var scope = new Scope(fileName, places ?? PlaceLibrary.BuiltIn) { Folder = folder };
        T? value = YamlTree.Read(text, scope) is { } root && map.TryRead(new Spot(root, "", scope), out T? read) ? read : null;
        return scope.ProblemCount == 0 ? new(value, []) : new(null, scope.Problems);
    }

    /// <summary>A text that reads as the same value.</summary>
    internal string Write(T value)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        new YamlStream(new YamlDocument(map.Write(value))).Save(writer, assignAnchors: false);
        string text = writer.ToString().ReplaceLineEndings("\n");
        return text.EndsWith("...\n", StringComparison.Ordinal) ? text[..^4] : text;
    }

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

    private Reading<T> TooLarge(string fileName, long bytes) =>
        Refused(fileName, string.Create(CultureInfo.InvariantCulture, $"{bytes} bytes are too many for a {what}; a file has at most {MostBytes}"));

    private static Reading<T> Refused(string fileName, string what) => new(null, [new Problem(fileName, 1, 1, "file", what)]);
}
