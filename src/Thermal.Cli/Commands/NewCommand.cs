using System.CommandLine;
using Thermal.Cli.Json;
using Thermal.Files;

namespace Thermal.Cli.Commands;

/// <summary>Writes a vehicle file, or a trip file, to start from.</summary>
internal static class NewCommand
{
    private const string UsualName = "vehicle.yaml", UsualTripName = "trip.yaml";

    internal static Command Create(Terminal terminal)
    {
        Argument<string?> file = SharedOptions.File($"The file to write. Left out: {UsualName}, or {UsualTripName} with --trip.");
        var force = new Option<bool>("--force") { Description = "Replace a file that is there already." };
        var trip = new Option<bool>("--trip") { Description = "Write a trip file in place of a vehicle file." };
        Option<bool> json = SharedOptions.Json();
        var command = new Command("new", "Write a commented vehicle file, or trip file, to start from.") { file, trip, force, json };
        command.SetAction(parsed => Run(parsed.GetValue(file), parsed.GetValue(trip), parsed.GetValue(force), parsed.GetValue(json), terminal));
        return command;
    }

    private static int Run(string? named, bool trip, bool force, bool json, Terminal terminal)
    {
        string file = named ?? (trip ? UsualTripName : UsualName);
        if (!force && File.Exists(file))
            return Refusal.Of($"{file} is there already and was not touched; name another file, or add --force to replace it.", terminal);
        try
        {
            WholeFile.WriteText(file, trip ? TripLibrary.Text(TripLibrary.UsualName)! : VehicleFile.Starter());
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refusal.ToWrite(file, fault, terminal);
        }
        if (json)
            JsonText.Write(terminal.Answers, top => top.Text("file", file));
        else
            terminal.Paragraph(trip ? $"Wrote {file}. Change dates, places and habits, then let it be reckoned: trip {file}" : $"Wrote {file}. Change what differs in your vehicle, then let it be assessed: assess {file}");
        return ExitCode.Computed;
    }
}
