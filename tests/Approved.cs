using System.Runtime.CompilerServices;

namespace Thermal.Tests;

/// <summary>Approved text beside its test: it proves "unchanged", not "right".</summary>
internal static class Approved
{
    internal static void Match(string actual, [CallerFilePath] string test = "", [CallerMemberName] string name = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(test)!, $"{name}.approved.txt");
        string text = actual.ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable("APPROVE") == "1")
            File.WriteAllText(path, text);
        Assert.True(File.Exists(path), $"No approved file yet. Read the output, then run with APPROVE=1.\n{text}");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), text);
    }
}
