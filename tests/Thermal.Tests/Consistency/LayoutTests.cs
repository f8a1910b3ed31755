using System.ComponentModel;
using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Thermal.Tests.Consistency;

/// <summary>The project's files: how many at the top, how long, and nothing in them that belongs elsewhere.</summary>
public sealed partial class LayoutTests
{
    private const int LongestFile = 300;

    private static readonly string[] TopEntries =
    [
        ".ci", ".editorconfig", ".gitattributes", ".gitignore", "DEVELOPERS.md", "Directory.Build.props", "Directory.Packages.props",
        "LICENSE", "README.md", "Thermal.sln", "climates", "global.json", "notebooks", "src", "tests",
    ];

    private static readonly string[] Kinds = ["*.cs", "*.csv", "*.yaml", "*.md", "*.csproj", "*.props", "*.json", "*.css", "*.js", "*.razor", "*.html", "*.txt"];

    private static IEnumerable<string> AllText =>
        from folder in new[] { "src", "tests", "climates", "notebooks" }
        where Directory.Exists(Path.Combine(Ground.Top, folder))
        from kind in Kinds
        from path in Ground.Files(folder, kind)
        where !path.EndsWith("packages.lock.json", StringComparison.Ordinal)
        select path;

    /// <summary>What is kept counts, not what a person writes beside it; where git or its folder is missing nothing can be told.</summary>
    [Fact]
    public void The_top_folder_holds_only_what_is_fixed() => Ground.NothingOffends(Kept().Except(TopEntries));

    private static string[] Kept()
    {
        try
        {
            using Process git = Process.Start(new ProcessStartInfo("git", ["ls-tree", "--name-only", "HEAD"])
            {
                WorkingDirectory = Ground.Top, RedirectStandardOutput = true, RedirectStandardError = true,
            })!;
            string names = git.StandardOutput.ReadToEnd();
            git.WaitForExit();
            Assert.SkipUnless(git.ExitCode == 0, "Skipped: this folder is not a git checkout.");
            return names.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        }
        catch (Win32Exception)
        {
            Assert.Skip("Skipped: git is not installed here.");
            return [];
        }
    }

    [Fact]
    public void No_source_file_is_longer_than_300_lines() => Ground.NothingOffends(
        from path in Ground.Files("src", "*.cs").Concat(Ground.Files("tests", "*.cs"))
        let lines = Ground.Lines(path).Length
        where lines > LongestFile
        select $"{path}: {lines} lines");

    /// <summary>Words are put together here so that this file does not hold what it looks for.</summary>
    [Fact]
    public void Nothing_left_open_and_no_machine_s_paths_stand_in_any_file()
    {
        Regex never = new(string.Join('|', @"\bTO" + @"DO\b", @"\bFIX" + @"ME\b", @"\bHA" + @"CK\b", "/wo" + "rk/", "/tm" + "p/", "/ho" + "me/", @"C:" + @"\\Users", @"\btrans" + @"cripts?\b", @"\.\./sha" + "red"));
        Ground.NothingOffends(
            from path in AllText
            from line in Ground.Lines(path).Select((text, index) => (Text: text, Number: index + 1))
            from Match word in never.Matches(line.Text)
            select $"{path}:{line.Number}: {word.Value}");
    }

    [Fact]
    public void Text_ends_its_lines_with_a_single_line_feed() => Assert.DoesNotContain(AllText, path => Ground.Text(path).Contains('\r', StringComparison.Ordinal));

    /// <summary>A number written for the user's culture is caught by the analyzers; a bare conversion inside interpolated text of the physics is not.</summary>
    [Fact]
    public void The_physics_writes_no_number_in_the_user_s_culture() => Ground.NothingOffends(
        from path in Ground.Files("src/Thermal", "*.cs")
        from line in Ground.Lines(path).Select((text, index) => (Text: text, Number: index + 1))
        where Written().IsMatch(line.Text)
        select $"{path}:{line.Number}");

    [GeneratedRegex(@"\.ToString\(\)|CurrentCulture")]
    private static partial Regex Written();
}
