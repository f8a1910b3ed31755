using Thermal.Materials;

namespace Thermal.Heating;

/// <summary>One generic class of heater. Immutable.</summary>
public sealed record HeaterClass
{
    /// <summary>Name in files, such as diesel_air_small.</summary>
    public required string Key { get; init; }
    /// <summary>Name in sentences.</summary>
    public required string Name { get; init; }
    /// <summary>What it burns.</summary>
    public required Fuel Fuel { get; init; }
    /// <summary>Lowest steady heat output at sea level, W.</summary>
    public required double LowestW { get; init; }
    /// <summary>Highest heat output at sea level, W.</summary>
    public required double HighestW { get; init; }
    /// <summary>Heat to the cabin over net heat of the fuel, fraction.</summary>
    public required Bounded EfficiencyFraction { get; init; }
    /// <summary>Electric power at the lowest output, W.</summary>
    public required Bounded ElectricLowestW { get; init; }
    /// <summary>Electric power at the highest output, W.</summary>
    public required Bounded ElectricHighestW { get; init; }
    /// <summary>Electric energy of one start and stop, Wh.</summary>
    public required Bounded StartWh { get; init; }
    /// <summary>True where it also heats water.</summary>
    public bool HeatsWater { get; init; }
    /// <summary>True where output falls with air pressure.</summary>
    public bool BurnsAir => Fuel != Fuel.Electricity;
}
