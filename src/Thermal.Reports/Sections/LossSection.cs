using Thermal.Assessments;
using Thermal.Charts;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>Where the heat goes on the cold night, part by part, and the panels it goes through.</summary>
internal static class LossSection
{
    internal static void Write(ReportContext report)
    {
        Night night = report.Found.ColdNight;
        Figures figures = report.Figures;
        report.Open("losses", "Where the heat goes");
        report.Html.Add($"<p>On the cold night of {figures.Temperature(night.Conditions.OutsideC)} the vehicle loses {figures.Power(night.LossW)}; with everything low to everything high, {figures.Range(Shown.Power, night.LossRangeW.Low, night.LossRangeW.High)}.</p>\n");
        report.Show("loss-by-part", LossByPart.Draw(night, Palette.Light, figures.Set));
        Panels(report, figures);
        report.Html.Add($"<details><summary>Every part of the loss</summary>\n");
        Parts(report, night, figures);
        report.Html.Add($"</details>\n");
        report.Close();
    }

    private static void Parts(ReportContext report, Night night, Figures figures)
    {
        IEnumerable<IReadOnlyList<string>> rows = night.Losses.OrderByDescending(loss => loss.LossW).Select(loss => (IReadOnlyList<string>)
        [
            loss.Name, loss.Panel ?? "", Names.Of(loss.Kind), loss.Zone,
            loss.AreaM2 > 0 ? figures.Number(Shown.Area, loss.AreaM2) : "",
            figures.Number(Shown.LossPerKelvin, loss.CoefficientWPerK),
            figures.Number(Shown.Difference, loss.DifferenceK),
            figures.Number(Shown.Power, loss.LossW),
            figures.Percent(loss.LossW / night.LossW),
        ]);
        report.Html.Table(
            "Loss on the cold night: coefficient times difference; the difference counts the sky for panels that see it, and what the rooms beside the living space have of their own",
            ["Part", "Panel", "Kind", "Room", $">{figures.Unit(Shown.Area)}", ">W/K", $">{figures.Unit(Shown.Difference)}", $">{figures.Unit(Shown.Power)}", ">share"],
            rows.Append(["All parts", "", "", "", "", "", "", figures.Number(Shown.Power, night.LossW), ""]), lastIsSum: true);
    }

    private static void Panels(ReportContext report, Figures figures) => report.Html.Table(
        "Panels: transmittance between ribs and with them",
        ["Panel", "Outside", $">{figures.Unit(Shown.Area)}", $">thickness {figures.Unit(Shown.Thickness)}", $">U {figures.Unit(Shown.Transmittance)}", ">U with ribs", $">loss {figures.Unit(Shown.Power)}", $">coldest inside {figures.Unit(Shown.Temperature)}"],
        report.Found.Panels.Select(panel => (IReadOnlyList<string>)
        [
            panel.Surface.Name, Names.Of(panel.Surface.Outside),
            figures.Number(Shown.Area, panel.Surface.AreaM2),
            figures.Number(Shown.Thickness, panel.Surface.Stack.ThicknessM),
            figures.Number(Shown.Transmittance, panel.Transmittance.UWPerM2K),
            figures.Number(Shown.Transmittance, panel.UWithRibsWPerM2K),
            figures.Number(Shown.Power, panel.LossW),
            figures.Number(Shown.Temperature, panel.ColdestC),
        ]));
}
