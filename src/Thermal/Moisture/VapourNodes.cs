namespace Thermal.Moisture;

/// <summary>Faces with no vapour resistance between them share one vapour pressure: they are one node, and water gathers at its coldest face.</summary>
internal static class VapourNodes
{
    /// <summary>Most layers of one build-up, films and subdivisions counted; limit chosen by us.</summary>
    internal const int MostLayers = 200;

    /// <summary>Fills the node of each face (layers + 1) and the s_d between nodes; returns how many spacings there are.</summary>
    internal static int Group(ReadOnlySpan<double> diffusionThicknessesM, Span<int> nodeOfFaces, Span<double> spacingsM)
    {
        int node = 0;
        nodeOfFaces[0] = 0;
        for (int layer = 0; layer < diffusionThicknessesM.Length; layer++)
        {
            if (diffusionThicknessesM[layer] > 0) spacingsM[node++] = diffusionThicknessesM[layer];
            nodeOfFaces[layer + 1] = node;
        }
        return node;
    }

    /// <summary>Fills temperatures at the faces: inside air, faces, outside air.</summary>
    internal static void Temperatures(ReadOnlySpan<double> resistancesM2KPerW, double insideC, double outsideC, Span<double> temperaturesAtFacesC)
    {
        double totalM2KPerW = 0, passedM2KPerW = 0;
        foreach (double resistance in resistancesM2KPerW) totalM2KPerW += resistance;
        double fallKPerM2KPerW = (insideC - outsideC) / totalM2KPerW;
        temperaturesAtFacesC[0] = insideC;
        for (int layer = 0; layer < resistancesM2KPerW.Length - 1; layer++)
        {
            passedM2KPerW += resistancesM2KPerW[layer];
            temperaturesAtFacesC[layer + 1] = insideC - fallKPerM2KPerW * passedM2KPerW;
        }
        temperaturesAtFacesC[resistancesM2KPerW.Length] = outsideC;
    }

    /// <summary>Fills the highest pressure of each node: the lowest saturation of its faces; at both ends the pressure of the air, or of a surface that is wet already.</summary>
    internal static void Ceilings(ReadOnlySpan<int> nodeOfFaces, ReadOnlySpan<double> saturationsAtFacesPa, double insidePa, double outsidePa, Span<double> ceilingsPa)
    {
        ceilingsPa.Fill(double.MaxValue);
        ceilingsPa[0] = insidePa;
        ceilingsPa[^1] = outsidePa;
        for (int face = 1; face < nodeOfFaces.Length - 1; face++)
        {
            ref double ceilingPa = ref ceilingsPa[nodeOfFaces[face]];
            if (saturationsAtFacesPa[face] < ceilingPa) ceilingPa = saturationsAtFacesPa[face];
        }
    }

    /// <summary>Fills the figure of each inner node in at its coldest face, the innermost of equals; all other faces get zero.</summary>
    internal static void ToColdestFaces(ReadOnlySpan<int> nodeOfFaces, ReadOnlySpan<double> saturationsAtFacesPa, ReadOnlySpan<double> ceilingsPa, ReadOnlySpan<double> atNodes, Span<double> atFaces)
    {
        atFaces.Clear();
        for (int face = 1, given = 0; face < nodeOfFaces.Length - 1; face++)
        {
            int node = nodeOfFaces[face];
            if (node <= given || node == ceilingsPa.Length - 1 || saturationsAtFacesPa[face] > ceilingsPa[node]) continue;
            atFaces[face] = atNodes[node];
            given = node;
        }
    }
}
