using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Envelope.Details;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Json;

/// <summary>A rib, edge or bolt with its solution as JSON.</summary>
internal static class BridgeJson
{
    internal static void Write(JsonText json, BridgeAnswer bridge, string answer)
    {
        json.Text("name", bridge.Name)
            .Text("panel", bridge.Panel)
            .Text("sentence", answer)
            .Number("length_m", bridge.LengthM)
            .Number("count", bridge.Count)
            .Number("spacing_m", bridge.SpacingM)
            .Number("loss_w_per_k", bridge.LossWPerK)
            .Number("loss_w", bridge.LossW)
            .Number("coldest_c", bridge.ColdestC)
            .Number("to_spare_k", bridge.ToSpareK)
            .Truth("is_frost", bridge.IsFrost)
            .Number("inside_c", bridge.InsideC)
            .Number("outside_c", bridge.OutsideC)
            .Number("dew_point_c", bridge.DewPointC);
        if (bridge.Solved is { } solved)
            json.Object("solved", inner => Solved(inner, solved));
        else
            json.Text("solved", null);
    }

    /// <summary>The description as the vehicle file would hold it, in SI units.</summary>
    internal static void Detail(JsonText json, Detail detail)
    {
        json.Text("kind", DetailNames.Of(detail));
        switch (detail)
        {
            case Rib rib:
                json.Choice<RibShape>("shape", rib.Shape).Text("material", rib.Material.Key).Number("sheet_m", rib.SheetM).Number("depth_m", rib.DepthM)
                    .Number("crown_m", rib.CrownM).Number("foot_m", rib.FootM).Text("filling", rib.Filling?.Key).Truth("is_bare", rib.IsBare);
                Over(json, rib.Over);
                break;
            case Batten batten:
                json.Text("material", batten.Material.Key).Number("width_m", batten.WidthM).Number("depth_m", batten.DepthM);
                Over(json, batten.Over);
                break;
            case Corrugation grooves:
                json.Number("depth_m", grooves.DepthM).Number("groove_m", grooves.GrooveM).Text("filling", grooves.Filling?.Key);
                break;
            case Corner corner:
                json.Text("other_panel", corner.Other).Number("angle_sheet_m", corner.AngleSheetM).Number("angle_leg_m", corner.AngleLegM).Text("angle_material", corner.AngleMaterial?.Key);
                break;
            case FrameEdge frame:
                json.Number("frame_depth_m", frame.FrameDepthM).Number("frame_width_m", frame.FrameWidthM).Number("lip_m", frame.LipM).Number("gap_m", frame.GapM);
                break;
            case DoorEdge door:
                json.Text("material", door.Material.Key).Number("sheet_m", door.SheetM).Number("post_m", door.PostM).Number("depth_m", door.DepthM)
                    .Number("seal_m", door.SealM).Text("filling", door.Filling?.Key);
                break;
            case Bolt bolt:
                json.Text("material", bolt.Material.Key).Number("diameter_m", bolt.DiameterM).Number("head_m", bolt.HeadM)
                    .Number("head_thickness_m", bolt.HeadThicknessM).Number("outer_head_m", bolt.OuterHeadM).Number("layers_over", bolt.LayersOver);
                break;
        }
    }

    internal static void Strips(JsonText json, StripTable table, Figures figures) => json
        .Text("material", table.Material)
        .Text("sentence", RibChoiceWords.OfStrip(table, figures))
        .Objects("rows", table.Rows, (inner, row) => inner
            .Number("strip_m", row.StripM).Truth("is_kept", row.IsKept).Number("psi_w_per_mk", row.PsiWPerMK).Number("u_with_ribs_w_per_m2k", row.UWithRibsWPerM2K)
            .Number("coldest_c", row.ColdestC).Number("to_spare_k", row.ToSpareK).Number("saved_w", row.SavedW).Number("headroom_lost_m", row.HeadroomLostM));

    internal static void Fillings(JsonText json, FillingTable table, Figures figures) => json
        .Text("sentence", RibChoiceWords.OfFilling(table, figures))
        .Objects("rows", table.Rows, (inner, row) => inner
            .Text("filling", row.Filling).Truth("is_kept", row.IsKept).Number("psi_w_per_mk", row.PsiWPerMK).Number("u_with_ribs_w_per_m2k", row.UWithRibsWPerM2K)
            .Number("coldest_c", row.ColdestC).Number("to_spare_k", row.ToSpareK).Number("saved_w", row.SavedW));

    private static void Over(JsonText json, OverRib? over)
    {
        if (over is null)
            json.Text("over", null);
        else
            json.Object("over", inner => inner.Text("material", over.Material.Key).Number("thickness_m", over.ThicknessM).Number("width_m", over.WidthM));
    }

    private static void Solved(JsonText json, SolvedDetail solved)
    {
        json.Object("description", inner => Detail(inner, solved.Detail));
        if (solved is SolvedLine line)
            json.Bounded("psi_w_per_mk", line.PsiWPerMK).Number("u_with_ribs_w_per_m2k", line.UWithRibsWPerM2K);
        if (solved is SolvedPoint point)
            json.Bounded("chi_w_per_k", point.ChiWPerK);
        json.Number("plain_u_w_per_m2k", solved.PlainUWPerM2K)
            .Number("coldest_factor", solved.ColdestFactor)
            .Number("coldest_error_factor", solved.ColdestErrorFactor)
            .Number("mould_factor", solved.MouldFactor)
            .Object("coldest_at", inner => inner.Number("x_m", solved.ColdestAt.XM).Number("y_m", solved.ColdestAt.YM).Number("z_m", solved.ColdestAt.ZM))
            .Number("coupling_w_per_k", solved.Loss.CouplingsWPerK[1])
            .Number("coupling_error_w_per_k", solved.Loss.CouplingErrorsWPerK[1])
            .Number("doubling_change_fraction", solved.Loss.DoublingChangeFraction)
            .Number("cell_count", solved.Loss.CellCount)
            .Number("rounds_count", solved.Loss.RoundsCount)
            .Truth("is_converged", solved.Loss.IsConverged);
    }
}
