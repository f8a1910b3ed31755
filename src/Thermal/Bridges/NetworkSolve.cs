namespace Thermal.Bridges;

/// <summary>Temperatures of the nodes of a network.</summary>
internal static class NetworkSolve
{
    /// <summary>For each environment but the last at 1 K and all others at 0: the temperature of every node.</summary>
    internal static double[][] Fields(Network network)
    {
        int n = network.NodeCount;
        double[] diagonal = new double[n];
        for (int i = 0; i < network.EdgeWPerK.Count; i++)
        {
            diagonal[network.From[i]] += network.EdgeWPerK[i];
            diagonal[network.To[i]] += network.EdgeWPerK[i];
        }
        for (int i = 0; i < network.TieWPerK.Count; i++) diagonal[network.TieNode[i]] += network.TieWPerK[i];
        return [.. Enumerable.Range(0, Math.Max(0, network.EnvironmentCount - 1)).Select(e => One(network, diagonal, e))];
    }

    private static double[] One(Network network, double[] diagonal, int environment)
    {
        int n = network.NodeCount;
        double[] x = new double[n], r = new double[n], p = new double[n], q = new double[n];
        for (int i = 0; i < network.TieWPerK.Count; i++)
            if (network.TieEnvironment[i] == environment) r[network.TieNode[i]] += network.TieWPerK[i];
        double first = 0, old = 0;
        for (int step = 0; step < 20 * n + 100; step++)
        {
            double rz = 0;
            for (int i = 0; i < n; i++) rz += r[i] * r[i] / diagonal[i];
            if (step == 0) first = rz;
            if (!(rz > 1e-26 * first)) break;
            for (int i = 0; i < n; i++) p[i] = r[i] / diagonal[i] + (step == 0 ? 0 : rz / old * p[i]);
            old = rz;
            for (int i = 0; i < n; i++) q[i] = diagonal[i] * p[i];
            for (int i = 0; i < network.EdgeWPerK.Count; i++)
            {
                q[network.From[i]] -= network.EdgeWPerK[i] * p[network.To[i]];
                q[network.To[i]] -= network.EdgeWPerK[i] * p[network.From[i]];
            }
            double pq = 0;
            for (int i = 0; i < n; i++) pq += p[i] * q[i];
            double alpha = rz / pq;
            for (int i = 0; i < n; i++) (x[i], r[i]) = (x[i] + alpha * p[i], r[i] - alpha * q[i]);
        }
        return x;
    }
}
