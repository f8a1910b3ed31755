using Thermal.Air;

namespace Thermal.Moisture;

/// <summary>Water that room air leaves on the cold skin when it finds its way behind the lining.</summary>
public static class AirBehindLining
{
    /// <summary>Water that settles on the skin: everything the passing air can no longer hold at the skin's temperature.</summary>
    /// <param name="airFlowM3PerM2S">Room air that reaches the skin, m³ of room air per m² of surface and second, 0 to 0.01 (36 m³/m²h); a tenth of a cubic metre an hour is 2.8e-5.</param>
    /// <param name="insideC">Room air, °C, -60 to 100.</param>
    /// <param name="insidePa">Vapour pressure of the room, Pa, 0 to 20 000.</param>
    /// <param name="skinC">Inner side of the skin, °C, -60 to 100; frost below 0 °C.</param>
    /// <param name="airPressurePa">Air pressure, Pa, 30 000 to 120 000.</param>
    /// <returns>Water, kg/(m²·s), zero or more. An upper bound: all of it is taken to stay. The same water leaves the room.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>
    /// Dry-air flow × (w_room − the smaller of w_room and w_saturated at the skin). ISO-13788 excludes air movement; this stands beside it.
    /// Source: OURS, mass balance of the passing air, with humidity ratios of ASHRAE-F, chapter 1, eq. 20.
    /// </remarks>
    public static double WettingKgPerM2S(double airFlowM3PerM2S, double insideC, double insidePa, double skinC, double airPressurePa) =>
        Math.Max(0, ExchangeKgPerM2S(airFlowM3PerM2S, insideC, insidePa, skinC, airPressurePa));

    /// <summary>The same with its sign: below zero it is what the passing air can carry away while the skin is wet.</summary>
    /// <param name="airFlowM3PerM2S">Air that reaches the skin, m³/(m²·s), 0 to 0.01.</param>
    /// <param name="insideC">That air, °C, -60 to 100.</param>
    /// <param name="insidePa">Its vapour pressure, Pa, 0 to 20 000.</param>
    /// <param name="skinC">Inner side of the skin, °C, -60 to 100.</param>
    /// <param name="airPressurePa">Air pressure, Pa, 30 000 to 120 000.</param>
    /// <returns>Water, kg/(m²·s): positive settles, negative can leave.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: OURS, mass balance of the passing air, as above: it leaves saturated at the skin's temperature.</remarks>
    public static double ExchangeKgPerM2S(double airFlowM3PerM2S, double insideC, double insidePa, double skinC, double airPressurePa)
    {
        double dryAirKgPerM2S = Guard.InRange(airFlowM3PerM2S, 0, 0.01, "m³/(m²·s)")
            * MoistAir.DryAirDensityKgPerM3(insideC, Guard.InRange(insidePa, 0, 20_000, "Pa"), airPressurePa);
        return dryAirKgPerM2S * (MoistAir.HumidityRatioKgPerKg(insidePa, airPressurePa)
            - MoistAir.HumidityRatioKgPerKg(SaturationPressure.PairPa(skinC), airPressurePa));
    }
}
