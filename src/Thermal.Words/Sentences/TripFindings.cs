using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>The findings of a trip as plain sentences: the figure, the reason, and what changes it most; those that only differ in the place told once.</summary>
public static class TripFindings
{
    /// <summary>Findings of one kind from which they are told together.</summary>
    private const int ToldTogetherFrom = 3;

    /// <summary>The sentences, worst first.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<string> Of(TripResult found, Figures figures)
    {
        List<string> told = [];
        HashSet<TripFindingKind> done = [];
        foreach (TripFinding finding in found.Findings)
        {
            TripFinding[] alike = [.. found.Findings.Where(other => other.Kind == finding.Kind)];
            if (alike.Length < ToldTogetherFrom)
                told.Add(Of(finding, found, figures));
            else if (done.Add(finding.Kind))
                told.Add($"{Of(finding, found, figures)} Less so: {string.Join("; ", alike.Skip(1).Select(other => other.About))}.");
        }
        return told;
    }

    /// <summary>The sentences for one finding.</summary>
    /// <param name="finding">What was found.</param>
    /// <param name="found">The trip it belongs to, for the reasons.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(TripFinding finding, TripResult found, Figures figures) => finding.Kind switch
    {
        TripFindingKind.TooCold or TripFindingKind.HeaterShort or TripFindingKind.TooHot or TripFindingKind.ManyStarts => OfWarmth(finding, found, figures),
        TripFindingKind.BatteryFlat or TripFindingKind.ChargeRefused => OfCharge(finding, found, figures),
        TripFindingKind.TankFreezes or TripFindingKind.PipeFreezes => OfFrost(finding, found, figures),
        TripFindingKind.Humid or TripFindingKind.Stuffy => OfAir(finding, found, figures),
        _ => OfDamp(finding, found, figures),
    };

    private static string OfWarmth(TripFinding finding, TripResult found, Figures figures)
    {
        string hours = figures.Hours(finding.FigureInItsUnit);
        return finding.Kind switch
        {
            TripFindingKind.TooCold => $"For {hours} with people in, {Room(finding, found)} is over {figures.Difference(1)} colder than wanted{Coolest(found, figures)}. " + (found.Energy.FlatHoursCount >= 1
                ? "The battery is flat and the heater stops: charge or a larger battery changes it most."
                : found.Energy.ShortHoursCount >= 1 ? "The heater gives all it has: less loss or a larger heater changes it most."
                : "Cold build-ups and furniture take hours to warm through: a higher setting while away, or heat an hour before coming home, changes it most."),
            TripFindingKind.HeaterShort => $"For {hours} the heater ({finding.About}) gives its most, {figures.HeaterPower(found.Asked.Case.Heater.HighestW)} at sea level, and it still stays over {figures.Difference(1)} colder than wanted. Less loss, or a larger heater, changes it most.",
            TripFindingKind.TooHot => $"For {hours} with people in, {Room(finding, found)} is hotter than people like{(found.Comfort.HottestC is { } hottest ? $", up to {figures.Temperature(hottest)}" : "")}, because sun on the skin and through glass warms it faster than air carries it off. Shade, covers outside the glass and a roof fan change it most.",
            _ => $"The heater ({finding.About}) starts {figures.Number(Shown.Factor, Math.Round(finding.FigureInItsUnit))} times a day, because its lowest output is more than is lost; each start costs current and soots the burner. A smaller heater, a wider band of its thermostat or more fresh air changes it most.",
        };
    }

    private static string OfCharge(TripFinding finding, TripResult found, Figures figures)
    {
        TripEnergy energy = found.Energy;
        if (finding.Kind == TripFindingKind.ChargeRefused)
            return $"{figures.Ah(finding.FigureInItsUnit)} of charge are offered while the battery is below {figures.Temperature(0)} and not taken, because a cold lithium cell must not be charged. The battery in the heated room, or a pad that warms it first, changes it most.";
        string at = finding.AtLocal is { } moment ? $" from {TripTables.Moment(moment)}" : "";
        string draw = energy.Draws is [{ } most, ..] ? $" Most of it goes to {most.Name}: {figures.Ah(most.Ah)} of {figures.Ah(energy.DrawnAh)} drawn." : "";
        return $"The battery is flat{at}, {figures.Hours(finding.FigureInItsUnit)} in all; heater and fans stand still then, and what protects from frost stops with them.{draw} Shore power for a night, more panels or charging while driving changes it most.";
    }

    private static string OfFrost(TripFinding finding, TripResult found, Figures figures)
    {
        string at = finding.AtLocal is { } moment ? $" from {TripTables.Moment(moment)}" : "";
        string about = Grammar.Capital(Grammar.The(finding.About)), ice = $"up to {figures.Percent(finding.FigureInItsUnit)} of its water turns to ice";
        if (finding.Kind == TripFindingKind.PipeFreezes)
            return $"{about} freezes{at}: {ice}. A thin pipe has little to give: run it through the heated room, drain it, or lag and heat it.";
        string hold = found.Tanks.FirstOrDefault(tank => tank.Name == finding.About) is { HoldW: > 0 } tank
            ? $" In its hardest hour {figures.Write(Shown.ElectricPower, tank.HoldW)} would hold it at {figures.Temperature(3)}." : "";
        return $"{about} freezes{at}: {ice}.{hold} Insulation all round with warm air or a pad, or an empty tank, changes it most.";
    }

    private static string OfAir(TripFinding finding, TripResult found, Figures figures) => finding.Kind == TripFindingKind.Stuffy
        ? $"Carbon dioxide in {Room(finding, found)} reaches {figures.Ppm(finding.FigureInItsUnit)}, because people breathe faster than fresh air comes in. Open a vent high and a vent low, or let the roof fan run; never close a fixed vent."
        : $"For {figures.Hours(finding.FigureInItsUnit)} with people in, the air of {Room(finding, found)} is over {figures.Percent(0.7)} humid. More fresh air while cooking, showering and drying, and less hung up to dry inside, changes it most.";

    private static string OfDamp(TripFinding finding, TripResult found, Figures figures)
    {
        string about = Grammar.The(finding.About), when = finding.AtLocal is { } moment ? $" on {TripTables.Moment(moment)}" : "";
        double figure = finding.FigureInItsUnit;
        WetPlace? place = found.Wet.FirstOrDefault(wet => wet.Name == finding.About);
        return finding.Kind switch
        {
            TripFindingKind.WetGlass => $"Up to {figures.Grams(figure)} of water{(place is { MostFrostG: >= 1 } ? " and frost" : "")} settle on {about}{when}, because glass is the coldest thing the room's air touches. A close cover inside, drier air, and a cloth in the morning before it melts into the sill change it most.",
            TripFindingKind.WetLining => $"Up to {(place is { AreaM2: <= 0 } ? figures.Grams(figure) : figures.GramsPerArea(figure))} of water settle on {about}{when}, because the cold comes through there faster than the room warms it. Insulation over it, air that can move past it, and drier air change it most.",
            TripFindingKind.WetInside => $"Water builds up inside {about}: {figures.GramsPerArea(figure)} at the end, {Carried(found, finding.About)}. {(ByAir(found, finding.About) ? "A tight lining without gaps" : "A vapour check on the warm side")} and drier air change it most.",
            TripFindingKind.RunOff => $"{figures.Grams(figure)} run off glass and cold metal over the trip, into sills, seals and what lies below. Wiping the same morning takes it out of the vehicle for good; covers and drier air leave less of it.",
            _ => $"Mould can begin at {about}: its index reaches {figures.Number(Shown.Factor, Math.Round(figure, 1))} of 6, where 1 shows under a microscope and 3 to the eye. A warmer surface or drier air, for days on end, changes it most.",
        };
    }

    // A builder may call the living space "living" alone, which is no word for a room in a sentence.
    private static string Room(TripFinding finding, TripResult found) =>
        finding.About == found.Asked.Case.Vehicle.Living.Name ? "the living space" : Grammar.The(finding.About);

    private static string Coolest(TripResult found, Figures figures) => found.Comfort.CoolestC is { } coolest ? $", {figures.Temperature(coolest)} at the coolest" : "";

    private static bool ByAir(TripResult found, string panel) => found.BuildUps.FirstOrDefault(one => one.Panel == panel) is { } buildUp && buildUp.ByAirGPerM2 > buildUp.ByDiffusionGPerM2;

    private static string Carried(TripResult found, string panel) => ByAir(found, panel) ? "most of it carried by air behind the lining" : "most of it by diffusion through the layers";
}
