using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Thermal.Cli.Commands;
using Thermal.Files;

namespace Thermal.Cli;

/// <summary>The whole command line: finds the command, refuses what it does not know, runs it.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command line.</summary>
    /// <param name="args">Words after the program's name.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="clock">The clock, for the date on a report.</param>
    /// <returns>A value of <see cref="ExitCode"/>.</returns>
    internal static int Run(IReadOnlyList<string> args, Terminal terminal, TimeProvider clock)
    {
        var root = new RootCommand("Thermal says whether an old van or bus turned into a home stays warm and dry in winter, and what would change it.")
        {
            ReportCommand.Create(terminal, clock),
            AssessCommand.Create(terminal),
            ThicknessCommand.Create(terminal),
            DetailCommand.Create(terminal),
            MaterialsCommand.Create(terminal),
            PlacesCommand.Create(terminal),
            PlaceCommand.Create(terminal),
            TripCommand.Create(terminal, clock),
            TripsCommand.Create(terminal),
            NewCommand.Create(terminal),
            SchemaCommand.Create(terminal),
        };
        foreach (Option option in root.Options)
            if (option is HelpOption help)
                help.Action = new HelpWithKeys();

        string[] words = args.Count == 0 ? ["--help"] : [.. args];
        ParseResult parsed = root.Parse(words, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is ParseErrorAction)
            return Refuse(parsed, terminal);
        return parsed.Invoke(new InvocationConfiguration { Output = terminal.Answers, Error = terminal.Problems, EnableDefaultExceptionHandler = false });
    }

    private static int Refuse(ParseResult parsed, Terminal terminal)
    {
        if (parsed.CommandResult.Command is RootCommand root && parsed.UnmatchedTokens is [{ } word, ..])
        {
            string? near = Nearest.To(word, root.Subcommands.Select(known => known.Name));
            return Refusal.Of($"there is no command '{word}'; {(near is null ? "--help lists those there are." : $"did you mean {near}?")}", terminal);
        }
        foreach (string message in parsed.Errors.Select(error => error.Message).Distinct())
            terminal.Problems.WriteLine($"thermal: {message}");
        string command = parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";
        terminal.Problems.WriteLine($"thermal: {command}--help tells what can be written here.");
        return ExitCode.Refused;
    }
}
