using System.Globalization;
using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Reports.Sections;
using Thermal.Trips;
using Thermal.Words;

namespace Thermal.Reports;

/// <summary>Writes one assessment as one self-contained page: no script, no file beside it, nothing fetched.</summary>
public static class ReportPage
{
    /// <summary>The page.</summary>
    /// <param name="found">What was found.</param>
    /// <param name="advice">Changes that were tried on it, the most helpful first.</param>
    /// <param name="figures">Metric or US; the working is in SI units in both.</param>
    /// <param name="written">The day it is written.</param>
    /// <param name="trip">A trip with the same vehicle; null for none.</param>
    /// <returns>The page and its pictures. Everything a person named is escaped.</returns>
    public static Report Of(Assessment found, IReadOnlyList<AdviceItem> advice, Figures figures, DateOnly written, TripResult? trip = null)
    {
        var report = new ReportContext(found, advice, figures);
        Html html = report.Html;
        html.Add($"<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n");
        html.Add($"<title>{found.Case.Vehicle.Name}: warm and dry?</title>\n<style>\n{PageStyle.Css}</style>\n</head>\n<body>\n<a class=\"skip\" href=\"#know\">Skip to what to know</a>\n");
        TopSection.Write(report, written);
        html.Add($"<main>\n");
        Contents(html, trip is not null);
        FindingSection.Write(report);
        if (trip is not null)
            TripSection.Write(report, trip);
        LossSection.Write(report);
        RibSection.Write(report);
        BuildUpSection.Write(report);
        RoomSection.Write(report);
        HeatingSection.Write(report);
        ThicknessSection.Write(report);
        SpaceSection.Write(report);
        ClosingSections.Write(report, trip);
        html.Add($"</main>\n<footer><p>Written by Thermal on {written.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}. Computed, not measured.</p></footer>\n</body>\n</html>\n");
        return new(html.Page.ToString(), [.. report.Pictures]);
    }

    private static void Contents(Html html, bool hasTrip)
    {
        (string Id, string Title)[] sections =
        [
            ("know", "What to know"), .. hasTrip ? ((string, string)[])[(TripSection.Id, "Trip")] : [], ("losses", "Heat"), ("ribs", "Ribs"), ("build-ups", "Build-ups"), ("air", "Air and surfaces"),
            ("heater", "Heater"), ("thickness", "Thickness"), ("space", "Room and tanks"), ("care", "Take care"), ("assumptions", "Assumptions"),
        ];
        html.Add($"<nav aria-label=\"On this page\"><ol>\n");
        foreach ((string id, string title) in sections)
            html.Add($"<li><a href=\"#{id}\">{title}</a></li>\n");
        html.Add($"</ol></nav>\n");
    }
}
