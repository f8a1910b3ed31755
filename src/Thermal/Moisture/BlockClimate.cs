using Thermal.Air;

namespace Thermal.Moisture;

/// <summary>The one-winter, one-summer check of houses, for comparison with what people read elsewhere.</summary>
/// <remarks>
/// Winter: 90 days at 20 °C and 50 % (1168 Pa) inside, -5 °C and 80 % (321 Pa) outside. Summer: 90 days at 1200 Pa on both sides and
/// 1700 Pa (wall) or 2000 Pa (roof) at the wet planes. Films 0.25 and 0.04 m²·K/W without s_d; δ0 2e-10. Saturation by the pair of
/// ISO-13788. Source: DIN-4108-3, block climate; values by LEHRBUCH, table 13.2.
/// </remarks>
public static class BlockClimate
{
    /// <summary>s_d outside the wet plane from which the skin counts as vapour-tight, m; limit chosen by us.</summary>
    public const double TightSkinM = 20;

    private const double InsideC = 20, OutsideC = -5, InsidePa = 1168, OutsidePa = 321, PeriodS = 90 * 86_400.0;
    private const double SummerPa = 1200, WallPlanePa = 1700, RoofPlanePa = 2000, InsideFilmM2KPerW = 0.25, OutsideFilmM2KPerW = 0.04;

    /// <summary>Grams of the block climate for one build-up.</summary>
    /// <param name="resistancesM2KPerW">Thermal resistances inside to outside WITHOUT surface films, m²·K/W, 0 to 100 each; 1 to 198 entries.</param>
    /// <param name="diffusionThicknessesM">s_d of the same layers, m, 0 to 1e6 each, not all zero.</param>
    /// <param name="isRoof">True for a roof, whose planes the summer sun warms more.</param>
    /// <returns>Water that settles and could dry. With several planes the innermost dries inwards and the outermost outwards.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <exception cref="ArgumentException">The two lists differ in length.</exception>
    /// <remarks>Source: DIN-4108-3, block climate; LEHRBUCH, chapter 13.</remarks>
    public static BlockClimateResult Of(ReadOnlySpan<double> resistancesM2KPerW, ReadOnlySpan<double> diffusionThicknessesM, bool isRoof)
    {
        double[] resistances = [InsideFilmM2KPerW, .. resistancesM2KPerW, OutsideFilmM2KPerW];
        double[] diffusionThicknesses = [0, .. diffusionThicknessesM, 0];
        GlaserResult winter = GlaserNight.Profile(resistances, diffusionThicknesses, InsideC, OutsideC, InsidePa, OutsidePa, Diffusion.FixedPermeabilityKgPerMSPa);
        int[] wet = [.. Enumerable.Range(0, resistances.Length + 1).Where(face => winter.RatesAtFacesKgPerM2S[face] > 0)];
        if (wet.Length == 0) return new(0, null, wet, null, null, TightOutside(diffusionThicknesses));

        double inwardsM = diffusionThicknesses[..wet[0]].Sum(), outwardsM = diffusionThicknesses[wet[^1]..].Sum();
        double dropPa = (isRoof ? RoofPlanePa : WallPlanePa) - SummerPa;
        double evaporableKgPerM2 = Diffusion.FixedPermeabilityKgPerMSPa * dropPa * (1 / inwardsM + 1 / outwardsM) * PeriodS;
        return new(winter.SettlesKgPerM2S * PeriodS, evaporableKgPerM2, wet, inwardsM, outwardsM, outwardsM >= TightSkinM);
    }

    // The outermost layer with any s_d is the skin, or a coat on it.
    private static bool TightOutside(double[] diffusionThicknessesM) =>
        Array.FindLast(diffusionThicknessesM, thicknessM => thicknessM > 0) >= TightSkinM;
}
