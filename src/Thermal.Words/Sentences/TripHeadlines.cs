using Thermal.Assessments;
using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>The answers that stand under the verdict of a trip: warmth, damp, fuel, battery, water.</summary>
public static class TripHeadlines
{
    private const double SomeHours = 1, LowChargeFraction = 0.2, HumidShareFraction = 0.1;

    /// <summary>The answers, worst trouble first; those without trouble keep their order.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<Headline> Of(TripResult found, Figures figures) =>
        [.. ((Headline?[])[Warmth(found, figures), Damp(found, figures), Fuel(found, figures), Battery(found, figures), Water(found, figures)]).OfType<Headline>().OrderByDescending(headline => headline.Trouble)];

    private static Headline Warmth(TripResult found, Figures figures)
    {
        TripComfort comfort = found.Comfort;
        if (comfort.CoolestC is not { } coolest || comfort.HottestC is not { } hottest)
            return new("Coolest at home", "Not known", "nobody is on board", Trouble.None, "nothing to say");
        string detail = $"{figures.Range(Shown.Temperature, coolest, hottest)} with people in{(comfort.ColdestSurfaceC is { } surfaceC ? $"; coldest surface {figures.Temperature(surfaceC)}, {comfort.ColdestSurface}" : "")}";
        string warmUp = comfort.WarmUpH is >= 0.1 and { } hours ? $"; warm again within {figures.Hours(hours)} of coming home" : "";
        return new("Coolest at home", figures.Temperature(coolest), detail,
            comfort.ColdHoursCount < SomeHours ? Trouble.None : found.Energy.ShortHoursCount >= SomeHours || found.Energy.FlatHoursCount >= SomeHours ? Trouble.Bad : Trouble.Watch,
            comfort.ColdHoursCount < SomeHours ? $"warm as wanted{warmUp}" : $"{figures.Hours(comfort.ColdHoursCount)} colder than wanted");
    }

    private static Headline Damp(TripResult found, Figures figures)
    {
        TripComfort comfort = found.Comfort;
        double runOffG = found.Water.RunOffG;
        string humid = comfort.HomeHoursCount > 0 ? $"over {figures.Percent(0.7)} humidity for {figures.Hours(comfort.HumidHoursCount)} of {figures.Hours(comfort.HomeHoursCount)} at home" : "nobody is on board";
        if (found.Wet is not [{ MostG: >= 1 } wettest, ..])
            return new("Wettest surface", "None", humid, comfort.HumidHoursCount > HumidShareFraction * comfort.HomeHoursCount ? Trouble.Watch : Trouble.None, "surfaces stay dry");
        return new("Wettest surface", Grammar.Capital(wettest.Name), $"{figures.Grams(wettest.MostG)} at once on {TripTables.Moment(wettest.MostAtLocal)}; {humid}",
            runOffG >= 1 || wettest.MostG >= TripNights.WorthWipingG ? Trouble.Watch : Trouble.None,
            runOffG >= 1 ? $"{figures.Grams(runOffG)} run off, to be wiped up" : wettest.MostFrostG >= 1 ? $"up to {figures.Grams(wettest.MostFrostG)} of it frost" : "it stays where it is and dries");
    }

    private static Headline Fuel(TripResult found, Figures figures)
    {
        Case asked = found.Asked.Case;
        TripEnergy energy = found.Energy;
        var fuel = asked.Heater.Fuel;
        double days = (found.Asked.Trip.EndLocal - found.Asked.Trip.StartLocal).TotalDays;
        string water = energy.HotWaterFuelAmount > 0 ? $", {figures.FuelAmount(fuel, energy.HotWaterFuelAmount)} of it for hot water" : "";
        string headings = found.OtherHeadings is { } other && figures.FuelAmount(fuel, other.LeastFuelAmount) != figures.FuelAmount(fuel, other.MostFuelAmount)
            ? $"; to heat, {figures.FuelAmount(fuel, new Between(other.LeastFuelAmount, other.LeastFuelAmount, other.MostFuelAmount))}, depending on the heading" : "";
        double all = energy.HeatingFuelAmount + energy.HotWaterFuelAmount;
        return new($"{Grammar.Capital(Names.Of(fuel))} for heat", figures.FuelAmount(fuel, all), $"{figures.FuelAmount(fuel, all / days)} a day{water}{headings}",
            energy.ShortHoursCount >= SomeHours ? Trouble.Bad : Trouble.None,
            energy.ShortHoursCount >= SomeHours ? $"the heater is too small for {figures.Hours(energy.ShortHoursCount)}" : "the heater is large enough");
    }

    private static Headline? Battery(TripResult found, Figures figures)
    {
        TripEnergy energy = found.Energy;
        if (energy.LowestChargeFraction is not { } lowest)
            return null;
        string span = found.OtherHeadings is { WorstChargeFraction: { } worst, BestChargeFraction: { } best } && figures.Range(Shown.Percent, worst, worst) != figures.Range(Shown.Percent, best, best)
            ? $"; {figures.Range(Shown.Percent, worst, best)}, depending on the heading" : "";
        (double ChargeAh, string By)[] sources = [(energy.SunAh, "sun"), (energy.AlternatorAh, "engine"), (energy.ShoreAh, "shore")];
        string charged = Grammar.List([.. sources.Where(source => source.ChargeAh >= 0.5).Select(source => $"{figures.Ah(source.ChargeAh)} by {source.By}")]);
        return new("Lowest charge", figures.Percent(lowest), $"{figures.Ah(energy.DrawnAh)} drawn, {charged} charged{span}",
            energy.FlatAtLocal is not null ? Trouble.Bad : lowest < LowChargeFraction ? Trouble.Watch : Trouble.None,
            energy.FlatAtLocal is { } flat ? $"flat from {TripTables.Moment(flat)}, {figures.Hours(energy.FlatHoursCount)} in all"
                : energy.RefusedAh >= 1 ? $"{figures.Ah(energy.RefusedAh)} refused below freezing" : "it lasts");
    }

    private static Headline? Water(TripResult found, Figures figures)
    {
        (string Name, double LowestC, double IceFraction, DateTime? At)[] all =
        [
            .. found.Tanks.Select(tank => (tank.Name, tank.LowestC, tank.MostIceFraction, tank.FreezesAtLocal)),
            .. found.Pipes.Select(pipe => (pipe.Name, pipe.LowestC, pipe.MostIceFraction, pipe.FreezesAtLocal)),
        ];
        if (all.Length == 0)
            return null;
        (string name, double lowestC, double ice, DateTime? at) = all.OrderByDescending(thing => thing.IceFraction).ThenBy(thing => thing.LowestC).First();
        double holdW = found.Tanks.Where(tank => tank.FreezesAtLocal is not null).Sum(tank => tank.HoldW);
        return new("Coldest water", figures.Temperature(lowestC), name + (holdW > 0 ? $"; {figures.Write(Shown.ElectricPower, holdW)} would hold the tanks at {figures.Temperature(3)} in their hardest hour" : ""),
            at is not null ? Trouble.Bad : lowestC < 1 ? Trouble.Watch : Trouble.None,
            at is { } freezes ? $"freezes from {TripTables.Moment(freezes)}, {figures.Percent(ice)} ice at most" : "nothing freezes");
    }
}
