using Thermal.Files.Keys;
using Thermal.Trips;
using Thermal.Words.Units;

namespace Thermal.Files.TripKeys;

/// <summary>A temperature that is wanted; null for the heater off.</summary>
internal sealed record Wanted(double? C);

/// <summary>How people live on a trip: all of it, or what differs on one leg.</summary>
/// <param name="isChange">True for the keys of a leg: each may be left out and is then as on the whole trip.</param>
internal sealed class HabitTable(bool isChange)
{
    private static readonly TripHabits Usual = new() { PeopleCount = 0 };
    private static readonly ClockNode Clock = new();
    private static readonly ListOf<double> Times = new("time", Clock, 0, 12);
    private static readonly WordOrNode<Wanted> Warmth = new(new(["off"], [new(null)]),
        new Wrapped<Wanted>(new QuantityNode(Dimensions.Temperature, "°C", 0, 30) { Typical = "18 °C" }, c => new(c), wanted => wanted.C!.Value));

    private readonly Field<TripHabits, int> people = new("people", "People on board; 0 for an empty vehicle.", new WholeNode(0, 12), one => one.PeopleCount) { IsRequired = !isChange };
    private readonly Field<TripHabits, double> homeFrom = Key("home_from", "When people come in; the same as home_to for all day.", Clock, one => one.HomeFromH, Usual.HomeFromH, isChange);
    private readonly Field<TripHabits, double> homeTo = Key("home_to", "When they leave.", Clock, one => one.HomeToH, Usual.HomeToH, isChange);
    private readonly Field<TripHabits, double> bedtime = Key("bedtime", "When they go to bed.", Clock, one => one.BedtimeH, Usual.BedtimeH, isChange);
    private readonly Field<TripHabits, double> rising = Key("rising", "When they get up.", Clock, one => one.RisingH, Usual.RisingH, isChange);
    private readonly Field<TripHabits, Wanted> day = Key("day", "Wanted temperature with people awake in it, or off.", Warmth, one => new Wanted(one.DayC), new(Usual.DayC), isChange);
    private readonly Field<TripHabits, Wanted> night = Key("night", "Wanted temperature from bedtime to rising, or off.", Warmth, one => new Wanted(one.NightC), new(Usual.NightC), isChange);
    private readonly Field<TripHabits, Wanted> away = Key("away", "Wanted temperature while nobody is in, or off.", Warmth, one => new Wanted(one.AwayC), new(Usual.AwayC), isChange);
    private readonly Field<TripHabits, Wanted> driving = Key("while_driving", "Wanted temperature while driving, or off.", Warmth, one => new Wanted(one.DrivingC), new(Usual.DrivingC), isChange);
    private readonly Field<TripHabits, double> engineHeat = Key("engine_heat", "Heat the engine gives the cab while driving.", new QuantityNode(Dimensions.Power, "W", 0, 10_000), one => one.EngineHeatW, Usual.EngineHeatW, isChange);
    private readonly Field<TripHabits, Enum> covers = Key("covers", "When covers are on the windows and the curtain is drawn.", Kinds.Words(typeof(CoverUse)), one => one.Covers, Usual.Covers, isChange);
    private readonly Field<TripHabits, IReadOnlyList<double>> meals = Key("meals_at", "Times of hot meals.", Times, one => one.MealsAtH, Usual.MealsAtH, isChange);
    private readonly Field<TripHabits, IReadOnlyList<double>> showers = Key("showers_at", "Times of showers inside.", Times, one => one.ShowersAtH, Usual.ShowersAtH, isChange);
    private readonly Field<TripHabits, double> drying = Key("drying_per_day", "Water given off by clothes and kit drying inside, a day.", Kinds.Grams(0, 10_000), one => one.DryingPerDayG, Usual.DryingPerDayG, isChange);
    private readonly Field<TripHabits, double> dryingFrom = Key("drying_from", "When they are hung up.", Clock, one => one.DryingFromH, Usual.DryingFromH, isChange);
    private readonly Field<TripHabits, Enum> fan = Key("fan", "When the roof fan runs; above_humidity with fan_above.", Kinds.Words(typeof(FanUse)), one => one.Fan, Usual.Fan, isChange);
    private readonly Field<TripHabits, double> fanAbove = Key("fan_above", "Only with fan: above_humidity: the indoor humidity from which it runs.", new QuantityNode(Dimensions.Fraction, "", 0.2, 0.95, "%"), one => one.Fan == FanUse.AboveHumidity ? one.FanAboveFraction : null, Usual.FanAboveFraction, isChange);
    private readonly Field<TripHabits, double> hot = Key("hot_above", "Warmth above which an hour counts as too hot.", new QuantityNode(Dimensions.Temperature, "°C", 20, 40) { Typical = "26 °C" }, one => one.HotC, Usual.HotC, isChange);
    private readonly Field<TripHabits, bool> opens = Key("windows_open_when_hot", "True where windows and roof light are opened in warm weather.", new FlagNode(), one => one.OpensWindowsWhenHot, Usual.OpensWindowsWhenHot, isChange);

    /// <summary>The habits of a whole trip.</summary>
    internal static Map<TripHabits> Whole { get; } = new HabitTable(false).Map("the block of habits");

    /// <summary>What differs on a leg; read after the habits of the whole trip.</summary>
    internal static Map<TripHabits> Change { get; } = new HabitTable(true).Map("the block of habits of a leg");

    private Map<TripHabits> Map(string what) => new(what,
        [people, homeFrom, homeTo, bedtime, rising, day, night, away, driving, engineHeat, covers, meals, showers, drying, dryingFrom, fan, fanAbove, hot, opens], Build);

    private static Field<TripHabits, T> Key<T>(string key, string words, Node<T> node, Func<TripHabits, object?> from, T usual, bool isChange) =>
        isChange ? new(key, words, node, from) : new(key, words, node, from) { Default = usual };

    private TripHabits? Build(Values<TripHabits> values)
    {
        // Without habits of the whole trip there is a problem already, and what is built here goes nowhere.
        TripHabits habits = Over(values, isChange ? values.Spot.Scope.Habits ?? Usual : Usual);
        if (values.Has(fanAbove) && habits.Fan != FanUse.AboveHumidity)
            values.Problem(fanAbove, "fan_above belongs to fan: above_humidity; write that too, or take fan_above away");
        if (habits.BedtimeH % 24 == habits.RisingH % 24)
            values.Problem(values.Has(rising) ? rising : bedtime, "bedtime and rising are the same; write when the night begins and when it ends");
        if (!isChange)
            values.Spot.Scope.Habits = habits;
        return habits;
    }

    private TripHabits Over(Values<TripHabits> values, TripHabits usual)
    {
        return new()
        {
            PeopleCount = Of(people, usual.PeopleCount),
            HomeFromH = Of(homeFrom, usual.HomeFromH),
            HomeToH = Of(homeTo, usual.HomeToH),
            BedtimeH = Of(bedtime, usual.BedtimeH),
            RisingH = Of(rising, usual.RisingH),
            DayC = Of(day, new(usual.DayC)).C,
            NightC = Of(night, new(usual.NightC)).C,
            AwayC = Of(away, new(usual.AwayC)).C,
            DrivingC = Of(driving, new(usual.DrivingC)).C,
            EngineHeatW = Of(engineHeat, usual.EngineHeatW),
            Covers = (CoverUse)Of(covers, usual.Covers),
            MealsAtH = Of(meals, usual.MealsAtH),
            ShowersAtH = Of(showers, usual.ShowersAtH),
            DryingPerDayG = Of(drying, usual.DryingPerDayG),
            DryingFromH = Of(dryingFrom, usual.DryingFromH),
            Fan = (FanUse)Of(fan, usual.Fan),
            FanAboveFraction = Of(fanAbove, usual.FanAboveFraction),
            HotC = Of(hot, usual.HotC),
            OpensWindowsWhenHot = Of(opens, usual.OpensWindowsWhenHot),
        };

        T Of<T>(Field<TripHabits, T> field, T otherwise) => values.Has(field) ? values.Of(field) : otherwise;
    }
}
