using Thermal.Assessments;
using Thermal.Choices;

namespace Thermal.Words.Sentences;

/// <summary>One finding as plain sentences: the figure, the reason, and what would change it most.</summary>
public static class FindingSentence
{
    /// <summary>The sentences for one finding.</summary>
    /// <param name="finding">What was found.</param>
    /// <param name="assessment">The assessment it belongs to, for the reasons.</param>
    /// <param name="advice">Changes that were tried on it, the most helpful first.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(Finding finding, Assessment assessment, IReadOnlyList<AdviceItem> advice, Figures figures) => finding.Kind switch
    {
        FindingKind.HeaterTooSmall or FindingKind.BatteryTooSmall or FindingKind.HeaterCycles
            or FindingKind.DieselWaxes or FindingKind.ButaneDoesNotBoil => OfHeating(finding, assessment, figures),
        FindingKind.StaleAir or FindingKind.VentsTooSmall or FindingKind.NotByVentilating => OfAir(finding, assessment, figures),
        FindingKind.StaysWet or FindingKind.WaterTrapped or FindingKind.Mould or FindingKind.TankFreezes
            or FindingKind.BridgeFrosts or FindingKind.BridgeDrips => OfWater(finding, assessment, advice, figures),
        _ => OfTheFile(finding, assessment, figures),
    };

    private static string OfHeating(Finding finding, Assessment assessment, Figures figures)
    {
        HeatingAnswer heating = assessment.Heating;
        double figure = finding.FigureInItsUnit;
        return finding.Kind switch
        {
            FindingKind.HeaterTooSmall =>
                $"The heater is {figures.HeaterPower(figure)} too small: it gives {figures.HeaterPower(heating.HighestOutputW)} here and {figures.HeaterPower(heating.NeedW.Value)} is needed to {Aim(assessment, figures)}. " +
                (heating.Suggested is { } larger
                    ? $"The next that would do: {larger.Name}."
                    : $"No heater in the table that runs on {Names.Of(assessment.Case.Heater.Fuel)} is large enough: less loss comes first."),
            FindingKind.BatteryTooSmall =>
                $"The battery does not last the cold night: heater and fan draw {figures.Ah(figure)}, and {figures.Ah(assessment.Case.BatteryAh!.Value)} is usable. A larger battery, or less running time of heater and fan, changes it most.",
            FindingKind.HeaterCycles =>
                $"On the mild night the heater starts about {Times(figure)}, because its lowest output of {figures.Power(heating.LowestOutputW)} is more than is lost; each start costs current and soots the burner. A smaller heater, or more fresh air on such nights, changes it most.",
            FindingKind.DieselWaxes =>
                $"At {figures.Temperature(figure)} diesel that is not winter grade may wax and stop the heater, before it stops an engine. Winter-grade fuel in the tank before the frost changes it most.",
            _ =>
                $"At {figures.Temperature(figure)} butane gives no gas, because it boils just below the freezing point of water. Propane changes it.",
        };
    }

    private static string OfAir(Finding finding, Assessment assessment, Figures figures)
    {
        double figure = finding.FigureInItsUnit;
        int sleepers = assessment.Case.Habits.SleepersCount;
        return finding.Kind switch
        {
            FindingKind.StaleAir =>
                $"Carbon dioxide reaches {figures.Ppm(figure)} by dawn in the room \"{finding.Where}\", because {Grammar.Count(sleepers, "sleeper")} share {figures.AirPerHour(assessment.AirNeededCold.NowM3PerH)} of fresh air. More fresh air changes it most: open a vent high and a vent low.",
            FindingKind.VentsTooSmall =>
                $"The room \"{finding.Where}\" lacks {figures.Write(Shown.VentArea, figure)} of fixed vents that stay open, measured by the usual figures of the trade. More free area, high and low, is the only change that counts here: leaks are no substitute.",
            _ =>
                $"On the mild night no amount of fresh air keeps {figures.Percent(assessment.AirNeededMild.AimFraction)} humidity in the room \"{finding.Where}\", because the air outside at {figures.Temperature(assessment.MildNight.Conditions.OutsideC)} is itself too damp. Not by ventilating: heat more, or dry less inside.",
        };
    }

    private static string OfWater(Finding finding, Assessment assessment, IReadOnlyList<AdviceItem> advice, Figures figures)
    {
        string where = finding.Where;
        double figure = finding.FigureInItsUnit;
        return finding.Kind switch
        {
            FindingKind.StaysWet =>
                $"{Grammar.Capital(Grammar.The(where))} holds up to {figures.GramsPerArea(figure)} of water and does not dry within the year, because what gets to the cold side cannot leave through the skin. {HelpsMost(where, advice, figures)}",
            FindingKind.WaterTrapped =>
                $"{Grammar.Capital(where)}: this layer can take up water between two tight ones, and room air can reach it, so what gets in stays in. Foam bonded without gaps in its place, or one tight plane instead of two, changes it most.",
            FindingKind.BridgeFrosts or FindingKind.BridgeDrips =>
                $"{Grammar.Capital(where)}: {(finding.Kind == FindingKind.BridgeFrosts ? "frost" : "dew")} forms on its coldest inner line on the cold night, {figures.Difference(figure)} below the {(finding.Kind == FindingKind.BridgeFrosts ? "frost" : "dew")} point of the room's air, because it carries the cold through the insulation. A strip of closed-cell foam over it, or drier air in the room, changes it most.",
            FindingKind.Mould =>
                $"Mould can grow at {Grammar.The(where)}: {(figure >= 1 ? "the surface is wet through the worst month" : $"humidity at the surface is {figures.Percent(figure)} over the worst month")}, and 80 % is enough for it. A warmer surface there or drier air in the room changes it most.",
            _ =>
                $"{Grammar.Capital(Grammar.The(where))} reaches {figures.Temperature(0)} after {figures.Hours(figure)} in the cold night, because the air round it is {figures.Temperature(TankAir(where, assessment))}. Insulation all round with a heating pad, or an empty tank, changes it most.",
        };
    }

    private static string OfTheFile(Finding finding, Assessment assessment, Figures figures)
    {
        string where = Grammar.Capital(finding.Where);
        return finding.Kind switch
        {
            FindingKind.DetailNotConverged =>
                $"{where}: its section is too fine to be solved as closely as asked: its flow still changed by {figures.Percent(finding.FigureInItsUnit)} in the last step. Its figures are only as sure as their stated bounds; leaving out the smallest pieces settles it.",
            FindingKind.StaleBridge =>
                $"{where}: the given ψ or χ was found for another build-up, so its share of the loss is not known any more. A value found for the layers as they are now settles it.",
            FindingKind.BridgeWithoutBuildUp =>
                $"{where}: the given ψ or χ does not say which build-up it belongs to. It is used as given; naming the layers it was found for settles it.",
            FindingKind.LimitsFarApart =>
                $"{where}: the upper and lower limit of resistance lie a factor {figures.Write(Shown.Factor, finding.FigureInItsUnit)} apart, more than the 1.5 the method allows. A value for the battens solved in two dimensions settles it.",
            FindingKind.AreaAlone =>
                $"{where}: given by area alone, so there is no picture of it and no check that its openings fit. Width and height in the file settle it.",
            FindingKind.DesignEstimated =>
                $"The cold night's temperature of {figures.Temperature(assessment.ColdNight.Conditions.OutsideC)} is an estimate from monthly means, good to ± {figures.Difference(finding.FigureInItsUnit)}. A design temperature published for your place settles it.",
            FindingKind.HumidityEstimated =>
                "The months' humidity outside is an estimate, because the place's means give none; drying within the year is as uncertain as it is.",
            _ => throw new ArgumentOutOfRangeException(nameof(finding), finding.Kind, "There is no sentence for this finding."),
        };
    }

    private static string Aim(Assessment assessment, Figures figures) => assessment.Heating.WarmUpDecides
        ? $"warm up in {figures.Hours(assessment.Case.WarmUpH)}"
        : $"hold {figures.Temperature(assessment.Case.Habits.SetPointC)} at {figures.Temperature(assessment.ColdNight.Conditions.OutsideC)}";

    private static string Times(double count) => Grammar.Count((int)Math.Round(count, MidpointRounding.AwayFromZero), "time");

    private static string HelpsMost(string where, IReadOnlyList<AdviceItem> advice, Figures figures) =>
        BestFor(where, advice) is { } best
            ? $"Of what was tried, this helps it most: {AdviceSentence.What(best, figures)}."
            : "Nothing that was tried helps it: keep room air and vapour from the cold side by another build-up.";

    /// <summary>The change on this build-up that leaves it with least water over the year; null where none that was tried helps.</summary>
    /// <param name="buildUp">Name of the build-up.</param>
    /// <param name="advice">Changes that were tried.</param>
    public static AdviceItem? BestFor(string buildUp, IReadOnlyList<AdviceItem> advice) => advice
        .Where(item => item.Where == buildUp && (item.PeakAvoidedGPerM2 > 0 || item.BuildUpsDriedCount > 0))
        .OrderByDescending(item => item.BuildUpsDriedCount)
        .ThenByDescending(item => item.PeakAvoidedGPerM2)
        .FirstOrDefault();

    private static double TankAir(string name, Assessment assessment) =>
        assessment.Tanks.First(tank => tank.Name == name).SurroundingsC;
}
