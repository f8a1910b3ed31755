using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>One answer as a tile.</summary>
internal static class Tile
{
    internal static void Write(Html html, Headline headline)
    {
        html.Add($"<div class=\"tile\"><h2>{headline.Title}</h2><p class=\"big\">{headline.Answer}</p><p class=\"small\">{headline.Detail}</p>");
        html.Add(headline.Trouble switch
        {
            Trouble.Bad => new Markup("<p class=\"mark worse\">▼ "),
            Trouble.Watch => new Markup("<p class=\"mark worse\">▽ "),
            _ => new Markup("<p class=\"mark better\">▲ "),
        });
        html.Add($"{headline.Remark}</p></div>\n");
    }
}
