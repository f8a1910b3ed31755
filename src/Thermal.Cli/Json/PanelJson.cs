using Thermal.Assessments;
using Thermal.Envelope;

namespace Thermal.Cli.Json;

/// <summary>One panel with its layers, openings and bridges as JSON.</summary>
internal static class PanelJson
{
    internal static void Write(JsonText json, PanelAnswer panel)
    {
        Surface surface = panel.Surface;
        json.Text("name", surface.Name)
            .Choice<SurfacePlace>("place", surface.Place)
            .Number("tilt_deg", surface.TiltDeg)
            .Number("facing_deg", surface.FacingDeg)
            .Number("width_m", surface.WidthM)
            .Number("height_m", surface.HeightM)
            .Number("area_m2", surface.AreaM2)
            .Number("opaque_area_m2", surface.OpaqueAreaM2)
            .Text("zone", surface.Zone)
            .Choice<OuterSide>("outside", surface.Outside)
            .Text("other_zone", surface.OtherZone)
            .Objects("layers", surface.Stack.Layers.Select((layer, index) => (layer, (double?)panel.Transmittance.LayersM2KPerW[index])), Layer)
            .Choice<LiningFit>("lining_fit", surface.LiningFit)
            .Bounded("air_behind_lining_m3_per_m2h", surface.AirBehindLiningM3PerM2H)
            .Objects("ribs", surface.Ribs, (inner, rib) => inner
                .Text("name", rib.Name).Bounded("psi_w_per_mk", rib.PsiWPerMK).Number("length_m", rib.LengthM).Number("spacing_m", rib.SpacingM)
                .Number("coldest_factor", rib.ColdestFactor).Number("mould_factor", rib.MouldFactor).Text("given_for", rib.GivenFor).Truth("is_computed", rib.Detail is not null))
            .Objects("bolts", surface.Bolts, (inner, bolt) => inner
                .Text("name", bolt.Name).Bounded("chi_w_per_k", bolt.ChiWPerK).Number("count", bolt.Count)
                .Number("coldest_factor", bolt.ColdestFactor).Number("mould_factor", bolt.MouldFactor).Text("given_for", bolt.GivenFor).Truth("is_computed", bolt.Detail is not null))
            .Objects("against", surface.Against, (inner, thing) => inner
                .Text("name", thing.Name).Number("added_resistance_m2k_per_w", thing.AddedResistanceM2KPerW).Number("area_fraction", thing.AreaFraction))
            .Objects("openings", surface.Openings, Opening)
            .Object("transmittance", inner => Transmittance(inner, panel.Transmittance))
            .Number("u_w_per_m2k", panel.Transmittance.UWPerM2K)
            .Number("u_with_ribs_w_per_m2k", panel.UWithRibsWPerM2K)
            .Numbers("temperatures_at_faces_c", panel.TemperaturesAtFacesC)
            .Number("loss_w", panel.LossW)
            .Number("coldest_c", panel.ColdestC);
    }

    private static void Transmittance(JsonText json, StackTransmittance found) => json
        .Number("inside_film_m2k_per_w", found.InsideFilmM2KPerW)
        .Number("outside_film_m2k_per_w", found.OutsideFilmM2KPerW)
        .Number("upper_limit_m2k_per_w", found.UpperLimitM2KPerW)
        .Number("lower_limit_m2k_per_w", found.LowerLimitM2KPerW)
        .Number("total_m2k_per_w", found.TotalM2KPerW)
        .Number("gap_correction_w_per_m2k", found.GapCorrectionWPerM2K);

    private static void Layer(JsonText json, (StackLayer Layer, double? ResistanceM2KPerW) counted)
    {
        json.Text("name", counted.Layer.Name)
            .Number("thickness_m", counted.Layer.ThicknessM)
            .Number("resistance_m2k_per_w", counted.ResistanceM2KPerW);
        if (counted.Layer is AirLayer air)
            json.Number("openings_mm2", air.OpeningsMm2);
        if (counted.Layer is not SolidLayer solid)
            return;
        json.Text("material", solid.Material.Key)
            .Bounded("conductivity_w_per_mk", solid.Material.ConductivityWPerMK)
            .Bounded("density_kg_per_m3", solid.Material.DensityKgPerM3)
            .Bounded("specific_heat_j_per_kgk", solid.Material.SpecificHeatJPerKgK)
            .Number("diffusion_thickness_m", solid.DiffusionThicknessM);
        if (solid.Battens is { } battens)
            json.Object("battens", inner => inner
                .Text("material", battens.Material.Key).Number("area_fraction", battens.AreaFraction)
                .Bounded("conductivity_w_per_mk", battens.Material.ConductivityWPerMK));
    }

    private static void Opening(JsonText json, Opening opening) => json
        .Text("name", opening.Name)
        .Number("width_m", opening.WidthM)
        .Number("height_m", opening.HeightM)
        .Number("count", opening.Count)
        .Number("area_m2", opening.AreaM2)
        .Objects("panes", opening.Glazing?.Panes ?? [], (inner, pane) => inner
            .Text("material", pane.Material.Key).Number("thickness_m", pane.ThicknessM).Bounded("conductivity_w_per_mk", pane.Material.ConductivityWPerMK)
            .Number("inner_emissivity_fraction", pane.InnerEmissivityFraction).Number("outer_emissivity_fraction", pane.OuterEmissivityFraction))
        .Objects("gaps", opening.Glazing?.Gaps ?? [], (inner, gap) => inner
            .Number("thickness_m", gap.ThicknessM).Choice<GapGas>("gas", gap.Gas).Number("gas_fraction", gap.GasFraction))
        .Objects("leaf_layers", (opening.Leaf?.Layers ?? []).Select(layer => (layer, (layer as SolidLayer)?.ResistanceM2KPerW)), Layer)
        .Number("frame_fraction", opening.FrameFraction)
        .Number("frame_u_w_per_m2k", opening.FrameUWPerM2K)
        .Number("edge_psi_w_per_mk", opening.EdgePsiWPerMK)
        .Text("cover_at_night", opening.CoverAtNight)
        .Objects("covers", opening.Coverings, (inner, cover) => inner
            .Text("name", cover.Name).Choice<CoveringSide>("side", cover.Side)
            .Bounded("added_resistance_m2k_per_w", cover.AddedResistanceM2KPerW).Number("edge_leak_m3_per_m2h", cover.EdgeLeakM3PerM2H));
}
