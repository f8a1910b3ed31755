using Thermal.Materials;

namespace Thermal.People;

/// <summary>Who lives in the vehicle, and what they do that makes heat and vapour. Immutable.</summary>
public sealed record Habits
{
    /// <summary>People asleep in it, 0 to 12.</summary>
    public required int SleepersCount { get; init => field = (int)Guard.InRange(value, 0, 12, "people", nameof(SleepersCount)); }
    /// <summary>Wanted temperature in the living space, °C, 0 to 30.</summary>
    public double SetPointC { get; init => field = Guard.InRange(value, 0, 30, "°C", nameof(SetPointC)); } = 18;
    /// <summary>Length of the night, hours, 1 to 24.</summary>
    public double NightH { get; init => field = Guard.InRange(value, 1, 24, "h", nameof(NightH)); } = 10;
    /// <summary>Hours a day someone is at home, night included, 1 to 24: evening vapour is averaged over them.</summary>
    public double AtHomeH { get; init => field = Guard.InRange(value, 1, 24, "h", nameof(AtHomeH)); } = 14;
    /// <summary>Hot meals a day, 0 to 10.</summary>
    public double MealsPerDay { get; init => field = Guard.InRange(value, 0, 10, "meals", nameof(MealsPerDay)); } = 2;
    /// <summary>Steam a meal, with lids, g, 0 to 3000.</summary>
    public Bounded SteamPerMealG { get; init => field = Guard.InRange(value, 0, 3000, "g", nameof(SteamPerMealG)); } = new(80, 150, 600, "TRADE", "cooking in a van, from memory");
    /// <summary>Heat of the open flame a meal, kWh, 0 to 5.</summary>
    public double FlamePerMealKWh { get; init => field = Guard.InRange(value, 0, 5, "kWh", nameof(FlamePerMealKWh)); } = 0.5;
    /// <summary>What the cooker burns; null for an electric one.</summary>
    public Fuel? CookerFuel { get; init; } = Fuel.Propane;
    /// <summary>Showers a day inside, 0 to 12.</summary>
    public double ShowersPerDay { get; init => field = Guard.InRange(value, 0, 12, "showers", nameof(ShowersPerDay)); }
    /// <summary>Vapour a shower leaves in the air, g, 0 to 1000.</summary>
    public Bounded VapourPerShowerG { get; init => field = Guard.InRange(value, 0, 1000, "g", nameof(VapourPerShowerG)); } = new(150, 220, 400, "TRADE", "shower of five minutes");
    /// <summary>Warm water a shower, L, 1 to 100.</summary>
    public double WaterPerShowerL { get; init => field = Guard.InRange(value, 1, 100, "L", nameof(WaterPerShowerL)); } = 12;
    /// <summary>Water given off by drying clothes and kit inside a day, g, 0 to 10 000.</summary>
    public double DryingPerDayG { get; init => field = Guard.InRange(value, 0, 10_000, "g", nameof(DryingPerDayG)); }
    /// <summary>Vapour of pets, g/h, 0 to 500.</summary>
    public double PetsGPerH { get; init => field = Guard.InRange(value, 0, 500, "g/h", nameof(PetsGPerH)); }
    /// <summary>Air drawn out by a roof fan at night, m³/h, 0 to 2000.</summary>
    public double FanAtNightM3PerH { get; init => field = Guard.InRange(value, 0, 2000, "m³/h", nameof(FanAtNightM3PerH)); }
    /// <summary>Current of that fan at that speed, A at 12 V, 0 to 20.</summary>
    public double FanCurrentA { get; init => field = Guard.InRange(value, 0, 20, "A", nameof(FanCurrentA)); }
    /// <summary>Indoor humidity aimed at, fraction.</summary>
    public double HumidityAimFraction { get; init => field = Guard.InRange(value, 0.2, 0.9, "(fraction)", nameof(HumidityAimFraction)); } = 0.60;
    /// <summary>How indoor humidity is found.</summary>
    public HumidityRule Humidity { get; init; } = HumidityRule.Balance;
    /// <summary>The fixed humidity, fraction, 0.05 to 0.95; only for <see cref="HumidityRule.Fixed"/>.</summary>
    public double? FixedHumidityFraction { get; init => field = value is { } held ? Guard.InRange(held, 0.05, 0.95, "(fraction)", nameof(FixedHumidityFraction)) : null; }
    /// <summary>The class 1 to 5; only for <see cref="HumidityRule.Class"/>.</summary>
    public int? HumidityClass { get; init => field = value is { } steps ? (int)Guard.InRange(steps, 1, 5, "(class)", nameof(HumidityClass)) : null; }
    /// <summary>Share of each month's nights lived in, January first, 12 fractions.</summary>
    public IReadOnlyList<double> NightsLivedInFraction { get; init => field = Twelve(value); } = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1];

    private static IReadOnlyList<double> Twelve(IReadOnlyList<double> shares)
    {
        if (shares.Count != 12) throw new ArgumentException("NightsLivedInFraction takes a share for each of the twelve months.", nameof(shares));
        foreach (double share in shares) Guard.InRange(share, 0, 1, "(fraction)", nameof(NightsLivedInFraction));
        return shares;
    }
}

/// <summary>How indoor humidity is found.</summary>
public enum HumidityRule
{
    /// <summary>From people, cooking, air exchange and cold surfaces.</summary>
    Balance,
    /// <summary>Held at a stated relative humidity.</summary>
    Fixed,
    /// <summary>A humidity class of ISO 13788.</summary>
    Class,
}
