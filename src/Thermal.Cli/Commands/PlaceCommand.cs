using System.CommandLine;
using Thermal.Cli.Json;
using Thermal.Climates;
using Thermal.Files;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Commands;

/// <summary>Tells one place in full: months, cold to plan for, cold hours, sun on a parked vehicle.</summary>
internal static class PlaceCommand
{
    internal static Command Create(Terminal terminal)
    {
        Argument<string?> name = SharedOptions.Word("NAME", "A place; the command places lists them. Left out with --weather.");
        var options = new PlaceOptions();
        var pictures = new Option<string?>("--pictures") { Description = "A folder to write the pictures to, as SVG and as PNG; made if it is not there.", HelpName = "DIR" };
        var weather = new Option<string?>("--weather") { Description = "A file of hours in place of a NAME: TMY3 columns, those of the European photovoltaic service, or our own (climates/README.md). Says what was found in it.", HelpName = "FILE" };
        var save = new Option<string?>("--save") { Description = "With --weather: write the hours in our own columns.", HelpName = "FILE.csv" };
        var savePlace = new Option<string?>("--save-place") { Description = "With --weather: write the months and design temperatures as a place file for --climates.", HelpName = "FILE.csv" };
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        Option<string?> climates = SharedOptions.Climates();
        var command = new Command("place", "Tell one place: its months, the cold to plan for, hours colder than a limit, and the sun on a parked vehicle.") { name, weather, save, savePlace, pictures, json, units, climates };
        options.AddTo(command);
        command.Validators.Add(result =>
        {
            bool hasFile = result.GetResult(weather) is not null;
            if (hasFile && result.GetValue(name) is not null)
                result.AddError("--weather stands in place of a NAME; leave one of them out.");
            foreach (Option<string?> option in (Option<string?>[])[save, savePlace])
                if (!hasFile && result.GetResult(option) is not null)
                    result.AddError($"{option.Name} belongs to --weather; write it too.");
        });
        command.SetAction(parsed =>
        {
            Figures figures = SharedOptions.FiguresOf(parsed, units);
            if (parsed.GetValue(weather) is { } file)
                return WeatherFileRun.Run(new(file, parsed.GetValue(save), parsed.GetValue(savePlace), parsed.GetValue(pictures)), options.StandOf(parsed), parsed.GetValue(json), figures, terminal);
            if (parsed.GetValue(name) is not { } asked)
                return Refusal.Of("place needs a NAME or --weather FILE; the command places lists those there are.", terminal);
            Reading<PlaceLibrary> places = PlacesCommand.PlacesOf(parsed.GetValue(climates));
            if (places.Value is not { } library)
                return Refusal.Of(places.Problems, terminal);
            PlaceStand stand = options.StandOf(parsed);
            return library.Find(asked) is { } place
                ? Run(PlaceAnswer.Of(place, PlaceWords.NoHours(place) is null ? GeneratedWeather.Typical(place, stand.Seed) : null, stand), parsed.GetValue(pictures), parsed.GetValue(json), figures, terminal)
                : Refusal.Of($"there is no place '{asked}'; {(library.NearestName(asked) is { } near ? $"did you mean {near}?" : "the command places lists those there are, --climates adds your own.")}", terminal);
        });
        return command;
    }

    private static int Run(PlaceAnswer found, string? folder, bool json, Figures figures, Terminal terminal)
    {
        IReadOnlyList<string>? written = folder is null ? [] : PictureFiles.WriteOrRefuse(folder, PlacePictures.Of(found, figures.Set), terminal);
        if (written is null)
            return ExitCode.Refused;
        if (json)
            JsonText.Write(terminal.Answers, top => PlaceAnswerJson.Write(top, found, null, written, figures));
        else
            PlacePrint.Write(found, written, figures, terminal);
        return ExitCode.Computed;
    }
}
