using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Words;

namespace Thermal.Reports;

/// <summary>What every section of a report needs: the results, the units, the page being written and the pictures put on it so far.</summary>
internal sealed class ReportContext(Assessment found, IReadOnlyList<AdviceItem> advice, Figures figures)
{
    private readonly List<Figure> pictures = [];

    internal Assessment Found { get; } = found;

    internal IReadOnlyList<AdviceItem> Advice { get; } = advice;

    internal Figures Figures { get; } = figures;

    internal Html Html { get; } = new();

    internal IReadOnlyList<Figure> Pictures => pictures;

    /// <summary>Opens a section of the page.</summary>
    /// <param name="id">Its place on the page, for links.</param>
    /// <param name="title">Its title.</param>
    internal void Open(string id, string title) => Html.Add($"<section id=\"{id}\" aria-labelledby=\"{id}-title\"><h2 id=\"{id}-title\">{title}</h2>\n");

    internal void Close() => Html.Add($"</section>\n");

    /// <summary>Puts a picture on the page with its caption.</summary>
    /// <param name="name">Name of its file; letters, digits and hyphens only.</param>
    /// <param name="picture">The picture, drawn with the light palette.</param>
    internal void Show(string name, Charts.Picture picture)
    {
        pictures.Add(new(name, picture));
        Html.Add($"<figure><div>{PageStyle.Recoloured(picture)}</div><figcaption>{picture.Caption}</figcaption></figure>\n");
    }
}
