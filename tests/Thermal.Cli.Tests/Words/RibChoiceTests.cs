using Thermal.Choices;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Tests.Words;

/// <summary>What strips and fillings buy is told by the strip that is worth it.</summary>
public sealed class RibChoiceTests
{
    private static StripTable Strips(double spareWithoutK) => new("side", "ribs", "Closed-cell foam",
    [
        new(0, 0.15, 1.1, 3.8, spareWithoutK, 0, 0, true),
        new(0.003, 0.12, 1.0, 6.0, spareWithoutK + 2.2, 30, 0, false),
        new(0.006, 0.10, 0.9, 9.1, spareWithoutK + 5.3, 62, 0.002, false),
        new(0.020, 0.09, 0.85, 10, spareWithoutK + 6.2, 70, 0.016, false),
    ]);

    [Fact]
    public void The_thinnest_strip_that_keeps_a_wet_rib_dry_is_told() => Assert.Equal(
        "6 mm of closed-cell foam over it saves 62 W on the cold night and brings the coldest inner surface from 3.8 °C to 9.1 °C: dry with 1.3 K to spare. For it the lining moves in by 2 mm, with as much more insulation behind it.",
        RibChoiceWords.OfStrip(Strips(-4), Figures.Metric));

    [Fact]
    public void A_rib_that_no_strip_keeps_dry_is_told_the_thickest() =>
        Assert.Contains("20 mm of closed-cell foam over it saves 70 W on the cold night and brings the coldest inner surface from 3.8 °C to 10.0 °C: still 2.8 K below the dew point", RibChoiceWords.OfStrip(Strips(-9), Figures.Metric), StringComparison.Ordinal);

    [Fact]
    public void A_dry_rib_is_told_the_thinnest_strip_with_half_of_what_can_be_saved() =>
        Assert.Equal(0.006, RibChoiceWords.WorthIt(Strips(2))!.StripM);

    [Fact]
    public void A_filling_that_changes_nothing_is_not_praised() => Assert.Contains("changes little", RibChoiceWords.OfFilling(new("side", "ribs",
        [new(null, 0.15, 1.1, 3.8, 1, 0, true), new("Sprayed foam", 0.1499, 1.1, 3.81, 1.01, 0.1, false)]), Figures.Metric), StringComparison.Ordinal);

    [Fact]
    public void A_filling_that_helps_is_told_with_its_figures() => Assert.Equal(
        "Filled with sprayed foam it saves 12 W on the cold night and brings the coldest inner surface from 3.8 °C to 5.0 °C: dry with 2.2 K to spare.",
        RibChoiceWords.OfFilling(new("side", "ribs", [new(null, 0.15, 1.1, 3.8, 1, 0, true), new("Sprayed foam", 0.13, 1.0, 5.0, 2.2, 12, false)]), Figures.Metric));
}
