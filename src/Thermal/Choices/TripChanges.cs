using Thermal.Bridges;
using Thermal.Trips;
using Thermal.Trips.Course;

namespace Thermal.Choices;

/// <summary>What would help a trip most, found by running it again with one thing changed at a time, from a stated list.</summary>
public static class TripChanges
{
    /// <summary>A change helps where it takes away this much of the worst finding, fraction. Source: OURS.</summary>
    public const double HelpsFromFraction = 0.05;

    /// <summary>Tries the list.</summary>
    /// <param name="kept">The trip to compare with.</param>
    /// <param name="cache">Sections of details solved before, such as those of the trip; null starts an empty one.</param>
    /// <param name="progress">Told the share done, fraction; null for nobody.</param>
    /// <param name="cancel">Stops it between hours.</param>
    /// <returns>Changes that make a difference; a change in which a described rib no longer fits is left out.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <remarks>
    /// Judged by the worst finding of the trip: the change that takes away the largest share of its figure helps most, at equal shares the one that saves
    /// more fuel. Legs with an unknown heading are run with the nose south. A given ψ keeps its value although its build-up may change.
    /// </remarks>
    public static TripAdvice Of(TripResult kept, BridgeCache? cache = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        BridgeCache known = cache ?? new();
        TripFinding? worst = kept.Findings.Count > 0 ? kept.Findings[0] : null;
        (TripChange Change, string Where, TripCase Tried)[] list = [.. TripChangeList.Of(kept.Asked).Where(one => SolvedVehicle.Unfit(one.Tried.Case.Vehicle).Count == 0)];
        List<TripChangeItem> items = [];
        for (int i = 0; i < list.Length; i++)
        {
            (TripChange change, string where, TripCase tried) = list[i];
            int done = i;
            TripResult found = TripRun.OneHeading(TripRun.Solved(tried, known), TripCourse.UsualHeadingDeg, share => progress?.Report((done + share) / list.Length), cancel);
            TripChangeItem item = Compare(change, where, kept, found, worst?.Kind);
            if (Matters(item)) items.Add(item);
        }
        items = [.. items.OrderByDescending(item => item.HelpsFraction).ThenByDescending(item => item.FuelAmount).ThenBy(item => item.Change)];
        return new(items, worst, items.Count > 0 && items[0].HelpsFraction >= HelpsFromFraction ? items[0] : null);
    }

    private static TripChangeItem Compare(TripChange change, string where, TripResult kept, TripResult found, TripFindingKind? kind)
    {
        double before = Figure(kept, kind), after = Figure(found, kind);
        return new(change, where, kept.Energy.HeatingFuelAmount - found.Energy.HeatingFuelAmount, MostWaterG(kept) - MostWaterG(found), kept.Water.RunOffG - found.Water.RunOffG,
            kept.Water.InBuildUpsG - found.Water.InBuildUpsG, kept.Comfort.ColdHoursCount - found.Comfort.ColdHoursCount, kept.Energy.FlatHoursCount - found.Energy.FlatHoursCount,
            MostIceFraction(kept) - MostIceFraction(found), kept.Comfort.HotHoursCount - found.Comfort.HotHoursCount, before > 0 ? (before - after) / before : 0);
    }

    /// <summary>The figure of a trip that a kind of finding is about, over the whole vehicle; of fuel where there is none.</summary>
    internal static double Figure(TripResult trip, TripFindingKind? kind) => kind switch
    {
        TripFindingKind.TooCold => trip.Comfort.ColdHoursCount,
        TripFindingKind.HeaterShort => trip.Energy.ShortHoursCount,
        TripFindingKind.BatteryFlat => trip.Energy.FlatHoursCount,
        TripFindingKind.ChargeRefused => trip.Energy.RefusedAh,
        TripFindingKind.TankFreezes or TripFindingKind.PipeFreezes => MostIceFraction(trip),
        TripFindingKind.WetGlass or TripFindingKind.WetLining => MostWaterG(trip),
        TripFindingKind.WetInside => trip.Water.InBuildUpsG,
        TripFindingKind.RunOff => trip.Water.RunOffG,
        TripFindingKind.Mould => trip.Mould.Select(mould => mould.HighestFactor).DefaultIfEmpty(0).Max(),
        TripFindingKind.Stuffy => trip.Comfort.StuffyHoursCount,
        TripFindingKind.TooHot => trip.Comfort.HotHoursCount,
        TripFindingKind.Humid => trip.Comfort.HumidHoursCount,
        TripFindingKind.ManyStarts => trip.Energy.StartsCount,
        _ => trip.Energy.HeatingFuelAmount,
    };

    private static double MostWaterG(TripResult trip) => Enumerable.Range(0, trip.Hours.Count).Max(i => trip.Hours.OnGlassG[i] + trip.Hours.OnLiningsG[i]);

    private static double MostIceFraction(TripResult trip) =>
        trip.Tanks.Select(tank => tank.MostIceFraction).Concat(trip.Pipes.Select(pipe => pipe.MostIceFraction)).DefaultIfEmpty(0).Max();

    private static bool Matters(TripChangeItem item) => Math.Abs(item.FuelAmount) > 0.01 || Math.Abs(item.MostWaterG) > 1 || Math.Abs(item.RunOffG) > 1 || Math.Abs(item.WetInsideG) > 1
        || Math.Abs(item.ColdHoursCount) > 0.1 || Math.Abs(item.FlatHoursCount) > 0.1 || Math.Abs(item.IceFraction) > 0.001 || Math.Abs(item.HotHoursCount) > 0.1 || Math.Abs(item.HelpsFraction) > 0.001;
}
