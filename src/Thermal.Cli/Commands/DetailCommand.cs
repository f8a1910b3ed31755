using System.CommandLine;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Cli.Json;
using Thermal.Envelope.Details;
using Thermal.Files;
using Thermal.Reports;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Commands;

/// <summary>Lists the ribs, edges and bolts of a vehicle, or tells one in full.</summary>
internal static class DetailCommand
{
    internal static Command Create(Terminal terminal)
    {
        Argument<string?> vehicle = SharedOptions.Vehicle();
        Argument<string?> name = SharedOptions.Word("NAME", "A rib, edge or kind of bolt: its name, or panel/name. Left out: all of them in a table. A single word that is no vehicle is a NAME of the library-van.");
        var pictures = new Option<string?>("--pictures") { Description = "With a NAME, --rib or --bolt: also write its pictures into this folder, as SVG and as PNG; made if it is not there.", HelpName = "DIR" };
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        Option<string?> climates = SharedOptions.Climates();
        var loose = new LooseOptions();
        var command = new Command("detail", "Say what ribs, edges and bolts cost, how cold they get inside, whether they drip, and what a strip or a filling buys.") { vehicle, name, pictures, json, units, climates };
        loose.AddTo(command);
        command.SetAction(parsed =>
        {
            Figures figures = SharedOptions.FiguresOf(parsed, units);
            bool asJson = parsed.GetValue(json);
            if (loose.IsUsed(parsed))
                return LooseDetailRun.Run(loose.TextOf(parsed), parsed.GetValue(pictures), asJson, figures, terminal);
            (string? file, string? asked) = Words(parsed.GetValue(vehicle), parsed.GetValue(name));
            Reading<Case> reading = VehicleSource.Read(file, parsed.GetValue(climates));
            return reading.Value is { } read ? Run(read, asked, parsed.GetValue(pictures), asJson, figures, terminal) : Refusal.Of(reading.Problems, terminal);
        });
        return command;
    }

    private static (string? File, string? Name) Words(string? first, string? second) =>
        second is null && first is not null && !IsVehicle(first) ? (null, first) : (first, second);

    private static bool IsVehicle(string word) =>
        VehicleLibrary.Names.Contains(word) || word.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || word.EndsWith(".yml", StringComparison.OrdinalIgnoreCase) || Path.Exists(word);

    private static int Run(Case asked, string? name, string? folder, bool json, Figures figures, Terminal terminal)
    {
        var cache = new BridgeCache();
        Assessment found = Assess.Of(asked, cache);
        if (name is null)
        {
            if (folder is not null)
                return Refusal.Of("--pictures shows one rib, edge or bolt; write its NAME too.", terminal);
            if (json)
                JsonText.Write(terminal.Answers, top => DetailJson.All(top, found, figures));
            else
                DetailPrint.All(found, figures, terminal);
            return ExitCode.Computed;
        }
        BridgeAnswer[] meant = [.. found.Bridges.Where(bridge => IsCalled(bridge, name))];
        if (meant.Length != 1)
            return Refusal.Of(meant.Length == 0 ? Unknown(name, found) : $"{meant.Length} are called '{name}'; write {string.Join(" or ", meant.Select(Address))}.", terminal);
        (StripTable? strips, FillingTable? fillings) = meant[0].Solved?.Detail is not (Rib or Batten)
            ? (null, null)
            : (RibChoices.Strips(found, meant[0].Panel, meant[0].Name, cache), RibChoices.Fillings(found, meant[0].Panel, meant[0].Name, cache));
        if (folder is not null && PictureFiles.WriteOrRefuse(folder, DetailPictures.Of(found, meant[0], strips, fillings, figures), terminal) is null)
            return ExitCode.Refused;
        if (json)
            JsonText.Write(terminal.Answers, top => DetailJson.One(top, found.Case.Vehicle.Name, meant[0], BridgeWords.Answer(meant[0], figures), strips, fillings, figures));
        else
        {
            DetailPrint.One(meant[0], BridgeWords.Answer(meant[0], figures), strips, fillings, figures, terminal);
            PictureFiles.Tell(folder, terminal);
        }
        return ExitCode.Computed;
    }

    private static string Address(BridgeAnswer bridge) => $"{bridge.Panel}/{bridge.Name}";

    private static bool IsCalled(BridgeAnswer bridge, string name) =>
        string.Equals(bridge.Name, name, StringComparison.OrdinalIgnoreCase) || string.Equals(Address(bridge), name, StringComparison.OrdinalIgnoreCase);

    private static string Unknown(string name, Assessment found)
    {
        string[] known = [.. found.Bridges.Select(bridge => bridge.Name).Concat(found.Bridges.Select(Address)).Distinct()];
        string instead = Nearest.To(name, [.. known, .. VehicleLibrary.Names]) is { } near ? $"did you mean {near}?"
            : found.Bridges.Count == 0 ? "it names none at all."
            : $"there are: {string.Join(", ", found.Bridges.Select(bridge => bridge.Name).Distinct())}.";
        return $"{found.Case.Vehicle.Name} has no rib, edge or bolt called '{name}'; {instead}";
    }
}
