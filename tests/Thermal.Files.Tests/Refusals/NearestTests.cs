namespace Thermal.Files.Tests.Refusals;

/// <summary>A misspelt name gets one near name offered, or none.</summary>
public sealed class NearestTests
{
    private static readonly string[] Known = ["plywood", "plasterboard", "cork", "cord"];

    // One change in four letters is within a third, two are not; a swap of neighbours is one change.
    [Theory]
    [InlineData("plywod", "plywood"), InlineData("PLYWOOD", "plywood"), InlineData("lpywood", "plywood"), InlineData("plasterbord", "plasterboard")]
    [InlineData("corl", "cork"), InlineData("ocrk", "cork"), InlineData("cokd", "cord"), InlineData("crk", "cork"), InlineData("cxyk", null), InlineData("steel", null), InlineData("", null)]
    public void The_nearest_name_needs_no_more_changes_than_a_third_of_its_letters(string word, string? expected) => Assert.Equal(expected, Nearest.To(word, Known));

    [Fact]
    public void A_word_that_is_no_name_gets_no_offer() => Assert.Null(Nearest.To(new string('a', 65), [new string('a', 64)]));

    [Fact]
    public void Among_no_names_none_is_near() => Assert.Null(Nearest.To("plywood", []));
}
