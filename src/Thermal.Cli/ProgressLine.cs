using System.Globalization;

namespace Thermal.Cli;

/// <summary>One line on the error stream that tells how far a long run is: only where a person watches, only after half a second, and gone at the end.</summary>
/// <param name="terminal">Where to write.</param>
/// <param name="clock">The clock.</param>
/// <param name="what">What is being done, such as "reckoning the trip".</param>
internal sealed class ProgressLine(Terminal terminal, TimeProvider clock, string what) : IProgress<double>, IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(0.5);

    private readonly long start = clock.GetTimestamp();
    private int told = -1;

    /// <summary>Takes the share done, fraction.</summary>
    public void Report(double value)
    {
        int percent = (int)(100 * value);
        if (!terminal.IsWatched || percent == told || clock.GetElapsedTime(start) < Patience)
            return;
        told = percent;
        terminal.Problems.Write(string.Create(CultureInfo.InvariantCulture, $"\r{what}: {percent,3} %"));
        terminal.Problems.Flush();
    }

    /// <summary>Wipes the line.</summary>
    public void Dispose()
    {
        if (told < 0)
            return;
        terminal.Problems.Write($"\r{new string(' ', what.Length + 8)}\r");
        terminal.Problems.Flush();
    }
}
