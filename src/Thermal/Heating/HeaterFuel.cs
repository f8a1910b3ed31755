using Thermal.Materials;

namespace Thermal.Heating;

/// <summary>Fuel a heater burns for its heat.</summary>
public static class HeaterFuel
{
    /// <summary>Fuel for an amount of heat.</summary>
    /// <param name="heater">Its class.</param>
    /// <param name="heatKWh">Heat to the cabin or the water, kWh, 0 to 1e6.</param>
    /// <param name="efficiency">Which end of its efficiency; the lowest burns most.</param>
    /// <returns>In the unit it is bought in: L, kg or kWh.</returns>
    /// <remarks>Source: OURS, heat over efficiency and net heat; thin air lowers the output and not the efficiency.</remarks>
    public static double FuelAmount(HeaterClass heater, double heatKWh, Extreme efficiency = Extreme.Usual) =>
        Guard.InRange(heatKWh, 0, 1e6, "kWh") / heater.EfficiencyFraction.At(efficiency) / FuelData.Of(heater.Fuel).NetHeatPerUnitKWh;
}
