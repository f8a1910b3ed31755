using Thermal.Climates;
using Thermal.Files.Weathers;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli;

/// <summary>What was found in a weather file, as lines on a screen.</summary>
internal static class WeatherFilePrint
{
    internal static void Write(WeatherAnswer found, IReadOnlyList<string> pictures, Figures figures, Terminal terminal)
    {
        Weather weather = found.Weather;
        terminal.Paragraph($"{weather.Name}: {Layout(found.Reading.Layout)}, {WeatherRemarkWords.Period(weather, figures)}.", isHeading: true);
        terminal.Paragraph($"{figures.Altitude(weather.AltitudeM)}, {PlaceWords.Position(weather.LatitudeDeg, weather.LongitudeDeg)}. {weather.Source}");
        PlacePrint.Heading("What was done on reading", terminal);
        foreach (string sentence in WeatherRemarkWords.All(found.Reading.Remarks, figures))
            terminal.Paragraph(sentence, "· ");
        if (found.Conditions is { } conditions)
        {
            PlacePrint.Heading("Design conditions", terminal);
            Conditions(conditions, weather, figures, terminal);
        }
        if (found.Place is { } place)
            PlacePrint.Body(place, figures, terminal);
        else
        {
            terminal.Answers.WriteLine();
            terminal.Paragraph(WeatherRemarkWords.NoYear);
            PlacePrint.Heading("Hours colder than", terminal);
            PlacePrint.Hours(weather, figures, terminal);
        }
        PlacePrint.Files("Saved", found.Saved, terminal);
        PlacePrint.Files("Pictures", pictures, terminal);
    }

    private static void Conditions(DesignConditions found, Weather weather, Figures figures, Terminal terminal)
    {
        var table = new TextTable("What it measures", ">Temperature");
        table.Row("exceeded by 99.6 % of these hours", figures.Temperature(found.HoursAt996C));
        table.Row("exceeded by 99 % of these hours", figures.Temperature(found.HoursAt99C));
        table.Row("coldest mean of 24 h", figures.Temperature(found.ColdestDayC));
        table.Row("coldest mean of 48 h", figures.Temperature(found.ColdestTwoDaysC));
        table.Row("coldest mean of 72 h", figures.Temperature(found.ColdestThreeDaysC));
        table.Row("coldest step", figures.Temperature(found.ColdestC));
        table.WriteTo(terminal);
        foreach (string sentence in WeatherRemarkWords.OfConditions(found, weather))
            terminal.Paragraph(sentence, "· ");
    }

    internal static string Layout(WeatherLayout layout) => layout switch
    {
        WeatherLayout.OwnColumns => "our own columns",
        WeatherLayout.Tmy3 => "TMY3 columns",
        WeatherLayout.EuropeanService => "columns of the European photovoltaic service",
        _ => throw new ArgumentOutOfRangeException(nameof(layout), layout, "There is no word for this value."),
    };
}
