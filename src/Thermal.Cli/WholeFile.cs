namespace Thermal.Cli;

/// <summary>Writes files whole or not at all.</summary>
internal static class WholeFile
{
    /// <summary>Writes to a temporary file beside the target and renames it, so that nobody ever sees half a file.</summary>
    /// <exception cref="IOException">The folder cannot be written, or the disk is full; the target is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written; the target is as it was.</exception>
    internal static void Write(string path, Action<Stream> content)
    {
        string temporary = path + "." + Path.GetRandomFileName();
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew))
                content(stream);
            File.Move(temporary, path, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    /// <summary>The same for text, in UTF-8 without a mark.</summary>
    internal static void WriteText(string path, string text) => Write(path, stream =>
    {
        using var writer = new StreamWriter(stream);
        writer.Write(text);
    });
}
