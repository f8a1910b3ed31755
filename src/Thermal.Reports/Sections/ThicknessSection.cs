using Thermal.Charts;
using Thermal.Choices;

namespace Thermal.Reports.Sections;

/// <summary>What more thickness buys, for the main layers of the panels that lose most.</summary>
internal static class ThicknessSection
{
    /// <summary>More panels than this would bury the answer; the command thickness gives any layer.</summary>
    private const int PanelsShown = 4;

    internal static void Write(ReportContext report)
    {
        ThicknessTable[] tables = [.. Thicknesses.OfLargest(report.Found, PanelsShown).Where(table => table.Rows.Count > 1)];
        if (tables.Length == 0) return;
        report.Open("thickness", "What more thickness buys");
        report.Html.Add($"<p>The layer that insulates most in each of the panels that lose most, in the thicknesses sold; everything else kept. The command thickness does the same for any layer.</p>\n<div class=\"pair\">\n");
        for (int i = 0; i < tables.Length; i++)
            report.Show($"thickness-{i + 1}", ThicknessCurve.Draw(tables[i], Palette.Light, report.Figures.Set, BuildUpPictures.PairPx));
        report.Html.Add($"</div>\n");
        if (tables.Any(table => table.Rows.Any(row => row.BridgesStale)))
            report.Html.Add($"<p>The ribs' ψ in the file belongs to one thickness: at the others it is kept all the same, so their loss through ribs is a guess.</p>\n");
        report.Close();
    }
}
