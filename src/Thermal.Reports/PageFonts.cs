using System.Globalization;
using System.Text;

namespace Thermal.Reports;

/// <summary>The page's letters, carried inside the page so that text and pictures look the same on any machine. Other scripts fall back to the reader's own fonts.</summary>
internal static class PageFonts
{
    private const string Latin = "U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215";
    private const string Greek = "U+0370-0377,U+037A-037F,U+0384-038A,U+038C,U+038E-03A1,U+03A3-03FF";

    /// <summary>One rule for each cut and script.</summary>
    internal static StringBuilder Faces()
    {
        var css = new StringBuilder();
        foreach ((string script, string range) in new[] { ("latin", Latin), ("greek", Greek) })
            foreach (int weight in new[] { 400, 600 })
                css.Append(CultureInfo.InvariantCulture, $"@font-face{{font-family:Inter;font-weight:{weight};src:url(data:font/woff2;base64,{Data($"inter-{script}-{weight}.woff2")}) format(\"woff2\");unicode-range:{range}}}\n");
        return css;
    }

    private static string Data(string name)
    {
        using Stream stream = typeof(PageFonts).Assembly.GetManifestResourceStream(name)!;
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return Convert.ToBase64String(bytes);
    }
}
