namespace Thermal.Benchmarks;

/// <summary>Times work that is run over and over, in processor time: a busy machine makes it wait, but hardly changes what it takes.</summary>
internal static class Batches
{
    private const int BatchCount = 25;
    private const double WarmS = 2, BatchS = 0.04;

    /// <summary>Runs the work until it is compiled for good, then in batches of 40 ms or more.</summary>
    /// <returns>Processor time of one run in the middle batch, collecting its garbage included, s, and the bytes one run allocates.</returns>
    internal static (double Seconds, long AllocatedBytes) Middle(Action work)
    {
        int runs = 1;
        double start = ProcessorS(), batch = Batch(work, runs);
        while (batch < BatchS || ProcessorS() - start < WarmS)
        {
            if (batch < BatchS) runs *= 2;
            batch = Batch(work, runs);
        }
        double[] seconds = new double[BatchCount];
        long allocated = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < BatchCount; i++) seconds[i] = Batch(work, runs) / runs;
        allocated = GC.GetAllocatedBytesForCurrentThread() - allocated;
        Array.Sort(seconds);
        return (seconds[BatchCount / 2], allocated / ((long)BatchCount * runs));
    }

    private static double Batch(Action work, int runs)
    {
        double start = ProcessorS();
        for (int i = 0; i < runs; i++) work();
        return ProcessorS() - start;
    }

    private static double ProcessorS() => Environment.CpuUsage.TotalTime.TotalSeconds;
}
