using System.Text;
using Thermal.Words.Sentences;

namespace Thermal.Cli;

/// <summary>Where a command writes: answers and problems apart, with or without bold, and how wide.</summary>
internal sealed class Terminal(TextWriter answers, TextWriter problems, bool isStyled, int width)
{
    /// <summary>Width of wrapped text where nothing is known of the reader, characters.</summary>
    internal const int UsualWidth = 100;

    private const int NarrowestWidth = 40;

    /// <summary>The answer: what a pipe carries on.</summary>
    internal TextWriter Answers { get; } = answers;

    /// <summary>Problems: what a person must see even when the answer goes into a file.</summary>
    internal TextWriter Problems { get; } = problems;

    /// <summary>True where a person watches the error stream, so that a long run may tell there how far it is.</summary>
    internal bool IsWatched { get; init; }

    /// <summary>Width of wrapped text, characters.</summary>
    internal int Width { get; } = Math.Max(NarrowestWidth, width);

    /// <summary>The console of this process; plain where it is redirected or NO_COLOR is set to anything.</summary>
    internal static Terminal OfThisProcess()
    {
        if (OperatingSystem.IsWindows())
            Console.OutputEncoding = Encoding.UTF8;
        bool isScreen = !Console.IsOutputRedirected;
        bool isStyled = IsStyled(isScreen, Environment.GetEnvironmentVariable("NO_COLOR"));
        return new(Console.Out, Console.Error, isStyled, isScreen ? Math.Min(Console.WindowWidth - 1, UsualWidth) : UsualWidth) { IsWatched = !Console.IsErrorRedirected };
    }

    /// <summary>True where bold may be used: on a screen, unless NO_COLOR holds any word.</summary>
    internal static bool IsStyled(bool isScreen, string? noColour) => isScreen && string.IsNullOrEmpty(noColour);

    /// <summary>A line in bold where the reader's screen shows it.</summary>
    internal void Heading(string text) => Answers.WriteLine(isStyled ? $"\e[1m{text}\e[22m" : text);

    /// <summary>Text broken at blanks, the following lines set in.</summary>
    /// <param name="text">One paragraph.</param>
    /// <param name="first">What stands before the first line, such as a bullet; the other lines are set in as far.</param>
    /// <param name="isHeading">True for bold.</param>
    internal void Paragraph(string text, string first = "", bool isHeading = false)
    {
        var line = new StringBuilder(first);
        int empty = first.Length;
        foreach (string word in Grammar.Glued(text).Split(' '))
        {
            if (line.Length > empty && line.Length + 1 + word.Length > Width)
            {
                Line(line.ToString(), isHeading);
                line.Clear().Append(' ', first.Length);
                empty = first.Length;
            }
            if (line.Length > empty)
                line.Append(' ');
            line.Append(word);
        }
        Line(line.ToString(), isHeading);
    }

    private void Line(string glued, bool isHeading)
    {
        string text = glued.Replace(Grammar.NoBreakSpace, ' ');
        if (isHeading)
            Heading(text);
        else
            Answers.WriteLine(text);
    }
}
