using Thermal.Climates;
using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>What a trip takes for granted and what its method leaves out, so that a reader can judge it.</summary>
public static class TripAssumptions
{
    /// <summary>What was assumed on this trip, in the order in which it matters.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<string> Of(TripResult found, Figures figures)
    {
        Trip trip = found.Asked.Trip;
        TripHabits habits = trip.Habits;
        List<string> said = [.. trip.Legs.Select(leg => leg.Weather).DistinctBy(weather => (weather.Name, weather.Kind)).Select(OfWeather)];
        said.Add(trip.StartC is { } start
            ? $"At the start everything on board is at {figures.Temperature(start)}, and nothing is wet."
            : "At the start everything on board is as cold as the air outside, and nothing is wet.");
        if (found.Tanks.Count + found.Pipes.Count > 0)
            said.Add($"Water in tanks and pipes starts at {figures.Temperature(trip.WaterStartC)}; tanks stay as full as the file says.");
        if (found.Energy.LowestChargeFraction is not null)
            said.Add($"The battery starts at {figures.Percent(trip.StartChargeFraction)}. Ampere-hours are counted at 12.8 V.");
        said.Add($"{Grammar.Capital(habits.PeopleCount == 0 ? "nobody" : Grammar.Count(habits.PeopleCount, "person", "people"))} on board, where a leg does not say otherwise; wanted: {Wanted(habits, figures)}. Vapour of people, meals, showers and drying is that of the vehicle file, spread over the hours people do it.");
        if (trip.Legs.Any(leg => leg is { HeadingDeg: null, IsDriving: false }))
            said.Add(found.OtherHeadings is { } other
                ? $"Where the heading is not known the hours are those with the nose to the south; west, north and east were run as well{MostFuel(other, figures)}."
                : "Where the heading is not known the hours are those with the nose to the south; without sun no heading differs.");
        said.Add($"Steps of {figures.Write(Shown.Minutes, trip.StepS)}; what a table or a chart shows is the mean of an hour, or its end for water and charge.");
        return said;
    }

    /// <summary>What the method leaves out, whatever the trip.</summary>
    public static IReadOnlyList<string> Limits { get; } =
    [
        "Each room is one body of air, well mixed. Warm air gathers under the roof in a real van: feet are colder and the roof damper than shown.",
        "Heat moves straight through each build-up, with ribs, edges and bolts as paths beside it; what flows sideways in thick metal is in their ψ and χ only.",
        "Water inside the build-ups is reckoned hour by hour as if each hour were steady, and adds up; what wood and wool hold in their pores behind the lining is not followed.",
        "Each leg keeps one heading, one horizon and one share of the wind. Rain, snow on the roof and shade by neighbours are left out.",
        "Habits repeat by the clock. People who open doors, linger or dry skis inside change more than any layer.",
        "The mould index knows humidity, warmth and a class of material; dirt, salt and soaps change it. Hours of wetness count for bare metal, not for rust under paint.",
        "Fuel, charge and ice follow tables of usual heaters, batteries and panels; those of this vehicle have not been measured.",
        "Not known here: the quality of the work, gaps in the insulation, and water that leaks in from outside.",
    ];

    private static string OfWeather(Weather weather) => $"Weather: {weather.Name}, {WeatherWords.Of(weather.Kind)}." + weather.Kind switch
    {
        WeatherKind.Real => " It has been, and will not come again just so.",
        WeatherKind.TypicalYear or WeatherKind.Generated => " It is an ordinary run of days and no forecast: a cold snap is worse.",
        WeatherKind.ColdSpell => " It is made to be hard and no forecast.",
        _ => " It has neither day nor night, sun nor sky, unless the file says so.",
    };

    private static string MostFuel(HeadingSpan other, Figures figures) =>
        other.MostFuelAmount > other.LeastFuelAmount ? $", and most fuel goes with the nose at {figures.Write(Shown.Angle, other.WorstHeadingDeg)} from north" : "";

    private static string Wanted(TripHabits habits, Figures figures)
    {
        if (habits is { DayC: null, NightC: null, AwayC: null, DrivingC: null })
            return "no heat";
        return $"{Degrees(habits.DayC)} when awake at home, {Degrees(habits.NightC)} at night, {Degrees(habits.AwayC)} while away, {Degrees(habits.DrivingC)} while driving";
        string Degrees(double? wantedC) => wantedC is { } wanted ? figures.Temperature(wanted) : "heater off";
    }
}
