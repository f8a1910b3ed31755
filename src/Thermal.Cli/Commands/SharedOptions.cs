using System.CommandLine;
using System.CommandLine.Parsing;
using Thermal.Files;
using Thermal.Words;

namespace Thermal.Cli.Commands;

/// <summary>Arguments and options that several commands take, spelt once.</summary>
internal static class SharedOptions
{
    internal static Option<bool> Json() => new("--json") { Description = "Write the answer as JSON, every number in SI units." };

    internal static Option<UnitSet> Units()
    {
        var option = new Option<UnitSet>("--units")
        {
            Description = "Units of what people read: metric or us.",
            HelpName = "metric|us",
            DefaultValueFactory = _ => UnitSet.Metric,
            CustomParser = Set,
        };
        return option;
    }

    internal static Option<string?> Climates() => new("--climates")
    {
        Description = "A folder with place files of your own, used beside the built-in places.",
        HelpName = "DIR",
    };

    internal static Argument<string?> File(string description)
    {
        var argument = new Argument<string?>("FILE") { Arity = ArgumentArity.ZeroOrOne, Description = description };
        argument.Validators.Add(RefuseOption);
        return argument;
    }

    internal static Argument<string?> Search(string description)
    {
        var argument = new Argument<string?>("SEARCH") { Arity = ArgumentArity.ZeroOrOne, Description = description };
        argument.Validators.Add(RefuseOption);
        return argument;
    }

    /// <summary>The vehicle of a command that assesses one.</summary>
    internal static Argument<string?> Vehicle() =>
        File("A vehicle file, or the name of a built-in vehicle. Left out: library-van.");

    private static UnitSet Set(ArgumentResult result)
    {
        string word = result.Tokens[0].Value;
        if (string.Equals(word, "us", StringComparison.OrdinalIgnoreCase))
            return UnitSet.Us;
        if (!string.Equals(word, "metric", StringComparison.OrdinalIgnoreCase))
            result.AddError($"--units is metric or us, not '{word}'.");
        return UnitSet.Metric;
    }

    // The parser would take a misspelt option for the name of a file.
    private static void RefuseOption(ArgumentResult result)
    {
        foreach (string word in result.Tokens.Select(token => token.Value).Where(word => word.Length > 1 && word[0] == '-'))
        {
            string? near = Nearest.To(word, OptionsOf(result));
            result.AddError($"'{word}' is not an option here{(near is null ? "." : $"; did you mean {near}?")}");
        }
    }

    private static IEnumerable<string> OptionsOf(SymbolResult result) =>
        result.Parent is CommandResult command ? command.Command.Options.Select(option => option.Name).Append("--help") : [];
}
