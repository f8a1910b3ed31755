using Thermal.Air;
using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Moisture;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Damp;

/// <summary>Wetting and drying inside one build-up, hour by hour, each hour at rest.</summary>
/// <remarks>
/// Vapour pressure in the build-up is that of the hour's mean temperatures and mean vapour on both sides; water at the planes is carried on, so
/// repeated nights add up and dry. Water that air carries behind the lining settles and dries in the stages of the room, on the plane it reaches. A tight skin
/// lets next to nothing out, as its s_d says. Vapour is not stored, water stays where it settled, its heat is left out (under 1 W/m²), ice and water alike stay.
/// A coupled transport of heat and moisture would stand in place of this class: it takes faces and vapour, and gives what each side loses.
/// Source: ISO-13788, clause 6, by the hour.
/// </remarks>
internal sealed class BuildUpAccount
{
    // Only layers are read of what is found with it; the films of the account have no s_d.
    private const double AnyWindMPerS = 3;

    private readonly int[] nodeOfFaces, stackFaceOf, fineOf;
    private readonly double[] spacingsM, shares, meanFacesC, saturationsPa, ceilingsPa, ratesKgPerM2S, atFacesKgPerM2;
    private double insidePaS, outsidePaS, seconds;

    internal BuildUpAccount(Body body, int partIndex)
    {
        Part part = body.Parts[partIndex];
        Surface surface = body.Vehicle.Surfaces[part.Surface];
        (PartIndex, AreaM2, Room, OtherRoom) = (partIndex, part.AreaM2, part.Zone, part.OtherZone);
        LayerList layers = LayerList.Of(surface, part.Layers!, AnyWindMPerS);
        FineLayers fine = layers.Fine;
        int faces = fine.ResistancesM2KPerW.Length + 1;
        (nodeOfFaces, spacingsM) = (new int[faces], new double[faces]);
        spacingsM = spacingsM[..VapourNodes.Group(fine.DiffusionThicknessesM, nodeOfFaces, spacingsM)];
        (stackFaceOf, shares) = (new int[faces], new double[faces]);
        fineOf = [.. Enumerable.Range(0, part.Layers!.Layers.Count + 1).Select(layers.FineOf)];
        Place(layers);
        int nodes = spacingsM.Length + 1, reaches = part.Layers.FaceAirReaches(surface.LiningFit), node = nodeOfFaces[fineOf[reaches]];
        (meanFacesC, saturationsPa, atFacesKgPerM2) = (new double[part.Layers.Layers.Count + 1], new double[faces], new double[faces]);
        (ceilingsPa, ratesKgPerM2S, HeldKgPerM2, VapourPa) = (new double[nodes], new double[nodes], new double[nodes], new double[nodes]);
        bool reached = reaches > 0 && node > 0 && node < nodes - 1 && surface.AirBehindLiningM3PerM2H.Value > 0;
        (AirFace, AirNode) = reached ? (reaches, node) : (-1, -1);
        AirM3PerS = reached ? surface.AirBehindLiningM3PerM2H.Value / 3600 * AreaM2 : 0;
    }

    /// <summary>The part, its area, m², and the rooms on both sides; -1 outside.</summary>
    internal int PartIndex { get; }
    internal double AreaM2 { get; }
    internal int Room { get; }
    internal int OtherRoom { get; }
    /// <summary>Face of the layers that room air reaches, 0 at the room, and its node; -1 for none.</summary>
    internal int AirFace { get; }
    internal int AirNode { get; }
    /// <summary>Room air that gets there, m³/s.</summary>
    internal double AirM3PerS { get; }
    /// <summary>Water at the nodes, kg/m².</summary>
    internal double[] HeldKgPerM2 { get; }
    /// <summary>Vapour pressure at the nodes in the hour closed last, Pa.</summary>
    internal double[] VapourPa { get; }
    /// <summary>Of what came, carried by air, kg/m².</summary>
    internal double ByAirKgPerM2 { get; private set; }
    /// <summary>Of what came, by diffusion, kg/m².</summary>
    internal double ByDiffusionKgPerM2 { get; private set; }
    /// <summary>All water inside, kg.</summary>
    internal double HeldKg => AreaM2 * Sum(HeldKgPerM2);

    /// <summary>Takes in what air left or took where it gets to, kg.</summary>
    internal void TakeByAir(double kg)
    {
        double now = HeldKgPerM2[AirNode] + kg / AreaM2;
        HeldKgPerM2[AirNode] = Math.Max(0, now); // below zero by rounding only: no more dries than is there
        ByAirKgPerM2 += Math.Max(0, kg) / AreaM2;
    }

    /// <summary>Takes in a stage for the means of the hour.</summary>
    internal void Take(double weightS, double[] facesC, double insidePa, double outsidePa)
    {
        for (int i = 0; i < meanFacesC.Length; i++) meanFacesC[i] += weightS * facesC[i];
        insidePaS += weightS * insidePa;
        outsidePaS += weightS * outsidePa;
        seconds += weightS;
    }

    /// <summary>Closes the hour; returns what came in from the room and went out on the other side, kg.</summary>
    internal (double InKg, double OutKg) Close(double airPressurePa)
    {
        if (!(seconds > 0)) return (0, 0);
        for (int i = 0; i < meanFacesC.Length; i++) meanFacesC[i] /= seconds;
        for (int face = 0; face < saturationsPa.Length; face++)
        {
            double before = meanFacesC[stackFaceOf[face]];
            saturationsPa[face] = SaturationPressure.PairUncheckedPa(shares[face] == 0 ? before : before + shares[face] * (meanFacesC[stackFaceOf[face] + 1] - before));
        }
        VapourNodes.Ceilings(nodeOfFaces, saturationsPa, insidePaS / seconds, outsidePaS / seconds, ceilingsPa);
        double heldBefore = Sum(HeldKgPerM2), leftS = seconds, outKgPerM2 = 0;
        double permeability = Diffusion.PermeabilityKgPerMSPa((meanFacesC[0] + meanFacesC[^1]) / 2, airPressurePa);
        // Each plane dries once at most; see the months.
        for (int split = 0; split <= 2 * HeldKgPerM2.Length && leftS > 0; split++)
        {
            VapourFlows flows = TautString.Solve(spacingsM, ceilingsPa, HeldKgPerM2, [], permeability, VapourPa, ratesKgPerM2S);
            double stepS = HeldWater.Advance(leftS, HeldKgPerM2, ratesKgPerM2S);
            outKgPerM2 += flows.OutKgPerM2S * stepS;
            leftS -= stepS;
        }
        if (leftS > 0) throw new InvalidOperationException($"{leftS} s of an hour left after all planes ran dry.");
        // What came in is what is there and what went out: the sum of the splits differs from it by rounding.
        double gainKgPerM2 = Sum(HeldKgPerM2) - heldBefore;
        ByDiffusionKgPerM2 += Math.Max(0, gainKgPerM2);
        Array.Clear(meanFacesC);
        (insidePaS, outsidePaS, seconds) = (0, 0, 0);
        return ((gainKgPerM2 + outKgPerM2) * AreaM2, outKgPerM2 * AreaM2);
    }

    /// <summary>Fills in water at the faces between layers, kg/m², inside to outside; what settled within a layer stands at its inner face.</summary>
    internal void AtFaces(Span<double> facesKgPerM2)
    {
        facesKgPerM2.Clear();
        VapourNodes.ToColdestFaces(nodeOfFaces, saturationsPa, ceilingsPa, HeldKgPerM2, atFacesKgPerM2);
        for (int face = 0; face < atFacesKgPerM2.Length; face++) facesKgPerM2[stackFaceOf[face]] += atFacesKgPerM2[face];
    }

    /// <summary>Vapour pressure at a face between layers in the hour closed last, Pa.</summary>
    internal double VapourAtFacePa(int stackFace) => VapourPa[nodeOfFaces[fineOf[stackFace]]];

    /// <summary>Where each divided face lies: the face between layers before it, and the share of the way to the next.</summary>
    private void Place(LayerList layers)
    {
        for (int face = 0; face < stackFaceOf.Length; face++)
        {
            int before = stackFaceOf[face] = layers.StackFaceOf(face);
            if (before < fineOf.Length - 1 && face > fineOf[before]) shares[face] = (double)(face - fineOf[before]) / (fineOf[before + 1] - fineOf[before]);
        }
    }

    private static double Sum(double[] values)
    {
        double sum = 0;
        foreach (double value in values) sum += value;
        return sum;
    }
}
