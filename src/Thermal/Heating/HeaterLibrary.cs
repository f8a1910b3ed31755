using Thermal.Materials;

namespace Thermal.Heating;

/// <summary>Generic classes of heater. No maker's data sheet was at hand for the larger ones: figures carry their spans.</summary>
public static class HeaterLibrary
{
    private static readonly Bounded Diesel = new(0.75, 0.80, 0.86, "TRADE", "efficiency to the cabin from the stage table");
    private static readonly Bounded Gas = new(0.85, 0.88, 0.92, "PRACTICE", "on the net heat value, from memory");
    private static readonly Bounded Whole = new(1, 1, 1, "OURS", "all current becomes heat, by definition");
    private static readonly Bounded None = new(0, 0, 0, "OURS", "no current of its own beside its heat");

    /// <summary>All classes, small to large within a fuel.</summary>
    public static IReadOnlyList<HeaterClass> All { get; } =
    [
        new() { Key = "diesel_air_small", Name = "small diesel air heater (2 kW)", Fuel = Fuel.Diesel, LowestW = 850, HighestW = 2000, EfficiencyFraction = Diesel,
            ElectricLowestW = new(8, 10, 14, "TRADE", "2 kW class"), ElectricHighestW = new(22, 28, 34, "TRADE", "2 kW class"), StartWh = new(11, 15, 20, "PRACTICE", "start and stop 1 to 1.5 Ah measured") },
        new() { Key = "diesel_air_medium", Name = "medium diesel air heater (4 kW)", Fuel = Fuel.Diesel, LowestW = 1100, HighestW = 4000, EfficiencyFraction = Diesel,
            ElectricLowestW = new(7, 11, 15, "TRADE", "4 kW class, from memory"), ElectricHighestW = new(40, 48, 55, "TRADE", "4 kW class, from memory"), StartWh = new(11, 16, 22, "PRACTICE", "start and stop 1 to 1.5 Ah measured") },
        new() { Key = "diesel_air_large", Name = "large diesel air heater (5 kW)", Fuel = Fuel.Diesel, LowestW = 1450, HighestW = 5000, EfficiencyFraction = Diesel,
            ElectricLowestW = new(6, 12, 20, "PRACTICE", "5 kW class"), ElectricHighestW = new(40, 60, 85, "PRACTICE", "5 kW class, from memory"), StartWh = new(13, 18, 25, "PRACTICE", "start and stop measured on one unit") },
        new() { Key = "gas_air_small", Name = "small gas air heater, room-sealed (2 kW)", Fuel = Fuel.Propane, LowestW = 1200, HighestW = 1900, EfficiencyFraction = Gas,
            ElectricLowestW = new(10, 15, 23, "TRADE", "1.9 kW class, low stage from memory"), ElectricHighestW = new(18, 23, 26, "TRADE", "1.9 A at 12 V"), StartWh = new(0.5, 1, 2, "PRACTICE", "spark ignition, from memory") },
        new() { Key = "gas_air_and_water", Name = "gas air and water heater (4 kW)", Fuel = Fuel.Propane, LowestW = 2000, HighestW = 4000, EfficiencyFraction = Gas, HeatsWater = true,
            ElectricLowestW = new(10, 14, 20, "TRADE", "combined class, from memory"), ElectricHighestW = new(25, 45, 70, "TRADE", "combined class, from memory"), StartWh = new(0.5, 1, 2, "PRACTICE", "spark ignition, from memory") },
        new() { Key = "diesel_air_and_water", Name = "diesel air and water heater (6 kW)", Fuel = Fuel.Diesel, LowestW = 2000, HighestW = 6000, EfficiencyFraction = Diesel, HeatsWater = true,
            ElectricLowestW = new(12, 15, 22, "TRADE", "combined class, from memory"), ElectricHighestW = new(40, 60, 80, "TRADE", "combined class, from memory"), StartWh = new(15, 20, 30, "PRACTICE", "from memory") },
        new() { Key = "electric_1kw", Name = "electric fan heater on shore power (1 kW)", Fuel = Fuel.Electricity, LowestW = 0, HighestW = 1000, EfficiencyFraction = Whole,
            ElectricLowestW = None, ElectricHighestW = None, StartWh = None },
        new() { Key = "electric_2kw", Name = "electric fan heater on shore power (2 kW)", Fuel = Fuel.Electricity, LowestW = 0, HighestW = 2000, EfficiencyFraction = Whole,
            ElectricLowestW = None, ElectricHighestW = None, StartWh = None },
    ];

    /// <summary>The class with this key; null when there is none.</summary>
    public static HeaterClass? Find(string key) => All.FirstOrDefault(heater => heater.Key == key);
}
