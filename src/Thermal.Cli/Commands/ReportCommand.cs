using System.CommandLine;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Reports;
using Thermal.Trips;
using Thermal.Words;

namespace Thermal.Cli.Commands;

/// <summary>Assesses a vehicle and writes a page with everything on it.</summary>
internal static class ReportCommand
{
    private const string PageName = "index.html";

    internal static Command Create(Terminal terminal, TimeProvider clock)
    {
        Argument<string?> vehicle = SharedOptions.Vehicle();
        var folder = new Option<string>("--out") { Description = "The folder to write the page to; made if it is not there.", HelpName = "DIR", DefaultValueFactory = _ => "thermal-report" };
        var pictures = new Option<bool>("--pictures") { Description = "Also write every picture beside the page, as SVG and as PNG." };
        var trip = new Option<string?>("--trip") { Description = "Also reckon a trip and put it on the page: a trip file, or the name of a built-in trip. Without FILE the vehicle is the one it names.", HelpName = "TRIP" };
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        Option<string?> climates = SharedOptions.Climates();
        var command = new Command("report", "Say the verdict and write one page with pictures, tables, working, assumptions and cautions.") { vehicle, folder, pictures, trip, json, units, climates };
        command.SetAction(parsed =>
        {
            ReportWish wish = new(parsed.GetValue(folder)!, parsed.GetValue(pictures), parsed.GetValue(json), SharedOptions.FiguresOf(parsed, units));
            if (parsed.GetValue(trip) is not { } journey)
            {
                Reading<Case> reading = VehicleSource.Read(parsed.GetValue(vehicle), parsed.GetValue(climates));
                return reading.Value is { } asked ? Run(asked, null, wish, terminal, clock) : Refusal.Of(reading.Problems, terminal);
            }
            Reading<TripCase> both = TripOptions.Read(journey, parsed.GetValue(vehicle), parsed.GetValue(climates));
            return both.Value is { } driven ? Run(driven.Case, driven, wish, terminal, clock) : Refusal.Of(both.Problems, terminal);
        });
        return command;
    }

    /// <summary>How the page is wanted.</summary>
    private sealed record ReportWish(string Folder, bool WithPictures, bool Json, Figures Figures);

    private static int Run(Case asked, TripCase? journey, ReportWish wish, Terminal terminal, TimeProvider clock)
    {
        (string folder, bool withPictures, bool json, Figures figures) = wish;
        BridgeCache cache = new();
        Assessment found = Assess.Of(asked, cache);
        IReadOnlyList<AdviceItem> advice = Advice.Of(found, cache);
        Report report = ReportPage.Of(found, advice, figures, DateOnly.FromDateTime(clock.GetLocalNow().DateTime), journey is null ? null : Reckoned(journey, cache, terminal, clock));
        string page = Path.Combine(folder, PageName);
        List<string> pictures = [];
        try
        {
            Directory.CreateDirectory(folder);
            WholeFile.WriteText(page, report.Html);
            if (withPictures)
                pictures.AddRange(PictureFiles.Write(folder, report.Figures));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refusal.ToWrite(page, fault, terminal);
        }
        if (json)
            JsonText.Write(terminal.Answers, top => AssessmentJson.Write(top.Text("report", page).Texts("pictures", pictures), found, advice, figures));
        else
        {
            AssessmentText.Short(found, figures, terminal);
            terminal.Answers.WriteLine();
            terminal.Answers.WriteLine($"Report: {page}");
        }
        return ExitCode.Computed;
    }
    private static TripResult Reckoned(TripCase asked, BridgeCache cache, Terminal terminal, TimeProvider clock)
    {
        using ProgressLine progress = new(terminal, clock, "reckoning the trip");
        return TripRun.Of(asked, cache, progress);
    }
}
