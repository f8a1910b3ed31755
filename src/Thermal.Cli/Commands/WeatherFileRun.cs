using System.Text;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Files.Weathers;
using Thermal.Words;

namespace Thermal.Cli.Commands;

/// <summary>Reads a weather file, says what was found, and writes it in our own columns or as a place.</summary>
internal static class WeatherFileRun
{
    internal static int Run(WeatherFileWish wish, PlaceStand stand, bool json, Figures figures, Terminal terminal)
    {
        Reading<WeatherReading> reading = Read(wish.File);
        if (reading.Value is not { } read)
            return Refusal.Of(reading.Problems, terminal);
        WeatherAnswer found = WeatherAnswer.Of(wish.File, read, stand, [.. new[] { wish.Save, wish.SavePlace }.OfType<string>()]);
        if (wish.SavePlace is not null && found.Place is null)
            return Refusal.Of($"{wish.File} does not cover twenty whole days of every month, so --save-place has no place to write.", terminal);
        if (wish.Save is { } save && !TryWrite(save, WeatherFile.Write(read.Weather), terminal))
            return ExitCode.Refused;
        if (wish.SavePlace is { } savePlace && !TryWrite(savePlace, PlaceText.Of(found.Place!.Place), terminal))
            return ExitCode.Refused;
        IReadOnlyList<string>? pictures = wish.Pictures is { } folder ? PictureFiles.WriteOrRefuse(folder, PlacePictures.Of(found, figures.Set), terminal) : [];
        if (pictures is null)
            return ExitCode.Refused;
        if (json)
            JsonText.Write(terminal.Answers, top => PlaceAnswerJson.Write(top, found.Place, found, pictures, figures));
        else
            WeatherFilePrint.Write(found, pictures, figures, terminal);
        return ExitCode.Computed;
    }

    private static Reading<WeatherReading> Read(string file)
    {
        try
        {
            // Four bytes is the longest a character takes; a longer file is refused before it fills the memory.
            return new FileInfo(file).Length > 4L * WeatherFile.LongestCharacterCount
                ? new(null, [new(file, 1, 1, "file", $"is too long; keep it under {WeatherFile.LongestCharacterCount} characters.")])
                : WeatherFile.Read(File.ReadAllText(file, Encoding.UTF8), file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return new(null, [new(file, 1, 1, "file", $"cannot be read ({fault.Message.TrimEnd('.')}); name a file of weather that may be opened.")]);
        }
    }

    private static bool TryWrite(string path, string text, Terminal terminal)
    {
        try
        {
            WholeFile.WriteText(path, text);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Refusal.ToWrite(path, fault, terminal);
            return false;
        }
    }
}

/// <summary>What a person wants of a weather file.</summary>
/// <param name="File">The file.</param>
/// <param name="Save">Where to write it in our own columns; null for nowhere.</param>
/// <param name="SavePlace">Where to write its place; null for nowhere.</param>
/// <param name="Pictures">Folder for pictures; null for none.</param>
internal sealed record WeatherFileWish(string File, string? Save, string? SavePlace, string? Pictures);
