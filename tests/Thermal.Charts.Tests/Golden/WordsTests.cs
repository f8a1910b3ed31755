using Thermal.Tests;
using Thermal.Words;

namespace Thermal.Charts.Tests.Golden;

/// <summary>Everything the pictures say, in both sets of units. Places of letters are left out: they differ by platform.</summary>
public class WordsTests
{
    [Fact]
    public void Everything_the_pictures_say_in_metric_units() => Approved.Match(Said(UnitSet.Metric));

    [Fact]
    public void Everything_the_pictures_say_in_US_units() => Approved.Match(Said(UnitSet.Us));

    private static string Said(UnitSet units) => string.Concat(Gallery.All.Keys.Select(name =>
    {
        Picture picture = Gallery.Draw(name, units);
        return $"# {name}\nalt: {picture.AltText}\ncaption: {picture.Caption}\n{string.Join("\n", Drawn.Words(picture).Select(word => "  " + word.Text))}\n\n";
    }));
}
