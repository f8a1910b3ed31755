using Thermal.Files.Keys;
using Thermal.Materials;
using Thermal.People;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>Who lives in the vehicle and what they do there.</summary>
internal static class HabitKeys
{
    private static readonly Habits Usual = new() { SleepersCount = 2 };
    private static readonly string[] MonthNames = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    private static readonly IReadOnlyList<Field<Months, double>> MonthFields = [.. MonthNames.Select((name, i) => new Field<Months, double>(name, "Share of its nights.", Kinds.Share, months => months.Shares[i]) { IsRequired = true })];
    private static readonly Map<Months> MonthMap = new("the nights lived in", [.. MonthFields], values => new Months([.. MonthFields.Select(values.Of)]));

    private static readonly Field<Habits, int> Sleepers = new("sleepers", "People asleep in it.", new WholeNode(0, 12), habits => habits.SleepersCount) { IsRequired = true };
    private static readonly Field<Habits, double> SetPoint = new("temperature", "Wanted temperature in the living space.", new QuantityNode(Dimensions.Temperature, "°C", 0, 30), habits => habits.SetPointC) { Default = Usual.SetPointC };
    private static readonly Field<Habits, double> Night = new("night", "Length of the night.", Kinds.Hours(1, 24), habits => habits.NightH) { Default = Usual.NightH };
    private static readonly Field<Habits, double> AtHome = new("at_home", "Hours a day someone is at home, night included.", Kinds.Hours(1, 24), habits => habits.AtHomeH) { Default = Usual.AtHomeH };
    private static readonly Field<Habits, double> Meals = new("meals_per_day", "Hot meals a day.", Kinds.Number(0, 10), habits => habits.MealsPerDay) { Default = Usual.MealsPerDay };
    private static readonly Field<Habits, Bounded> Steam = new("steam_per_meal", "Steam of a meal, with lids.", Kinds.Span(Kinds.Grams(0, 3000)), habits => habits.SteamPerMealG) { Default = Usual.SteamPerMealG };
    private static readonly Field<Habits, double> Flame = new("flame_per_meal", "Heat of the open flame of a meal.", new QuantityNode(Dimensions.Energy, "kWh", 0, 5), habits => habits.FlamePerMealKWh) { Default = Usual.FlamePerMealKWh };
    private static readonly Field<Habits, Enum> Cooker = new("cooker", "What the cooker burns, or electricity.", Kinds.Words(typeof(Fuel)), habits => habits.CookerFuel ?? Fuel.Electricity) { Default = Fuel.Propane };
    private static readonly Field<Habits, double> Showers = new("showers_per_day", "Showers a day inside.", Kinds.Number(0, 12), habits => habits.ShowersPerDay) { Default = 0 };
    private static readonly Field<Habits, Bounded> ShowerVapour = new("vapour_per_shower", "Vapour a shower leaves in the air.", Kinds.Span(Kinds.Grams(0, 1000)), habits => habits.VapourPerShowerG) { Default = Usual.VapourPerShowerG };
    private static readonly Field<Habits, double> ShowerWater = new("water_per_shower", "Warm water of a shower.", Kinds.Litres(1, 100), habits => habits.WaterPerShowerL) { Default = Usual.WaterPerShowerL };
    private static readonly Field<Habits, double> Drying = new("drying_per_day", "Water given off by clothes and kit drying inside, a day.", Kinds.Grams(0, 10_000), habits => habits.DryingPerDayG) { Default = 0 };
    private static readonly Field<Habits, double> Pets = new("pets", "Vapour of pets; a dog of 20 kg gives about 17 g/h.", new QuantityNode(Dimensions.MassFlow, "g/h", 0, 500), habits => habits.PetsGPerH) { Default = 0 };
    private static readonly Field<Habits, double> Fan = new("fan_at_night", "Air drawn out by a roof fan at night.", new QuantityNode(Dimensions.VolumeFlow, "m³/h", 0, 2000), habits => habits.FanAtNightM3PerH) { Default = 0 };
    private static readonly Field<Habits, double> FanCurrent = new("fan_current", "Current of that fan at that speed, at 12 V.", new QuantityNode(Dimensions.Current, "A", 0, 20), habits => habits.FanCurrentA) { Default = 0 };
    private static readonly Field<Habits, double> Aim = new("humidity_aim", "Indoor humidity aimed at.", new QuantityNode(Dimensions.Fraction, "", 0.2, 0.9, "%"), habits => habits.HumidityAimFraction) { Default = Usual.HumidityAimFraction };
    private static readonly Field<Habits, Enum> Rule = new("humidity", "How indoor humidity is found: from the balance of vapour, fixed, or by a class of ISO 13788.", Kinds.Words(typeof(HumidityRule)), habits => habits.Humidity) { Default = HumidityRule.Balance };
    private static readonly Field<Habits, double> Fixed = new("fixed_humidity", "Only with humidity: fixed.", new QuantityNode(Dimensions.Fraction, "", 0.05, 0.95, "%"), habits => habits.FixedHumidityFraction);
    private static readonly Field<Habits, int> Class = new("humidity_class", "Only with humidity: class.", new WholeNode(1, 5), habits => habits.HumidityClass);
    private static readonly Field<Habits, Months> Nights = new("nights_lived_in", "Share of each month's nights that someone sleeps in it.", MonthMap, habits => new Months(habits.NightsLivedInFraction)) { Default = new Months(Usual.NightsLivedInFraction) };

    internal static Map<Habits> Map { get; } = new("the people",
        [Sleepers, SetPoint, Night, AtHome, Meals, Steam, Flame, Cooker, Showers, ShowerVapour, ShowerWater, Drying, Pets, Fan, FanCurrent, Aim, Rule, Fixed, Class, Nights], Build);

    private static Habits? Build(Values<Habits> values)
    {
        HumidityRule rule = (HumidityRule)values.Of(Rule)!;
        if (values.Has(Fixed) != (rule == HumidityRule.Fixed))
            values.Problem(values.Has(Fixed) ? Fixed : Rule, "humidity: fixed and fixed_humidity belong together; write both or neither");
        if (values.Has(Class) != (rule == HumidityRule.Class))
            values.Problem(values.Has(Class) ? Class : Rule, "humidity: class and humidity_class belong together; write both or neither");
        if (values.Of(AtHome) < values.Of(Night))
            values.Problem(AtHome, "at_home includes the night; write at least the hours of night");
        return new Habits
        {
            SleepersCount = values.Of(Sleepers),
            SetPointC = values.Of(SetPoint),
            NightH = values.Of(Night),
            AtHomeH = values.Of(AtHome),
            MealsPerDay = values.Of(Meals),
            SteamPerMealG = values.Of(Steam),
            FlamePerMealKWh = values.Of(Flame),
            CookerFuel = values.Of(Cooker) is Fuel fuel && fuel != Fuel.Electricity ? fuel : null,
            ShowersPerDay = values.Of(Showers),
            VapourPerShowerG = values.Of(ShowerVapour),
            WaterPerShowerL = values.Of(ShowerWater),
            DryingPerDayG = values.Of(Drying),
            PetsGPerH = values.Of(Pets),
            FanAtNightM3PerH = values.Of(Fan),
            FanCurrentA = values.Of(FanCurrent),
            HumidityAimFraction = values.Of(Aim),
            Humidity = rule,
            FixedHumidityFraction = values.NumberOf(Fixed),
            HumidityClass = values.Has(Class) ? values.Of(Class) : null,
            NightsLivedInFraction = values.Of(Nights).Shares,
        };
    }

    /// <summary>Twelve shares, equal where all twelve are.</summary>
    private sealed record Months(IReadOnlyList<double> Shares)
    {
        public bool Equals(Months? other) => other is not null && Shares.SequenceEqual(other.Shares);

        public override int GetHashCode() => Shares.Count;
    }
}
