using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Reports.Working;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>Every build-up: verdict, pictures, the year and the working.</summary>
internal static class BuildUpSection
{
    internal static void Write(ReportContext report)
    {
        report.Open("build-ups", "Inside the build-ups");
        Overview(report);
        foreach (BuildUpDamp damp in report.Found.BuildUps)
            One(report, damp);
        report.Close();
    }

    private static void Overview(ReportContext report)
    {
        Figures figures = report.Figures;
        report.Html.Table($"Damp: one cold night of {figures.Hours(report.Found.Case.Habits.NightH)} by diffusion and by air side by side, and the most held over the year",
            ["Build-up", "Verdict", ">night, diffusion", ">night, air, at most", ">held at worst", "Where"],
            report.Found.BuildUps.Select(damp => (IReadOnlyList<string>)
            [
                damp.Name, BuildUpWords.Of(damp, figures).Verdict, figures.GramsPerArea(damp.NightByDiffusionGPerM2), figures.GramsPerArea(damp.NightByAirGPerM2),
                damp.Year is { } year ? figures.GramsPerArea(year.PeakGPerM2) : "no months", BuildUpWords.Of(damp, figures).Where,
            ]));
    }

    private static void One(ReportContext report, BuildUpDamp damp)
    {
        Html html = report.Html;
        PanelAnswer panel = report.Found.Panels.First(candidate => candidate.Surface.Name == damp.Panel);
        Stack stack = BuildUpLayers.StackOf(damp, panel.Surface);
        string u = damp.Name == damp.Panel ? $"U {report.Figures.Transmittance(panel.Transmittance.UWPerM2K)} between ribs, {report.Figures.Transmittance(panel.UWithRibsWPerM2K)} with them" : "";
        html.Add($"<div class=\"build-up\"><h3>{Grammar.Capital(damp.Name)} <small>{u}</small></h3>\n");
        html.Add($"<p class=\"{new Markup(damp.Verdict == DampVerdict.Dry ? "say dry" : "say")}\">{BuildUpWords.Of(damp, report.Figures).Line}</p>\n");
        BuildUpPictures.Show(report, damp);
        html.Add($"<details><summary>Working: {damp.Name}</summary>\n<p>All figures of the working are in SI units, from inside to outside.</p>\n");
        if (damp.Name == damp.Panel)
            Steps(html, "Resistance and transmittance", HeatWorking.Of(panel));
        Steps(html, "The cold night", DampWorking.Of(damp, stack, panel.Surface, report.Found.Case));
        if (damp.Year is { } year)
            Year(html, year);
        html.Add($"<p>Block climate of DIN 4108-3, for comparison only: {Figures.Metric.GramsPerArea(damp.BlockSettledGPerM2)} settle and {Figures.Metric.GramsPerArea(damp.BlockDryableGPerM2)} could dry. Behind a tight skin this stands outside the method's scope and gives no verdict.</p>\n");
        html.Add($"</details></div>\n");
    }

    private static void Steps(Html html, string caption, IReadOnlyList<Step> steps) => html.Table(caption,
        ["What", "Formula", "Numbers put in", ">Result", "Clause"],
        steps.Select(step => (IReadOnlyList<string>)[step.What, step.Formula, step.PutIn, step.Result, step.Clause]));

    private static void Year(Html html, YearDamp year)
    {
        Figures figures = Figures.Metric;
        html.Table("The twelve months: what was put in, and the water held at the end of each (ISO 13788, clause 6, by diffusion and by air behind the lining)",
            ["Month", ">inside °C", ">outside °C", ">inside Pa", ">outside Pa", ">nights lived in", ">held g/m²", "Ice"],
            year.Months.Select((month, index) => (IReadOnlyList<string>)
            [
                Grammar.Month(index + 1), figures.Number(Shown.Temperature, month.InsideC), figures.Number(Shown.Temperature, month.OutsideC),
                figures.Number(Shown.VapourPressure, month.InsidePa), figures.Number(Shown.VapourPressure, month.OutsidePa),
                figures.Percent(month.LivedInFraction), figures.Number(Shown.WaterPerArea, year.HeldGPerM2[index] / 1000),
                year.IceMonths.Contains(index + 1) ? "ice" : "",
            ]));
    }
}
