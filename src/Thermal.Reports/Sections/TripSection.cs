using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>A trip: its verdict, its hours in pictures, its days, and where water, heat and charge went.</summary>
internal static class TripSection
{
    /// <summary>Its place on the page.</summary>
    internal const string Id = "trip";

    internal static void Write(ReportContext report, TripResult found)
    {
        Figures figures = report.Figures;
        report.Open(Id, $"A trip, hour by hour: {found.Asked.Trip.Name}");
        report.Html.Add($"<p class=\"say{(TripHeadlines.Of(found, figures).Any(headline => headline.Trouble == Trouble.Bad) ? "" : " dry")}\"><b>{TripVerdict.Of(found, figures)}</b></p>\n");
        if (found.Asked.Trip.Description.Length > 0)
            report.Html.Add($"<p class=\"about\">{found.Asked.Trip.Description}</p>\n");
        report.Html.Add($"<div class=\"tiles\">\n");
        foreach (Headline headline in TripHeadlines.Of(found, figures))
            Tile.Write(report.Html, headline);
        report.Html.Add($"</div>\n");
        report.Html.List(TripFindings.Of(found, figures));
        report.Html.Add($"<div class=\"pair\">\n");
        foreach (Figure figure in TripPictures.Of(found, figures, BuildUpPictures.PairPx))
            report.Show(figure.Name, figure.Picture);
        report.Html.Add($"</div>\n");
        Table(report, TripTables.Days(found, figures));
        Table(report, TripDampTables.Book(found.Water, figures));
        Details(report, "What got wet: surfaces, build-ups, mould, metal",
            [TripDampTables.Wet(found, figures), TripDampTables.BuildUps(found, figures), TripDampTables.Mould(found, figures), TripDampTables.Metal(found, figures)]);
        Details(report, "Heat, charge, tanks and pipes", found.Asked.Case.Power is null
            ? [TripTables.Heat(found.Heat, figures), TripTables.Water(found, figures)]
            : [TripTables.Heat(found.Heat, figures), TripTables.Charge(found.Energy, figures), TripTables.Water(found, figures)]);
        Details(report, "Legs and what was assumed", [TripTables.Legs(found.Asked.Trip, figures)], TripAssumptions.Of(found, figures));
        report.Close();
    }

    private static void Details(ReportContext report, string summary, IReadOnlyList<WordTable> tables, IReadOnlyList<string>? sentences = null)
    {
        if (sentences is null && tables.All(table => table.Rows.Count == 0))
            return;
        report.Html.Add($"<details><summary>{summary}</summary>\n");
        foreach (WordTable table in tables)
            Table(report, table);
        if (sentences is not null)
            report.Html.List(sentences);
        report.Html.Add($"</details>\n");
    }

    private static void Table(ReportContext report, WordTable table)
    {
        if (table.Rows.Count > 0)
            report.Html.Table(table.Caption, table.Columns, table.Rows);
    }
}
