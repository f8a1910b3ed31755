using System.Globalization;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Trips;
using Thermal.Words.Units;

namespace Thermal.Files.TripKeys;

/// <summary>The whole trip file: the one table that reads it, writes it and describes it to editors.</summary>
internal static class TripTable
{
    private const double UsualStepS = 600, UsualWaterC = 10; // as Trip has them

    private static readonly Field<TripRequest, int> Format = new("format", "Version of this format.", new WholeNode(1, 1), _ => 1) { IsRequired = true };
    private static readonly Field<TripRequest, string> Name = new("name", "Name of the trip.", Kinds.Name, one => one.Trip.Name) { IsRequired = true };
    private static readonly Field<TripRequest, string> Description = new("description", "One or two sentences of what it is.", Kinds.Sentence, one => one.Trip.Description.Length == 0 ? null : one.Trip.Description) { Default = "" };
    private static readonly Field<TripRequest, string> Vehicle = new("vehicle", "The vehicle: a file, counted from this one, or a built-in name.", new TextNode(200, UnknownVehicle), one => one.VehicleAsWritten);
    private static readonly Field<TripRequest, DateTime> Start = new("start", "When the first leg begins, local standard time.", new MomentNode(), one => one.Trip.StartLocal) { IsRequired = true };
    private static readonly Field<TripRequest, double> StartWarmth = new("start_temperature", "Temperature of everything on board at the start; that outside where left out.", new QuantityNode(Dimensions.Temperature, "°C", -40, 40), one => one.Trip.StartC);
    private static readonly Field<TripRequest, double> StartWater = new("start_water", "Temperature of the water in tanks and pipes at the start.", new QuantityNode(Dimensions.Temperature, "°C", 0, 40) { Typical = "10 °C" }, one => one.Trip.WaterStartC) { Default = UsualWaterC };
    private static readonly Field<TripRequest, double> StartCharge = new("start_charge", "Charge of the battery at the start, as a share of what is usable.", Kinds.Share, one => one.Trip.StartChargeFraction) { Default = 1 };
    private static readonly Field<TripRequest, double> Step = new("step", "Step of the reckoning, 1 to 15 minutes.", new QuantityNode(Dimensions.Duration, "s", Trip.ShortestStepS, Trip.LongestStepS, "min") { Typical = "10 min" }, one => one.Trip.StepS) { Default = UsualStepS };
    private static readonly Field<TripRequest, TripHabits> Habits = new("habits", "How people live, where a leg does not say otherwise.", HabitTable.Whole, one => one.Trip.Habits) { IsRequired = true };
    private static readonly Field<TripRequest, IReadOnlyList<LegDraft>> Legs = new("legs", "Parts of the trip in the order of time; each begins where the one before ends.", LegKeys.List,
        one => one.Trip.Legs.Select((leg, i) => LegDraft.Of(leg, one.Air[i], one.Trip.Habits)).ToArray()) { IsRequired = true };

    internal static Map<TripRequest> Map { get; } = new("a trip file", [Format, Name, Description, Vehicle, Start, StartWarmth, StartWater, StartCharge, Step, Habits, Legs], Build);

    private static TripRequest? Build(Values<TripRequest> values)
    {
        Scope scope = values.Spot.Scope;
        IReadOnlyList<LegDraft> drafts = values.Of(Legs)!;
        string? vehicle = VehicleOf(values);
        LegWeather weathers = new(scope);
        List<Leg> legs = [];
        DateTime start = values.Of(Start);
        for (int i = 0; i < drafts.Count; i++)
        {
            Spot spot = values.SpotOf(Legs).At(i, drafts[i].Name);
            DateTime? end = EndOf(drafts[i], spot, start, i == 0 ? "the trip begins" : $"{drafts[i - 1].Name} ends");
            if (end is { } known && weathers.Of(drafts[i], spot, start, known) is { } weather)
                legs.Add(LegOf(drafts[i], start, known, weather));
            // Without its end nothing can be said of the times of the legs behind it.
            if (end is null)
                break;
            start = end.Value;
        }
        return scope.ProblemCount > 0 ? null : new TripRequest(new Trip
        {
            Name = values.Of(Name)!,
            Description = values.Of(Description)!,
            Legs = legs,
            Habits = values.Of(Habits)!,
            StepS = values.Of(Step),
            StartC = values.NumberOf(StartWarmth),
            WaterStartC = values.Of(StartWater),
            StartChargeFraction = values.Of(StartCharge),
        }, vehicle, [.. drafts.Select(draft => draft.Air)]) { VehicleAsWritten = values.Of(Vehicle) };
    }

    // The end where it can be found; a wrong begin is a problem of its own.
    private static DateTime? EndOf(LegDraft leg, Spot spot, DateTime start, string before)
    {
        if (leg.From is { } from && from != start)
            spot.At(LegKeys.From.Key).Problem(from < start
                ? $"it begins at {Moment(from)} and overlaps: {before} at {Moment(start)}; write that time, or leave from away"
                : $"it begins at {Moment(from)} and leaves a gap: {before} at {Moment(start)}; write that time, add a leg between, or leave from away");
        DateTime end = leg.Until ?? start.AddMinutes(Math.Round(leg.LastsH!.Value * 60));
        Spot at = spot.At(leg.Until is null ? LegKeys.Lasts.Key : LegKeys.Until.Key);
        if (end <= start)
            at.Problem($"it ends at {Moment(end)}, not after its begin: {before} at {Moment(start)}; write a later time");
        else if ((end - start).TotalHours > LegKeys.LongestH)
            at.Problem(string.Create(CultureInfo.InvariantCulture, $"it lasts {(end - start).TotalDays:0} days; a leg lasts at most {LegKeys.LongestH / 24} days"));
        else if (end.Year > MomentNode.LastYear)
            at.Problem($"it ends after the year {MomentNode.LastYear}; write an earlier date");
        else
            return end;
        return null;
    }

    private static Leg LegOf(LegDraft draft, DateTime start, DateTime end, Climates.Weather weather) => new()
    {
        Name = draft.Name,
        StartLocal = start,
        EndLocal = end,
        Weather = weather,
        SpeedMPerS = draft.SpeedMPerS,
        HeadingDeg = draft.Heading.Deg,
        HorizonDeg = draft.HorizonDeg,
        WindShareFraction = draft.WindShareFraction,
        Snow = draft.Snow,
        ShoreW = draft.ShoreW,
        Habits = draft.Habits?.OnLeg,
    };

    private static string? VehicleOf(Values<TripRequest> values)
    {
        if (values.Of(Vehicle) is not { } name || VehicleLibrary.Names.Contains(name, StringComparer.Ordinal))
            return values.Of(Vehicle);
        if (values.Spot.Scope.Folder is null)
            values.Problem(Vehicle, $"files can be named only in a trip that is a file itself; {Offer.Of(name, VehicleLibrary.Names, "built in are")}");
        else
            return Path.Combine(values.Spot.Scope.Folder, name);
        return null;
    }

    private static string? UnknownVehicle(string name, Scope scope) =>
        Path.HasExtension(name) || name.Contains('/', StringComparison.Ordinal) || VehicleLibrary.Names.Contains(name, StringComparer.Ordinal) ? null
            : $"there is no built-in vehicle \"{ProblemList.Shortened(name)}\"; {Offer.Of(name, VehicleLibrary.Names, "built in are")}; a file ends with .yaml";

    private static string Moment(DateTime moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
