using System.Text;

namespace Thermal.Reports;

/// <summary>File names from a builder's words.</summary>
internal static class FileName
{
    /// <summary>The words in lower case with hyphens; everything but Latin letters and digits is dropped.</summary>
    internal static string Of(string words)
    {
        var name = new StringBuilder();
        foreach (char letter in words.ToLowerInvariant())
            if (char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter))
                name.Append(letter);
            else if (name.Length > 0 && name[^1] != '-')
                name.Append('-');
        return name.ToString().TrimEnd('-');
    }
}
