using Thermal.Files;

namespace Thermal.Cli;

/// <summary>How a refused input is answered: every problem on the error stream, where editors make links of it.</summary>
internal static class Refusal
{
    internal static int Of(IEnumerable<Problem> problems, Terminal terminal)
    {
        foreach (Problem problem in problems)
            terminal.Problems.WriteLine(problem.ToString());
        return ExitCode.Refused;
    }

    internal static int Of(string what, Terminal terminal)
    {
        terminal.Problems.WriteLine($"thermal: {what}");
        return ExitCode.Refused;
    }

    /// <summary>A file that cannot be written.</summary>
    internal static int ToWrite(string path, Exception fault, Terminal terminal) =>
        Of($"{path} cannot be written ({fault.Message.TrimEnd('.')}); name another place that you may write to.", terminal);
}
