using Thermal.Climates;
using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>The pictures of a place say what its figures say.</summary>
public class ClimateChartTests
{
    [Fact]
    public void Every_design_temperature_is_marked_with_its_span()
    {
        string[] words = Said(HoursColder.Draw(ClimateSamples.ArcticYear, ClimateSamples.Arctic.Designs, Palette.Light, UnitSet.Metric));
        Assert.All(["−29.0 °C", "−26.0 °C ±1.0 K", "−28.0 °C ±2.0 K", "−33.0 °C ±2.0 K"], text => Assert.Contains(text, words));
    }

    [Fact]
    public void Hours_below_a_limit_are_counted_as_the_year_has_them()
    {
        double hours = ClimateSamples.AlpineYear.AirC.Count(airC => airC < -5);
        Assert.Contains($"−5.0 °C: {Figures.Metric.Write(Shown.Hours, hours * 3600)}", Said(HoursColder.Draw(ClimateSamples.AlpineYear, [], Palette.Light, UnitSet.Metric)));
    }

    [Fact]
    public void A_generated_year_says_what_its_coldest_hours_are_worth() =>
        Assert.Contains("too cold to 6.0 K too warm", HoursColder.Draw(ClimateSamples.AlpineYear, [], Palette.Light, UnitSet.Metric).Caption, StringComparison.Ordinal);

    /// <summary>Noon height is 90° less latitude plus declination: 90 − 46.8 ± 23.4.</summary>
    [Fact]
    public void The_sun_stands_as_high_as_latitude_and_declination_say()
    {
        string[] words = Said(SunOverDirection.Draw("x", ClimateSamples.PathsAt(46.8), 0, Palette.Light, UnitSet.Metric));
        Assert.Contains("21 December: 20°", words);
        Assert.Contains("21 June: 67°", words);
    }

    [Fact]
    public void Polar_night_is_said_and_not_drawn()
    {
        Picture picture = SunOverDirection.Draw("x", ClimateSamples.PathsAt(69), 0, Palette.Light, UnitSet.Metric);
        Assert.Contains("On 21 December the sun does not rise", picture.Caption, StringComparison.Ordinal);
        Assert.Contains("all day and night", picture.Caption, StringComparison.Ordinal);
        Assert.DoesNotContain(Said(picture), word => word.StartsWith("21 December", StringComparison.Ordinal));
    }

    [Fact]
    public void South_of_the_equator_the_picture_looks_north()
    {
        IReadOnlyList<Drawn.Word> words = Drawn.Words(SunOverDirection.Draw("x", ClimateSamples.PathsAt(-45), 0, Palette.Light, UnitSet.Metric));
        Drawn.Word north = Assert.Single(words, word => word.Text == "N");
        Assert.InRange(north.Left, 300, 380);
    }

    [Fact]
    public void Every_field_of_the_sun_grid_holds_its_figure()
    {
        string[] words = Said(SunOnSides.Draw(ClimateSamples.HeadingSouth, Palette.Light, UnitSet.Metric));
        Assert.All(ClimateSamples.HeadingSouth.Rows.SelectMany(row => row.MeansWPerM2), meanWPerM2 => Assert.Contains(Figures.Metric.Write(Shown.SunPerArea, meanWPerM2 * 86_400).Split(' ')[0], words));
    }

    [Fact]
    public void A_place_without_daily_extremes_and_sun_is_drawn_and_says_so()
    {
        Picture picture = MonthsOfPlace.Draw(ClimateSamples.MeansAlone, Palette.Light, UnitSet.Metric);
        Assert.Contains("The sun of this place is not known. Humidity is estimated.", picture.Caption, StringComparison.Ordinal);
        Assert.DoesNotContain("daily lowest", Said(picture));
    }

    private static string[] Said(Picture picture) => [.. Drawn.Words(picture).Select(word => word.Text)];
}
