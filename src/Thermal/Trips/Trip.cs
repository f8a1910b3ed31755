namespace Thermal.Trips;

/// <summary>A journey with a vehicle: legs one after another, and how people live on them. Immutable.</summary>
public sealed record Trip
{
    /// <summary>Shortest and longest step of the reckoning, s: one and fifteen minutes; limits chosen by us.</summary>
    public const double ShortestStepS = 60, LongestStepS = 900;

    /// <summary>Name.</summary>
    public required string Name { get; init; }
    /// <summary>One or two sentences of what it is.</summary>
    public string Description { get; init; } = "";
    /// <summary>Legs in the order of time, 1 to 200; each begins where the one before ends.</summary>
    /// <exception cref="ArgumentException">None, too many, a gap or an overlap.</exception>
    public required IReadOnlyList<Leg> Legs { get; init => field = InOrder(value); }
    /// <summary>How people live, where a leg does not say otherwise.</summary>
    public required TripHabits Habits { get; init; }
    /// <summary>Step of the reckoning, s, 60 to 900.</summary>
    public double StepS { get; init => field = Guard.InRange(value, ShortestStepS, LongestStepS, "s", nameof(StepS)); } = 600;
    /// <summary>Temperature of everything on board at the start, °C, −40 to 40; null takes that outside.</summary>
    public double? StartC { get; init => field = value is { } start ? Guard.InRange(start, -40, 40, "°C", nameof(StartC)) : null; }
    /// <summary>Water in tanks and pipes at the start, °C, 0 to 40.</summary>
    public double WaterStartC { get; init => field = Guard.InRange(value, 0, 40, "°C", nameof(WaterStartC)); } = 10;
    /// <summary>Charge of the battery at the start, fraction of usable, 0 to 1.</summary>
    public double StartChargeFraction { get; init => field = Guard.InRange(value, 0, 1, "(fraction)", nameof(StartChargeFraction)); } = 1;

    /// <summary>Start of the first leg, local standard time.</summary>
    public DateTime StartLocal => Legs[0].StartLocal;
    /// <summary>End of the last leg, local standard time.</summary>
    public DateTime EndLocal => Legs[^1].EndLocal;

    private static IReadOnlyList<Leg> InOrder(IReadOnlyList<Leg> legs)
    {
        if (legs.Count is < 1 or > 200) throw new ArgumentException("A trip has 1 to 200 legs.", nameof(legs));
        for (int i = 1; i < legs.Count; i++)
            if (legs[i].StartLocal != legs[i - 1].EndLocal)
                throw new ArgumentException($"{legs[i].Name} does not begin where {legs[i - 1].Name} ends.", nameof(legs));
        return legs;
    }
}
