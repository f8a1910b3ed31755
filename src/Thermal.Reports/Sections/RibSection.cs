using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Envelope.Details;
using Thermal.Reports.Working;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>Ribs, edges and bolts: all in a table, the ones nearest to wet in full.</summary>
internal static class RibSection
{
    /// <summary>More in full would bury the answer; the command detail tells any.</summary>
    private const int MostInFull = 3;

    internal static void Write(ReportContext report)
    {
        report.Open("ribs", "Ribs, edges and bolts");
        if (report.Found.Bridges.Count == 0)
            report.Html.Add($"<p>{BridgeWords.None}</p>\n");
        else
            All(report);
        var cache = new BridgeCache();
        BridgeAnswer[] inFull = [.. InFull(report.Found)];
        foreach (BridgeAnswer bridge in inFull)
            One(report, bridge, bridge.Solved!, cache);
        if (inFull.Length > 0)
        {
            report.Html.Add($"<details><summary>What is taken for granted of ribs, edges and bolts</summary>\n");
            report.Html.List(BridgeMethod.Limits);
            report.Html.Add($"</details>\n");
        }
        report.Close();
    }

    // Equal ribs in equal build-ups are told once, where they are nearest to wet; edges of openings last, since glass is wet before them.
    private static IEnumerable<BridgeAnswer> InFull(Assessment found) => found.Bridges
        .Where(bridge => bridge.Solved is not null)
        .OrderBy(bridge => bridge.Solved!.Place.Opening is not null)
        .ThenBy(bridge => bridge.ToSpareK)
        .DistinctBy(bridge => (bridge.Solved!.Detail, bridge.Solved.Place.Stack.Signature))
        .Take(MostInFull);

    private static void All(ReportContext report)
    {
        Figures figures = report.Figures;
        if (BridgeWords.Together(report.Found, figures) is { } together)
            report.Html.Add($"<p>On the cold night the vehicle loses {figures.Power(report.Found.ColdNight.LossW)}. {together}</p>\n");
        report.Html.Table("Ribs, edges and bolts on the cold night, largest loss first",
            ["Name", "Panel", "What", ">ψ or χ", ">how much", $">loss {figures.Unit(Shown.Power)}", ">coldest inside", ">to spare", "State", $">U beside {figures.Unit(Shown.Transmittance)}", ">U with them"],
            report.Found.Bridges.Select(bridge => (IReadOnlyList<string>)
            [
                bridge.Name, bridge.Panel, bridge.Solved is { } solved ? DetailNames.Of(solved.Detail) : "given", BridgeWords.Plain(bridge, figures), BridgeWords.Much(bridge, figures),
                figures.Number(Shown.Power, bridge.LossW), bridge.ColdestC is { } coldestC ? figures.Temperature(coldestC) : "", bridge.ToSpareK is { } spareK ? figures.Difference(spareK) : "",
                BridgeWords.State(bridge), bridge.Solved is { } one ? figures.Number(Shown.Transmittance, one.PlainUWPerM2K) : "",
                bridge.Solved is SolvedLine { UWithRibsWPerM2K: { } withRibs } ? figures.Number(Shown.Transmittance, withRibs) : "",
            ]));
    }

    private static void One(ReportContext report, BridgeAnswer bridge, SolvedDetail solved, BridgeCache cache)
    {
        Figures figures = report.Figures;
        Html html = report.Html;
        html.Add($"<div class=\"build-up\"><h3>{Grammar.Capital(BridgeWords.Where(bridge))} <small>{BridgeWords.Number(bridge, figures)}</small></h3>\n");
        html.Add($"<p class=\"{new Markup(bridge.ToSpareK < 0 ? "say" : "say dry")}\">{BridgeWords.Answer(bridge, figures)}</p>\n<p>{BridgeWords.Why(bridge, figures)}</p>\n");
        bool isRib = solved.Detail is Rib or Batten;
        StripTable? strips = isRib ? RibChoices.Strips(report.Found, bridge.Panel, bridge.Name, cache) : null;
        FillingTable? fillings = isRib ? RibChoices.Fillings(report.Found, bridge.Panel, bridge.Name, cache) : null;
        foreach (Figure figure in DetailPictures.Of(report.Found, bridge, strips, fillings, figures))
            report.Show(figure.Name, figure.Picture);
        if (strips is not null)
            Strips(html, strips, figures);
        if (fillings is not null)
            Fillings(html, fillings, figures);
        html.Add($"<details><summary>Working: {BridgeWords.Where(bridge)}</summary>\n<p>All figures of the working are in SI units.</p>\n");
        html.Table("Transmittance and coldest point", ["What", "Formula", "Numbers put in", ">Result", "Clause"],
            DetailWorking.Of(bridge, solved).Select(step => (IReadOnlyList<string>)[step.What, step.Formula, step.PutIn, step.Result, step.Clause]));
        html.List([BridgeWords.Factors(solved, Figures.Metric), BridgeMethod.Of(solved, bridge.InsideC - bridge.OutsideC, Figures.Metric), BridgeMethod.Air(bridge, Figures.Metric)]);
        html.Add($"</details></div>\n");
    }

    private static void Strips(Html html, StripTable strips, Figures figures)
    {
        html.Add($"<p>{RibChoiceWords.OfStrip(strips, figures)}</p>\n");
        html.Table($"A strip of {strips.Material} over it, everything else kept",
            ["Strip", "", $">ψ {figures.Unit(Shown.LinearTransmittance)}", $">U with ribs {figures.Unit(Shown.Transmittance)}", ">coldest inside", ">to spare", ">saves", ">lining moves in"],
            strips.Rows.Select(row => (IReadOnlyList<string>)
            [
                row.StripM > 0 ? figures.Thickness(row.StripM) : "none", row.IsKept ? "now" : "", figures.Number(Shown.LinearTransmittance, row.PsiWPerMK),
                figures.Number(Shown.Transmittance, row.UWithRibsWPerM2K), figures.Temperature(row.ColdestC), figures.Difference(row.ToSpareK), figures.Power(row.SavedW),
                row.HeadroomLostM > 0 ? figures.Thickness(row.HeadroomLostM) : "",
            ]));
    }

    private static void Fillings(Html html, FillingTable fillings, Figures figures)
    {
        html.Add($"<p>{RibChoiceWords.OfFilling(fillings, figures)}</p>\n");
        html.Table("What is inside it, everything else kept",
            ["Inside it", "", $">ψ {figures.Unit(Shown.LinearTransmittance)}", $">U with ribs {figures.Unit(Shown.Transmittance)}", ">coldest inside", ">to spare", ">saves"],
            fillings.Rows.Select(row => (IReadOnlyList<string>)
            [
                RibChoiceWords.Filling(row), row.IsKept ? "now" : "", figures.Number(Shown.LinearTransmittance, row.PsiWPerMK),
                figures.Number(Shown.Transmittance, row.UWithRibsWPerM2K), figures.Temperature(row.ColdestC), figures.Difference(row.ToSpareK), figures.Power(row.SavedW),
            ]));
    }
}
