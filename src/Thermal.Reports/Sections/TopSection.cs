using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>The top of the page: vehicle, verdict, five answers.</summary>
internal static class TopSection
{
    internal static void Write(ReportContext report, DateOnly written)
    {
        Envelope.Vehicle vehicle = report.Found.Case.Vehicle;
        string place = report.Found.Case.Place is { } known ? $"{known.Name}, {known.Country}" : "no place named";
        string night = $"cold night of {report.Figures.Temperature(report.Found.ColdNight.Conditions.OutsideC)}";
        report.Html.Add($"<header><div class=\"name\"><b>{vehicle.Name}</b><span>{place}</span><span>{night}</span><span>{Date(written)}</span></div>\n");
        report.Html.Add($"<h1>{Verdict.Of(report.Found, report.Figures)}</h1>\n");
        if (vehicle.Description.Length > 0)
            report.Html.Add($"<p class=\"about\">{vehicle.Description}</p>\n");
        report.Html.Add($"<div class=\"tiles\">\n");
        foreach (Headline headline in Headlines.Of(report.Found, report.Figures))
            Tile.Write(report.Html, headline);
        report.Html.Add($"</div></header>\n");
    }

    private static string Date(DateOnly written) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{written.Day} {Grammar.Month(written.Month)} {written.Year}");
}
