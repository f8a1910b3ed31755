using System.Text.RegularExpressions;
using Thermal.Files;

namespace Thermal.Cli.Tests;

/// <summary>assess says what there is to say, verdict first, in the reader's units, whatever the culture.</summary>
public sealed partial class AssessTests
{
    public static TheoryData<string> BuiltIn => [.. VehicleLibrary.Names];

    [Theory, MemberData(nameof(BuiltIn))]
    public void Every_built_in_vehicle_is_assessed_without_a_problem(string name)
    {
        Ran ran = Ran.Of("assess", name);
        Assert.Equal(("", 0), (ran.Problems, ran.ExitCode));
    }

    [Fact]
    public void The_verdict_is_the_first_line() => Assert.Matches("^(Warm enough|Just warm enough|Not warm enough)", Ran.Of("assess").Answers);

    [Fact]
    public void Without_a_file_the_library_van_is_meant() => Assert.Equal(Ran.Of("assess", "library-van").Answers, Ran.Of("assess").Answers);

    [Fact]
    public void Numbers_have_a_point_whatever_the_culture()
    {
        Assert.Equal("1,5", 1.5.ToString()); // the suite's culture would write a comma
        Assert.DoesNotMatch(DecimalComma(), Ran.Of("assess").Answers);
    }

    [Fact]
    public void US_units_leave_no_metric_temperature_behind()
    {
        string answers = Ran.Of("assess", "--units", "us").Answers;
        Assert.Contains("°F", answers, StringComparison.Ordinal);
        Assert.Contains("Btu/h", answers, StringComparison.Ordinal);
        Assert.DoesNotContain("°C", answers, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", answers, StringComparison.Ordinal);
    }

    [Fact]
    public void No_sum_is_minus_zero_and_no_minus_is_a_hyphen()
    {
        string answers = Ran.Of("assess").Answers;
        Assert.DoesNotMatch(MinusZero(), answers);
        Assert.DoesNotMatch(HyphenBeforeNumber(), answers);
    }

    [Fact]
    public void Bold_is_only_for_a_screen_that_shows_it()
    {
        Assert.Contains('\e', Ran.On(isStyled: true, "assess").Answers);
        Assert.DoesNotContain('\e', Ran.On(isStyled: false, "assess").Answers);
    }

    [Theory]
    [InlineData(true, null, true)]
    [InlineData(true, "", true)]
    [InlineData(true, "1", false)]
    [InlineData(false, null, false)]
    public void Bold_needs_a_screen_and_no_word_against_colour(bool isScreen, string? noColour, bool isStyled) =>
        Assert.Equal(isStyled, Terminal.IsStyled(isScreen, noColour));

    [Fact]
    public void Lines_of_sentences_keep_to_the_width() => Assert.All(
        Ran.Of("assess").Answers.Split('\n').Where(line => line.StartsWith("· ", StringComparison.Ordinal)),
        line => Assert.InRange(line.Length, 1, Terminal.UsualWidth));

    [GeneratedRegex(@"\d,\d")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"−0(\.0+)?(?![.\d])")]
    private static partial Regex MinusZero();

    [GeneratedRegex(@"(?<![\w-])-\d")]
    private static partial Regex HyphenBeforeNumber();
}
