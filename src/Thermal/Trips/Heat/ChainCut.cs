using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Trips.Heat;

/// <summary>Cuts build-ups, panes and frames into chains of cells.</summary>
/// <remarks>
/// A layer is cut into equal cells so thin that heat crosses each within a stated time (Fourier number of one): a metal sheet is one cell,
/// 40 mm of foam a few. Halving that time by four halves the cells; the error falls with the square of their thickness.
/// </remarks>
internal sealed class ChainCut
{
    /// <summary>Time heat takes across one cell, d²/α, s. Source: OURS, about one step of the reckoning.</summary>
    internal const double UsualCellS = 900;
    /// <summary>Heat stored by a frame, J/(m²·K): two walls of 2 mm aluminium or 6 mm of plastic hold about this. Source: OURS.</summary>
    internal const double FrameJPerM2K = 10_000;
    /// <summary>Films with which a frame's U is stated, m²·K/W. Source: ISO-6946, table 7, horizontal.</summary>
    internal const double FrameInsideM2KPerW = 0.13, FrameOutsideM2KPerW = 0.04;

    private readonly double cellS;
    private readonly List<double> capacities = [], links = [], shares = [];
    private readonly List<int> faces = [];
    private double open;

    private ChainCut(double cellS) => this.cellS = cellS;

    /// <summary>The chain of a build-up whose steady transmittance is that found for it.</summary>
    /// <param name="stack">The build-up.</param>
    /// <param name="found">Its transmittance: battens by the combined method and air gaps are spread into its layers.</param>
    /// <param name="cellS">Time heat takes across one cell, s.</param>
    /// <exception cref="ArgumentException">Nothing solid that holds heat.</exception>
    internal static Chain Of(Stack stack, StackTransmittance found, double cellS)
    {
        double[] resistances = Counted(stack, found);
        ChainCut cut = new(cellS);
        cut.Face();
        for (int i = 0; i < resistances.Length; i++)
        {
            // What stands outside a well ventilated layer takes no part; its faces lie at the end of the chain.
            if (resistances[i] > 0 && stack.Layers[i] is SolidLayer solid) cut.Sheet(Capacity(solid), resistances[i]);
            else cut.open += resistances[i];
            cut.Face();
        }
        return cut.capacities.Count > 0 ? cut.Closed() : throw new ArgumentException("A build-up needs a solid layer inside any well ventilated one.", nameof(stack));
    }

    /// <summary>The chain of panes and gaps.</summary>
    internal static Chain Of(Glazing glazing, double tiltDeg, double cellS)
    {
        ChainCut cut = new(cellS);
        Span<double> gaps = stackalloc double[glazing.Gaps.Count];
        GlazingTransmittance.GapsM2KPerW(glazing, tiltDeg, gaps);
        for (int i = 0; i < glazing.Panes.Count; i++)
        {
            Pane pane = glazing.Panes[i];
            cut.Sheet(pane.ThicknessM * Volumetric(pane.Material), pane.ThicknessM / pane.Material.ConductivityWPerMK.Value);
            if (i < gaps.Length) cut.open += gaps[i];
        }
        return cut.Closed();
    }

    /// <summary>The chain of a frame, and by how much its films are larger than its width.</summary>
    /// <remarks>A frame that lets through more than its films would over its width has larger faces: they carry the rest.</remarks>
    internal static Chain OfFrame(double frameUWPerM2K, out double filmFactor)
    {
        double films = FrameInsideM2KPerW + FrameOutsideM2KPerW, block = FrameResistance.BlockM2KPerW(frameUWPerM2K);
        filmFactor = block >= FrameResistance.LeastM2KPerW ? 1 : films / (1 / frameUWPerM2K - FrameResistance.LeastM2KPerW);
        double half = Math.Max(block, FrameResistance.LeastM2KPerW) / 2;
        return new([FrameJPerM2K], [half, half], [], []);
    }

    /// <summary>Resistances of the layers such that with the films they add up to 1/U.</summary>
    private static double[] Counted(Stack stack, StackTransmittance found)
    {
        double[] layers = [.. found.LayersM2KPerW];
        double films = found.InsideFilmM2KPerW + found.OutsideFilmM2KPerW;
        double between = layers.Sum(), battened = 0, best = 0;
        int bestAt = -1;
        for (int i = 0; i < layers.Length; i++)
            if (stack.Layers[i] is SolidLayer { Battens: not null }) battened += layers[i];
        double batten = battened > 0 ? 1 + (found.TotalM2KPerW - films - between) / battened : 1;
        for (int i = 0; i < layers.Length; i++)
        {
            if (stack.Layers[i] is not SolidLayer solid) continue;
            if (solid.Battens is not null) layers[i] *= batten;
            if (layers[i] > best) (best, bestAt) = (layers[i], i);
        }
        if (found.GapCorrectionWPerM2K > 0) layers[bestAt] -= found.TotalM2KPerW - 1 / found.UWPerM2K;
        return layers;
    }

    private static double Capacity(SolidLayer solid) => solid.ThicknessM * (solid.Battens is { } battens
        ? battens.AreaFraction * Volumetric(battens.Material) + (1 - battens.AreaFraction) * Volumetric(solid.Material)
        : Volumetric(solid.Material));

    private static double Volumetric(Material material) => material.DensityKgPerM3.Value * material.SpecificHeatJPerKgK.Value;

    private void Sheet(double capacityJPerM2K, double resistanceM2KPerW)
    {
        int count = (int)Math.Ceiling(Math.Sqrt(capacityJPerM2K * resistanceM2KPerW / cellS));
        for (int i = 0; i < count; i++)
        {
            links.Add(open + resistanceM2KPerW / count / 2);
            capacities.Add(capacityJPerM2K / count);
            open = resistanceM2KPerW / count / 2;
        }
    }

    // Until the link is closed its share holds the resistance up to the face.
    private void Face()
    {
        faces.Add(links.Count);
        shares.Add(open);
    }

    private Chain Closed()
    {
        links.Add(open);
        for (int i = 0; i < shares.Count; i++) shares[i] /= links[faces[i]];
        return new([.. capacities], [.. links], [.. faces], [.. shares]);
    }
}
