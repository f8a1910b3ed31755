using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>The months stand in the order of one winter and say when it is wet.</summary>
public class WettingAndDryingTests
{
    [Fact]
    public void The_row_begins_with_the_driest_month_so_that_one_winter_stands_together()
    {
        string[] months = [.. Drawn.Words(WettingAndDrying.Draw("Roof", Samples.WetWinter, Palette.Light, UnitSet.Metric))
            .Where(word => word.Text.Length == 3 && char.IsUpper(word.Text[0])).OrderBy(word => word.Left).Select(word => word.Text)];
        Assert.Equal(["Sep", "Oct", "Nov", "Dec", "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug"], months);
    }

    [Fact]
    public void The_alt_text_says_from_when_to_when_and_how_much() => Assert.EndsWith(
        "At most 130 g/m² are held, wet from December, dry again in April.",
        WettingAndDrying.Draw("Roof", Samples.WetWinter, Palette.Light, UnitSet.Metric).AltText);

    [Fact]
    public void Water_too_little_to_run_down_is_still_told() => Assert.EndsWith(
        "At most 19 g/m² are held, too little to run down.",
        WettingAndDrying.Draw("Roof", Samples.DampYear, Palette.Light, UnitSet.Metric).AltText);

    [Fact]
    public void The_limits_of_run_off_say_that_they_are_from_memory() =>
        Assert.Contains("from memory", WettingAndDrying.Draw("Roof", Samples.WetWinter, Palette.Light, UnitSet.Metric).Caption);

    [Fact]
    public void The_upper_limit_is_drawn_only_where_the_water_comes_near_it()
    {
        Assert.DoesNotContain(Drawn.Words(WettingAndDrying.Draw("Roof", Samples.WetWinter, Palette.Light, UnitSet.Metric)), word => word.Text == "at 250 g/m²");
        Assert.Contains(Drawn.Words(WettingAndDrying.Draw("Roof", Samples.NeverDries, Palette.Light, UnitSet.Metric)), word => word.Text == "at 250 g/m²");
    }
}
