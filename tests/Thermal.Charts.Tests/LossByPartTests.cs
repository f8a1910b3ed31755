using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>Parts are ranked, add up and never get lost.</summary>
public class LossByPartTests
{
    [Fact]
    public void Parts_are_ranked_with_the_largest_on_top()
    {
        string[] names = [.. Drawn.Words(LossByPart.Draw(Samples.ColdNight, Palette.Light, UnitSet.Metric))
            .Where(word => Samples.ColdNight.Losses.Any(part => part.Name == word.Text)).OrderBy(word => word.Baseline).Select(word => word.Text)];
        Assert.Equal(Samples.ColdNight.Losses.OrderByDescending(part => part.LossW).Select(part => part.Name), names);
    }

    [Fact]
    public void Small_parts_are_drawn_together_and_none_gets_lost()
    {
        // 40 parts of 1200/i W: the 27 beyond the thirteenth are 1200·(H(40) − H(13)) = 1318 W, in three digits 1320.
        IReadOnlyList<Drawn.Word> words = Drawn.Words(LossByPart.Draw(Samples.ManyParts, Palette.Light, UnitSet.Metric));
        Drawn.Word rest = words.Single(word => word.Text == "27 smaller parts together");
        Assert.StartsWith("1320 W", words.Single(word => word.Baseline == rest.Baseline && word.Text != rest.Text).Text);
    }

    [Fact]
    public void Nothing_lost_is_said_in_words_and_without_shares()
    {
        Picture picture = LossByPart.Draw(Samples.NoLoss, Palette.Light, UnitSet.Metric);
        Assert.Contains("loses no heat", picture.AltText);
        Assert.DoesNotContain("%", picture.AltText);
    }
}
