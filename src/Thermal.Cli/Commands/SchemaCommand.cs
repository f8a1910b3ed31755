using System.CommandLine;
using Thermal.Files;

namespace Thermal.Cli.Commands;

/// <summary>Writes the JSON Schema of vehicle files, or of trip files.</summary>
internal static class SchemaCommand
{
    internal static Command Create(Terminal terminal)
    {
        Option<bool> json = SharedOptions.Json();
        var trip = new Option<bool>("--trip") { Description = "That of trip files." };
        var command = new Command("schema", "Write the JSON Schema of vehicle files, or of trip files, for editors that check and complete them.") { trip, json };
        command.SetAction(parsed =>
        {
            terminal.Answers.Write(parsed.GetValue(trip) ? TripSchema.Json() : VehicleSchema.Json());
            return ExitCode.Computed;
        });
        return command;
    }
}
