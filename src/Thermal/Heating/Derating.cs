using Thermal.Air;

namespace Thermal.Heating;

/// <summary>Output left to a burning heater in thin air.</summary>
public static class Derating
{
    /// <summary>Share of sea-level output: as air pressure.</summary>
    /// <param name="heater">Its class; electric heat is not derated.</param>
    /// <param name="altitudeM">Height above the sea, m.</param>
    /// <returns>Fraction.</returns>
    /// <remarks>Source: OURS: no measured curve was found; output follows air pressure, a cautious stand-in. Fuel for the same heat stays the same.</remarks>
    public static double Factor(HeaterClass heater, double altitudeM) =>
        heater.BurnsAir ? Atmosphere.PressurePa(altitudeM) / Atmosphere.SeaLevelPa : 1;
}
