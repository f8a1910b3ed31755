using System.Globalization;
using System.Text;
using Thermal.Climates;
using Thermal.Files.Weathers;
using Thermal.Files.Yaml;

namespace Thermal.Files.TripKeys;

/// <summary>Finds the weather of legs; what several legs share is read or made once.</summary>
/// <param name="scope">The reading.</param>
internal sealed class LegWeather(Scope scope)
{
    /// <summary>Most days of a cold spell, as GeneratedWeather has it.</summary>
    private const int MostColdDays = 30;

    private readonly Dictionary<(string Place, int Seed, int Year), Weather> years = [];
    private readonly Dictionary<string, Reading<WeatherReading>> files = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Reading<Place>> placeFiles = new(StringComparer.Ordinal);

    /// <summary>The weather; null where a problem was added.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="spot">Where it stands.</param>
    /// <param name="start">Its begin.</param>
    /// <param name="end">Its end.</param>
    internal Weather? Of(LegDraft leg, Spot spot, DateTime start, DateTime end)
    {
        if (leg.Air.Steady is { } steady)
            return SteadyWeather.Of(leg.Name, start, Math.Max(1, (int)Math.Ceiling((end - start).TotalHours)), steady.TemperatureC, steady.HumidityFraction, steady.WindMPerS);
        return leg.Air.WeatherFile is { } file ? OfFile(file, spot.At(LegKeys.Weather.Key), start, end)
            : PlaceOf(leg.Air.Place!, spot.At(LegKeys.Place.Key)) is { } place ? OfPlace(place, leg, spot, start, end) : null;
    }

    private Weather? OfPlace(Place place, LegDraft leg, Spot spot, DateTime start, DateTime end)
    {
        if (place.Months.Any(month => month.MinC is null || month.MaxC is null))
        {
            spot.At(LegKeys.Place.Key).Problem($"{place.Name} has no mean daily lowest and highest temperatures, so its hours are not known; name another place or a weather file");
            return null;
        }
        if (!leg.Air.IsColdSpell)
        {
            (string, int, int) key = (place.Name, leg.Air.Seed, start.Year);
            return years.TryGetValue(key, out Weather? year) ? year : years[key] = GeneratedWeather.Typical(place, leg.Air.Seed, start.Year);
        }
        int days = (int)Math.Ceiling((end - start.Date).TotalDays);
        if (days <= MostColdDays)
            return GeneratedWeather.ColdSpell(place, days, DateOnly.FromDateTime(start));
        spot.At(LegKeys.ColdSpell.Key).Problem($"a cold spell of {days} days is not known anywhere; write at most {MostColdDays} days");
        return null;
    }

    /// <summary>What is wrong with the name of a place; null where there is such a place, or it is a file to be opened later.</summary>
    internal static string? UnknownPlace(string name, Scope scope) => IsFile(name) || scope.Places.Find(name) is not null ? null
        : $"there is no place \"{ProblemList.Shortened(name)}\"; {(scope.Places.NearestName(name) is { } near ? $"did you mean {near}?" : "the command places lists them; a place file ends with .csv")}";

    private Place? PlaceOf(string name, Spot spot) =>
        IsFile(name) ? Read(name, spot, placeFiles, 4 * PlaceFile.LongestCharacterCount, PlaceFile.Read) : scope.Places.Find(name);

    private Weather? OfFile(string name, Spot spot, DateTime start, DateTime end)
    {
        if (Read(name, spot, files, WeatherFile.LongestCharacterCount, WeatherFile.Read)?.Weather is not { } weather)
            return null;
        DateTime first = weather.StartUtc.AddHours(weather.UtcOffsetH), last = first.AddSeconds(weather.Count * weather.StepS);
        bool repeats = weather.Kind is WeatherKind.TypicalYear or WeatherKind.Generated && (last - first).TotalDays >= 365;
        if (repeats || (first <= start && end <= last))
            return weather;
        spot.Problem(string.Create(CultureInfo.InvariantCulture, $"the weather lasts from {first:yyyy-MM-dd HH:mm} to {last:yyyy-MM-dd HH:mm} and the leg from {start:yyyy-MM-dd HH:mm} to {end:yyyy-MM-dd HH:mm}; change the dates or name another file"));
        return null;
    }

    private T? Read<T>(string name, Spot spot, Dictionary<string, Reading<T>> known, long mostBytes, Func<string, string, Reading<T>> read) where T : class
    {
        if (scope.Folder is not { } folder)
        {
            spot.Problem("files can be named only in a trip that is a file itself; name a built-in place");
            return null;
        }
        if (!known.TryGetValue(name, out Reading<T>? reading))
            known[name] = reading = Opened(Path.Combine(folder, name), mostBytes, read);
        if (reading.Value is null)
            spot.Problem(reading.Problems is [{ Line: 0 } problem] ? problem.What : $"{name} has {reading.Problems.Count} problems; the first: line {reading.Problems[0].Line}, {reading.Problems[0].Where}: {reading.Problems[0].What.TrimEnd('.')}");
        return reading.Value;
    }

    /// <summary>A file that cannot be opened has one problem without a line.</summary>
    private static Reading<T> Opened<T>(string path, long mostBytes, Func<string, string, Reading<T>> read) where T : class
    {
        try
        {
            return new FileInfo(path).Length > mostBytes ? Refused($"{path} is too large; it has at most {mostBytes} bytes") : read(File.ReadAllText(path, Encoding.UTF8), path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return fault is FileNotFoundException or DirectoryNotFoundException
                ? Refused($"there is no file {path}; a path is counted from the trip file")
                : Refused($"{path} cannot be opened; check that it is a file and may be read");
        }

        Reading<T> Refused(FormattableString what) => new(null, [new Problem(path, 0, 0, "file", FormattableString.Invariant(what))]);
    }

    private static bool IsFile(string name) => name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);
}
