using Thermal.Words.Sentences;

namespace Thermal.Cli;

/// <summary>What answers on a screen are made of: titles, lists of sentences, headlines, tables.</summary>
internal static class AnswerParts
{
    internal static void Title(this Terminal terminal, string title)
    {
        terminal.Answers.WriteLine();
        terminal.Heading(title);
    }

    /// <summary>A titled list; nothing where there are no sentences.</summary>
    internal static void Section(this Terminal terminal, string title, IReadOnlyList<string> sentences)
    {
        if (sentences.Count == 0)
            return;
        terminal.Title(title);
        foreach (string sentence in sentences)
            terminal.Paragraph(sentence, "· ");
    }

    internal static void Answer(this Terminal terminal, Headline headline) =>
        terminal.Paragraph($"{headline.Title}: {headline.Answer} ({headline.Detail}) {Mark(headline.Trouble)}{headline.Remark}", "  ");

    /// <summary>A table under its caption; nothing where it has no rows.</summary>
    internal static void Table(this Terminal terminal, WordTable table)
    {
        if (table.Rows.Count == 0)
            return;
        terminal.Answers.WriteLine();
        terminal.Paragraph(table.Caption, isHeading: true);
        var lines = new TextTable([.. table.Columns]);
        foreach (IReadOnlyList<string> row in table.Rows)
            lines.Row([.. row]);
        lines.WriteTo(terminal);
    }

    private static string Mark(Trouble trouble) => trouble switch
    {
        Trouble.Bad => "▼ ",
        Trouble.Watch => "· ",
        _ => "▲ ",
    };
}
