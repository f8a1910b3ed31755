using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Climates;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Trips;
using Thermal.Words.Units;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.TripKeys;

/// <summary>The keys of a leg.</summary>
internal static class LegKeys
{
    /// <summary>Longest leg, h: a year. Limit chosen by us.</summary>
    internal const double LongestH = 366 * 24;

    private static readonly string[] Points = ["unknown", "north", "north_east", "east", "south_east", "south", "south_west", "west", "north_west"];
    private static readonly WordOrNode<Heading> Directions = new(new(Points, [new(null), .. Enumerable.Range(0, 8).Select(eighth => new Heading(45 * eighth))]),
        new Wrapped<Heading>(new QuantityNode(Dimensions.Angle, "°", 0, 360), deg => new(deg), heading => heading.Deg!.Value));

    private static readonly Field<SteadyAir, double> Temperature = new("temperature", "Air temperature.", Kinds.Temperature, air => air.TemperatureC) { IsRequired = true };
    private static readonly Field<SteadyAir, double> Humidity = new("humidity", "Relative humidity, over water also in frost.", new QuantityNode(Dimensions.Fraction, "", MonthNormals.LowestRelativeHumidityFraction, 1, "%"), air => air.HumidityFraction) { Default = 0.8 };
    private static readonly Field<SteadyAir, double> AirSpeed = new("wind", "Wind.", new QuantityNode(Dimensions.Speed, "m/s", 0, NightConditions.HighestWindMPerS), air => air.WindMPerS) { Default = 0 };
    private static readonly Map<SteadyAir> SteadyMap = new("steady air", [Temperature, Humidity, AirSpeed], values => new SteadyAir(values.Of(Temperature), values.Of(Humidity), values.Of(AirSpeed))) { IsShort = true };

    internal static Field<LegDraft, string> Name { get; } = new("name", "What you call it.", Kinds.Name, leg => leg.Name) { IsRequired = true };
    internal static Field<LegDraft, DateTime> From { get; } = new("from", "When it begins, only to make sure: a leg begins where the one before ends.", new MomentNode(), leg => leg.From);
    internal static Field<LegDraft, DateTime> Until { get; } = new("until", "When it ends, local standard time; this or lasts.", new MomentNode(), leg => leg.Until);
    internal static Field<LegDraft, double> Lasts { get; } = new("lasts", "How long it lasts; this or until.", new QuantityNode(Dimensions.Duration, "h", 1 / 60.0, LongestH) { Typical = "7 days" }, leg => leg.LastsH);
    internal static Field<LegDraft, string> Place { get; } = new("place", "Where it is: the name of a place, see the command places, or a place file (.csv); its ordinary year is used.", new TextNode(200, LegWeather.UnknownPlace), leg => leg.Air.Place);
    internal static Field<LegDraft, string> Weather { get; } = new("weather", "A file of hourly weather instead of a place.", new TextNode(200), leg => leg.Air.WeatherFile);
    internal static Field<LegDraft, SteadyAir> Steady { get; } = new("steady", "Air that never changes, without sun, instead of a place: a cold chamber, a hall.", SteadyMap, leg => leg.Air.Steady);
    internal static Field<LegDraft, bool> ColdSpell { get; } = new("cold_spell", "Only with place: its coldest clear days instead of an ordinary year.", new FlagNode(), leg => leg.Air.IsColdSpell) { Default = false };
    internal static Field<LegDraft, int> Seed { get; } = new("seed", "Only with place: which of many ordinary years.", new WholeNode(0, 1_000_000), leg => leg.Air.Seed) { Default = GeneratedWeather.UsualSeed };
    internal static Field<LegDraft, double> Driving { get; } = new("driving", "Speed on the road; left out where it is parked.", new QuantityNode(Dimensions.Speed, "m/s", 1, 40, "km/h") { Typical = "80 km/h" }, leg => leg.SpeedMPerS);
    private static readonly Field<LegDraft, Heading> HeadingField = new("heading", "Where the nose points: a compass point, degrees clockwise from north, or unknown.", Directions, leg => leg.Heading) { Default = new(null) };
    private static readonly Field<LegDraft, double> Horizon = new("horizon", "Height of hills, trees or houses all round.", new QuantityNode(Dimensions.Angle, "°", 0, 80) { Typical = "10°" }, leg => leg.HorizonDeg) { Default = 0 };
    private static readonly Field<LegDraft, double> WindShare = new("wind_share", "Wind beside the parked vehicle as a share of the wind at 10 m in the open.", new QuantityNode(Dimensions.Fraction, "", 0, 1.5, "%"), leg => leg.WindShareFraction) { Default = UsualWindShareFraction };
    private static readonly Field<LegDraft, bool> Snow = new("snow", "True where snow lies.", new FlagNode(), leg => leg.Snow) { Default = false };
    internal static Field<LegDraft, double> Shore { get; } = new("shore", "Power the site gives; left out where there is none.", new QuantityNode(Dimensions.Power, "W", 1, 7400), leg => leg.ShoreW);
    private static readonly Field<LegDraft, LegHabits> Habits = new("habits", "What people do otherwise than on the whole trip.", new ChangeNode(), leg => leg.Habits);

    private const double UsualWindShareFraction = 0.6; // as Leg has it

    internal static ListOf<LegDraft> List { get; } = new("leg", new Map<LegDraft>("a leg",
        [Name, From, Until, Lasts, Place, Weather, Steady, ColdSpell, Seed, Driving, HeadingField, Horizon, WindShare, Snow, Shore, Habits], Build), 1, 200, leg => leg.Name);

    private static LegDraft? Build(Values<LegDraft> values)
    {
        CheckOneOf(values, [Until, Lasts]);
        CheckOneOf(values, [Place, Weather, Steady]);
        foreach (Field<LegDraft> field in new Field<LegDraft>[] { ColdSpell, Seed }.Where(field => values.Has(field) && !values.Has(Place)))
            values.Problem(field, $"{field.Key} belongs to place; name a place, or take {field.Key} away");
        if (values.Has(Seed) && values.Of(ColdSpell))
            values.Problem(Seed, "a cold spell is the same for every seed; take one of the two away");
        if (values.Has(Driving) && values.Has(Shore))
            values.Problem(Shore, "there is no shore power on the road; take shore away, or driving where it is parked");
        return new LegDraft
        {
            Name = values.Of(Name)!,
            From = values.Has(From) ? values.Of(From) : null,
            Until = values.Has(Until) ? values.Of(Until) : null,
            LastsH = values.NumberOf(Lasts),
            Air = new() { Place = values.Of(Place), WeatherFile = values.Of(Weather), Steady = values.Of(Steady), IsColdSpell = values.Of(ColdSpell), Seed = values.Of(Seed) },
            SpeedMPerS = values.NumberOf(Driving),
            Heading = values.Of(HeadingField)!,
            HorizonDeg = values.Of(Horizon),
            WindShareFraction = values.Of(WindShare),
            Snow = values.Of(Snow),
            ShoreW = values.NumberOf(Shore),
            Habits = values.Of(Habits),
        };
    }

    private static void CheckOneOf(Values<LegDraft> values, Field<LegDraft>[] fields)
    {
        Field<LegDraft>[] written = [.. fields.Where(values.Has)];
        string names = string.Join(" or ", fields.Select(field => field.Key));
        if (written.Length == 0)
            values.Spot.Problem($"{names} is missing; write one of them");
        else if (written.Length > 1)
            values.Problem(written[1], $"{string.Join(" and ", written.Select(field => field.Key))} stand here; write only one of {names}");
    }

    /// <summary>Habits of a leg: only what differs is written.</summary>
    private sealed class ChangeNode : Node<LegHabits>
    {
        internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out LegHabits value)
        {
            value = HabitTable.Change.TryRead(spot, out TripHabits? read) ? new(read, spot.Scope.Habits ?? read) : null;
            return value is not null;
        }

        internal override YamlNode Write(LegHabits value)
        {
            var map = new YamlMappingNode();
            foreach (Field<TripHabits> field in HabitTable.Change.Fields)
                if (field.Write(value.OnLeg) is { } node && !node.Equals(field.Write(value.Usual)))
                    map.Add(field.Key, node);
            return map;
        }

        internal override JsonObject Schema() => HabitTable.Change.Schema();
    }
}
