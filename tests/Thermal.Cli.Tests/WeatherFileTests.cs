using System.Text.Json;
using System.Text.RegularExpressions;
using Thermal.Climates;
using Thermal.Files;
using Thermal.Files.Weathers;

namespace Thermal.Cli.Tests;

/// <summary>place --weather says what it found in a file, keeps it where asked, and refuses a damaged one whole.</summary>
public sealed partial class WeatherFileTests
{
    private static readonly Weather Davos = GeneratedWeather.Typical(PlaceLibrary.BuiltIn.Find("davos")!);
    private static readonly string DavosText = WeatherFile.Write(Davos);

    [Fact]
    public void A_year_of_hours_is_told_with_layout_steps_conditions_months_and_sun()
    {
        using var folder = new TemporaryFolder();
        Ran ran = Ran.Of("place", "--weather", folder.With("year.csv", DavosText));
        Assert.Equal(("", 0), (ran.Problems, ran.ExitCode));
        Assert.All(["our own columns", "8760 steps of 1.0 h", "Design conditions", "coldest mean of 72 h", "Months", "Sun on a parked vehicle"],
            words => Assert.Contains(words, ran.Answers.ReplaceLineEndings(" "), StringComparison.Ordinal));
        Assert.DoesNotContain("generated year (seed", ran.Answers, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_saved_can_be_read_again_as_hours_and_as_a_place()
    {
        using var folder = new TemporaryFolder();
        string file = folder.With("year.csv", DavosText.Replace("Davos", "Moor Edge", StringComparison.Ordinal)), saved = folder.At("kept.csv");
        Directory.CreateDirectory(folder.At("own"));
        Assert.Equal(0, Ran.Of("place", "--weather", file, "--save", saved, "--save-place", Path.Combine(folder.At("own"), "moor.csv")).ExitCode);
        Assert.Equal(Number(Conditions(file), "coldest_72_h_c"), Number(Conditions(saved), "coldest_72_h_c"), 0.01); // written to 0.01 K
        Ran told = Ran.Of("place", "moor edge", "--climates", folder.At("own"));
        Assert.Equal(("", 0), (told.Problems, told.ExitCode));
        Assert.Contains("computed from readings", told.Answers.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Months_of_the_saved_place_are_those_the_year_was_made_from()
    {
        using var folder = new TemporaryFolder();
        Ran.Of("place", "--weather", folder.With("year.csv", DavosText), "--save-place", folder.At("place.csv"));
        Place place = PlaceFile.Read(File.ReadAllText(folder.At("place.csv")), "place.csv").Value!, made = PlaceLibrary.BuiltIn.Find("davos")!;
        for (int m = 0; m < 12; m++)
            Assert.Equal(made.Months[m].MeanC, place.Months[m].MeanC, 0.02); // hours are written to 0.01 K, means to 0.01 K
    }

    [Fact]
    public void A_few_days_are_told_without_months_and_save_no_place()
    {
        using var folder = new TemporaryFolder();
        string file = folder.With("days.csv", WeatherFile.Write(GeneratedWeather.ColdSpell(PlaceLibrary.BuiltIn.Find("davos")!, 5)));
        Ran ran = Ran.Of("place", "--weather", file);
        Assert.Equal(("", 0), (ran.Problems, ran.ExitCode));
        Assert.Contains("twenty whole days", ran.Answers.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(2, Ran.Of("place", "--weather", file, "--save-place", folder.At("place.csv")).ExitCode);
        Assert.Equal(["days.csv"], folder.Names);
    }

    public static TheoryData<string> Bad => ["", "nonsense", "\0\u0001", "# name: x\ntime,air_c\n", "a,b\n1,2\n"];

    [Theory, MemberData(nameof(Bad))]
    public void A_damaged_file_is_refused_with_line_and_column_and_nothing_is_written(string content)
    {
        using var folder = new TemporaryFolder();
        string file = folder.With("bad.csv", content);
        Ran ran = Ran.Of("place", "--weather", file, "--save", folder.At("kept.csv"));
        Assert.Equal((2, ""), (ran.ExitCode, ran.Answers));
        Assert.NotEmpty(ran.ProblemLines);
        Assert.All(ran.ProblemLines, line => Assert.Matches(Located(), line));
        Assert.Equal(["bad.csv"], folder.Names);
    }

    [Theory]
    [InlineData("--weather", "no-such-file.csv")]
    [InlineData("--save", "x.csv")]
    [InlineData("davos", "--save-place", "x.csv")]
    [InlineData("davos", "--weather", "x.csv")]
    public void Options_that_do_not_fit_are_refused(params string[] args) => Assert.Equal(2, Ran.Of(["place", .. args]).ExitCode);

    private static JsonElement Conditions(string file) => JsonDocument.Parse(Ran.Of("place", "--weather", file, "--json").Answers).RootElement.GetProperty("design_conditions");

    private static double Number(JsonElement element, string key) => element.GetProperty(key).GetDouble();

    [GeneratedRegex(@"^.+:\d+:\d+: .+: .+$")]
    private static partial Regex Located();
}
