using System.Diagnostics;

namespace Thermal.Benchmarks;

/// <summary>Times work that is run over and over.</summary>
internal static class Batches
{
    private const int BatchCount = 25;
    private const double WarmS = 1.5, BatchS = 0.02;

    /// <summary>Runs the work until it is compiled for good, then in batches of 20 ms or one run.</summary>
    /// <returns>Time of one run in the middle batch, s, and the bytes one run allocates.</returns>
    internal static (double Seconds, long AllocatedBytes) Middle(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        int warm = 0;
        while (Stopwatch.GetElapsedTime(start).TotalSeconds < WarmS)
        {
            work();
            warm++;
        }
        int runs = Math.Max(1, (int)(warm * BatchS / WarmS));
        double[] seconds = new double[BatchCount];
        long allocated = GC.GetAllocatedBytesForCurrentThread();
        for (int batch = 0; batch < BatchCount; batch++)
        {
            start = Stopwatch.GetTimestamp();
            for (int i = 0; i < runs; i++) work();
            seconds[batch] = Stopwatch.GetElapsedTime(start).TotalSeconds / runs;
        }
        allocated = GC.GetAllocatedBytesForCurrentThread() - allocated;
        Array.Sort(seconds);
        return (seconds[BatchCount / 2], allocated / ((long)BatchCount * runs));
    }
}
