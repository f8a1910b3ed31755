using Thermal.Assessments;
using Thermal.Climates;
using Thermal.People;

namespace Thermal.Words.Sentences;

/// <summary>What an assessment takes for granted and what its methods leave out, so that a reader can judge it.</summary>
public static class Assumptions
{
    /// <summary>What was assumed in this case, in the order in which it matters.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<string> Of(Assessment assessment, Figures figures)
    {
        Case assessed = assessment.Case;
        Habits habits = assessed.Habits;
        List<string> said =
        [
            $"Cold night: {OfNight(assessed.ColdNight, figures)}. {OfDesign(assessed.Place, figures)}",
            $"Mild night: {OfNight(assessed.MildNight, figures)}. It is shown because damp mild air dries least.",
            "Both nights are steady: nothing stored is counted on to carry the vehicle through, and temperatures are those of the living space as felt, air and surfaces together.",
            $"{Grammar.Capital(Grammar.Count(habits.SleepersCount, "sleeper"))}, {figures.Temperature(habits.SetPointC)} wanted. Their warmth is left out of the heater's size and counted in its fuel; their vapour is counted apart.",
            OfHumidity(habits, figures),
            "Ranges beside the answers are whole runs with everything low and everything high: conductivities, leaks, wind, ribs, habits.",
            "Areas are of the bare shell. Air through leaks follows from warmth and wind on stated openings; no leak of this vehicle has been measured.",
        ];
        if (assessed.Place is { } place)
            said.Add($"Months: {place.Name}, {place.Country}, {place.Period}. {place.Source}. {place.Licence}.");
        else
            said.Add("Only temperatures were given, no place: so there are no months, and nothing can be said of drying within a year.");
        return said;
    }

    /// <summary>What the methods leave out, whatever the case.</summary>
    public static IReadOnlyList<string> Limits { get; } =
    [
        "The month-by-month method (ISO 13788) leaves out moving air, sun, rain, stored moisture and the heat that water takes and gives when it freezes or dries; air behind linings is therefore reckoned beside it, as an upper bound.",
        "The sun is left out of the months: a warm skin drives water inwards and dries sooner than shown, or wets the lining.",
        "The block climate of DIN 4108-3 is shown as a remark only. Behind a skin that lets no vapour out it stands outside its scope, and no verdict comes from it.",
        "Saturation follows ISO 13788: over water above the freezing point, over ice below. Weather services give humidity over water at every temperature, and so it is read here.",
        "Ribs, edges and bolts count with the ψ or χ computed from their description, or with the one given in the vehicle file; what the file does not name is not counted at all.",
        "The cold-chamber grades follow a clause known only from secondary sources (EN 1646-1), and no test has been made.",
        "Output of a burning heater is lowered with air pressure; no measured curve was found.",
        "Not known here: the quality of the work, gaps in the insulation, water that leaks in from outside, and what was wet when it was closed.",
    ];

    private static string OfNight(NightConditions night, Figures figures) =>
        $"{figures.Temperature(night.OutsideC)}, {figures.Percent(night.RelativeHumidityFraction)} humidity, wind {figures.Write(Shown.WindSpeed, night.WindMPerS)}, " +
        (night.SkyBelowAirK > 0 ? $"clear sky {figures.Difference(night.SkyBelowAirK)} below the air" : "covered sky") +
        $", {figures.Altitude(night.AltitudeM)} above the sea";

    private static string OfDesign(Place? place, Figures figures)
    {
        if (place is null)
            return "Its temperature is stated in the vehicle file.";
        DesignTemperature design = place.Design;
        string known = design.PlusMinusK > 0 ? $", ± {figures.Difference(design.PlusMinusK)}" : "";
        string measure = design.Measure == DesignMeasure.AsNoted ? "" : $", {Names.Of(design.Measure)},";
        return $"The design temperature{measure} is {Names.Of(design.Kind)}{known}: {design.Note}.";
    }

    private static string OfHumidity(Habits habits, Figures figures) => habits.Humidity switch
    {
        HumidityRule.Fixed => $"Humidity inside is held at {figures.Percent(habits.FixedHumidityFraction!.Value)}, as the file states.",
        HumidityRule.Class => $"Humidity inside follows class {habits.HumidityClass} of ISO 13788, as the file states.",
        _ => "Humidity inside is a balance of breath, cooking, washing and drying against fresh air and cold surfaces, averaged over the hours at home.",
    };
}
