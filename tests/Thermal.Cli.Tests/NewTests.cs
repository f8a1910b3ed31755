namespace Thermal.Cli.Tests;

/// <summary>new writes a file to start from, whole or not at all.</summary>
public sealed class NewTests
{
    [Fact]
    public void The_starter_is_read_and_assessed_as_it_is()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Ran.Of("new", folder.At("mine.yaml")).ExitCode);
        Assert.Equal(["mine.yaml"], folder.Names);
        Ran ran = Ran.Of("assess", folder.At("mine.yaml"));
        Assert.Equal(("", 0), (ran.Problems, ran.ExitCode));
    }

    [Fact]
    public void The_starter_has_comments()
    {
        using var folder = new TemporaryFolder();
        Ran.Of("new", folder.At("mine.yaml"));
        Assert.True(File.ReadLines(folder.At("mine.yaml")).Count(line => line.Contains('#', StringComparison.Ordinal)) >= 10);
    }

    [Fact]
    public void A_file_that_is_there_is_not_touched()
    {
        using var folder = new TemporaryFolder();
        string file = folder.With("mine.yaml", "kept");
        Ran ran = Ran.Of("new", file);
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("--force", ran.Problems, StringComparison.Ordinal);
        Assert.Equal("kept", File.ReadAllText(file));
    }

    [Fact]
    public void Force_replaces_it()
    {
        using var folder = new TemporaryFolder();
        string file = folder.With("mine.yaml", "replaced");
        Assert.Equal(0, Ran.Of("new", file, "--force").ExitCode);
        Assert.DoesNotContain("replaced", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_refused()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(2, Ran.Of("new", folder.At(Path.Combine("nowhere", "mine.yaml"))).ExitCode);
    }
}
