using System.CommandLine;
using Thermal.Cli.Json;
using Thermal.Climates;
using Thermal.Files;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Commands;

/// <summary>Lists the places with their weather.</summary>
internal static class PlacesCommand
{
    internal static Command Create(Terminal terminal)
    {
        Argument<string?> search = SharedOptions.Search("Part of a place's or country's name. Left out: all of them.");
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        Option<string?> climates = SharedOptions.Climates();
        var command = new Command("places", "List the places with the cold night a heater is sized for, and where the figures come from.") { search, json, units, climates };
        command.SetAction(parsed => Run(parsed.GetValue(search), parsed.GetValue(climates), parsed.GetValue(json), SharedOptions.FiguresOf(parsed, units), terminal));
        return command;
    }

    private static int Run(string? search, string? folder, bool json, Figures figures, Terminal terminal)
    {
        Reading<PlaceLibrary> places = PlacesOf(folder);
        if (places.Value is not { } library)
            return Refusal.Of(places.Problems, terminal);
        Place[] found = [.. library.All.Where(place => search is null || Fits(place, search))];
        if (json)
            JsonText.Write(terminal.Answers, top => top.Objects("places", found, PlaceJson.Write));
        else if (found.Length == 0)
            terminal.Answers.WriteLine($"No place has \"{search}\" in its name. The command places alone lists all {library.All.Count}, or add one of your own with --climates.");
        else
            Table(found, figures, terminal);
        return ExitCode.Computed;
    }

    /// <summary>The built-in places, with those of a person's folder where one is named.</summary>
    internal static Reading<PlaceLibrary> PlacesOf(string? folder) =>
        folder is null ? new(PlaceLibrary.BuiltIn, []) : PlaceLibrary.WithFolder(folder);

    private static bool Fits(Place place, string search) =>
        place.Name.Contains(search, StringComparison.OrdinalIgnoreCase) || place.Country.Contains(search, StringComparison.OrdinalIgnoreCase);

    private static void Table(Place[] found, Figures figures, Terminal terminal)
    {
        var table = new TextTable("Place", "Country", ">Height", ">Cold night", ">±", "Known how", ">January", ">July");
        foreach (Place place in found)
        {
            DesignTemperature design = place.Design;
            table.Row(place.Name, place.Country, figures.Altitude(place.AltitudeM), (design.Kind == DesignKind.Estimated ? PlaceWords.EstimateMark : "") + figures.Temperature(design.TemperatureC),
                design.PlusMinusK > 0 ? figures.Difference(design.PlusMinusK) : "", Names.Of(design.Kind),
                Mean(place.Months[0], figures), Mean(place.Months[6], figures));
        }
        table.WriteTo(terminal);
        terminal.Paragraph($"{PlaceWords.EstimateMark} is an estimate of ours. The command place with one of these names tells it in full.");
        terminal.Answers.WriteLine();
        foreach (Place place in found)
            terminal.Paragraph($"{place.Name}: {place.Source}; {place.Period}; {place.Licence}", "· ");
    }

    private static string Mean(MonthNormals month, Figures figures) => (month.MeanIsEstimated ? PlaceWords.EstimateMark : "") + figures.Temperature(month.MeanC);
}
