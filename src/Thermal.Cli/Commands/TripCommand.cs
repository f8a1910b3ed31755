using System.CommandLine;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Reports;
using Thermal.Trips;
using Thermal.Words;

namespace Thermal.Cli.Commands;

/// <summary>Reckons a trip hour by hour and says whether it stays warm and dry, what it burns, and whether battery and water last.</summary>
internal static class TripCommand
{
    internal static Command Create(Terminal terminal, TimeProvider clock)
    {
        Argument<string?> trip = TripOptions.Trip();
        var vehicle = new Option<string?>("--vehicle") { Description = "A vehicle file, or the name of a built-in vehicle, in place of the one the trip names.", HelpName = "FILE" };
        var changes = new Option<bool>("--changes") { Description = "Also try a list of single changes, each over the whole trip, and tell which helps most; takes some ten times as long." };
        var csv = new Option<string?>("--csv") { Description = "Write the hours as a table with commas.", HelpName = "FILE.csv" };
        var pictures = new Option<string?>("--pictures") { Description = "A folder to write the pictures to, as SVG and as PNG; made if it is not there.", HelpName = "DIR" };
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        Option<string?> climates = SharedOptions.Climates();
        var command = new Command("trip", "Reckon a trip hour by hour: warm? dry? how much fuel? do battery and water last?") { trip, vehicle, changes, csv, pictures, json, units, climates };
        command.SetAction(parsed =>
        {
            Reading<TripCase> reading = TripOptions.Read(parsed.GetValue(trip), parsed.GetValue(vehicle), parsed.GetValue(climates));
            return reading.Value is not { } asked
                ? Refusal.Of(reading.Problems, terminal)
                : Run(asked, parsed.GetValue(changes), parsed.GetValue(csv), parsed.GetValue(pictures), parsed.GetValue(json), SharedOptions.FiguresOf(parsed, units), terminal, clock);
        });
        return command;
    }

    private static int Run(TripCase asked, bool withChanges, string? csv, string? folder, bool json, Figures figures, Terminal terminal, TimeProvider clock)
    {
        BridgeCache cache = new();
        TripResult found;
        using (ProgressLine progress = new(terminal, clock, "reckoning the trip"))
            found = TripRun.Of(asked, cache, progress);
        TripAdvice? advice = withChanges ? Tried(found, cache, terminal, clock) : null;
        if (csv is not null && !WriteCsv(csv, found, terminal))
            return ExitCode.Refused;
        IReadOnlyList<string>? pictures = folder is null ? [] : PictureFiles.WriteOrRefuse(folder, TripPictures.Of(found, figures), terminal);
        if (pictures is null)
            return ExitCode.Refused;
        TripAnswer answer = new(found, advice, csv, pictures);
        if (json)
            JsonText.Write(terminal.Answers, top => TripJson.Write(top, answer, figures));
        else
            TripPrint.Write(answer, folder, figures, terminal);
        return ExitCode.Computed;
    }

    private static TripAdvice Tried(TripResult found, BridgeCache cache, Terminal terminal, TimeProvider clock)
    {
        using ProgressLine progress = new(terminal, clock, "trying changes");
        return TripChanges.Of(found, cache, progress);
    }

    private static bool WriteCsv(string file, TripResult found, Terminal terminal)
    {
        try
        {
            WholeFile.WriteText(file, TripCsv.Text(found.Asked, found.Hours));
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Refusal.ToWrite(file, fault, terminal);
            return false;
        }
    }
}
