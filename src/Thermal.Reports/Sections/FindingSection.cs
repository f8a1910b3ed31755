using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>What a person should know, worst first.</summary>
internal static class FindingSection
{
    private const int MostAdvice = 8;

    internal static void Write(ReportContext report)
    {
        report.Open("know", "What to know");
        report.Html.Add($"<div class=\"pair\"><div>\n");
        if (report.Found.Findings.Count == 0)
            report.Html.Add($"<p>Nothing in this case asks for attention.</p>\n");
        else
            report.Html.List(Findings.Of(report.Found, report.Advice, report.Figures));
        report.Html.Add($"</div><div class=\"help\"><h3>What helps most</h3>\n");
        if (report.Advice.Count == 0)
            report.Html.Add($"<p>No change on the list that was tried makes a difference worth a word.</p>\n");
        else
            report.Html.List(report.Advice.Take(MostAdvice).Select(item => AdviceSentence.Of(item, report.Figures)));
        report.Html.Add($"<p>Each was tried alone, on the whole vehicle; what dries build-ups and keeps most water out of them comes first.</p></div></div>\n");
        report.Close();
    }
}
