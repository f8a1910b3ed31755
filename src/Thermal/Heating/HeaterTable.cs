using Thermal.Materials;

namespace Thermal.Heating;

/// <summary>Generic classes of heater, small to large; no maker's figure.</summary>
public static class HeaterTable
{
    private static readonly Bounded DieselEfficiency = new(0.75, 0.80, 0.86, "TRADE", "efficiency to the cabin from a stage table");
    private static readonly Bounded GasEfficiency = new(0.85, 0.88, 0.92, "TRADE", "on the net heat value, from memory");
    private static readonly Bounded DieselStartWh = new(10, 15, 20, "TRADE", "start and stop of 1 to 1.5 Ah measured on a budget heater");

    /// <summary>All classes.</summary>
    public static IReadOnlyList<HeaterClass> All { get; } =
    [
        Air("diesel_air_small", "small diesel air heater, 2 kW", Fuel.Diesel, 850, 2000, Watts(8, 10, 14), Watts(22, 28, 34), DieselEfficiency, DieselStartWh),
        Air("diesel_air_medium", "medium diesel air heater, 4 kW", Fuel.Diesel, 1100, 4000, Watts(7, 10, 15), Watts(40, 47, 55), DieselEfficiency, DieselStartWh),
        Air("diesel_air_large", "large diesel air heater, 5 kW", Fuel.Diesel, 1450, 5000, Watts(5, 10, 24), Watts(40, 50, 60), DieselEfficiency, DieselStartWh),
        Air("gas_air_small", "small gas air heater, 1.9 kW", Fuel.Propane, 900, 1900, Watts(12, 18, 23), Watts(20, 23, 28), GasEfficiency, Watts(0.3, 0.5, 1)),
        Air("gas_air_water", "gas heater for air and water, 4 kW", Fuel.Propane, 1500, 4000, Watts(10, 13, 16), Watts(15, 20, 60), GasEfficiency, Watts(0.3, 0.5, 1)) with { HeatsWater = true },
        Air("diesel_air_water", "diesel heater for air and water, 6 kW", Fuel.Diesel, 2000, 6000, Watts(12, 15, 20), Watts(40, 60, 80), DieselEfficiency, DieselStartWh) with { HeatsWater = true },
        Air("electric_230v", "electric heater on 230 V, 2 kW", Fuel.Electricity, 0, 2000, Watts(0, 0, 0), Watts(0, 0, 0), new(1, 1, 1, "TRADE", "all of it becomes heat in the room"), Watts(0, 0, 0)),
    ];

    /// <summary>The class of this key, or null where there is none.</summary>
    /// <param name="key">A key such as diesel_air_small.</param>
    public static HeaterClass? Find(string key) => All.FirstOrDefault(heater => heater.Key == key);

    private static HeaterClass Air(string key, string name, Fuel fuel, double lowestW, double highestW, Bounded electricLowestW, Bounded electricHighestW, Bounded efficiency, Bounded startWh) => new()
    {
        Key = key,
        Name = name,
        Fuel = fuel,
        LowestW = lowestW,
        HighestW = highestW,
        EfficiencyFraction = efficiency,
        ElectricLowestW = electricLowestW,
        ElectricHighestW = electricHighestW,
        StartWh = startWh,
    };

    private static Bounded Watts(double low, double usual, double high) => new(low, usual, high, "TRADE", "classes of heaters, partly from memory");
}
