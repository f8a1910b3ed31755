using System.CommandLine;
using Thermal.Files;

namespace Thermal.Cli.Commands;

/// <summary>Writes the JSON Schema of vehicle files.</summary>
internal static class SchemaCommand
{
    internal static Command Create(Terminal terminal)
    {
        Option<bool> json = SharedOptions.Json();
        var command = new Command("schema", "Write the JSON Schema of vehicle files, for editors that check and complete them.") { json };
        command.SetAction(_ =>
        {
            terminal.Answers.Write(VehicleSchema.Json());
            return ExitCode.Computed;
        });
        return command;
    }
}
