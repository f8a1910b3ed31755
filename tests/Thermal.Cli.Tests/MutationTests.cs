using System.Globalization;
using System.Text.RegularExpressions;
using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Files;
using Thermal.Reports;
using Thermal.Words;

namespace Thermal.Cli.Tests;

/// <summary>Whatever figures a file holds, it is refused with problems or assessed, said and printed: nothing in between.</summary>
public sealed partial class MutationTests
{
    private static readonly string[] OtherFigures = ["0", "1", "2", "0.001", "0.3", "7", "12", "40", "95", "180", "1000", "25000", "1e6", "-5"];

    [Theory]
    [InlineData("library-van", 120, 11)]
    [InlineData("weekend-van", 120, 12)]
    [InlineData("box-body", 120, 13)]
    public void A_file_with_one_to_three_other_figures_is_refused_or_answered(string name, int count, int seed)
    {
        string text = VehicleLibrary.Text(name)!;
        var random = new Random(seed);
        int answered = 0;
        for (int i = 0; i < count; i++)
        {
            string changed = Changed(text, random);
            Reading<Case> reading = VehicleFile.Read(changed, "changed.yaml");
            if (reading.Value is not { } asked)
            {
                Assert.NotEmpty(reading.Problems);
                continue;
            }
            answered++;
            Assessment found = Assess.Of(asked);
            Assert.True(double.IsFinite(found.ColdNight.LossW), changed);
            using StringWriter answers = new();
            AssessmentText.Full(found, [], Figures.Metric, new Terminal(answers, TextWriter.Null, isStyled: false, Terminal.UsualWidth));
            Assert.DoesNotContain("NaN", answers.ToString(), StringComparison.Ordinal);
            if (answered % 20 == 1)
                Assert.EndsWith("</html>\n", ReportPage.Of(found, Advice.Of(found), Figures.Us, new DateOnly(2026, 1, 15)).Html, StringComparison.Ordinal);
        }
        Assert.InRange(answered, count / 10, count * 9 / 10); // both ways must have been taken, or the test shows nothing
    }

    private static string Changed(string text, Random random)
    {
        for (int change = random.Next(1, 4); change > 0; change--)
        {
            MatchCollection numbers = Number().Matches(text);
            Match one = numbers[random.Next(numbers.Count)];
            string other = random.Next(3) > 0
                ? (double.Parse(one.Value, CultureInfo.InvariantCulture) * Math.Pow(4, random.NextDouble() * 2 - 1)).ToString("0.###", CultureInfo.InvariantCulture)
                : OtherFigures[random.Next(OtherFigures.Length)];
            text = string.Concat(text.AsSpan(0, one.Index), other, text.AsSpan(one.Index + one.Length));
        }
        return text;
    }

    [GeneratedRegex(@"(?<=[:\[,] )\d+(\.\d+)?(?= )")]
    private static partial Regex Number();
}
