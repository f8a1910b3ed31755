using Thermal.Charts;
using Thermal.Climates;
using Thermal.Reports;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli;

/// <summary>The pictures of one place.</summary>
internal static class PlacePictures
{
    // Any year would do: the sun's path hardly changes.
    private const int PathYear = 2025;

    /// <summary>The pictures of a weather file: those of its place, or its cold hours alone where it covers no year.</summary>
    internal static IEnumerable<Figure> Of(WeatherAnswer found, UnitSet units) =>
        found.Place is { } place ? Of(place, units) : [new("hours-colder", HoursColder.Draw(found.Weather, [], Palette.Light, units))];

    internal static IEnumerable<Figure> Of(PlaceAnswer found, UnitSet units)
    {
        Place place = found.Place;
        yield return new("months", MonthsOfPlace.Draw(place, Palette.Light, units));
        yield return new("sun-path", SunOverDirection.Draw(place.Name, SunPath.ThreeDays(place.LatitudeDeg, place.LongitudeDeg, PathYear), found.HorizonDeg, Palette.Light, units));
        if (found.Year is not { } year)
            yield break;
        yield return new("hours-colder", HoursColder.Draw(year, place.Designs, Palette.Light, units));
        if (found.Sun.Count + found.SunAnyHeading.Count == 0)
            yield break;
        string stand = PlaceWords.Stand(found.HeadingDeg, found.HorizonDeg, found.GroundFractions, Figures.In(units));
        yield return new("sun-on-vehicle", SunOnSides.Draw(found.HeadingDeg is null ? SunGrid.Of(place.Name, stand, found.SunAnyHeading) : SunGrid.Of(place.Name, stand, found.Sun), Palette.Light, units));
    }
}
