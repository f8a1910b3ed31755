namespace Thermal.Cli.Tests;

/// <summary>One command line that was run in this process, with what it wrote.</summary>
internal sealed record Ran(int ExitCode, string Answers, string Problems)
{
    /// <summary>Runs a command line on a plain terminal, on a day that never changes.</summary>
    internal static Ran Of(params string[] args) => On(isStyled: false, args);

    /// <summary>The same on a terminal that shows bold, or not.</summary>
    internal static Ran On(bool isStyled, params string[] args)
    {
        using StringWriter answers = new(), problems = new();
        int exitCode = CommandLine.Run(args, new Terminal(answers, problems, isStyled, Terminal.UsualWidth), new StoppedClock());
        return new(exitCode, answers.ToString(), problems.ToString());
    }

    /// <summary>Lines of the error stream.</summary>
    internal string[] ProblemLines => Problems.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private sealed class StoppedClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 1, 15, 12, 0, 0, TimeSpan.Zero);

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;
    }
}
