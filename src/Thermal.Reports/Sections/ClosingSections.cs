using Thermal.Trips;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>Cautions, assumptions, limits and sources.</summary>
internal static class ClosingSections
{
    internal static void Write(ReportContext report, TripResult? trip)
    {
        report.Open("care", "Take care");
        report.Html.List(trip is null ? Cautions.Of(report.Found.Case) : TripCautions.Of(trip));
        report.Close();
        report.Open("assumptions", "What was assumed");
        report.Html.List(Assumptions.Of(report.Found, report.Figures));
        report.Html.Add($"<h3>What the methods leave out</h3>\n");
        report.Html.List(Assumptions.Limits);
        report.Html.Add($"<details><summary>Sources</summary>\n");
        report.Html.Table("Every document a figure or formula comes from", ["Key", "Document"], Sources.All.Select(source => (IReadOnlyList<string>)[source.Key, source.Title]));
        report.Html.Add($"</details>\n");
        report.Close();
    }
}
