using System.CommandLine;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Trips;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Commands;

/// <summary>Lists the built-in trips.</summary>
internal static class TripsCommand
{
    internal static Command Create(Terminal terminal)
    {
        Option<bool> json = SharedOptions.Json();
        var command = new Command("trips", "List the built-in trips.") { json };
        command.SetAction(parsed => Run(parsed.GetValue(json), terminal));
        return command;
    }

    private static int Run(bool json, Terminal terminal)
    {
        (string Name, TripRequest Request)[] all = [.. TripLibrary.Names.Select(name => (name, TripLibrary.Find(name)!))];
        if (json)
        {
            JsonText.Write(terminal.Answers, top => top.Objects("trips", all, (inner, one) => TripJson.Asked(inner.Text("key", one.Name).Text("vehicle", one.Request.Vehicle), one.Request.Trip)));
            return ExitCode.Computed;
        }
        var table = new TextTable("Trip", "Vehicle", "from", "until", ">legs");
        foreach ((string name, TripRequest request) in all)
        {
            Trip trip = request.Trip;
            table.Row(name, request.Vehicle ?? VehicleLibrary.UsualName, TripTables.Moment(trip.StartLocal), TripTables.Moment(trip.EndLocal), trip.Legs.Count.ToString(System.Globalization.CultureInfo.InvariantCulture));
        }
        table.WriteTo(terminal);
        terminal.Answers.WriteLine();
        foreach ((string name, TripRequest request) in all)
            terminal.Paragraph($"{name}: {request.Trip.Description}", "· ");
        terminal.Answers.WriteLine();
        terminal.Paragraph("The command trip with one of these names reckons it; new --trip writes one to start from.");
        return ExitCode.Computed;
    }
}
