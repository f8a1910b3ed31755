using System.Text.RegularExpressions;
using Thermal.Files;

namespace Thermal.Cli.Tests;

/// <summary>Nonsense is refused with exit code 2, by name and place, and nothing is written.</summary>
public sealed partial class RefusalTests
{
    public static TheoryData<string[], string> Misspelt => new()
    {
        { ["assess", "--jsn"], "did you mean --json" },
        { ["assess", "--units", "furlongs"], "metric or us" },
        { ["asess"], "assess" },
        { ["assess", "library-vn"], "library-van" },
        { ["materials", "--nope"], "--nope" },
        { ["thickness", "--layer", "2"], "--panel" },
        { ["thickness", "--panel", "rof", "--layer", "2"], "roof" },
        { ["thickness", "--panel", "roof", "--layer", "99"], "layer" },
        { ["thickness", "--panel", "roof", "--layer", "1,5"], "layer" },
        { ["assess", "one", "two"], "two" },
        { ["places", "--climates", "no-such-folder"], "no-such-folder" },
        { ["place"], "NAME" },
        { ["place", "davoss"], "did you mean Davos" },
        { ["place", "moonbase"], "places" },
        { ["place", "davos", "--heading", "south"], "--heading" },
        { ["place", "davos", "--heading", "361"], "--heading" },
        { ["place", "davos", "--horizon", "1,5"], "--horizon" },
        { ["place", "davos", "--horizon", "NaN"], "--horizon" },
        { ["place", "davos", "--albedo", "7"], "--albedo" },
        { ["place", "davos", "--seed", "1.5"], "--seed" },
        { ["place", "--hedding"], "did you mean --heading" },
        { ["trip", "ski-weak"], "ski-week" },
        { ["trip", "ski-week", "--vehicle", "library-vn"], "library-van" },
        { ["trip", "--vehicel"], "did you mean --vehicle" },
        { ["trip", "cold-chamber", "--csv", "no/such/folder/hours.csv"], "hours.csv" },
        { ["report", "--trip", "ski-weak"], "ski-week" },
        { ["assess", "no/such/file.yaml"], "no such file" },
    };

    [Theory, MemberData(nameof(Misspelt))]
    public void A_misspelt_word_is_named_and_ends_with_two(string[] args, string named)
    {
        Ran ran = Ran.Of(args);
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains(named, ran.Problems, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(ran.Answers);
    }

    public static TheoryData<string> Bad => new()
    {
        "", "\0\u0001binary", "format: 1", "format: 1\nname: x\nname: y", "{{{", "]", "!!]", "b:({c: N}\n]", "format: 2\n", "- a\n- b\n", "\tformat: 1",
        new string('[', 5000), "format: 1\nroof: {thickness: 40}\n", "format: 1\nlength: 1,5 m\n", "format: 1\nlength: 1_000 mm\n", "format: 1\nlength: .nan m\n",
    };

    [Theory, MemberData(nameof(Bad))]
    public void A_bad_file_is_refused_with_line_column_and_place(string content)
    {
        using var folder = new TemporaryFolder();
        string file = folder.With("bad.yaml", content);
        foreach (string command in (string[])["assess", "report"])
        {
            Ran ran = Ran.Of(command == "report" ? [command, file, "--out", folder.At("out")] : [command, file]);
            Assert.Equal((2, ""), (ran.ExitCode, ran.Answers));
            Assert.NotEmpty(ran.ProblemLines);
            Assert.All(ran.ProblemLines, line => Assert.Matches(Located(), line));
            Assert.All(ran.ProblemLines, line => Assert.StartsWith(file, line, StringComparison.Ordinal));
        }
        Assert.Equal(["bad.yaml"], folder.Names);
    }

    [Fact]
    public void All_problems_of_a_file_are_told_at_once()
    {
        using var folder = new TemporaryFolder();
        string text = VehicleLibrary.Text("weekend-van")!.Replace("format: 1", "format: 1\nnonsense: 3\nmore_nonsense: 4", StringComparison.Ordinal);
        Assert.Equal(2, Ran.Of("assess", folder.With("two.yaml", text)).ProblemLines.Length);
    }

    [Fact]
    public void A_folder_is_no_vehicle()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(2, Ran.Of("assess", folder.At(".")).ExitCode);
    }

    [Fact]
    public void A_page_that_cannot_be_written_is_told_by_its_path()
    {
        using var folder = new TemporaryFolder();
        string file = folder.With("taken", "a file where the folder should be");
        Ran ran = Ran.Of("report", "weekend-van", "--out", file);
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains(file, ran.Problems, StringComparison.Ordinal);
        Assert.Equal(["taken"], folder.Names);
    }

    [GeneratedRegex(@"^.+:\d+:\d+: .+: .+$")]
    private static partial Regex Located();
}
