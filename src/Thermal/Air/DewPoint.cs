namespace Thermal.Air;

/// <summary>The temperature at which air of a given vapour pressure begins to wet or frost a surface.</summary>
public static class DewPoint
{
    /// <summary>Lowest vapour pressure with a dew point in range, Pa: saturation over ice at -60 °C.</summary>
    public static readonly double LowestPa = SaturationPressure.OverIcePa(SaturationPressure.LowestC);

    /// <summary>Highest vapour pressure with a dew point in range, Pa: saturation over water at 100 °C.</summary>
    public static readonly double HighestPa = SaturationPressure.OverWaterPa(SaturationPressure.HighestC);

    // Saturation over water at -60 °C: the water curve lies above the ice curve below 0 °C.
    private static readonly double LowestOverWaterPa = SaturationPressure.OverWaterPa(SaturationPressure.LowestC);

    /// <summary>Dew point, below 0 °C the frost point: the inverse of <see cref="SaturationPressure.PairPa"/>.</summary>
    /// <param name="vapourPressurePa">Vapour pressure p, Pa, <see cref="LowestPa"/> (about 1) to <see cref="HighestPa"/> (about 102 000).</param>
    /// <returns>Temperature, °C; undoes the saturation pressure to rounding. Perfectly dry air has none and is refused.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>Closed form of θ from both curves. Source: ISO-13788, annex E, inverse equations.</remarks>
    public static double OfPressureC(double vapourPressurePa) => OfPressureUncheckedC(Guard.InRange(vapourPressurePa, LowestPa, HighestPa, "Pa"));

    /// <summary>Dew point over liquid water at every temperature: the inverse of <see cref="SaturationPressure.OverWaterPa"/>.</summary>
    /// <param name="vapourPressurePa">Vapour pressure p, Pa, saturation over water at -60 °C (about 1.8) to <see cref="HighestPa"/>.</param>
    /// <returns>Temperature, °C; below 0 °C it lies under the frost point of the same air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>The convention of weather stations. Source: ISO-13788, annex E, inverse of the equation for θ ≥ 0.</remarks>
    public static double DewPointOverWaterC(double vapourPressurePa)
    {
        double x = Math.Log(Guard.InRange(vapourPressurePa, LowestOverWaterPa, HighestPa, "Pa") / SaturationPressure.AtZeroPa);
        return SaturationPressure.WaterOffsetC * x / (SaturationPressure.WaterFactor - x);
    }

    internal static double OfPressureUncheckedC(double vapourPressurePa)
    {
        double x = Math.Log(vapourPressurePa / SaturationPressure.AtZeroPa);
        return x >= 0
            ? SaturationPressure.WaterOffsetC * x / (SaturationPressure.WaterFactor - x)
            : SaturationPressure.IceOffsetC * x / (SaturationPressure.IceFactor - x);
    }
}
