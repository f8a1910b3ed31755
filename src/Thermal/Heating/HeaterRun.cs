using Thermal.Materials;

namespace Thermal.Heating;

/// <summary>A heater through time: fuel, current and starts for the heat it gives, step by step.</summary>
/// <remarks>
/// Heat is the mean of a step. Below the lowest output it cycles by <see cref="PartLoad"/>, so starts are counted in fractions; going from off to
/// on is one start more, with its energy. An air heater without current gives nothing: whoever finds its heat must ask for none while the battery is flat.
/// An electric heater's heat is its fuel, kWh from shore, not a draw on the battery.
/// </remarks>
internal sealed class HeaterRun
{
    private readonly HeaterClass heater;
    private readonly double quickJPerK, fuelPerKWh;
    private readonly Extreme extreme;

    /// <param name="heater">Its class.</param>
    /// <param name="quickJPerK">Heat store that follows the thermostat, J/K, over 0.</param>
    /// <param name="extreme">Which end of the electric spans.</param>
    internal HeaterRun(HeaterClass heater, double quickJPerK, Extreme extreme = Extreme.Usual)
    {
        (this.heater, this.quickJPerK, this.extreme) = (heater, Guard.InRange(quickJPerK, 1, 1e9, "J/K"), extreme);
        fuelPerKWh = HeaterFuel.FuelAmount(heater, 1);
    }

    /// <summary>True where it gave heat in the last step.</summary>
    internal bool IsOn { get; private set; }
    /// <summary>Fuel of the last step, in its unit.</summary>
    internal double FuelAmount { get; private set; }
    /// <summary>Electric energy of the last step, starts included, Wh.</summary>
    internal double ElectricWh { get; private set; }
    /// <summary>Starts in the last step, counted in fractions while it cycles.</summary>
    internal double StartsCount { get; private set; }
    /// <summary>Fuel since the beginning, in its unit.</summary>
    internal double AllFuelAmount { get; private set; }
    /// <summary>Starts since the beginning.</summary>
    internal double AllStartsCount { get; private set; }

    /// <summary>Goes through one step.</summary>
    /// <param name="stepS">Length, s.</param>
    /// <param name="heatW">Mean heat it gives, W, 0 to the highest output.</param>
    /// <param name="lowestW">Lowest output here, thin air counted, W.</param>
    /// <param name="highestW">Highest output here, W.</param>
    internal void Step(double stepS, double heatW, double lowestW, double highestW)
    {
        double hours = stepS / 3600;
        bool isStarting = Guard.InRange(heatW, 0, 1e6, "W") > 0 && !IsOn;
        IsOn = heatW > 0;
        // Asked of a heater that is off, part load would tell the current of its lowest output where that is nought.
        PartLoad load = IsOn ? PartLoad.Of(heater, lowestW, highestW, heatW, quickJPerK, extreme) : default;
        FuelAmount = fuelPerKWh * heatW * hours / 1000;
        ElectricWh = load.ElectricW * hours + (isStarting ? heater.StartWh.At(extreme) : 0);
        StartsCount = load.StartsPerH * hours + (isStarting ? 1 : 0);
        AllFuelAmount += FuelAmount;
        AllStartsCount += StartsCount;
    }
}
