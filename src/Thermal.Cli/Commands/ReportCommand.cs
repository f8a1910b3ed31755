using System.CommandLine;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Reports;
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
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        Option<string?> climates = SharedOptions.Climates();
        var command = new Command("report", "Say the verdict and write one page with pictures, tables, working, assumptions and cautions.") { vehicle, folder, pictures, json, units, climates };
        command.SetAction(parsed =>
        {
            Reading<Case> reading = VehicleSource.Read(parsed.GetValue(vehicle), parsed.GetValue(climates));
            return reading.Value is not { } asked
                ? Refusal.Of(reading.Problems, terminal)
                : Run(asked, parsed.GetValue(folder)!, parsed.GetValue(pictures), parsed.GetValue(json), SharedOptions.FiguresOf(parsed, units), terminal, clock);
        });
        return command;
    }

    private static int Run(Case asked, string folder, bool withPictures, bool json, Figures figures, Terminal terminal, TimeProvider clock)
    {
        BridgeCache cache = new();
        Assessment found = Assess.Of(asked, cache);
        IReadOnlyList<AdviceItem> advice = Advice.Of(found, cache);
        Report report = ReportPage.Of(found, advice, figures, DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
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
}
