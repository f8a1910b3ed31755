using System.Globalization;
using System.Text.Json.Nodes;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.TripKeys;

/// <summary>A time of day such as 22:30, as hours.</summary>
internal sealed class ClockNode : Node<double>
{
    private const string Wanted = "a time of day such as 22:30";

    internal override bool TryRead(Spot spot, out double value)
    {
        value = double.NaN;
        if (spot.Text(Wanted) is not { } text)
            return false;
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        if (text.Length <= 5 && colon is 1 or 2 && text.Length == colon + 3 && Digits(text[..colon]) is { } hour && Digits(text[(colon + 1)..]) is { } minute
            && minute < 60 && (hour < 24 || (hour == 24 && minute == 0)))
        {
            value = hour + minute / 60.0;
            return true;
        }
        spot.Problem($"\"{ProblemList.Shortened(text)}\" is no time of day; write hours and minutes from 0:00 to 24:00, such as 22:30");
        return false;
    }

    internal override YamlNode Write(double value)
    {
        int minutes = (int)Math.Round(value * 60);
        return minutes / 60 + minutes % 60 / 60.0 == value
            ? new YamlScalarNode(string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}:{minutes % 60:00}"))
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A time of day must be whole minutes to be written.");
    }

    internal override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "^([01]?[0-9]|2[0-3]):[0-5][0-9]$|^24:00$", ["examples"] = new JsonArray("22:30") };

    private static int? Digits(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;
}

/// <summary>A date with or without a time of day, local standard time.</summary>
internal sealed class MomentNode : Node<DateTime>
{
    internal const int FirstYear = 1950, LastYear = 2099;
    private const string Wanted = "a date with its time such as 2026-02-07 16:00";
    private static readonly string[] Forms = ["yyyy-MM-dd HH:mm", "yyyy-MM-dd H:mm", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd"];

    internal override bool TryRead(Spot spot, out DateTime value)
    {
        value = default;
        if (spot.Text(Wanted) is not { } text)
            return false;
        if (!DateTime.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out value))
            spot.Problem($"\"{ProblemList.Shortened(text)}\" is no date; write year, month, day and time, such as 2026-02-07 16:00");
        else if (value.Year is < FirstYear or > LastYear)
            spot.Problem($"{text} lies outside the years {FirstYear} to {LastYear}; write another year");
        else
            return true;
        return false;
    }

    internal override YamlNode Write(DateTime value) => value.Ticks % TimeSpan.TicksPerMinute == 0
        ? new YamlScalarNode(value.ToString(Forms[0], CultureInfo.InvariantCulture))
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A date must be whole minutes to be written.");

    internal override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}([ T][0-9]{1,2}:[0-9]{2})?$", ["examples"] = new JsonArray("2026-02-07 16:00") };
}
