namespace Thermal.Bridges;

/// <summary>A network of conductances between nodes and environments, as either scheme makes it.</summary>
internal sealed class Network(int environmentCount)
{
    private readonly List<int> _from = [], _to = [], _node = [], _environment = [];
    private readonly List<double> _edge = [], _tie = [];

    internal int EnvironmentCount => environmentCount;
    internal int NodeCount { get; set; }
    internal List<int> From => _from;
    internal List<int> To => _to;
    internal List<double> EdgeWPerK => _edge;
    internal List<int> TieNode => _node;
    internal List<int> TieEnvironment => _environment;
    internal List<double> TieWPerK => _tie;
    /// <summary>Conductances from environment to environment past all nodes, n × n.</summary>
    internal double[] DirectWPerK { get; } = new double[environmentCount * environmentCount];

    /// <summary>A conductance between two ends: a node, or -2 - e for environment e.</summary>
    internal void Add(int one, int other, double conductanceWPerK)
    {
        if (one >= 0 && other >= 0)
        {
            _from.Add(one);
            _to.Add(other);
            _edge.Add(conductanceWPerK);
        }
        else if (one >= 0 || other >= 0)
        {
            _node.Add(Math.Max(one, other));
            _environment.Add(-2 - Math.Min(one, other));
            _tie.Add(conductanceWPerK);
        }
        else if (one != other)
        {
            DirectWPerK[(-2 - one) * environmentCount + -2 - other] += conductanceWPerK;
            DirectWPerK[(-2 - other) * environmentCount + -2 - one] += conductanceWPerK;
        }
    }

    /// <summary>
    /// Power matrix G, n × n by rows: temperatures T of the environments dissipate Tᵀ·G·T, W/K. As a product of fields it is symmetric to the bit,
    /// and an error of the fields enters squared.
    /// </summary>
    /// <param name="fieldsK">Node temperatures for each environment but the last at 1 K and all others at 0.</param>
    internal double[] PowerWPerK(double[][] fieldsK)
    {
        int n = environmentCount;
        double[] power = new double[n * n];
        for (int e = 0; e < n - 1; e++)
            for (int f = 0; f <= e; f++) power[e * n + f] = power[f * n + e] = Product(fieldsK[e], fieldsK[f], e, f);
        for (int e = 0; e < n - 1; e++)
        {
            double sum = 0;
            for (int f = 0; f < n - 1; f++) sum += power[e * n + f];
            power[e * n + n - 1] = power[(n - 1) * n + e] = -sum;
            power[n * n - 1] += sum;
        }
        return power;
    }

    private double Product(double[] one, double[] other, int e, int f)
    {
        double sum = 0;
        for (int i = 0; i < _edge.Count; i++) sum += _edge[i] * (one[_from[i]] - one[_to[i]]) * (other[_from[i]] - other[_to[i]]);
        for (int i = 0; i < _tie.Count; i++)
            sum += _tie[i] * (one[_node[i]] - Unit(_environment[i], e)) * (other[_node[i]] - Unit(_environment[i], f));
        for (int a = 0; a < environmentCount; a++)
            for (int b = 0; b < a; b++)
                sum += DirectWPerK[a * environmentCount + b] * (Unit(a, e) - Unit(b, e)) * (Unit(a, f) - Unit(b, f));
        return sum;
    }

    private static double Unit(int environment, int warm) => environment == warm ? 1 : 0;
}
