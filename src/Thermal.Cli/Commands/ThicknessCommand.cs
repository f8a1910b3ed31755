using System.CommandLine;
using System.Globalization;
using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Cli.Json;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Commands;

/// <summary>Tries every thickness of one layer.</summary>
internal static class ThicknessCommand
{
    internal static Command Create(Terminal terminal)
    {
        Argument<string?> vehicle = SharedOptions.Vehicle();
        var panel = new Option<string>("--panel") { Description = "The panel, by its name in the vehicle file.", HelpName = "NAME", Required = true };
        var layer = new Option<string>("--layer") { Description = "The layer, counted from 1 at the room, or by its name.", HelpName = "N", Required = true };
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        Option<string?> climates = SharedOptions.Climates();
        var command = new Command("thickness", "Say what more thickness of one layer buys: loss, fuel, headroom, mass, damp.") { vehicle, panel, layer, json, units, climates };
        command.SetAction(parsed =>
        {
            Reading<Case> reading = VehicleSource.Read(parsed.GetValue(vehicle), parsed.GetValue(climates));
            return reading.Value is not { } asked
                ? Refusal.Of(reading.Problems, terminal)
                : Run(asked, parsed.GetValue(panel)!, parsed.GetValue(layer)!, parsed.GetValue(json), SharedOptions.FiguresOf(parsed, units), terminal);
        });
        return command;
    }

    private static int Run(Case asked, string panel, string layer, bool json, Figures figures, Terminal terminal)
    {
        if (asked.Vehicle.Surfaces.FirstOrDefault(candidate => string.Equals(candidate.Name, panel, StringComparison.OrdinalIgnoreCase)) is not { } surface)
            return Refusal.Of(Unknown("panel", panel, asked.Vehicle.Surfaces.Select(candidate => candidate.Name)), terminal);
        if (IndexOf(surface.Stack, layer) is not { } index)
            return Refusal.Of(Unknown($"layer of {surface.Name}", layer, surface.Stack.Layers.Select((known, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1} {known.Name}"))), terminal);
        ThicknessTable table = Thicknesses.Of(asked, surface.Name, index);
        if (json)
            JsonText.Write(terminal.Answers, top => ThicknessJson.Write(top.Text("vehicle", asked.Vehicle.Name), table));
        else
            Write(table, asked, figures, terminal);
        return ExitCode.Computed;
    }

    private static int? IndexOf(Stack stack, string layer)
    {
        if (int.TryParse(layer, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
            return number >= 1 && number <= stack.Layers.Count ? number - 1 : null;
        int[] named = [.. Enumerable.Range(0, stack.Layers.Count).Where(i => string.Equals(stack.Layers[i].Name, layer, StringComparison.OrdinalIgnoreCase))];
        return named.Length == 1 ? named[0] : null;
    }

    private static string Unknown(string what, string name, IEnumerable<string> known)
    {
        string[] all = [.. known];
        return $"there is no {what} called '{name}'; {(Nearest.To(name, all) is { } near ? $"did you mean {near}?" : $"there are: {string.Join(", ", all)}.")}";
    }

    private static void Write(ThicknessTable found, Case asked, Figures figures, Terminal terminal)
    {
        var fuel = asked.Heater.Fuel;
        string ten = figures.Thickness(0.01);
        terminal.Heading($"{asked.Vehicle.Name}: {found.Panel}, {found.Layer}, now {figures.Thickness(found.KeptThicknessM)}");
        terminal.Answers.WriteLine();
        var table = new TextTable(">Thickness", "", ">U", ">with ribs", ">Loss", $">next {ten} saves", ">Fuel a night", ">Headroom", ">Build-ups", ">Held at worst", "Damp");
        foreach (ThicknessRow row in found.Rows)
            table.Row(figures.Thickness(row.ThicknessM), row.IsKept ? "now" : "",
                figures.Number(Shown.Transmittance, row.UWPerM2K), figures.Number(Shown.Transmittance, row.UWithRibsWPerM2K) + (row.BridgesStale ? "?" : ""),
                figures.Power(row.LossW), row.NextTenMmSaveW is { } savedW ? figures.Power(savedW) : "", figures.FuelAmount(fuel, row.FuelAmount),
                row.HeadroomM is { } headroomM ? figures.Length(headroomM) : "", figures.Mass(row.MassKg),
                row.PeakGPerM2 is { } peak ? figures.GramsPerArea(peak) : "", Names.Of(row.Verdict));
        table.WriteTo(terminal);
        terminal.Answers.WriteLine();
        terminal.Paragraph($"U in {figures.Unit(Shown.Transmittance)}; loss of the whole vehicle and fuel on the cold night.");
        if (found.Rows.Any(row => row.BridgesStale))
            terminal.Paragraph("? The given ψ or χ of the ribs belongs to another thickness: rows with this mark use it all the same, so their ribs are a guess.");
        foreach (ThicknessLeftOut left in found.LeftOut)
            terminal.Paragraph($"No row for {figures.Thickness(left.ThicknessM)}: {left.Reason.Panel}, {left.Reason.Name}: {DetailProblems.Of(left.Reason.Problem, left.Reason.Detail, figures)}.");
    }
}
