using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Climates;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Words.Units;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>Where the vehicle stands and how cold it gets.</summary>
/// <param name="Place">The named place; null where only temperatures are given.</param>
/// <param name="ColdNight">The cold night.</param>
/// <param name="MildNight">The mild damp night.</param>
internal sealed record Site(Place? Place, NightConditions ColdNight, NightConditions MildNight);

/// <summary>The key <c>site</c>: a place by name, or temperatures, or a place with some figures of one's own.</summary>
internal static class SiteKeys
{
    private static readonly Field<GivenNight, double> Outside = new("outside", "Air temperature outside.", Kinds.Temperature, night => night.OutsideC);
    private static readonly Field<GivenNight, double> Humidity = new("humidity", "Relative humidity outside, over water also in frost.", new QuantityNode(Dimensions.Fraction, "", MonthNormals.LowestRelativeHumidityFraction, 1, "%"), night => night.RelativeHumidityFraction);
    private static readonly Field<GivenNight, double> Wind = new("wind", "Wind at the vehicle.", new QuantityNode(Dimensions.Speed, "m/s", 0, NightConditions.HighestWindMPerS), night => night.WindMPerS);
    private static readonly Field<GivenNight, double> Sky = new("sky_below_air", "How far the sky is colder than the air: 0 K covered, 20 K clear.", new QuantityNode(Dimensions.Difference, "K", 0, NightConditions.HighestSkyBelowAirK), night => night.SkyBelowAirK);
    private static readonly Map<GivenNight> Night = new("a night", [Outside, Humidity, Wind, Sky],
        values => new GivenNight(values.NumberOf(Outside), values.NumberOf(Humidity), values.NumberOf(Wind), values.NumberOf(Sky))) { IsShort = true };

    private static readonly Field<Site, Place> PlaceField = new("place", "Name of a place with its months; see the command places.", new PlaceNode(), site => site.Place);
    private static readonly Field<Site, double> Altitude = new("altitude", "Height above the sea; that of the place where left out, else 0 m.", new QuantityNode(Dimensions.Length, "m", Place.LowestAltitudeM, Place.HighestAltitudeM), site => site.ColdNight.AltitudeM);
    private static readonly Field<Site, GivenNight> Cold = new("cold_night", "The night to survive; what is left out comes from the place: its design temperature, 85 % humidity, 3 m/s, clear sky 20 K below the air.", Night, site => GivenNight.Of(site.ColdNight));
    private static readonly Field<Site, GivenNight> Mild = new("mild_night", "The mild damp night; what is left out is 6 °C, 90 %, 3 m/s, covered sky.", Night, site => GivenNight.Of(site.MildNight));

    internal static Map<Site> Map { get; } = new("the site", [PlaceField, Altitude, Cold, Mild], Build);

    private static Site? Build(Values<Site> values)
    {
        Place? place = values.Of(PlaceField);
        GivenNight? cold = values.Of(Cold), mild = values.Of(Mild);
        if (place is null && cold?.OutsideC is null)
        {
            values.Problem(Cold, "neither a place nor the cold night's temperature is given; write place, or cold_night with outside");
            return null;
        }
        double altitudeM = values.NumberOf(Altitude) ?? place?.AltitudeM ?? 0;
        NightConditions usualCold = place is not null
            ? NightConditions.Design(place)
            : NightConditions.Mild(altitudeM) with { RelativeHumidityFraction = NightConditions.DesignRelativeHumidityFraction, SkyBelowAirK = NightConditions.ClearSkyBelowAirK };
        return new Site(place, Applied(cold, usualCold, altitudeM), Applied(mild, NightConditions.Mild(altitudeM), altitudeM));
    }

    private static NightConditions Applied(GivenNight? given, NightConditions usual, double altitudeM) => new()
    {
        OutsideC = given?.OutsideC ?? usual.OutsideC,
        RelativeHumidityFraction = given?.RelativeHumidityFraction ?? usual.RelativeHumidityFraction,
        WindMPerS = given?.WindMPerS ?? usual.WindMPerS,
        SkyBelowAirK = given?.SkyBelowAirK ?? usual.SkyBelowAirK,
        AltitudeM = altitudeM,
    };

    private sealed record GivenNight(double? OutsideC, double? RelativeHumidityFraction, double? WindMPerS, double? SkyBelowAirK)
    {
        internal static GivenNight Of(NightConditions night) => new(night.OutsideC, night.RelativeHumidityFraction, night.WindMPerS, night.SkyBelowAirK);
    }

    private sealed class PlaceNode : Node<Place>
    {
        internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out Place value)
        {
            value = null;
            if (spot.Text("the name of a place such as Davos") is not { } name)
                return false;
            value = name.Length <= 100 ? spot.Scope.Places.Find(name) : null;
            if (value is null)
                spot.Problem($"there is no place \"{(name.Length <= 60 ? name : name[..60] + "…")}\"; {(spot.Scope.Places.NearestName(name) is { } near ? $"did you mean {near}?" : "write cold_night with its temperature instead, or add the place to your climates folder")}");
            return value is not null;
        }

        internal override YamlNode Write(Place value) => new YamlScalarNode(value.Name);

        internal override JsonObject Schema() => new() { ["type"] = "string", ["examples"] = new JsonArray([.. PlaceLibrary.BuiltIn.All.Select(place => JsonValue.Create(place.Name))]) };
    }
}
