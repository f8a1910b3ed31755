using System.Runtime.CompilerServices;

namespace Thermal.Samples.TripPage;

/// <summary>notebooks/trips.md holds tables of the model beside facts of the trade: each is computed again here, so that none goes stale.</summary>
/// <remarks>Approved text: it proves "unchanged", not "right". Set APPROVE=1 to write them anew after reading the change.</remarks>
public sealed class TripPageTests
{
    public static TheoryData<string> Tables => [.. TripFacts.All.Keys];

    [Theory, MemberData(nameof(Tables))]
    public void The_page_of_trips_shows_what_the_model_says(string name)
    {
        string page = File.ReadAllText(Page()).ReplaceLineEndings("\n"), begin = $"<!-- computed: {name} -->\n", end = "<!-- end -->";
        int from = page.IndexOf(begin, StringComparison.Ordinal) + begin.Length, until = page.IndexOf(end, from, StringComparison.Ordinal);
        Assert.True(from >= begin.Length && until >= from, $"The page has no place for {name}.");
        string computed = TripFacts.All[name]();
        if (Environment.GetEnvironmentVariable("APPROVE") == "1")
        {
            File.WriteAllText(Page(), page[..from] + computed + page[until..]);
            return;
        }
        Assert.Equal(page[from..until], computed);
    }

    [Fact]
    public void Every_computed_table_of_the_page_is_known() => Assert.Equal(
        TripFacts.All.Keys.Order(StringComparer.Ordinal),
        File.ReadLines(Page()).Where(line => line.StartsWith("<!-- computed: ", StringComparison.Ordinal)).Select(line => line["<!-- computed: ".Length..^" -->".Length]).Order(StringComparer.Ordinal));

    private static string Page([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "notebooks", "trips.md");
}
