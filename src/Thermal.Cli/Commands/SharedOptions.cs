using System.CommandLine;
using System.CommandLine.Parsing;
using Thermal.Files;
using Thermal.Words;

namespace Thermal.Cli.Commands;

/// <summary>Arguments and options that several commands take, spelt once.</summary>
internal static class SharedOptions
{
    internal static Option<bool> Json() => new("--json") { Description = "Write the answer as JSON, every number in SI units." };

    // A word and not a choice of its own type: the parser's code for words is compiled already, which shortens the start.
    internal static Option<string> Units()
    {
        var option = new Option<string>("--units") { Description = "Units of what people read: metric (as it is without this option) or us.", HelpName = "metric|us" };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: not ("metric" or "us") and var word }])
                result.AddError($"--units is metric or us, not '{word}'.");
        });
        return option;
    }

    /// <summary>The figures a person asked for.</summary>
    internal static Figures FiguresOf(ParseResult parsed, Option<string> units) => Figures.In(parsed.GetValue(units) == "us" ? UnitSet.Us : UnitSet.Metric);

    internal static Option<string?> Climates() => new("--climates")
    {
        Description = "A folder with place files of your own, used beside the built-in places.",
        HelpName = "DIR",
    };

    internal static Argument<string?> File(string description) => Word("FILE", description);

    /// <summary>One word that may be left out.</summary>
    internal static Argument<string?> Word(string name, string description)
    {
        var argument = new Argument<string?>(name) { Arity = ArgumentArity.ZeroOrOne, Description = description };
        argument.Validators.Add(RefuseOption);
        return argument;
    }

    internal static Argument<string?> Search(string description) => Word("SEARCH", description);

    /// <summary>The vehicle of a command that assesses one.</summary>
    internal static Argument<string?> Vehicle() =>
        File("A vehicle file, or the name of a built-in vehicle. Left out: library-van.");

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
