using Thermal.Assessments;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Json;

/// <summary>Damp inside one build-up as JSON.</summary>
internal static class BuildUpJson
{
    internal static void Write(JsonText json, BuildUpDamp damp, Figures figures)
    {
        json.Text("name", damp.Name)
            .Text("panel", damp.Panel)
            .Text("sentence", BuildUpWords.Of(damp, figures).Line)
            .Choice<DampVerdict>("verdict", damp.Verdict)
            .Choice<DampVerdict>("low_verdict", damp.LowVerdict)
            .Choice<DampVerdict>("high_verdict", damp.HighVerdict)
            .Text("wettest_place", damp.WettestPlace)
            .Number("wettest_face", damp.WettestFace)
            .Number("night_by_diffusion_g_per_m2", damp.NightByDiffusionGPerM2)
            .Number("night_by_air_g_per_m2", damp.NightByAirGPerM2)
            .Number("air_face", damp.AirFace)
            .Number("air_reaches_face", damp.AirReachesFace)
            .Numbers("temperatures_at_faces_c", damp.TemperaturesAtFacesC)
            .Numbers("saturation_at_faces_pa", damp.SaturationAtFacesPa)
            .Numbers("vapour_at_faces_pa", damp.VapourAtFacesPa)
            .Numbers("diffusion_thicknesses_m", damp.DiffusionThicknessesM)
            .Number("room_dew_point_c", damp.RoomDewPointC)
            .Number("block_settled_g_per_m2", damp.BlockSettledGPerM2)
            .Number("block_dryable_g_per_m2", damp.BlockDryableGPerM2)
            .Text("trapped_layer", damp.TrappedLayer);
        if (damp.PeakRangeGPerM2 is { } peak)
            json.Between("peak_range_g_per_m2", peak);
        if (damp.Year is { } year)
            json.Object("year", inner => Year(inner, year));
        else
            json.Text("year", null);
    }

    private static void Year(JsonText json, YearDamp year) => json
        .Numbers("wettest_face_g_per_m2", year.WettestFaceGPerM2)
        .Numbers("held_g_per_m2", year.HeldGPerM2)
        .Number("peak_g_per_m2", year.PeakGPerM2)
        .Number("wet_from_month", year.WetFromMonth)
        .Number("dry_in_month", year.DryInMonth)
        .Number("gain_per_year_g_per_m2", year.GainPerYearGPerM2)
        .Numbers("ice_months", year.IceMonths.Select(month => (double)month))
        .Objects("months", year.Months, (inner, month) => inner
            .Number("inside_c", month.InsideC).Number("outside_c", month.OutsideC)
            .Number("inside_pa", month.InsidePa).Number("outside_pa", month.OutsidePa).Number("lived_in_fraction", month.LivedInFraction));
}
