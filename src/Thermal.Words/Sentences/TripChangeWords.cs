using Thermal.Choices;
using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>What a change would do to a trip, in a sentence.</summary>
public static class TripChangeWords
{
    private const int MostSentences = 6;

    /// <summary>The changes that help, the most helpful first; a word where none does.</summary>
    /// <param name="advice">What trying changes found.</param>
    /// <param name="found">The trip as it is.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<string> Of(TripAdvice advice, TripResult found, Figures figures) =>
    [
        .. advice.Items.Where(item => item.HelpsFraction >= TripChanges.HelpsFromFraction).Take(MostSentences).Select(item => Of(item, found, figures)),
        .. advice.Best is null ? (string[])["Nothing on the list that was tried takes away a twentieth of the trip's worst trouble."] : [],
        .. advice.WorstFinding is null ? (string[])[] : ["Each is judged by the trouble named first above."],
    ];

    /// <summary>One change.</summary>
    /// <param name="item">The change with what it takes away.</param>
    /// <param name="found">The trip as it is.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Of(TripChangeItem item, TripResult found, Figures figures)
    {
        string[] effects = [.. Effects(item, found, figures)];
        return $"{What(item, figures)}: {(effects.Length == 0 ? "next to no difference" : Grammar.List(effects))}.";
    }

    private static string What(TripChangeItem item, Figures figures) => item.Change switch
    {
        TripChange.CoverOutside => $"Cover the glass outside at night ({item.Where})",
        TripChange.CoversAlways => "Leave all covers on as long as the vehicle is parked",
        TripChange.CloseCurtain => "Close the curtain to the cab at night",
        TripChange.CoolerNights => $"Sleep {figures.Difference(2)} cooler",
        TripChange.RunFan => $"Run a roof fan above {figures.Percent(0.6)} humidity, with an inlet open",
        TripChange.DryElsewhere => "Dry wet clothes and kit somewhere else",
        TripChange.MoreInRoof => $"Put {figures.Thickness(0.02)} more insulation in the roof",
        TripChange.MoreInWalls => $"Put {figures.Thickness(0.02)} more insulation in the walls",
        TripChange.DoubleGlazing => $"Fit double acrylic panes for single ones ({item.Where})",
        TripChange.WrapTanks => $"Wrap the tanks in {figures.Thickness(0.035)} of foam ({item.Where})",
        TripChange.PadTanks => $"Fit heating pads of {figures.Write(Shown.ElectricPower, 60)} ({item.Where})",
        TripChange.MoreSun => $"Lay {figures.Write(Shown.ElectricPower, 100)} more of solar panels flat on the roof",
        TripChange.MoreBattery => $"Fit {figures.Ah(100)} more battery",
        TripChange.BatteryInside => "Move the battery into the living space",
        TripChange.SmallerHeater => $"Fit the {item.Where}",
        TripChange.LargerHeater => $"Fit the {item.Where}",
        _ => throw new ArgumentOutOfRangeException(nameof(item), item.Change, "There is no word for this change."),
    };

    private static IEnumerable<string> Effects(TripChangeItem item, TripResult found, Figures figures)
    {
        if (Math.Abs(item.FuelAmount) >= 0.1) yield return $"{figures.FuelAmount(found.Asked.Case.Heater.Fuel, Math.Abs(item.FuelAmount))} {Less(item.FuelAmount)} fuel";
        if (Math.Abs(item.ColdHoursCount) >= 0.5) yield return $"{figures.Hours(Math.Abs(item.ColdHoursCount))} {Less(item.ColdHoursCount)} of cold";
        if (Math.Abs(item.FlatHoursCount) >= 0.5) yield return $"{figures.Hours(Math.Abs(item.FlatHoursCount))} {Less(item.FlatHoursCount)} with a flat battery";
        if (Math.Abs(item.MostWaterG) >= 1) yield return $"{figures.Grams(Math.Abs(item.MostWaterG))} {Less(item.MostWaterG)} water on surfaces at worst";
        if (Math.Abs(item.RunOffG) >= 1) yield return $"{figures.Grams(Math.Abs(item.RunOffG))} {Less(item.RunOffG)} run off";
        if (Math.Abs(item.WetInsideG) >= 1) yield return $"{figures.Grams(Math.Abs(item.WetInsideG))} {Less(item.WetInsideG)} inside the build-ups";
        if (Math.Abs(item.IceFraction) >= 0.005) yield return $"{figures.Percent(Math.Abs(item.IceFraction))} {Less(item.IceFraction)} ice in the worst tank or pipe";
        if (Math.Abs(item.HotHoursCount) >= 0.5) yield return $"{figures.Hours(Math.Abs(item.HotHoursCount))} {Less(item.HotHoursCount)} of heat";
    }

    private static string Less(double takenAway) => takenAway >= 0 ? "less" : "more";
}
