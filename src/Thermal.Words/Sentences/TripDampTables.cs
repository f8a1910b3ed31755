using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>The tables of a trip's water: where it went, what got wet, what stands inside the build-ups, mould and metal.</summary>
public static class TripDampTables
{
    // Fewer grams stand unseen.
    private const double WorthARowG = 0.5, WorthARowGPerM2 = 0.5;

    /// <summary>Where the water came from and went.</summary>
    /// <param name="water">The water of the trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Book(WaterBook water, Figures figures)
    {
        return new("Where the water came from and went over the trip", ["What", $">{figures.Unit(Shown.WaterMass)}"],
        [
            Line("from people and pets", water.PeopleG), Line("from cooking and its flame", water.CookingG), Line("from showers", water.ShowersG), Line("from things hung up to dry", water.DryingG),
            Line("gone with the air", water.AiredG), Line("gone through the build-ups", water.ThroughSkinG), Line("ran off glass and skin", water.RunOffG),
            Line("left on surfaces", water.OnSurfacesG), Line("left inside the build-ups", water.InBuildUpsG), Line("left in bedding, wood and linings", water.InTextilesG), Line("left in the air", water.InAirG),
        ]);

        IReadOnlyList<string> Line(string what, double waterG) => [what, figures.Number(Shown.WaterMass, waterG / 1000)];
    }

    /// <summary>Surfaces and cold sides that got wet, most water first.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Wet(TripResult found, Figures figures) => new("What got wet or frosty, most water first",
        ["Where", "kind", ">most at once", "when", ">of it frost at most", ">melted", ">ran off", ">wet for", ">left at the end", ">coldest"],
        [.. found.Wet.Where(place => place.MostG >= WorthARowG).Select(place => (IReadOnlyList<string>)
        [
            place.Name, Names.Of(place.Kind), figures.Grams(place.MostG), TripTables.Moment(place.MostAtLocal), place.MostFrostG > 0 ? figures.Grams(place.MostFrostG) : "",
            place.MeltedG > 0 ? figures.Grams(place.MeltedG) : "", place.RunOffG > 0 ? figures.Grams(place.RunOffG) : "", figures.Hours(place.WetHoursCount),
            figures.Grams(place.AtEndG), figures.Temperature(place.LowestC),
        ])]);

    /// <summary>Water inside the build-ups.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable BuildUps(TripResult found, Figures figures) => new("Water inside the build-ups, most first; those that stay below half a gram per m² are left out",
        ["Build-up", ">most at once", "when", ">at the end", ">came by air", ">came by diffusion"],
        [.. found.BuildUps.Where(buildUp => buildUp.MostGPerM2 >= WorthARowGPerM2).OrderByDescending(buildUp => buildUp.MostGPerM2).Select(buildUp => (IReadOnlyList<string>)
        [
            buildUp.Panel, figures.GramsPerArea(buildUp.MostGPerM2), TripTables.Moment(buildUp.MostAtLocal), figures.GramsPerArea(buildUp.AtEndGPerM2),
            figures.GramsPerArea(buildUp.ByAirGPerM2), figures.GramsPerArea(buildUp.ByDiffusionGPerM2),
        ])]);

    /// <summary>Mould index of surfaces and interfaces where it began to rise.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Mould(TripResult found, Figures figures) => new("Mould index, 0 nothing to 6 all over, where it began to rise; 1 is the first growth under a microscope, 3 is seen with the eye",
        ["Where", "panel", ">highest", ">at the end", ">mean humidity there"],
        [.. found.Mould.Where(mould => mould.HighestFactor > 0).Select(mould => (IReadOnlyList<string>)
            [mould.Name, mould.Panel, figures.Number(Shown.Factor, mould.HighestFactor), figures.Number(Shown.Factor, mould.AtEndFactor), figures.Percent(mould.MeanHumidityFraction)])]);

    /// <summary>Hours of wetness on metal.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Metal(TripResult found, Figures figures) => new($"Hours in which metal stood wet: more than {figures.Percent(0.8)} above freezing; a year of such trips beside it",
        ["Metal", ">on the trip", ">in a year of it"],
        [.. found.Metal.Where(metal => metal.WetHoursCount > 0).Select(metal => (IReadOnlyList<string>)
            [metal.Name, figures.Hours(metal.WetHoursCount), figures.Hours(metal.PerYearH)])]);
}
