using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Envelope.Details;

namespace Thermal.Cli.Json;

/// <summary>A thickness table as JSON.</summary>
internal static class ThicknessJson
{
    internal static void Write(JsonText json, ThicknessTable table) => json
        .Text("panel", table.Panel)
        .Text("layer", table.Layer)
        .Number("layer_number", table.LayerIndex + 1)
        .Number("kept_thickness_m", table.KeptThicknessM)
        .Text("fuel_unit", table.FuelUnit)
        .Objects("rows", table.Rows, Row)
        .Objects("left_out", table.LeftOut, (json, left) => json
            .Number("thickness_m", left.ThicknessM).Text("bridge", left.Reason.Name).Choice<DetailFault>("fault", left.Reason.Problem.Fault)
            .Number("given_m", left.Reason.Problem.GivenM).Number("limit_m", left.Reason.Problem.LimitM));

    private static void Row(JsonText json, ThicknessRow row) => json
        .Number("thickness_m", row.ThicknessM)
        .Truth("is_kept", row.IsKept)
        .Number("u_w_per_m2k", row.UWPerM2K)
        .Number("u_with_ribs_w_per_m2k", row.UWithRibsWPerM2K)
        .Truth("bridges_stale", row.BridgesStale)
        .Number("loss_w", row.LossW)
        .Number("next_ten_mm_save_w", row.NextTenMmSaveW)
        .Number("fuel_amount", row.FuelAmount)
        .Number("headroom_m", row.HeadroomM)
        .Number("inner_width_m", row.InnerWidthM)
        .Number("mass_kg", row.MassKg)
        .Choice<DampVerdict>("verdict", row.Verdict)
        .Number("peak_g_per_m2", row.PeakGPerM2)
        .Number("coldest_c", row.ColdestC);
}
