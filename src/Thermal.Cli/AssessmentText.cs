using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli;

/// <summary>An assessment as lines on a screen: verdict first, then answers, findings, build-ups and where the heat goes.</summary>
internal static class AssessmentText
{
    private const int MostAdvice = 5;

    /// <summary>The verdict and the five answers.</summary>
    internal static void Short(Assessment found, Figures figures, Terminal terminal)
    {
        terminal.Paragraph(Verdict.Of(found, figures), isHeading: true);
        terminal.Answers.WriteLine();
        foreach (Headline headline in Headlines.Of(found, figures))
            terminal.Answer(headline);
    }

    /// <summary>Everything that fits a screen.</summary>
    internal static void Full(Assessment found, IReadOnlyList<AdviceItem> advice, Figures figures, Terminal terminal)
    {
        Short(found, figures, terminal);
        terminal.Section("What to know", Findings.Of(found, advice, figures));
        terminal.Section("What helps most, each tried alone", [.. advice.Take(MostAdvice).Select(item => AdviceSentence.Of(item, figures))]);
        terminal.Section("Inside the build-ups", [.. found.BuildUps.Select(damp => $"{Grammar.Capital(damp.Name)}: {BuildUpWords.Of(damp, figures).Line}")]);
        terminal.Title("Where the heat goes");
        Losses(found, figures, terminal);
        if (BridgeWords.Together(found, figures) is { } ribs)
            terminal.Paragraph(ribs);
        terminal.Title("Rooms");
        Rooms(found, figures, terminal);
        terminal.Section("Take care", Cautions.Of(found.Case));
        terminal.Answers.WriteLine();
        terminal.Paragraph("The command report writes the page with pictures, working, assumptions and limits; --json gives every figure.");
    }

    private static void Losses(Assessment found, Figures figures, Terminal terminal)
    {
        var table = new TextTable("Part", "Room", "Kind", $">{figures.Unit(Shown.Area)}", ">W/K", $">cold night {figures.Unit(Shown.Power)}");
        LossPart[] losses = [.. found.ColdNight.Losses];
        Array.Sort(losses, (a, b) => b.LossW.CompareTo(a.LossW));
        foreach (LossPart loss in losses)
            table.Row(loss.Name, loss.Zone, Names.Of(loss.Kind), loss.AreaM2 > 0 ? figures.Number(Shown.Area, loss.AreaM2) : "",
                figures.Number(Shown.LossPerKelvin, loss.CoefficientWPerK), figures.Number(Shown.Power, loss.LossW));
        table.Row("All", "", "", "", "", figures.Number(Shown.Power, found.ColdNight.LossW));
        table.WriteTo(terminal);
    }

    private static void Rooms(Assessment found, Figures figures, Terminal terminal)
    {
        var table = new TextTable("Night", "Room", ">Temperature", ">Humidity", ">Dew point", ">Fresh air", ">Settling");
        foreach ((string night, Night result) in new[] { ("cold", found.ColdNight), ("mild", found.MildNight) })
            foreach (ZoneNight zone in result.Zones)
                table.Row(night, zone.Zone, figures.Temperature(zone.TemperatureC), figures.Percent(zone.RelativeHumidityFraction),
                    figures.Temperature(zone.DewPointC), figures.AirPerHour(zone.OutsideAirM3PerH), figures.GramsPerHour(zone.SettlingGPerH));
        table.WriteTo(terminal);
    }
}
