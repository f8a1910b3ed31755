using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Words;

namespace Thermal.Reports.Working;

/// <summary>How a panel's resistance and transmittance were found, line by line, in SI units.</summary>
internal static class HeatWorking
{
    private const string Layers = "ISO 6946, 6.7.1", Films = "ISO 6946, 6.8 and annex C", AirLayers = "ISO 6946, 6.9 and annex D", Combined = "ISO 6946, 6.7.2";

    private static Figures F => Figures.Metric;

    internal static IReadOnlyList<Step> Of(PanelAnswer panel)
    {
        StackTransmittance found = panel.Transmittance;
        Stack stack = panel.Surface.Stack;
        List<Step> steps = [new("inside film", "R_si by direction of flow", Words.Sentences.Names.Of(panel.Surface.Direction), F.Resistance(found.InsideFilmM2KPerW), Films)];
        for (int i = 0; i < stack.Layers.Count; i++)
            steps.Add(Layer(stack.Layers[i], found.LayersM2KPerW[i]));
        steps.Add(new("outside film", "R_se by wind or shelter", Words.Sentences.Names.Of(panel.Surface.Outside), F.Resistance(found.OutsideFilmM2KPerW), Films));
        steps.AddRange(HasBattens(stack) ? Battened(stack, found) : [Plain(found)]);
        if (found.GapCorrectionWPerM2K > 0)
            steps.Add(new("air gaps in the insulation", "ΔU_g = ΔU″ · (R_1/R_T)²", $"level {F.Write(Shown.Factor, stack.GapLevel)}", F.Transmittance(found.GapCorrectionWPerM2K), "ISO 6946, annex F"));
        steps.Add(new("transmittance between ribs", "U = 1/R_T + ΔU_g", $"1/{F.Number(Shown.Resistance, found.TotalM2KPerW)} + {F.Number(Shown.Transmittance, found.GapCorrectionWPerM2K)}", F.Transmittance(found.UWPerM2K), Layers));
        if (panel.Surface.Ribs.Count + panel.Surface.Bolts.Count > 0)
            steps.Add(Ribs(panel));
        return steps;
    }

    private static Step Layer(StackLayer layer, double resistanceM2KPerW) => layer switch
    {
        SolidLayer solid => new(solid.Name, "R = d/λ", $"{F.Thickness(solid.ThicknessM)} / {F.Write(Shown.Conductivity, solid.Material.ConductivityWPerMK.Value)}", F.Resistance(resistanceM2KPerW), Layers),
        AirLayer { OpeningsMm2: > AirLayerResistance.ClosedUpToMm2 } open => new(open.Name, "ventilated: what stands outside it counts in part or not at all", $"{F.Thickness(open.ThicknessM)}, openings {F.Write(Shown.Factor, open.OpeningsMm2)} mm²", F.Resistance(resistanceM2KPerW), AirLayers),
        _ => new(layer.Name, "R = 1/(h_a + h_r)", F.Thickness(layer.ThicknessM), F.Resistance(resistanceM2KPerW), AirLayers),
    };

    private static bool HasBattens(Stack stack) => stack.Layers.Any(layer => layer is SolidLayer { Battens: not null });

    private static Step Plain(StackTransmittance found) => new("total resistance", "R_T = R_si + ΣR + R_se",
        string.Join(" + ", found.LayersM2KPerW.Prepend(found.InsideFilmM2KPerW).Append(found.OutsideFilmM2KPerW).Select(r => F.Number(Shown.Resistance, r))),
        F.Resistance(found.TotalM2KPerW), Layers);

    private static IEnumerable<Step> Battened(Stack stack, StackTransmittance found)
    {
        string shares = string.Join("; ", stack.Layers.OfType<SolidLayer>().Where(layer => layer.Battens is not null).Select(layer =>
            $"{layer.Name}: {F.Percent(layer.Battens!.AreaFraction)} {layer.Battens.Material.Name} of λ {F.Write(Shown.Conductivity, layer.Battens.Material.ConductivityWPerMK.Value)}"));
        yield return new("upper limit", "1/R_T′ = Σ f_q/R_Tq over the sections", shares, F.Resistance(found.UpperLimitM2KPerW), Combined);
        yield return new("lower limit", "R_T″ = R_si + Σ R_j + R_se, with 1/R_j = Σ f_q/R_qj", shares, F.Resistance(found.LowerLimitM2KPerW), Combined);
        yield return new("total resistance", "R_T = (R_T′ + R_T″)/2",
            $"({F.Number(Shown.Resistance, found.UpperLimitM2KPerW)} + {F.Number(Shown.Resistance, found.LowerLimitM2KPerW)})/2; limits apart by {F.Write(Shown.Factor, found.LimitRatio)}",
            F.Resistance(found.TotalM2KPerW), Combined);
    }

    private static Step Ribs(PanelAnswer panel)
    {
        string ribs = string.Join(" + ", panel.Surface.Ribs.Select(rib => $"{F.Number(Shown.LinearTransmittance, rib.PsiWPerMK!.Value)}·{F.Length(rib.LengthM)}")
            .Concat(panel.Surface.Bolts.Select(bolt => $"{F.Number(Shown.PointTransmittance, bolt.ChiWPerK!.Value)}·{F.Write(Shown.Factor, bolt.Count)}")));
        return new("transmittance with ribs", "U + (Σψ·l + Σχ·n)/A", $"{F.Number(Shown.Transmittance, panel.Transmittance.UWPerM2K)} + ({ribs}) / {F.Area(panel.Surface.OpaqueAreaM2)}",
            F.Transmittance(panel.UWithRibsWPerM2K), RibClause(panel.Surface));
    }

    private static string RibClause(Surface surface)
    {
        bool anyDescribed = surface.Ribs.Any(rib => rib.Detail is not null) || surface.Bolts.Any(bolt => bolt.Detail is not null);
        bool anyGiven = surface.Ribs.Any(rib => rib.Detail is null) || surface.Bolts.Any(bolt => bolt.Detail is null);
        return Words.Sentences.BridgeWords.Origin(anyDescribed, anyGiven);
    }
}
