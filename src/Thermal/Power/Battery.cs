namespace Thermal.Power;

/// <summary>The battery of the living space: how much it holds, and how warm it stays. Immutable.</summary>
public sealed record Battery
{
    /// <summary>Nominal voltage that ampere-hours are counted at, V. Source: PRACTICE, four cells of lithium iron phosphate at rest.</summary>
    public const double NominalV = 12.8;

    /// <summary>Usable capacity at 20 °C, Ah at 12.8 V, 1 to 5000.</summary>
    public required double UsableAh { get; init => field = Guard.InRange(value, 1, 5000, "Ah", nameof(UsableAh)); }
    /// <summary>What it is made of.</summary>
    public Chemistry Chemistry { get; init; } = Chemistry.Lithium;
    /// <summary>Zone it stands in; null when slung under the floor in the open.</summary>
    public string? Zone { get; init; }
    /// <summary>Insulation round it, R without films, m²·K/W, 0 to 10.</summary>
    public double InsulationM2KPerW { get; init => field = Guard.InRange(value, 0, 10, "m²·K/W", nameof(InsulationM2KPerW)); }
    /// <summary>Heating pad, W, 0 to 500: comes on when charge is offered and it is below <see cref="PadOnC"/>.</summary>
    public double PadW { get; init => field = Guard.InRange(value, 0, 500, "W", nameof(PadW)); }
    /// <summary>The pad holds it at this, °C. Source: OURS, charging is advised from +5 °C.</summary>
    public const double PadOnC = 5;
}

/// <summary>What a battery is made of.</summary>
public enum Chemistry
{
    /// <summary>Lithium iron phosphate: not charged below 0 °C.</summary>
    Lithium,
    /// <summary>Lead, wet or sealed.</summary>
    Lead,
}
