using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Choices;
using Thermal.Files;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli;

/// <summary>Ribs, edges and bolts as lines on a screen: all of them in a table, or one in full.</summary>
internal static class DetailPrint
{
    internal static void All(Assessment found, Figures figures, Terminal terminal)
    {
        terminal.Heading($"{found.Case.Vehicle.Name}: ribs, edges and bolts on the cold night");
        terminal.Answers.WriteLine();
        if (found.Bridges.Count == 0)
            terminal.Paragraph(BridgeWords.None);
        else
            Table(found, figures).WriteTo(terminal);
        terminal.Answers.WriteLine();
        terminal.Heading("What can be described, each with usual numbers");
        int width = DetailExamples.All.Max(example => example.Kind.Length), place = DetailExamples.All.Max(example => Place(example.List).Length);
        foreach (DetailExample example in DetailExamples.All)
            terminal.Answers.WriteLine($"{example.Kind.PadRight(width)}  {Place(example.List).PadRight(place)}  {example.Text}");
        terminal.Answers.WriteLine();
        terminal.Paragraph(BridgeWords.HowToAsk);
    }

    private static string Place(DetailList list) => list switch { DetailList.Ribs => "ribs", DetailList.Bolts => "bolts", _ => "edge" };

    internal static TextTable Table(Assessment found, Figures figures)
    {
        var table = new TextTable("Panel", "Name", "What", ">ψ or χ", ">How much", $">{figures.Unit(Shown.Power)}", ">Coldest", ">To spare", "", ">U between", ">with them");
        foreach (BridgeAnswer bridge in found.Bridges)
            table.Row(bridge.Panel, bridge.Name, bridge.Solved is { } solved ? DetailNames.Of(solved.Detail) : "given", BridgeWords.Plain(bridge, figures), BridgeWords.Much(bridge, figures),
                figures.Number(Shown.Power, bridge.LossW), bridge.ColdestC is { } coldestC ? figures.Temperature(coldestC) : "", bridge.ToSpareK is { } spareK ? figures.Difference(spareK) : "",
                BridgeWords.State(bridge), bridge.Solved is { } one ? figures.Transmittance(one.PlainUWPerM2K) : "",
                bridge.Solved is SolvedLine { UWithRibsWPerM2K: { } withRibs } ? figures.Number(Shown.Transmittance, withRibs) : "");
        return table;
    }

    /// <summary>One in full.</summary>
    /// <param name="bridge">The answer.</param>
    /// <param name="answer">Its first sentences.</param>
    /// <param name="strips">What strips over it buy; null where none can lie there.</param>
    /// <param name="fillings">What fillings buy; null where it has no hollow.</param>
    /// <param name="figures">Metric or US.</param>
    /// <param name="terminal">Where to write.</param>
    internal static void One(BridgeAnswer bridge, string answer, StripTable? strips, FillingTable? fillings, Figures figures, Terminal terminal)
    {
        terminal.Paragraph(answer, isHeading: true);
        terminal.Answers.WriteLine();
        terminal.Paragraph($"{BridgeWords.Number(bridge, figures)}. {BridgeWords.Why(bridge, figures)}");
        if (strips is not null || fillings is not null)
        {
            terminal.Answers.WriteLine();
            terminal.Heading("What would change it");
        }
        if (strips is not null)
            Strips(strips, figures, terminal);
        if (fillings is not null)
            Fillings(fillings, figures, terminal);
        if (bridge.Solved is not { } solved)
            return;
        terminal.Answers.WriteLine();
        terminal.Heading("How it was found");
        foreach (string sentence in (string[])[BridgeWords.Factors(solved, figures), BridgeMethod.Of(solved, bridge.InsideC - bridge.OutsideC, figures), BridgeMethod.Air(bridge, figures), .. BridgeMethod.Limits])
            terminal.Paragraph(sentence, "· ");
    }

    private static void Strips(StripTable strips, Figures figures, Terminal terminal)
    {
        terminal.Paragraph(RibChoiceWords.OfStrip(strips, figures));
        var table = new TextTable(">Strip", "", ">ψ", ">U with ribs", ">Coldest", ">To spare", ">Saves", ">Lining moves in");
        foreach (StripRow row in strips.Rows)
            table.Row(row.StripM > 0 ? figures.Thickness(row.StripM) : "none", row.IsKept ? "now" : "", figures.Number(Shown.LinearTransmittance, row.PsiWPerMK),
                figures.Number(Shown.Transmittance, row.UWithRibsWPerM2K), figures.Temperature(row.ColdestC), figures.Difference(row.ToSpareK), figures.Power(row.SavedW),
                row.HeadroomLostM > 0 ? figures.Thickness(row.HeadroomLostM) : "");
        table.WriteTo(terminal);
    }

    private static void Fillings(FillingTable fillings, Figures figures, Terminal terminal)
    {
        terminal.Answers.WriteLine();
        terminal.Paragraph(RibChoiceWords.OfFilling(fillings, figures));
        var table = new TextTable("Inside it", "", ">ψ", ">U with ribs", ">Coldest", ">To spare", ">Saves");
        foreach (FillingRow row in fillings.Rows)
            table.Row(RibChoiceWords.Filling(row), row.IsKept ? "now" : "", figures.Number(Shown.LinearTransmittance, row.PsiWPerMK),
                figures.Number(Shown.Transmittance, row.UWithRibsWPerM2K), figures.Temperature(row.ColdestC), figures.Difference(row.ToSpareK), figures.Power(row.SavedW));
        table.WriteTo(terminal);
    }
}
