using System.Runtime.CompilerServices;
using System.Text;

namespace Thermal.Reports;

/// <summary>A page being written.</summary>
internal sealed class Html
{
    internal StringBuilder Page { get; } = new();

    /// <summary>Adds markup; everything filled in is escaped unless it is <see cref="Markup"/>.</summary>
#pragma warning disable CA1822 // The handler has written to this page already when this is called.
    internal void Add([InterpolatedStringHandlerArgument("")] Escaping markup) => _ = markup;
#pragma warning restore CA1822

    /// <summary>Adds a list with a bullet for each sentence.</summary>
    internal void List(IEnumerable<string> sentences)
    {
        Add($"<ul>\n");
        foreach (string sentence in sentences)
            Add($"<li>{sentence}</li>\n");
        Add($"</ul>\n");
    }

    /// <summary>Adds a table.</summary>
    /// <param name="caption">What it shows, for readers and for those who cannot see it.</param>
    /// <param name="columns">Titles; one that begins with > holds numbers.</param>
    /// <param name="rows">Rows with a cell for each column; the first cell heads its row.</param>
    /// <param name="lastIsSum">True where the last row is the sum of the others.</param>
    internal void Table(string caption, IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string>> rows, bool lastIsSum = false)
    {
        Add($"<div class=\"scroll\" role=\"region\" aria-label=\"{caption}\" tabindex=\"0\"><table>\n<caption>{caption}</caption>\n<thead><tr>");
        foreach (string column in columns)
            Add($"<th scope=\"col\"{NumberClass(column)}>{column.TrimStart('>')}</th>");
        Add($"</tr></thead>\n<tbody>\n");
        IReadOnlyList<string>[] all = [.. rows];
        for (int row = 0; row < all.Length; row++)
        {
            Add(lastIsSum && row == all.Length - 1 ? new Markup("<tr class=\"sum\">") : new Markup("<tr>"));
            for (int column = 0; column < columns.Count; column++)
                if (column == 0)
                    Add($"<th scope=\"row\">{all[row][0]}</th>");
                else
                    Add($"<td{NumberClass(columns[column])}>{all[row][column]}</td>");
            Add($"</tr>\n");
        }
        Add($"</tbody></table></div>\n");
    }

    internal void Add(Markup markup) => Page.Append(markup.Html);

    private static Markup NumberClass(string column) => new(column.StartsWith('>') ? " class=\"n\"" : "");
}
