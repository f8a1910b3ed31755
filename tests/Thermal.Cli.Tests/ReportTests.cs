namespace Thermal.Cli.Tests;

/// <summary>report says the verdict and writes the page, whole or not at all.</summary>
public sealed class ReportTests
{
    [Fact]
    public void The_page_is_written_and_the_verdict_is_said()
    {
        using var folder = new TemporaryFolder();
        Ran ran = Ran.Of("report", "weekend-van", "--out", folder.At("out"));
        Assert.Equal(("", 0), (ran.Problems, ran.ExitCode));
        string page = File.ReadAllText(Path.Combine(folder.At("out"), "index.html"));
        Assert.StartsWith("<!doctype html>", page, StringComparison.Ordinal);
        Assert.Contains("15 January 2026", page.Replace("&#160;", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.StartsWith(ran.Answers.Split('\n')[0][..20], Ran.Of("assess", "weekend-van").Answers, StringComparison.Ordinal);
        Assert.Equal(["out"], folder.Names);
    }

    [Fact]
    public void The_same_case_gives_the_same_page_to_the_byte()
    {
        using var folder = new TemporaryFolder();
        Ran.Of("report", "weekend-van", "--out", folder.At("one"));
        Ran.Of("report", "weekend-van", "--out", folder.At("two"));
        Assert.Equal(File.ReadAllBytes(Path.Combine(folder.At("one"), "index.html")), File.ReadAllBytes(Path.Combine(folder.At("two"), "index.html")));
    }

    [Fact]
    public void Pictures_are_written_beside_it_when_asked_for()
    {
        using var folder = new TemporaryFolder();
        Ran.Of("report", "weekend-van", "--pictures", "--out", folder.At("."));
        Assert.Contains("loss-by-part.svg", folder.Names);
        Assert.Contains("loss-by-part.png", folder.Names);
        Assert.Equal((byte)0x89, File.ReadAllBytes(folder.At("loss-by-part.png"))[0]);
    }

    [Fact]
    public void Json_names_the_page()
    {
        using var folder = new TemporaryFolder();
        Ran ran = Ran.Of("report", "weekend-van", "--json", "--out", folder.At("."));
        using var json = System.Text.Json.JsonDocument.Parse(ran.Answers);
        Assert.True(File.Exists(json.RootElement.GetProperty("report").GetString()));
    }
}
