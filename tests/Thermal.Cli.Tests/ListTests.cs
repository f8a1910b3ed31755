using System.Text.Json;
using Thermal.Files;
using Thermal.Materials;

namespace Thermal.Cli.Tests;

/// <summary>materials, places and schema list what there is.</summary>
public sealed class ListTests
{
    [Fact]
    public void Materials_lists_every_material_once() =>
        Assert.All(MaterialLibrary.All, material => Assert.Contains(material.Key, Ran.Of("materials").Answers, StringComparison.Ordinal));

    [Fact]
    public void A_search_keeps_what_fits_and_nothing_else()
    {
        string answers = Ran.Of("materials", "wool").Answers;
        Assert.Contains("sheep_wool", answers, StringComparison.Ordinal);
        Assert.DoesNotContain("steel_sheet", answers, StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_that_finds_nothing_says_so()
    {
        Ran ran = Ran.Of("materials", "moonstone");
        Assert.Equal(0, ran.ExitCode);
        Assert.Contains("moonstone", ran.Answers, StringComparison.Ordinal);
    }

    [Fact]
    public void Places_lists_every_place_with_its_source()
    {
        string answers = Ran.Of("places").Answers;
        Assert.All(PlaceLibrary.BuiltIn.All, place => Assert.Contains(place.Name, answers, StringComparison.Ordinal));
    }

    [Fact]
    public void A_place_of_ones_own_is_listed_and_used()
    {
        using var folder = new TemporaryFolder();
        string own = File.ReadAllText(Path.Combine(Root(), "climates", "davos.csv")).Replace("Davos", "Moor Edge", StringComparison.Ordinal);
        folder.With("moor.csv", own);
        Assert.Contains("Moor Edge", Ran.Of("places", "--climates", folder.At(".")).Answers, StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_is_JSON_and_names_its_dialect()
    {
        using JsonDocument schema = JsonDocument.Parse(Ran.Of("schema").Answers);
        Assert.StartsWith("https://json-schema.org/", schema.RootElement.GetProperty("$schema").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Help_is_shown_where_nothing_is_asked() => Assert.Contains("assess", Ran.Of().Answers, StringComparison.Ordinal);

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Thermal.sln")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
