using System.Diagnostics;

namespace Thermal.Samples;

/// <summary>Runs what README tells people to type, in its order and in one empty folder, as they would.</summary>
public sealed class ReadmeTests : IDisposable
{
    private const string Program = "dotnet run --project src/Thermal.Cli -- ";
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly string _folder = Directory.CreateTempSubdirectory("thermal-readme-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Every_command_of_the_README_ends_with_exit_code_0_and_every_report_writes_its_page()
    {
        List<string> commands = Commands(File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "README.md")));
        Assert.Contains("report", commands); // the first thing README promises
        foreach (string command in commands)
        {
            string[] words = command.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            (int code, string said) = Run(words);
            Assert.True(code == 0, $"`{Program}{command}` ended with {code}:\n{said}");
            if (words[0] == "report") Assert.Contains("<html", PageIn(words), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Only_lines_of_sh_blocks_that_run_the_program_are_commands() => Assert.Equal(["one --a", "two"], Commands(
    [
        Program + "outside a block", "```sh", Program + "one --a", "dotnet test Thermal.sln", Program + "two", "```", "```yaml", Program + "in another language", "```",
    ]));

    private static List<string> Commands(IEnumerable<string> lines)
    {
        List<string> commands = [];
        bool inBlock = false;
        foreach (string line in lines)
        {
            if (line.StartsWith("```", StringComparison.Ordinal)) inBlock = line == "```sh";
            else if (inBlock && line.StartsWith(Program, StringComparison.Ordinal)) commands.Add(line[Program.Length..].Trim());
        }
        return commands;
    }

    /// <summary>The page of a report, where README says it is written: in the folder after --out, else in thermal-report.</summary>
    private string PageIn(string[] words)
    {
        int option = Array.IndexOf(words, "--out");
        string folder = Path.Combine(_folder, option < 0 ? "thermal-report" : words[option + 1]);
        return File.ReadAllText(Directory.GetFiles(folder, "*.html").Single());
    }

    private (int Code, string Said) Run(string[] words)
    {
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "Thermal.Cli.dll"), .. words])
        {
            WorkingDirectory = _folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process process = Process.Start(start)!;
        Task<string> answers = process.StandardOutput.ReadToEndAsync(), problems = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience)) process.Kill(entireProcessTree: true);
        process.WaitForExit();
        return (process.ExitCode, answers.Result + problems.Result);
    }
}
