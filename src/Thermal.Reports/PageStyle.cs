using System.Globalization;
using System.Text;
using Thermal.Charts;

namespace Thermal.Reports;

/// <summary>The page's style: colours of the palettes as named values, and the sheet that uses them.</summary>
internal static class PageStyle
{
    /// <summary>Colours for light and dark screens and for paper, then the sheet.</summary>
    internal static Markup Css { get; } = new(Build());

    /// <summary>A picture drawn in the light palette with its colours replaced by the page's, so that it follows screen and print.</summary>
    internal static Markup Recoloured(Picture picture)
    {
        var svg = new StringBuilder(picture.Svg);
        foreach ((string name, string colour) in Roles(Palette.Light))
            svg.Replace($"\"{colour}\"", $"\"var(--{name})\"").Replace($"\"{colour.ToLowerInvariant()}\"", $"\"var(--{name})\"");
        return new(svg.ToString());
    }

    private static string Build()
    {
        StringBuilder css = PageFonts.Faces();
        css.Append(":root{color-scheme:light dark;").Append(Values(Palette.Light)).Append("}\n");
        css.Append("@media (prefers-color-scheme:dark){:root{").Append(Values(Palette.Dark)).Append("}}\n");
        css.Append("@media print{:root{color-scheme:light;").Append(Values(Palette.Print)).Append("}}\n");
        using var sheet = new StreamReader(typeof(PageStyle).Assembly.GetManifestResourceStream("Page.css")!);
        return css.Append(sheet.ReadToEnd()).ToString();
    }

    private static string Values(Palette palette) => string.Concat(Roles(palette).Select(role => $"--{role.Name}:{role.Colour};"));

    private static IEnumerable<(string Name, string Colour)> Roles(Palette palette) =>
    [
        ("paper", palette.Paper), ("card", palette.Card), ("ink", palette.Ink), ("muted", palette.Muted), ("line", palette.Line),
        .. Steps("heat", palette.Heat), .. Steps("water", palette.Water),
        ("better", palette.Better), ("worse", palette.Worse),
        ("wood", palette.Wood), ("wool", palette.Wool), ("foam", palette.Foam), ("metal", palette.Metal),
    ];

    private static IEnumerable<(string, string)> Steps(string name, IReadOnlyList<string> steps) =>
        steps.Select((colour, index) => (string.Create(CultureInfo.InvariantCulture, $"{name}{index + 1}"), colour));
}
