using Thermal.Charts;

namespace Thermal.Cli;

/// <summary>Writes pictures as SVG and as PNG.</summary>
internal static class PictureFolder
{
    /// <summary>Writes them all, or says what cannot be written.</summary>
    /// <param name="folder">Where to; made if it is not there.</param>
    /// <param name="pictures">Pictures by the names of their files.</param>
    /// <param name="written">Gets the paths.</param>
    /// <param name="terminal">Where a problem is told.</param>
    internal static bool TryWrite(string folder, IEnumerable<(string Name, Picture Picture)> pictures, List<string> written, Terminal terminal)
    {
        try
        {
            Directory.CreateDirectory(folder);
            foreach ((string name, Picture picture) in pictures)
                written.AddRange(Write(folder, name, picture));
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Refusal.ToWrite(folder, fault, terminal);
            return false;
        }
    }

    /// <summary>Writes one; the paths.</summary>
    internal static string[] Write(string folder, string name, Picture picture)
    {
        string svg = Path.Combine(folder, name + ".svg"), png = Path.Combine(folder, name + ".png");
        WholeFile.WriteText(svg, picture.Svg);
        WholeFile.Write(png, stream => stream.Write(picture.ToPng()));
        return [svg, png];
    }
}
