namespace Thermal.Cli;

/// <summary>What the process says when it ends.</summary>
internal static class ExitCode
{
    /// <summary>The answer was computed.</summary>
    internal const int Computed = 0;

    /// <summary>The input was refused; what is wrong stands on the error stream.</summary>
    internal const int Refused = 2;
}
