namespace Thermal.Materials;

/// <summary>Heat, density and combustion water of a fuel.</summary>
/// <param name="Fuel">The fuel.</param>
/// <param name="NetHeatKWhPerKg">Net heat, kWh/kg; 1 for electricity by the kWh.</param>
/// <param name="DensityKgPerL">Density as a liquid, kg/L; null where it is not sold by the litre.</param>
/// <param name="WaterKgPerKg">Water made by complete burning, kg/kg: goes indoors only with an open flame.</param>
/// <param name="CarbonDioxideKgPerKg">Carbon dioxide made, kg/kg.</param>
/// <param name="UnitName">The unit it is bought in: L, kg or kWh.</param>
public sealed record FuelData(Fuel Fuel, double NetHeatKWhPerKg, double? DensityKgPerL, double WaterKgPerKg, double CarbonDioxideKgPerKg, string UnitName)
{
    private const double KgPerM3CarbonDioxide = 1.84;

    /// <summary>Figures of a fuel.</summary>
    /// <remarks>
    /// Net heats: TRADE, conversion factors and traders' tables. Water of propane and butane: CHEM, C3H8 + 5 O2 → 3 CO2 + 4 H2O
    /// and C4H10 + 6.5 O2 → 4 CO2 + 5 H2O. Diesel and petrol water taken as CH2 (from memory, they are never burnt openly indoors).
    /// Source: CHEM; TRADE.
    /// </remarks>
    public static FuelData Of(Fuel fuel) => Known[(int)fuel];

    // In the order of the enum; found once, so that a step of a trip takes no memory.
    private static readonly FuelData[] Known =
    [
        new(Fuel.Diesel, 42.84 / 3.6, 0.832, 1.28, 3.15, "L"),
        new(Fuel.Petrol, 43.6 / 3.6, 0.74, 1.28, 3.14, "L"),
        new(Fuel.Propane, 46.35 / 3.6, null, 1.634, 2.994, "kg"),
        new(Fuel.Butane, 45.74 / 3.6, null, 1.550, 3.029, "kg"),
        new(Fuel.Ethanol, 7.4, 0.789, 1.17, 1.91, "L"),
        new(Fuel.Electricity, 1, null, 0, 0, "kWh"),
    ];

    /// <summary>Net heat of the unit it is bought in, kWh.</summary>
    public double NetHeatPerUnitKWh => NetHeatKWhPerKg * (DensityKgPerL ?? 1);

    /// <summary>Water an open flame gives off, g per kWh of net heat.</summary>
    public double WaterPerKWhG => Fuel == Fuel.Electricity ? 0 : 1000 * WaterKgPerKg / NetHeatKWhPerKg;

    /// <summary>Carbon dioxide an open flame gives off, L per kWh of net heat at 20 °C.</summary>
    public double CarbonDioxidePerKWhL => Fuel == Fuel.Electricity ? 0 : 1000 * CarbonDioxideKgPerKg / NetHeatKWhPerKg / KgPerM3CarbonDioxide;
}
