using Thermal.Climates;
using Thermal.Files.Tests.Consistency;

namespace Thermal.Files.Tests.Refusals;

/// <summary>Naming a place, and a person's own folder of places.</summary>
public sealed class PlaceLibraryTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("places").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("zurich", "Zürich"), InlineData("ZÜRICH", "Zürich"), InlineData(" Zu\u0308rich ", "Zürich"), InlineData("sodankyla", "Sodankylä")]
    [InlineData("north west italy", "North-west Italy"), InlineData("new-york", "New York")]
    public void Capitals_accents_and_hyphens_may_be_left_out(string asked, string found) => Assert.Equal(found, PlaceLibrary.BuiltIn.Find(asked)?.Name);

    [Theory]
    [InlineData("zürch", "Zürich"), InlineData("Davso", "Davos"), InlineData("manchster", "Manchester"), InlineData("Timbuktu", null), InlineData("", null)]
    public void An_unknown_name_is_not_guessed_but_a_near_one_is_offered(string asked, string? offered)
    {
        Assert.Null(PlaceLibrary.BuiltIn.Find(asked));
        Assert.Equal(offered, PlaceLibrary.BuiltIn.NearestName(asked));
    }

    [Fact]
    public void A_place_of_ones_own_is_added_and_one_of_the_same_name_stands_in()
    {
        string nairn = BuiltInPlaceTests.TextOf("climate:nairn");
        Write("mine.csv", nairn.Replace("# name: Nairn", "# name: Upper Pass", StringComparison.Ordinal));
        Write("davos.csv", nairn.Replace("# name: Nairn", "# name: DAVOS", StringComparison.Ordinal));
        PlaceLibrary library = PlaceLibrary.WithFolder(folder).Value!;
        Assert.Equal(PlaceLibrary.BuiltIn.All.Count + 1, library.All.Count);
        Assert.NotNull(library.Find("upper pass"));
        Assert.Equal(23, library.Find("davos")!.AltitudeM);
        Assert.Equal(1594, PlaceLibrary.BuiltIn.Find("davos")!.AltitudeM);
    }

    [Fact]
    public void The_problems_of_all_files_of_a_folder_are_named_with_their_files()
    {
        Write("a.csv", "nothing");
        Write("b.csv", "");
        Write("c.csv", new string('x', 300_000));
        Write("readme.txt", "not a place, not read");
        Reading<PlaceLibrary> reading = PlaceLibrary.WithFolder(folder);
        Assert.Null(reading.Value);
        Assert.Equal(["a.csv", "b.csv", "c.csv"], reading.Problems.Select(problem => Path.GetFileName(problem.File)).Distinct());
    }

    [Fact]
    public void Two_files_with_one_name_are_a_problem()
    {
        string nairn = BuiltInPlaceTests.TextOf("climate:nairn");
        Write("a.csv", nairn);
        Write("b.csv", nairn);
        Problem problem = Assert.Single(PlaceLibrary.WithFolder(folder).Problems);
        Assert.Equal((Path.Combine(folder, "b.csv"), "name"), (problem.File, problem.Where));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_a_problem() =>
        Assert.Equal("folder", Assert.Single(PlaceLibrary.WithFolder(Path.Combine(folder, "none")).Problems).Where);

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(folder, name), text);
}
