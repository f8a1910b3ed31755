using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.People;
using Thermal.Power;
using Thermal.Ventilation;
using Thermal.Water;

namespace Thermal.Assessments;

/// <summary>What an assessment asks about: a vehicle with its heater, its tanks, its people and where it stands. Immutable.</summary>
public sealed record Case
{
    /// <summary>The vehicle.</summary>
    public required Vehicle Vehicle { get; init; }
    /// <summary>Its people.</summary>
    public required Habits Habits { get; init; }
    /// <summary>The heater fitted or planned.</summary>
    public required HeaterClass Heater { get; init; }
    /// <summary>True where the heater takes its air from outside instead of from the room.</summary>
    public bool HeaterOnFreshAir { get; init; }
    /// <summary>Time in which the cold vehicle must reach the wanted temperature, h, 0.25 to 24.</summary>
    public double WarmUpH { get; init => field = Guard.InRange(value, 0.25, 24, "h", nameof(WarmUpH)); } = 2;
    /// <summary>Battery, charging and loads; null where not said.</summary>
    public BoardPower? Power { get; init; }
    /// <summary>Usable battery capacity, Ah at 12.8 V; null where not said.</summary>
    public double? BatteryAh => Power?.Battery.UsableAh;
    /// <summary>A fan in the roof; null for none.</summary>
    public RoofFan? Fan { get; init; }
    /// <summary>Water tanks.</summary>
    public IReadOnlyList<Tank> Tanks { get; init; } = [];
    /// <summary>Pipes with standing water.</summary>
    public IReadOnlyList<Pipe> Pipes { get; init; } = [];
    /// <summary>The place with its months; null where only temperatures were given: then there is no year inside the build-ups.</summary>
    public Place? Place { get; init; }
    /// <summary>The cold night to survive.</summary>
    public required NightConditions ColdNight { get; init; }
    /// <summary>The mild damp night.</summary>
    public required NightConditions MildNight { get; init; }
    /// <summary>Materials the person added in the file.</summary>
    public IReadOnlyList<Material> OwnMaterials { get; init; } = [];
}
