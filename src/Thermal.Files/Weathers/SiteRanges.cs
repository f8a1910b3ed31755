using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>What the numbers at the top of a weather file may be.</summary>
internal static class SiteRanges
{
    internal static NumberRange Latitude { get; } = new(-90, 90, "degrees", "46.8", "north is positive, south negative");
    internal static NumberRange Longitude { get; } = new(-180, 180, "degrees", "9.84", "east is positive, west negative");
    internal static NumberRange Altitude { get; } = new(Place.LowestAltitudeM, Place.HighestAltitudeM, "m", "1594", "give the height above the sea in metres");
    internal static NumberRange UtcOffset { get; } = new(-12, 14, "h", "1", "give hours of local standard time ahead of universal time, negative in the west");

    internal static string NameOf(NumberRange range) =>
        range == Latitude ? "latitude" : range == Longitude ? "longitude" : range == Altitude ? "elevation" : "time zone";
}
