using System.Runtime.CompilerServices;

namespace Thermal.Tests.Consistency;

/// <summary>The project's own files, for tests that read them.</summary>
internal static class Ground
{
    private static readonly string[] NotOurs = ["bin", "obj", ".git", "node_modules", "artifacts", "thermal-report", "TestResults"];

    /// <summary>The top folder of the project.</summary>
    internal static string Top { get; } = Find();

    /// <summary>Paths below a folder, relative to the top, with forward slashes; nothing that a build made.</summary>
    internal static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Top, folder), pattern, SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Top, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Intersect(NotOurs).Any())
            .Order(StringComparer.Ordinal);

    /// <summary>A rule holds when nothing offends it; all that does is listed.</summary>
    internal static void NothingOffends(IEnumerable<string> offenders)
    {
        string[] found = [.. offenders];
        Assert.True(found.Length == 0, $"{found.Length} against the rule:\n{string.Join('\n', found)}");
    }

    internal static string Text(string relative) => File.ReadAllText(Path.Combine(Top, relative));

    internal static string[] Lines(string relative) => File.ReadAllLines(Path.Combine(Top, relative));

    private static string Find([CallerFilePath] string here = "")
    {
        for (DirectoryInfo? folder = new FileInfo(here).Directory; folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Thermal.sln"))) return folder.FullName;
        throw new DirectoryNotFoundException($"No Thermal.sln above {here}.");
    }
}
