using Thermal.Assessments;
using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>The whole trip as a friend would put it: warm or not, wet or not, fuel, battery, water.</summary>
public static class TripVerdict
{
    // Above these a person would do something about it; the findings use the same marks.
    private const double SomeHours = 1, OftenColdFraction = 0.25, WetInsideGPerM2 = 20, MouldGrowsFactor = 1;

    /// <summary>Three to six short sentences, without jargon, the worst first within each matter.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(TripResult found, Figures figures) => string.Join(' ', ((string?[])
    [
        Warm(found, figures), Hot(found.Comfort, figures), Glass(found, figures), Inside(found, figures), Fuel(found, figures), Charge(found.Energy, figures), Water(found, figures),
    ]).OfType<string>());

    private static string Warm(TripResult found, Figures figures)
    {
        TripComfort comfort = found.Comfort;
        if (comfort.HomeHoursCount <= 0)
            return found.Energy.ShortHoursCount >= SomeHours
                ? $"Nobody is on board; for {figures.Hours(found.Energy.ShortHoursCount)} the heater gives all it has and it stays colder than wanted."
                : "Nobody is on board, so warmth is not judged.";
        if (found.Hours.WantedC.All(double.IsNaN) && comfort is { CoolestC: { } least, HottestC: { } most })
            return $"No heat is asked for: {figures.Range(Shown.Temperature, least, most)} with people in.";
        if (comfort.ColdHoursCount < SomeHours)
            return $"Warm {Throughout(found.Asked.Trip)}.";
        string hours = $"{figures.Hours(comfort.ColdHoursCount)} of {figures.Hours(comfort.HomeHoursCount)} at home are colder than wanted";
        string coolest = comfort.CoolestC is { } low ? $", {figures.Temperature(low)} at the coolest" : "";
        string reason = found.Energy.FlatHoursCount >= SomeHours ? ", because the battery runs flat and the heater stops"
            : found.Energy.ShortHoursCount >= SomeHours ? ", and the heater gives all it has" : "";
        return $"{(comfort.ColdHoursCount > OftenColdFraction * comfort.HomeHoursCount ? "Often cold" : "Warm most of the time")}: {hours}{coolest}{reason}.";
    }

    private static string? Hot(TripComfort comfort, Figures figures) => comfort.HotHoursCount < SomeHours || comfort.HottestC is not { } hottest ? null
        : $"Too hot for {figures.Hours(comfort.HotHoursCount)}, up to {figures.Temperature(hottest)}.";

    private static string? Glass(TripResult found, Figures figures)
    {
        if (found.Hours.Count == 0)
            return null;
        TripNights nights = TripNights.Of(found.Hours);
        double mostG = found.Hours.OnGlassG.Max();
        if (nights.WetCount == 0)
            return mostG < TripNights.WorthWipingG ? "The glass stays all but dry." : null;
        string share = nights.FrostCount > 0 ? $"The glass freezes over {nights.Share(nights.FrostCount)}" : $"The glass is wet {nights.Share(nights.WetCount)}";
        return $"{share}, up to {figures.Grams(mostG)} of {(nights.FrostCount > 0 ? "frost and water" : "water")}.";
    }

    private static string? Inside(TripResult found, Figures figures)
    {
        if (found.BuildUps.Count == 0)
            return null;
        BuildUpTrip[] wet = [.. found.BuildUps.Where(buildUp => buildUp.AtEndGPerM2 >= WetInsideGPerM2).OrderByDescending(buildUp => buildUp.AtEndGPerM2)];
        string? mould = found.Mould is [{ HighestFactor: >= MouldGrowsFactor } worst, ..] ? $" Mould begins at {Grammar.The(worst.Name)}." : null;
        if (wet.Length == 0)
            return "The build-ups take in little." + mould;
        string others = wet.Length > 1 ? $", and {Grammar.Count(wet.Length - 1, "other build-up")} {(wet.Length == 2 ? "is" : "are")} wet too" : "";
        return $"Water is left inside {Grammar.The(wet[0].Panel)}, {figures.GramsPerArea(wet[0].AtEndGPerM2)} at the end{others}.{mould}";
    }

    private static string Fuel(TripResult found, Figures figures)
    {
        Case asked = found.Asked.Case;
        double amount = found.Energy.HeatingFuelAmount + found.Energy.HotWaterFuelAmount, days = (found.Asked.Trip.EndLocal - found.Asked.Trip.StartLocal).TotalDays;
        string fuel = Names.Of(asked.Heater.Fuel);
        if (amount <= 0)
            return $"No {fuel} is used for heat.";
        string perDay = days > 1.5 && amount / days >= 0.1 ? $", {figures.FuelAmount(asked.Heater.Fuel, amount / days)} a day" : "";
        return $"Heat takes {figures.FuelAmount(asked.Heater.Fuel, amount)} of {fuel}{perDay}.";
    }

    private static string? Charge(TripEnergy energy, Figures figures)
    {
        if (energy.LowestChargeFraction is not { } lowest)
            return null;
        return energy.FlatAtLocal is { } flat
            ? $"The battery is flat from {TripTables.Moment(flat)}, {figures.Hours(energy.FlatHoursCount)} in all."
            : $"The battery never falls below {figures.Percent(lowest)}.";
    }

    private static string? Water(TripResult found, Figures figures)
    {
        if (found.Tanks.Count + found.Pipes.Count == 0)
            return null;
        (string Name, DateTime At)[] frozen = [.. Frozen(found).OrderBy(thing => thing.At)];
        return frozen.Length > 0
            ? $"{Grammar.Capital(Grammar.List([.. frozen.Select(thing => Grammar.The(thing.Name))]))} {(frozen.Length == 1 ? "begins to freeze" : "begin to freeze, first")} on {TripTables.Moment(frozen[0].At)}."
            : $"{(found.Pipes.Count == 0 ? "No tank freezes" : found.Tanks.Count == 0 ? "No pipe freezes" : "No tank and no pipe freezes")}; the coldest water is {figures.Temperature(Coldest(found))}.";
    }

    private static IEnumerable<(string Name, DateTime At)> Frozen(TripResult found) =>
    [
        .. found.Tanks.Where(tank => tank.FreezesAtLocal is not null).Select(tank => (tank.Name, tank.FreezesAtLocal!.Value)),
        .. found.Pipes.Where(pipe => pipe.FreezesAtLocal is not null).Select(pipe => (pipe.Name, pipe.FreezesAtLocal!.Value)),
    ];

    private static double Coldest(TripResult found) => found.Tanks.Select(tank => tank.LowestC).Concat(found.Pipes.Select(pipe => pipe.LowestC)).Min();

    private static string Throughout(Trip trip) => (trip.EndLocal - trip.StartLocal).TotalDays switch
    {
        < 1.5 => "throughout",
        >= 6 and <= 8 => "all week",
        >= 100 => "all season",
        _ => "all the way",
    };
}
