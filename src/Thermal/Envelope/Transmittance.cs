namespace Thermal.Envelope;

/// <summary>Thermal transmittance of build-ups by ISO 6946: plain layers, battens by the combined method, air layers closed or ventilated.</summary>
public static class Transmittance
{
    private static readonly double[] GapLevelsWPerM2K = [0, 0.01, 0.04];

    /// <summary>U of a plain stack of resistances.</summary>
    /// <param name="layers">Layers, any order.</param>
    /// <param name="surfaceResistanceM2KPerW">Sum of both films, m²·K/W, 0 to 2.</param>
    /// <returns>W/(m²·K).</returns>
    /// <remarks>Source: ISO-6946, 6.7.1.1.</remarks>
    public static double OfStackWPerM2K(IEnumerable<SolidLayer> layers, double surfaceResistanceM2KPerW) =>
        1 / (Guard.InRange(surfaceResistanceM2KPerW, 0, 2, "m²·K/W") + layers.Sum(layer => layer.ResistanceM2KPerW));

    /// <summary>U of a build-up with its working.</summary>
    /// <param name="stack">The build-up.</param>
    /// <param name="direction">Which way heat leaves.</param>
    /// <param name="insideFilmM2KPerW">Inside film R_si, m²·K/W, 0 to 12; things standing against it included.</param>
    /// <param name="outsideFilmM2KPerW">Outside film R_se, m²·K/W, 0 to 1.</param>
    /// <remarks>
    /// Battens: upper limit by parallel sections over the whole build-up (battens of several layers stand apart, so that their
    /// sections multiply), lower limit layer by layer, mean of both. Metal battens cannot be described (see <see cref="Battens"/>).
    /// A layer with 500 to 1500 mm² of openings lies between closed and open in proportion; beyond it is open: what stands outside it
    /// is dropped and the inside film stands there too.
    /// Source: ISO-6946, 6.7.2 (combined method), 6.9 (air layers), annex F (corrections).
    /// </remarks>
    public static StackTransmittance Of(Stack stack, FlowDirection direction, double insideFilmM2KPerW, double outsideFilmM2KPerW)
    {
        Guard.InRange(insideFilmM2KPerW, 0, 12, "m²·K/W");
        Guard.InRange(outsideFilmM2KPerW, 0, 1, "m²·K/W");
        int open = Ventilated(stack, out double openShare);
        StackTransmittance closed = Whole(stack, direction, insideFilmM2KPerW, outsideFilmM2KPerW, stack.Layers.Count);
        if (open < 0) return closed;
        StackTransmittance ventilated = Whole(stack, direction, insideFilmM2KPerW, SurfaceResistance.InsideM2KPerW(direction), open);
        double[] layers = [.. closed.LayersM2KPerW.Select((r, i) => Mix(r, ventilated.LayersM2KPerW[i], openShare))];
        double outside = Mix(closed.OutsideFilmM2KPerW, ventilated.OutsideFilmM2KPerW, openShare);
        return openShare >= 1 ? ventilated : closed with
        {
            UpperLimitM2KPerW = Mix(closed.UpperLimitM2KPerW, ventilated.UpperLimitM2KPerW, openShare),
            LowerLimitM2KPerW = Mix(closed.LowerLimitM2KPerW, ventilated.LowerLimitM2KPerW, openShare),
            TotalM2KPerW = Mix(closed.TotalM2KPerW, ventilated.TotalM2KPerW, openShare),
            LayersM2KPerW = layers,
            OutsideFilmM2KPerW = outside,
            GapCorrectionWPerM2K = GapCorrection(stack, layers, insideFilmM2KPerW + outside),
        };
    }

    /// <summary>Correction for fasteners through insulation, ΔU_f = α·λ_f·A_f·n_f/d_0·(R_1/R_T,h)².</summary>
    /// <param name="alphaFactor">α: 0.8 through the whole layer, 0.8·d_1/d_0 when recessed; 0 to 1.</param>
    /// <param name="conductivityWPerMK">λ_f of the fastener, W/(m·K).</param>
    /// <param name="sectionM2">A_f, section of one, m².</param>
    /// <param name="perM2Count">n_f, fasteners per m².</param>
    /// <param name="layerThicknessM">d_0, thickness of the insulation it passes, m.</param>
    /// <param name="layerResistanceM2KPerW">R_1 of that layer, m²·K/W.</param>
    /// <param name="totalResistanceM2KPerW">R_T,h between battens, m²·K/W.</param>
    /// <returns>W/(m²·K).</returns>
    /// <remarks>Source: ISO-6946, annex F.3 (from memory). Not for fasteners that join two metal sheets: those need their χ.</remarks>
    public static double FastenerCorrectionWPerM2K(double alphaFactor, double conductivityWPerMK, double sectionM2, double perM2Count,
        double layerThicknessM, double layerResistanceM2KPerW, double totalResistanceM2KPerW)
    {
        double share = Guard.InRange(layerResistanceM2KPerW, 0, 100, "m²·K/W") / Guard.InRange(totalResistanceM2KPerW, 1e-3, 100, "m²·K/W");
        return Guard.InRange(alphaFactor, 0, 1, "(factor)") * Guard.InRange(conductivityWPerMK, 0.001, 500, "W/(m·K)")
            * Guard.InRange(sectionM2, 0, 0.01, "m²") * Guard.InRange(perM2Count, 0, 1000, "1/m²")
            / Guard.InRange(layerThicknessM, 1e-3, 1, "m") * share * share;
    }

    /// <summary>Resistance of a layer between battens, m²·K/W.</summary>
    internal static double LayerM2KPerW(Stack stack, int index, FlowDirection direction) => stack.Layers[index] switch
    {
        SolidLayer solid => solid.ResistanceM2KPerW,
        AirLayer air => AirLayerResistance.ClosedM2KPerW(air.ThicknessM, direction,
            air.InnerEmissivityFraction ?? Emissivity(stack, index - 1), air.OuterEmissivityFraction ?? Emissivity(stack, index + 1)),
        _ => throw new InvalidOperationException("A layer is solid or air."),
    };

    private static double Emissivity(Stack stack, int index) =>
        index >= 0 && index < stack.Layers.Count && stack.Layers[index] is SolidLayer solid
            ? solid.Material.EmissivityFraction.Value : SurfaceResistance.UsualEmissivityFraction;

    /// <summary>Index of the innermost ventilated layer, or -1, and how open it is, fraction.</summary>
    private static int Ventilated(Stack stack, out double openShare)
    {
        for (int i = 0; i < stack.Layers.Count; i++)
        {
            if (stack.Layers[i] is not AirLayer { OpeningsMm2: > AirLayerResistance.ClosedUpToMm2 } air) continue;
            openShare = (Math.Min(air.OpeningsMm2, AirLayerResistance.WellVentilatedFromMm2) - AirLayerResistance.ClosedUpToMm2)
                / (AirLayerResistance.WellVentilatedFromMm2 - AirLayerResistance.ClosedUpToMm2);
            return i;
        }
        openShare = 0;
        return -1;
    }

    private static StackTransmittance Whole(Stack stack, FlowDirection direction, double insideM2KPerW, double outsideM2KPerW, int count)
    {
        double[] layers = new double[stack.Layers.Count];
        double films = insideM2KPerW + outsideM2KPerW, lower = films, between = films;
        int battened = 0;
        for (int i = 0; i < count; i++)
        {
            layers[i] = LayerM2KPerW(stack, i, direction);
            between += layers[i];
            lower += stack.Layers[i] is SolidLayer { Battens: { } battens } solid
                ? 1 / ((1 - battens.AreaFraction) / layers[i] + battens.AreaFraction / BattenM2KPerW(solid))
                : layers[i];
            if (stack.Layers[i] is SolidLayer { Battens: not null }) battened++;
        }
        double upper = battened == 0 ? between : 1 / ParallelWPerM2K(stack, layers, count, 0, 1, films);
        double total = battened == 0 ? between : (upper + lower) / 2;
        return new()
        {
            InsideFilmM2KPerW = insideM2KPerW,
            OutsideFilmM2KPerW = outsideM2KPerW,
            LayersM2KPerW = layers,
            UpperLimitM2KPerW = upper,
            LowerLimitM2KPerW = lower,
            TotalM2KPerW = total,
            GapCorrectionWPerM2K = GapCorrection(stack, layers, films),
        };
    }

    private static double BattenM2KPerW(SolidLayer solid) => solid.ThicknessM / solid.Battens!.Material.ConductivityWPerMK.Value;

    /// <summary>Σ f/R over all sections, by halving at each battened layer.</summary>
    private static double ParallelWPerM2K(Stack stack, double[] layers, int count, int from, double share, double resistance)
    {
        for (int i = from; i < count; i++)
        {
            if (stack.Layers[i] is SolidLayer { Battens: { } battens } solid)
                return ParallelWPerM2K(stack, layers, count, i + 1, share * (1 - battens.AreaFraction), resistance + layers[i])
                    + ParallelWPerM2K(stack, layers, count, i + 1, share * battens.AreaFraction, resistance + BattenM2KPerW(solid));
            resistance += layers[i];
        }
        return share / resistance;
    }

    /// <summary>ΔU_g = ΔU″·(R_1/R_T,h)² of the best insulating layer, both between battens.</summary>
    private static double GapCorrection(Stack stack, double[] layers, double films)
    {
        double best = 0, total = films;
        for (int i = 0; i < layers.Length; i++)
        {
            total += layers[i];
            if (stack.Layers[i] is SolidLayer) best = Math.Max(best, layers[i]);
        }
        return GapLevelsWPerM2K[stack.GapLevel] * best / total * (best / total);
    }

    private static double Mix(double closed, double open, double openShare) => (1 - openShare) * closed + openShare * open;
}
