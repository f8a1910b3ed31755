using Thermal.Envelope;
using Thermal.Moisture;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>A build-up as the moisture kernels take it, films included and thick layers divided, with the way back to the builder's layers.</summary>
internal sealed record LayerList(FineLayers Fine, double[] BareResistances, double[] BareDiffusion)
{
    private readonly double total = Fine.ResistancesM2KPerW.Sum();

    internal static LayerList Of(Surface surface, Stack stack, double windMPerS)
    {
        StackTransmittance found = Transmittance.Of(stack, surface.Direction, SurfaceResistance.InsideM2KPerW(surface.Direction), surface.OutsideFilmM2KPerW(windMPerS));
        double[] diffusion = [.. stack.Layers.Select((layer, i) => found.LayersM2KPerW[i] == 0 ? 0 : layer is SolidLayer solid ? solid.DiffusionThicknessM : layer.ThicknessM)];
        double[] bare = [.. found.LayersM2KPerW];
        return new(FineLayers.Of([found.InsideFilmM2KPerW, .. bare, found.OutsideFilmM2KPerW], [0, .. diffusion, 0]), bare, diffusion);
    }

    /// <summary>Index in the divided list of a face of the builder's layers: face 0 lies behind the inside film.</summary>
    internal int FineOf(int stackFace)
    {
        for (int part = 0; part < Fine.LayerOfPart.Count; part++)
            if (Fine.LayerOfPart[part] == stackFace + 1) return part;
        return Fine.LayerOfPart.Count;
    }

    /// <summary>The builder's face a divided face lies at, or the inner face of the layer it lies in.</summary>
    internal int StackFaceOf(int fineFace) => fineFace >= Fine.LayerOfPart.Count ? BareResistances.Length : Math.Max(0, Fine.LayerOfPart[fineFace] - 1);

    internal double AtFace(IReadOnlyList<double> fine, int stackFace) => fine[FineOf(stackFace)];

    internal IReadOnlyList<double> AtStackFaces(IReadOnlyList<double> fine) => [.. Enumerable.Range(0, BareResistances.Length + 1).Select(face => fine[FineOf(face)])];

    internal double FaceC(int stackFace, double insideC, double outsideC) => FineC(FineOf(stackFace), insideC, outsideC);

    internal double FineC(int fineFace, double insideC, double outsideC)
    {
        double r = 0;
        for (int part = 0; part < fineFace; part++) r += Fine.ResistancesM2KPerW[part];
        return insideC - (insideC - outsideC) * r / total;
    }

    /// <summary>Where a divided face lies, in the builder's words.</summary>
    internal string Describe(Stack stack, int fineFace)
    {
        int inner = fineFace == 0 ? -1 : Fine.LayerOfPart[fineFace - 1] - 1, outer = fineFace >= Fine.LayerOfPart.Count ? stack.Layers.Count : Fine.LayerOfPart[fineFace] - 1;
        if (inner == outer) return $"within the {stack.Layers[inner].Name}";
        if (inner < 0) return $"on the {stack.Layers[0].Name}";
        return outer >= stack.Layers.Count ? $"on the outer face of the {stack.Layers[^1].Name}" : $"between {stack.Layers[inner].Name} and {stack.Layers[outer].Name}";
    }
}
