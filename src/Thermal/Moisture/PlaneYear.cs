using Thermal.Air;

namespace Thermal.Moisture;

/// <summary>One build-up under twelve given months: runs a year from any state. Holds what does not change; the caller owns the state.</summary>
internal sealed class PlaneYear
{
    private readonly IReadOnlyList<MonthConditions> _months;
    private readonly int[] _nodeOfFaces;
    private readonly double[] _spacingsM, _none;
    private readonly double[][] _saturationsAtFacesPa, _ceilingsPa, _sourcesKgPerM2S, _dryingKgPerM2S;

    internal PlaneYear(ReadOnlySpan<double> resistancesM2KPerW, ReadOnlySpan<double> diffusionThicknessesM, IReadOnlyList<MonthConditions> months)
    {
        int faces = resistancesM2KPerW.Length + 1;
        _months = months;
        _nodeOfFaces = new int[faces];
        double[] spacingsM = new double[faces];
        _spacingsM = spacingsM[..VapourNodes.Group(diffusionThicknessesM, _nodeOfFaces, spacingsM)];
        _none = new double[NodeCount];
        _saturationsAtFacesPa = new double[months.Count][];
        _ceilingsPa = new double[months.Count][];
        _sourcesKgPerM2S = new double[months.Count][];
        _dryingKgPerM2S = new double[months.Count][];
        for (int month = 0; month < months.Count; month++)
        {
            MonthConditions at = months[month];
            double[] saturationsPa = new double[faces], ceilingsPa = new double[NodeCount];
            VapourNodes.Temperatures(resistancesM2KPerW, at.InsideC, at.OutsideC, saturationsPa);
            for (int face = 0; face < faces; face++) saturationsPa[face] = SaturationPressure.PairUncheckedPa(saturationsPa[face]);
            VapourNodes.Ceilings(_nodeOfFaces, saturationsPa, at.InsidePa, at.OutsidePa, ceilingsPa);
            _saturationsAtFacesPa[month] = saturationsPa;
            _ceilingsPa[month] = ceilingsPa;
            (_sourcesKgPerM2S[month], _dryingKgPerM2S[month]) = AirAtNodes(at.SourcesAtFacesKgPerM2S);
        }
    }

    internal int NodeCount => _spacingsM.Length + 1;

    /// <summary>The first month that wets a dry build-up after one that does not; the first of all where every month does; -1 where none does.</summary>
    internal int FirstWettingMonth()
    {
        bool[] wets = new bool[_months.Count];
        double[] pressuresPa = new double[NodeCount], ratesKgPerM2S = new double[NodeCount];
        for (int month = 0; month < wets.Length; month++)
        {
            TautString.Solve(_spacingsM, _ceilingsPa[month], [], _sourcesKgPerM2S[month], _months[month].PermeabilityKgPerMSPa, pressuresPa, ratesKgPerM2S);
            DryByAir(_dryingKgPerM2S[month], [], ratesKgPerM2S);
            wets[month] = Sum(ratesKgPerM2S) * _months[month].LengthS > MonthlyAccount.NothingKgPerM2;
        }
        for (int month = 0; month < wets.Length; month++)
            if (wets[month] && !wets[(month + wets.Length - 1) % wets.Length]) return month;
        return wets[0] ? 0 : -1;
    }

    /// <summary>Runs twelve months from <paramref name="startMonth"/>; <paramref name="heldKgPerM2"/> (one entry a node) is carried on.</summary>
    internal YearWater Run(int startMonth, double[] heldKgPerM2)
    {
        MonthWater[] waters = new MonthWater[_months.Count];
        double[] pressuresPa = new double[NodeCount], ratesKgPerM2S = new double[NodeCount], gainKgPerM2 = new double[NodeCount];
        int? dryMonth = null, peakFace = null;
        double peakKgPerM2 = 0;
        int peakMonth = startMonth;
        for (int i = 0; i < waters.Length; i++)
        {
            int month = (startMonth + i) % waters.Length;
            double startKgPerM2 = Sum(heldKgPerM2);
            waters[month] = RunMonth(month, heldKgPerM2, pressuresPa, ratesKgPerM2S, gainKgPerM2, out double mostKgPerM2, out int mostNode);
            if (mostKgPerM2 > peakKgPerM2)
            {
                peakKgPerM2 = mostKgPerM2;
                peakMonth = month;
                peakFace = ColdestFace(month, mostNode);
            }
            if (startKgPerM2 > MonthlyAccount.NothingKgPerM2 && Sum(heldKgPerM2) <= MonthlyAccount.NothingKgPerM2) dryMonth = month;
        }
        return new(waters, dryMonth, peakKgPerM2, peakMonth, peakFace);
    }

    private MonthWater RunMonth(int month, double[] heldKgPerM2, double[] pressuresPa, double[] ratesKgPerM2S, double[] gainKgPerM2, out double mostKgPerM2, out int mostNode)
    {
        double leftS = _months[month].LengthS, inKgPerM2 = 0, outKgPerM2 = 0, driedKgPerM2 = 0;
        mostKgPerM2 = Sum(heldKgPerM2);
        mostNode = Fullest(heldKgPerM2);
        heldKgPerM2.CopyTo(gainKgPerM2);
        // A plane that dries lowers the pressure everywhere, so none becomes wet by it: each plane dries once at most.
        for (int split = 0; split <= 2 * NodeCount && leftS > 0; split++)
        {
            VapourFlows flows = TautString.Solve(_spacingsM, _ceilingsPa[month], heldKgPerM2, _sourcesKgPerM2S[month],
                _months[month].PermeabilityKgPerMSPa, pressuresPa, ratesKgPerM2S);
            double driesKgPerM2S = DryByAir(_dryingKgPerM2S[month], heldKgPerM2, ratesKgPerM2S);
            double stepS = HeldWater.Advance(leftS, heldKgPerM2, ratesKgPerM2S);
            inKgPerM2 += flows.InKgPerM2S * stepS;
            outKgPerM2 += flows.OutKgPerM2S * stepS;
            driedKgPerM2 += driesKgPerM2S * stepS;
            leftS -= stepS;
            double nowKgPerM2 = Sum(heldKgPerM2);
            if (nowKgPerM2 > mostKgPerM2) (mostKgPerM2, mostNode) = (nowKgPerM2, Fullest(heldKgPerM2));
        }
        if (leftS > 0) throw new InvalidOperationException($"Month {month}: {leftS} s left after {2 * NodeCount} drying planes.");
        for (int node = 0; node < heldKgPerM2.Length; node++) gainKgPerM2[node] = heldKgPerM2[node] - gainKgPerM2[node];
        return new(AtFaces(month, heldKgPerM2), AtFaces(month, gainKgPerM2), inKgPerM2, outKgPerM2, Sum(_sourcesKgPerM2S[month]) * _months[month].LengthS - driedKgPerM2);
    }

    /// <summary>
    /// Takes from the rates what dry air carries away, and returns it. A plane that holds water loses it at that pace; a dry one that
    /// would get wet more slowly stays dry. Both stand at saturation either way, so the pressures hold.
    /// </summary>
    private static double DryByAir(double[] dryingKgPerM2S, double[] heldKgPerM2, double[] ratesKgPerM2S)
    {
        double sum = 0;
        for (int node = 1; node < ratesKgPerM2S.Length - 1; node++)
        {
            if (dryingKgPerM2S[node] == 0) continue;
            double takes = heldKgPerM2.Length > 0 && heldKgPerM2[node] > 0 ? dryingKgPerM2S[node] : Math.Clamp(ratesKgPerM2S[node], 0, dryingKgPerM2S[node]);
            ratesKgPerM2S[node] -= takes;
            sum += takes;
        }
        return sum;
    }

    private (double[] Sources, double[] Drying) AirAtNodes(IReadOnlyList<double> sourcesAtFacesKgPerM2S)
    {
        if (sourcesAtFacesKgPerM2S.Count == 0) return (_none, _none);
        double[] sources = new double[NodeCount], drying = new double[NodeCount];
        if (sourcesAtFacesKgPerM2S.Count != _nodeOfFaces.Length)
            throw new ArgumentException($"Sources need one entry a face ({_nodeOfFaces.Length}), not {sourcesAtFacesKgPerM2S.Count}.", nameof(sourcesAtFacesKgPerM2S));
        for (int face = 0; face < _nodeOfFaces.Length; face++)
        {
            double sourceKgPerM2S = Guard.InRange(sourcesAtFacesKgPerM2S[face], -1e-3, 1e-3, "kg/(m²·s)", nameof(sourcesAtFacesKgPerM2S));
            if (sourceKgPerM2S != 0 && (_nodeOfFaces[face] == 0 || _nodeOfFaces[face] == NodeCount - 1))
                throw new ArgumentException($"Face {face} has no s_d between it and the air and cannot hold water.", nameof(sourcesAtFacesKgPerM2S));
            if (sourceKgPerM2S > 0) sources[_nodeOfFaces[face]] += sourceKgPerM2S; else drying[_nodeOfFaces[face]] -= sourceKgPerM2S;
        }
        return (sources, drying);
    }

    private double[] AtFaces(int month, double[] atNodes)
    {
        double[] atFaces = new double[_nodeOfFaces.Length];
        VapourNodes.ToColdestFaces(_nodeOfFaces, _saturationsAtFacesPa[month], _ceilingsPa[month], atNodes, atFaces);
        return atFaces;
    }

    private int ColdestFace(int month, int node)
    {
        for (int face = 1; face < _nodeOfFaces.Length - 1; face++)
            if (_nodeOfFaces[face] == node && _saturationsAtFacesPa[month][face] <= _ceilingsPa[month][node]) return face;
        throw new InvalidOperationException($"Node {node} has no face.");
    }

    private static double Sum(double[] values)
    {
        double sum = 0;
        foreach (double value in values) sum += value;
        return sum;
    }

    private static int Fullest(double[] heldKgPerM2)
    {
        int fullest = 0;
        for (int node = 1; node < heldKgPerM2.Length; node++)
            if (heldKgPerM2[node] > heldKgPerM2[fullest]) fullest = node;
        return fullest;
    }
}
