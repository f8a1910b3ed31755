using System.CommandLine;
using System.CommandLine.Parsing;
using Thermal.Files;

namespace Thermal.Cli.Commands;

/// <summary>Options of a detail that is computed without a vehicle.</summary>
internal sealed class LooseOptions
{
    private readonly Option<string?> rib = new("--rib") { Description = "A rib without a vehicle, with the keys of vehicle files: \"{shape: hat, sheet: 1.2 mm, depth: 36 mm, crown: 40 mm, foot: 20 mm}\".", HelpName = "KEYS" };
    private readonly Option<string?> bolt = new("--bolt") { Description = "A bolt without a vehicle: \"{diameter: 8 mm, head: 20 mm, head_thickness: 6 mm}\".", HelpName = "KEYS" };
    private readonly Option<string?> layers = new("--layers") { Description = "With --rib or --bolt: the layers, inside to outside, such as \"birch_plywood 6.5 mm, xps 40 mm, steel_sheet 1 mm\".", HelpName = "LAYERS" };
    private readonly Option<string?> spacing = new("--spacing") { Description = "With --rib: distance from middle to middle of neighbours; one alone where left out.", HelpName = "LENGTH" };
    private readonly Option<string?> inside = Told("--inside", "With --rib or --bolt: temperature of the room.", "TEMPERATURE", "18 °C");
    private readonly Option<string?> outside = Told("--outside", "With --rib or --bolt: temperature outside.", "TEMPERATURE", "-10 °C");
    private readonly Option<string?> humidity = Told("--humidity", "With --rib or --bolt: humidity of the room.", "SHARE", "60 %");
    private readonly Option<string?> stands = Told("--stands", "With --rib or --bolt: in a wall, a roof or a floor.", "wall|roof|floor", "wall");

    internal void AddTo(Command command)
    {
        foreach (Option<string?> option in (Option<string?>[])[rib, bolt, layers, spacing, inside, outside, humidity, stands])
            command.Add(option);
        command.Validators.Add(Together);
    }

    internal bool IsUsed(ParseResult parsed) => parsed.GetValue(rib) is not null || parsed.GetValue(bolt) is not null;

    internal LooseDetailText TextOf(ParseResult parsed) => new(parsed.GetValue(rib), parsed.GetValue(bolt), parsed.GetValue(layers)!, parsed.GetValue(spacing),
        parsed.GetValue(inside)!, parsed.GetValue(outside)!, parsed.GetValue(humidity)!, parsed.GetValue(stands)!);

    private void Together(CommandResult result)
    {
        bool hasRib = Has(result, rib), hasBolt = Has(result, bolt), hasLayers = Has(result, layers);
        if (hasRib && hasBolt)
            result.AddError("--rib and --bolt are two questions; ask one at a time.");
        if ((hasRib || hasBolt) && !hasLayers)
            result.AddError("--rib and --bolt need --layers: what they stand in, inside to outside.");
        if ((hasRib || hasBolt) && result.Children.OfType<ArgumentResult>().Any(argument => argument.Tokens.Count > 0))
            result.AddError("--rib and --bolt are computed without a vehicle; leave FILE and NAME out.");
        if (hasBolt && Has(result, spacing))
            result.AddError("--spacing belongs to --rib; a bolt is counted one by one.");
        foreach (Option<string?> option in (Option<string?>[])[layers, spacing, inside, outside, humidity, stands])
            if (!hasRib && !hasBolt && Has(result, option))
                result.AddError($"{option.Name} belongs to --rib or --bolt; write one of them too.");
    }

    private static bool Has(CommandResult result, Option<string?> option) => result.GetResult(option) is { Implicit: false };

    private static Option<string?> Told(string name, string description, string help, string usual) => new(name) { Description = description, HelpName = help, DefaultValueFactory = _ => usual };
}
