using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Working;

/// <summary>How the water of the cold night was found, line by line, in SI units.</summary>
internal static class DampWorking
{
    private const string Glaser = "ISO 13788, clause 6", Ours = "mass balance, beside ISO 13788, which excludes moving air";

    private static Figures F => Figures.Metric;

    internal static IReadOnlyList<Step> Of(BuildUpDamp damp, Stack stack, Surface surface, Case assessed)
    {
        List<Step> steps = [];
        for (int i = 0; i < stack.Layers.Count; i++)
            steps.Add(DiffusionThickness(stack.Layers[i], damp.DiffusionThicknessesM[i]));
        steps.Add(new("temperatures at the faces", "θ_j = θ_0 − (θ_0 − θ_n) · R_1…j/ΣR", Faces(Shown.Temperature, damp.TemperaturesAtFacesC), F.Unit(Shown.Temperature), "ISO 13788, 6.3"));
        steps.Add(new("saturation at the faces", "p_sat(θ): over water above 0 °C, over ice below", Faces(Shown.VapourPressure, damp.SaturationAtFacesPa), F.Unit(Shown.VapourPressure), "ISO 13788, annex E"));
        steps.Add(new("vapour pressure at the faces", "straight over s_d between the wet faces, p ≤ p_sat", Faces(Shown.VapourPressure, damp.VapourAtFacesPa), F.Unit(Shown.VapourPressure), Glaser));
        steps.Add(new("settles by diffusion", "g = δ_0 · [(p_i − p_c)/s_d,in − (p_c − p_e)/s_d,out] · t", $"{Wettest(damp)}; δ_0 by mean temperature and air pressure, t = {F.Hours(assessed.Habits.NightH)}", F.GramsPerArea(damp.NightByDiffusionGPerM2), Glaser));
        steps.Add(Air(damp, surface, assessed));
        return steps;
    }

    private static Step DiffusionThickness(StackLayer layer, double diffusionThicknessM)
    {
        string result = F.Write(Shown.DiffusionThickness, diffusionThicknessM);
        return layer is SolidLayer { Material.VapourResistanceFactor: { } factor } solid
            ? new($"s_d of {solid.Name}", "s_d = μ · d", $"{F.Write(Shown.Factor, factor.Value)} · {F.Thickness(solid.ThicknessM)}", result, Glaser)
            : new($"s_d of {layer.Name}", layer is SolidLayer ? "s_d of the film, whatever its thickness" : "s_d of an air layer", F.Thickness(layer.ThicknessM), result, Glaser);
    }

    private static Step Air(BuildUpDamp damp, Surface surface, Case assessed) => damp.AirFace < 0
        ? new("settles from air", "no room air gets behind the lining", Names.Of(surface.LiningFit), F.GramsPerArea(0), Ours)
        : new("settles from air, at most", "g = V̇ · ρ_dry · (x_room − x_sat at the face) · t",
            $"{F.Write(Shown.Factor, surface.AirBehindLiningM3PerM2H.Value)} m³/(m²·h), {F.Temperature(damp.TemperaturesAtFacesC[damp.AirFace])} at the face, dew point {F.Temperature(damp.RoomDewPointC)}, t = {F.Hours(assessed.Habits.NightH)}",
            F.GramsPerArea(damp.NightByAirGPerM2), Ours);

    private static string Wettest(BuildUpDamp damp)
    {
        if (damp.WettestFace < 0)
            return "no face at saturation";
        double innerM = damp.DiffusionThicknessesM.Take(damp.WettestFace).Sum(), outerM = damp.DiffusionThicknessesM.Skip(damp.WettestFace).Sum();
        return $"{damp.WettestPlace}: p_i {F.Write(Shown.VapourPressure, damp.VapourAtFacesPa[0])}, p_c {F.Write(Shown.VapourPressure, damp.VapourAtFacesPa[damp.WettestFace])}, p_e {F.Write(Shown.VapourPressure, damp.VapourAtFacesPa[^1])}, " +
            $"s_d,in {F.Write(Shown.DiffusionThickness, innerM)}, s_d,out {F.Write(Shown.DiffusionThickness, outerM)}";
    }

    private static string Faces(Shown shown, IReadOnlyList<double> values) => string.Join(" | ", values.Select(value => F.Number(shown, value)));
}
