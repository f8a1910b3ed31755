namespace Thermal.Tests.Published;

/// <summary>The loader refuses a table that does not say where its values come from.</summary>
public sealed class PublishedTableTests
{
    private const string Complete = """
        # source:    a handbook, table 3
        # columns:   temperature_C [°C], phase [text]
        # tolerance: 1 %, the handbook's own
        # copied by: from the printed page
        temperature_C,phase
        -1.5,ice
        """;

    private static IReadOnlyList<object[]> Parsed(string text)
    {
        using var reader = new StringReader(text);
        return PublishedTable.Parse(reader, "file.csv");
    }

    [Fact]
    public void A_complete_file_gives_numbers_and_words_in_column_order() => Assert.Equal([-1.5, "ice"], Assert.Single(Parsed(Complete)));

    [Theory]
    [InlineData("source")]
    [InlineData("columns")]
    [InlineData("tolerance")]
    [InlineData("copied by")]
    public void A_header_without_one_of_its_lines_is_refused_by_name(string line) => Assert.Contains($"'# {line}: …'",
        Assert.Throws<InvalidDataException>(() => Parsed(Complete.Replace($"# {line}:", "# other:", StringComparison.Ordinal))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("-1.5,", "phase")]
    [InlineData("\"-1,5\",ice", "temperature_C")]
    [InlineData("NaN,ice", "temperature_C")]
    [InlineData("-1.5", "1 cells")]
    public void A_cell_that_does_not_fit_its_column_is_refused_with_its_line(string row, string named)
    {
        string message = Assert.Throws<InvalidDataException>(() => Parsed(Complete.Replace("-1.5,ice", row, StringComparison.Ordinal))).Message;
        Assert.Contains("line 6", message, StringComparison.Ordinal);
        Assert.Contains(named, message, StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_that_differ_from_the_header_are_refused() =>
        Assert.Throws<InvalidDataException>(() => Parsed(Complete.Replace("temperature_C,phase", "temperature_C,state", StringComparison.Ordinal)));
}
