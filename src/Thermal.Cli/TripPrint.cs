using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli;

/// <summary>A trip as lines on a screen: verdict first, then what to know, the answers, the days and where the water went.</summary>
internal static class TripPrint
{
    internal static void Write(TripAnswer answer, string? folder, Figures figures, Terminal terminal)
    {
        TripResult found = answer.Found;
        Short(found, figures, terminal);
        terminal.Section("What to know", TripFindings.Of(found, figures));
        if (answer.Advice is { } advice)
            terminal.Section("What helps most, each tried alone over the whole trip", TripChangeWords.Of(advice, found, figures));
        terminal.Table(TripTables.Days(found, figures));
        terminal.Table(TripDampTables.Book(found.Water, figures));
        terminal.Table(TripDampTables.Wet(found, figures));
        terminal.Table(TripDampTables.BuildUps(found, figures));
        terminal.Table(TripDampTables.Mould(found, figures));
        terminal.Table(TripDampTables.Metal(found, figures));
        terminal.Table(TripTables.Heat(found.Heat, figures));
        if (found.Asked.Case.Power is not null)
            terminal.Table(TripTables.Charge(found.Energy, figures));
        terminal.Table(TripTables.Water(found, figures));
        terminal.Table(TripTables.Legs(found.Asked.Trip, figures));
        terminal.Section("Take care", TripCautions.Of(found));
        terminal.Section("What was taken for granted", TripAssumptions.Of(found, figures));
        terminal.Answers.WriteLine();
        terminal.Paragraph($"{(answer.Advice is null ? "--changes tries what would help; " : "")}--csv writes the hours, --pictures draws them; the command report with --trip puts the trip on the page; --json gives every figure.");
        if (answer.Csv is { } csv)
            terminal.Answers.WriteLine($"\nHours: {csv}");
        PictureFiles.Tell(folder, terminal);
    }

    /// <summary>The verdict and the answers.</summary>
    internal static void Short(TripResult found, Figures figures, Terminal terminal)
    {
        terminal.Paragraph(TripVerdict.Of(found, figures), isHeading: true);
        terminal.Answers.WriteLine();
        foreach (Headline headline in TripHeadlines.Of(found, figures))
            terminal.Answer(headline);
    }
}
