using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>Letters come with the program: a machine without fonts draws the same.</summary>
public class FontsTests
{
    [Fact]
    public void The_title_stands_in_the_vector_text_in_the_embedded_typeface()
    {
        string svg = CutThroughBuildUp.Draw(Samples.Roof, Palette.Light, UnitSet.Metric).Svg;
        Assert.Matches("<text[^>]* font-family=\"Inter, [^>]* font-weight=\"600\"[^>]*>Roof</text>", svg);
        Assert.Matches("<text[^>]*>−11.2 °C</text>", svg);
    }

    [Fact]
    public void Tick_labels_of_plots_stand_in_it_too() =>
        Assert.Matches("<text[^>]* font-family=\"Inter, [^>]*>−20</text>", TemperatureAndDewPoint.Draw(Samples.Roof, Palette.Light, UnitSet.Metric).Svg);

    [Fact]
    public void Both_weights_are_embedded_and_differ()
    {
        Assert.Equal("Inter", EmbeddedFonts.Regular.FamilyName);
        Assert.Equal(400, EmbeddedFonts.Regular.FontWeight);
        Assert.Equal(600, EmbeddedFonts.SemiBold.FontWeight);
    }
}
