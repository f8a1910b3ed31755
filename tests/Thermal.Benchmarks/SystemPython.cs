using System.Diagnostics;

namespace Thermal.Benchmarks;

/// <summary>Runs one of the programs of this folder with the system's python3, on one core.</summary>
internal static class SystemPython
{
    private const string Python = "/usr/bin/python3";

    /// <summary>The lines it prints; null with the reason where it, or a library it needs, is not to be had.</summary>
    internal static (string[]? Lines, string Why) Run(string program, params string[] arguments)
    {
        if (!File.Exists(Python)) return (null, $"there is no {Python}");
        ProcessStartInfo start = new(Python, [Path.Combine(AppContext.BaseDirectory, program), .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (string library in (string[])["OPENBLAS", "OMP", "MKL"]) start.Environment[$"{library}_NUM_THREADS"] = "1";
        using Process process = Process.Start(start)!;
        Task<string> problems = process.StandardError.ReadToEndAsync();
        string[] lines = process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        process.WaitForExit();
        return process.ExitCode == 0 ? (lines, "") : (null, problems.Result.TrimEnd().Split('\n')[^1]);
    }
}
