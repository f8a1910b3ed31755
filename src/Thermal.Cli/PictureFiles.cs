using Thermal.Reports;

namespace Thermal.Cli;

/// <summary>Writes pictures into a folder, each as SVG and as PNG.</summary>
internal static class PictureFiles
{
    /// <summary>Writes them all; the folder must be there.</summary>
    /// <returns>The files written, in order.</returns>
    internal static IReadOnlyList<string> Write(string folder, IEnumerable<Figure> figures)
    {
        List<string> written = [];
        foreach (Figure figure in figures)
        {
            string svg = Path.Combine(folder, figure.Name + ".svg"), png = Path.Combine(folder, figure.Name + ".png");
            WholeFile.WriteText(svg, figure.Picture.Svg);
            WholeFile.Write(png, stream => stream.Write(figure.Picture.ToPng()));
            written.AddRange([svg, png]);
        }
        return written;
    }

    /// <summary>Makes the folder and writes them; null where it tells why it cannot.</summary>
    internal static IReadOnlyList<string>? WriteOrRefuse(string folder, IEnumerable<Figure> figures, Terminal terminal)
    {
        try
        {
            Directory.CreateDirectory(folder);
            return Write(folder, figures);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Refusal.ToWrite(folder, fault, terminal);
            return null;
        }
    }

    /// <summary>Says where they were written, if anywhere.</summary>
    internal static void Tell(string? folder, Terminal terminal)
    {
        if (folder is null) return;
        terminal.Answers.WriteLine();
        terminal.Answers.WriteLine($"Pictures: {folder}");
    }
}
