using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Thermal.Cli.Json;

namespace Thermal.Cli;

/// <summary>Help that also tells the keys of a command's JSON and what its exit codes mean.</summary>
internal sealed class HelpWithKeys : SynchronousCommandLineAction
{
    private readonly HelpAction usual = new();

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        usual.Invoke(parseResult);
        TextWriter answers = parseResult.InvocationConfiguration.Output;
        if (JsonKeys.Of(parseResult.CommandResult.Command.Name) is { Count: > 0 } keys)
        {
            answers.WriteLine("Keys of --json:");
            int width = keys.Max(key => key.Key.Length);
            foreach ((string key, string meaning) in keys)
                answers.WriteLine($"  {key.PadRight(width)}  {meaning}");
            answers.WriteLine();
            answers.WriteLine(JsonKeys.Suffixes);
            answers.WriteLine();
        }
        answers.WriteLine("Exit codes: 0 computed, 2 the input was refused and what is wrong stands on the error stream.");
        return ExitCode.Computed;
    }
}
