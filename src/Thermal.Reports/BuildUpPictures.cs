using Thermal.Assessments;
using Thermal.Charts;

namespace Thermal.Reports;

/// <summary>The pictures of one build-up: the cut as it stands, the year, the engineer's views.</summary>
internal static class BuildUpPictures
{
    /// <summary>Width of pictures that stand side by side: drawn as wide as seen, so that their letters keep their size.</summary>
    internal const int PairPx = 530;

    internal static void Show(ReportContext report, BuildUpDamp damp)
    {
        BuildUpCut cut = CutOfAssessment.Of(report.Found, damp) with { Name = Words.Sentences.Grammar.Capital(damp.Name) };
        string name = FileName.Of(damp.Name);
        Words.UnitSet units = report.Figures.Set;
        report.Html.Add($"<div class=\"pair\">\n");
        report.Show($"{name}-cut", CutThroughBuildUp.Draw(cut, Palette.Light, units, PairPx));
        if (damp.Year is { PeakGPerM2: > 0 } year)
            report.Show($"{name}-months", WettingAndDrying.Draw(cut.Name, year, Palette.Light, units, PairPx));
        report.Html.Add($"</div>\n<details><summary>Temperature, dew point and vapour pressure: {damp.Name}</summary>\n<div class=\"pair\">\n");
        report.Show($"{name}-temperature", TemperatureAndDewPoint.Draw(cut, Palette.Light, units, PairPx));
        report.Show($"{name}-vapour", VapourPressureOverDiffusion.Draw(cut, Palette.Light, units, PairPx));
        report.Html.Add($"</div></details>\n");
    }
}
