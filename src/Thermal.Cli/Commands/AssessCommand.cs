using System.CommandLine;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Words;

namespace Thermal.Cli.Commands;

/// <summary>Assesses a vehicle and writes the answer on the screen.</summary>
internal static class AssessCommand
{
    internal static Command Create(Terminal terminal)
    {
        Argument<string?> vehicle = SharedOptions.Vehicle();
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        Option<string?> climates = SharedOptions.Climates();
        var command = new Command("assess", "Say whether a vehicle stays warm and dry: verdict, heater, fuel, damp, losses.") { vehicle, json, units, climates };
        command.SetAction(parsed => Run(VehicleSource.Read(parsed.GetValue(vehicle), parsed.GetValue(climates)), parsed.GetValue(json), SharedOptions.FiguresOf(parsed, units), terminal));
        return command;
    }

    private static int Run(Reading<Case> reading, bool json, Figures figures, Terminal terminal)
    {
        if (reading.Value is not { } asked)
            return Refusal.Of(reading.Problems, terminal);
        BridgeCache cache = new();
        Assessment found = Assess.Of(asked, cache);
        IReadOnlyList<AdviceItem> advice = Advice.Of(found, cache);
        if (json)
            JsonText.Write(terminal.Answers, top => AssessmentJson.Write(top, found, advice, figures));
        else
            AssessmentText.Full(found, advice, figures, terminal);
        return ExitCode.Computed;
    }
}
