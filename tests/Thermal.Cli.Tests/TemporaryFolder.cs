namespace Thermal.Cli.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("thermal-");

    /// <summary>A path inside it.</summary>
    internal string At(string name) => Path.Combine(folder.FullName, name);

    /// <summary>A file inside it with this content; its path.</summary>
    internal string With(string name, string content)
    {
        File.WriteAllText(At(name), content);
        return At(name);
    }

    /// <summary>Names of everything in it, in order.</summary>
    internal string[] Names => [.. folder.GetFileSystemInfos().Select(entry => entry.Name).Order(StringComparer.Ordinal)];

    public void Dispose() => folder.Delete(recursive: true);
}
