namespace Thermal.Trips.Heat;

/// <summary>The cells of all parts in one row of memory, and their elimination to the two faces of each part.</summary>
/// <remarks>
/// Inside a stage a chain is a tridiagonal system between its faces. Its factor and the answers to a kelvin at either face depend on the
/// length of the stage alone and are kept; a stage then needs one sweep for what the cells hold, and two numbers a face remain.
/// </remarks>
internal sealed class ChainBank
{
    private readonly int[] first;
    private readonly double[] capacityJPerK, inwardWPerK, lastWPerK;
    private readonly double[] heldWPerK, ratios, inverses, toInner, toOuter;
    private readonly double[] startC, cellsC;
    private double stageS;

    internal ChainBank(Part[] parts, double startTemperatureC)
    {
        first = new int[parts.Length + 1];
        for (int p = 0; p < parts.Length; p++) first[p + 1] = first[p] + parts[p].Chain.CapacityJPerM2K.Length;
        int n = first[^1];
        (capacityJPerK, inwardWPerK, lastWPerK) = (new double[n], new double[n], new double[parts.Length]);
        (heldWPerK, ratios, inverses, toInner, toOuter) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        (startC, cellsC) = (new double[n], new double[n]);
        (InnerWPerK, AcrossWPerK, OuterWPerK) = (new double[parts.Length], new double[parts.Length], new double[parts.Length]);
        Array.Fill(cellsC, startTemperatureC);
        for (int p = 0; p < parts.Length; p++)
        {
            Chain chain = parts[p].Chain;
            for (int i = first[p]; i < first[p + 1]; i++)
            {
                capacityJPerK[i] = chain.CapacityJPerM2K[i - first[p]] * parts[p].AreaM2;
                inwardWPerK[i] = parts[p].AreaM2 / chain.LinksM2KPerW[i - first[p]];
            }
            lastWPerK[p] = parts[p].AreaM2 / chain.LinksM2KPerW[^1];
        }
    }

    /// <summary>Heat per kelvin into each chain at its inner face, between both faces, and at its outer face, with the cells eliminated, W/K.</summary>
    internal double[] InnerWPerK { get; }
    internal double[] AcrossWPerK { get; }
    internal double[] OuterWPerK { get; }

    /// <summary>Temperatures of the cells of a part, inside to outside, °C.</summary>
    internal ReadOnlySpan<double> OfPart(int part) => cellsC.AsSpan(first[part], first[part + 1] - first[part]);

    /// <summary>Keeps the start of the step and sets from where the stage starts: the step's start in the first, drawn out beyond the first stage in the second.</summary>
    internal void Begin(int stage, double stageLengthS, double drawnOut)
    {
        if (stageLengthS != stageS) Factor(stageLengthS);
        if (stage == 0) cellsC.CopyTo(startC, 0);
        else
            for (int i = 0; i < cellsC.Length; i++) cellsC[i] = startC[i] + drawnOut * (cellsC[i] - startC[i]);
    }

    /// <summary>Solves the cells of a part with both faces at 0 °C; returns what then reaches the faces, W.</summary>
    internal (double InnerW, double OuterW) Condense(int part)
    {
        int from = first[part], to = first[part + 1];
        double carried = 0;
        for (int i = from; i < to; i++) cellsC[i] = carried = heldWPerK[i] * cellsC[i] + ratios[i] * carried;
        double x = cellsC[to - 1] *= inverses[to - 1];
        for (int i = to - 2; i >= from; i--) cellsC[i] = x = (cellsC[i] + inwardWPerK[i + 1] * x) * inverses[i];
        return (inwardWPerK[from] * cellsC[from], lastWPerK[part] * cellsC[to - 1]);
    }

    /// <summary>Adds what both faces do to the cells.</summary>
    internal void Expand(int part, double innerC, double outerC)
    {
        int from = first[part], to = first[part + 1];
        for (int i = from; i < to; i++) cellsC[i] += toInner[i] * innerC + toOuter[i] * outerC;
    }

    /// <summary>Heat held above a temperature, J.</summary>
    internal double HeldJ(double aboveC)
    {
        double sum = 0;
        for (int i = 0; i < cellsC.Length; i++) sum += capacityJPerK[i] * (cellsC[i] - aboveC);
        return sum;
    }

    /// <summary>Faces between layers, linear in resistance between the middles beside them, °C.</summary>
    internal static void FacesC(Chain chain, double innerC, ReadOnlySpan<double> cellsC, double outerC, double[] facesC)
    {
        for (int i = 0; i < facesC.Length; i++)
        {
            int link = chain.FaceLinks[i];
            double before = link == 0 ? innerC : cellsC[link - 1], after = link == cellsC.Length ? outerC : cellsC[link];
            facesC[i] = before + chain.FaceSharesFraction[i] * (after - before);
        }
    }

    private void Factor(double stageLengthS)
    {
        stageS = stageLengthS;
        for (int p = 0; p < lastWPerK.Length; p++)
        {
            int from = first[p], to = first[p + 1];
            for (int i = from; i < to; i++)
            {
                heldWPerK[i] = capacityJPerK[i] / stageS;
                double outward = i + 1 < to ? inwardWPerK[i + 1] : lastWPerK[p];
                ratios[i] = i > from ? inwardWPerK[i] * inverses[i - 1] : 0;
                inverses[i] = 1 / (heldWPerK[i] + inwardWPerK[i] + outward - (i > from ? inwardWPerK[i] * ratios[i] : 0));
                toInner[i] = i > from ? ratios[i] * toInner[i - 1] : inwardWPerK[i];
                toOuter[i] = 0;
            }
            toOuter[to - 1] = lastWPerK[p] * inverses[to - 1];
            toInner[to - 1] *= inverses[to - 1];
            for (int i = to - 2; i >= from; i--)
            {
                toInner[i] = (toInner[i] + inwardWPerK[i + 1] * toInner[i + 1]) * inverses[i];
                toOuter[i] = inwardWPerK[i + 1] * toOuter[i + 1] * inverses[i];
            }
            AcrossWPerK[p] = inwardWPerK[from] * toOuter[from];
            // What a face takes is what the cells hold back and what goes across: a sum, so that no digits cancel at a thin metal.
            (InnerWPerK[p], OuterWPerK[p]) = (AcrossWPerK[p], AcrossWPerK[p]);
            for (int i = from; i < to; i++)
            {
                InnerWPerK[p] += heldWPerK[i] * toInner[i];
                OuterWPerK[p] += heldWPerK[i] * toOuter[i];
            }
        }
    }
}
