using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Thermal.Benchmarks;

/// <summary>A project published ready to run, and how long it takes from its start to its end.</summary>
internal sealed class PublishedProgram
{
    private readonly string _assembly;

    /// <summary>Publishes a project into a folder of its own.</summary>
    /// <param name="project">Folder of the project, from the top of the repository.</param>
    /// <exception cref="InvalidOperationException">It cannot be published; the message holds what was said.</exception>
    internal PublishedProgram(string project)
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "published", Path.GetFileName(project));
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
        Run("publish", Path.Combine(Top(), project), "-c", "Release", "-r", Platform(), "--self-contained", "false", "-p:PublishReadyToRun=true", "-o", folder);
        _assembly = Path.ChangeExtension(Path.ChangeExtension(Directory.GetFiles(folder, "*.runtimeconfig.json").Single(), null), "dll");
    }

    /// <summary>One run from start to end, s.</summary>
    /// <exception cref="InvalidOperationException">It ends with another exit code than 0.</exception>
    internal double Seconds(params string[] arguments)
    {
        long start = Stopwatch.GetTimestamp();
        Run([_assembly, .. arguments]);
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    private static void Run(params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet", arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        Task<string> problems = process.StandardError.ReadToEndAsync();
        string answers = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"dotnet {string.Join(' ', arguments)} ended with {process.ExitCode}.\n{answers}\n{problems.Result}");
    }

    private static string Platform() =>
        (OperatingSystem.IsWindows() ? "win" : OperatingSystem.IsMacOS() ? "osx" : "linux") + "-" + (RuntimeInformation.ProcessArchitecture == Architecture.Arm64 ? "arm64" : "x64");

    private static string Top()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Thermal.sln"))) folder = Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("The benchmarks are run from a clone of the repository.");
    }
}
