using Thermal.Air;

namespace Thermal.Moisture;

/// <summary>Where and how fast water settles inside a build-up on a steady night, by diffusion alone.</summary>
/// <remarks>
/// Air that moves through the build-up, stored moisture and liquid flow are left out, as in the source. A tight skin needs no special case.
/// The source asks for layers above 0.25 m²·K/W to be divided (<see cref="FineLayers"/>): within a thick layer saturation sags below its chord.
/// Source: ISO-13788, clause 6 (taut string over s_d).
/// </remarks>
public static class GlaserNight
{
    /// <summary>The profile of one night.</summary>
    /// <param name="resistancesM2KPerW">Thermal resistances R inside to outside, both surface films included, m²·K/W, 0 to 100 each, not all zero; 1 to 200 entries.</param>
    /// <param name="diffusionThicknessesM">Diffusion-equivalent thicknesses s_d of the same layers, m, 0 to 1e6 each, not all zero; a film may have 0: then wetting of the surface itself is not counted.</param>
    /// <param name="insideC">Inside air, °C, -60 to 60.</param>
    /// <param name="outsideC">Outside air, °C, -60 to 60.</param>
    /// <param name="insidePa">Vapour pressure inside, Pa, 0 to 20 000.</param>
    /// <param name="outsidePa">Vapour pressure outside, Pa, 0 to 20 000.</param>
    /// <param name="permeabilityKgPerMSPa">Permeability of still air δ0, kg/(m·s·Pa), 1e-10 to 1e-9.</param>
    /// <returns>Temperatures, pressures and what settles at each face.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <exception cref="ArgumentException">The two lists differ in length.</exception>
    public static GlaserResult Profile(
        ReadOnlySpan<double> resistancesM2KPerW, ReadOnlySpan<double> diffusionThicknessesM,
        double insideC, double outsideC, double insidePa, double outsidePa, double permeabilityKgPerMSPa)
    {
        StackChecks.Layers(resistancesM2KPerW, diffusionThicknessesM);
        StackChecks.Air(insideC, outsideC, insidePa, outsidePa, permeabilityKgPerMSPa);
        int faces = resistancesM2KPerW.Length + 1;
        double[] temperaturesC = new double[faces], saturationsPa = new double[faces], vapourPa = new double[faces], ratesKgPerM2S = new double[faces];
        VapourFlows flows = Solve(resistancesM2KPerW, diffusionThicknessesM, insideC, outsideC, insidePa, outsidePa, permeabilityKgPerMSPa,
            temperaturesC, saturationsPa, vapourPa, ratesKgPerM2S);
        return new(temperaturesC, saturationsPa, vapourPa, ratesKgPerM2S, flows.InKgPerM2S, flows.OutKgPerM2S);
    }

    /// <summary>The unchecked kernel behind <see cref="Profile"/>: n layers, four results of length n + 1; allocates nothing.</summary>
    internal static VapourFlows Solve(
        ReadOnlySpan<double> resistancesM2KPerW, ReadOnlySpan<double> diffusionThicknessesM,
        double insideC, double outsideC, double insidePa, double outsidePa, double permeabilityKgPerMSPa,
        Span<double> temperaturesAtFacesC, Span<double> saturationsAtFacesPa, Span<double> vapourPressuresAtFacesPa, Span<double> ratesAtFacesKgPerM2S)
    {
        int faces = resistancesM2KPerW.Length + 1;
        VapourNodes.Temperatures(resistancesM2KPerW, insideC, outsideC, temperaturesAtFacesC);
        for (int face = 0; face < faces; face++) saturationsAtFacesPa[face] = SaturationPressure.PairUncheckedPa(temperaturesAtFacesC[face]);

        Span<int> nodeOfFaces = stackalloc int[faces];
        Span<double> spacingsM = stackalloc double[faces], ceilingsPa = stackalloc double[faces];
        Span<double> pressuresPa = stackalloc double[faces], ratesKgPerM2S = stackalloc double[faces];
        int last = VapourNodes.Group(diffusionThicknessesM, nodeOfFaces, spacingsM);
        ceilingsPa = ceilingsPa[..(last + 1)];
        VapourNodes.Ceilings(nodeOfFaces, saturationsAtFacesPa, insidePa, outsidePa, ceilingsPa);
        VapourFlows flows = TautString.Solve(spacingsM[..last], ceilingsPa, [], [], permeabilityKgPerMSPa, pressuresPa[..(last + 1)], ratesKgPerM2S[..(last + 1)]);

        for (int face = 1; face < faces - 1; face++) vapourPressuresAtFacesPa[face] = pressuresPa[nodeOfFaces[face]];
        vapourPressuresAtFacesPa[0] = insidePa;
        vapourPressuresAtFacesPa[faces - 1] = outsidePa;
        VapourNodes.ToColdestFaces(nodeOfFaces, saturationsAtFacesPa, ceilingsPa, ratesKgPerM2S, ratesAtFacesKgPerM2S);
        return flows;
    }
}
