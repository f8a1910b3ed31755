using System.Net;
using System.Runtime.CompilerServices;
using System.Text;
using Thermal.Words.Sentences;

namespace Thermal.Reports;

/// <summary>Puts an interpolated string into a page: what stands in the source is markup, what is filled in is escaped.</summary>
[InterpolatedStringHandler]
internal readonly ref struct Escaping
{
    private readonly StringBuilder page;

    public Escaping(int literalLength, int formattedCount, Html html)
    {
        page = html.Page;
        page.EnsureCapacity(page.Length + literalLength + 16 * formattedCount);
    }

    public void AppendLiteral(string markup) => page.Append(markup);

    public void AppendFormatted(string? text) => page.Append(WebUtility.HtmlEncode(text is null ? null : Grammar.Glued(text)));

    public void AppendFormatted(Markup markup) => page.Append(markup.Html);
}
