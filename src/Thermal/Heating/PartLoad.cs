namespace Thermal.Heating;

/// <summary>What a heater does to give a mean heat: share of output, starts, electric power.</summary>
/// <param name="OutputFraction">Mean heat over highest output, fraction; above 1 it falls short.</param>
/// <param name="StartsPerH">Starts an hour; 0 when it runs through.</param>
/// <param name="ElectricW">Mean electric power, starts included, W.</param>
public readonly record struct PartLoad(double OutputFraction, double StartsPerH, double ElectricW)
{
    /// <summary>Half the width of the thermostat's band, K. Source: OURS.</summary>
    public const double BandK = 1;

    /// <summary>Finds it.</summary>
    /// <param name="heater">Its class.</param>
    /// <param name="lowestW">Lowest output here, W.</param>
    /// <param name="highestW">Highest output here, W.</param>
    /// <param name="heatW">Mean heat wanted, W, 0 or more.</param>
    /// <param name="quickJPerK">Heat store that follows the thermostat, J/K.</param>
    /// <param name="extreme">Which end of the electric spans.</param>
    /// <remarks>
    /// Between lowest and highest output electric power is linear in heat. Below the lowest it runs at it part of the time and starts
    /// once a cycle: C·2·band·(1/(P_low − Q) + 1/Q). Source: OURS, thermostat of ± 1 K on a store of one node.
    /// </remarks>
    public static PartLoad Of(HeaterClass heater, double lowestW, double highestW, double heatW, double quickJPerK, Materials.Extreme extreme = Materials.Extreme.Usual)
    {
        Guard.InRange(heatW, 0, 1e6, "W");
        double low = heater.ElectricLowestW.At(extreme), high = heater.ElectricHighestW.At(extreme);
        if (heatW >= lowestW)
        {
            double share = highestW > lowestW ? (Math.Min(heatW, highestW) - lowestW) / (highestW - lowestW) : 1;
            return new(heatW / highestW, 0, low + share * (high - low));
        }
        if (heatW == 0) return new(0, 0, 0);
        double cycleS = quickJPerK * 2 * BandK * (1 / (lowestW - heatW) + 1 / heatW);
        double starts = 3600 / cycleS;
        return new(heatW / highestW, starts, low * heatW / lowestW + starts * heater.StartWh.At(extreme));
    }
}
