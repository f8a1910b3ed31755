namespace Thermal.Air;

/// <summary>The pressure at which water vapour begins to settle, over liquid water and over ice.</summary>
/// <remarks>
/// Weather figures of relative humidity are taken over liquid water at every temperature; what settles on a
/// surface below 0 °C is ice. Source: ISO-13788, annex E.
/// </remarks>
public static class SaturationPressure
{
    /// <summary>Lowest temperature of both curves, °C; limit chosen by us.</summary>
    public const double LowestC = -60;

    /// <summary>Highest temperature of the water curve, °C; limit chosen by us.</summary>
    public const double HighestC = 100;

    // The source's own coefficients: pressure at 0 °C in Pa, then factor and offset over water and over ice.
    internal const double AtZeroPa = 610.5, WaterFactor = 17.269, WaterOffsetC = 237.3, IceFactor = 21.875, IceOffsetC = 265.5;

    /// <summary>Saturation pressure over liquid water, below 0 °C over supercooled water.</summary>
    /// <param name="temperatureC">Temperature θ, °C, -60 to 100.</param>
    /// <returns>Pressure, Pa; within 0.2 % of the handbook table from 0 to 50 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>
    /// p = 610.5·exp(17.269·θ/(237.3 + θ)). The source gives it from 0 °C upwards; below, it is extended so that
    /// weather figures can be read. Source: ISO-13788, annex E, equation for θ ≥ 0.
    /// </remarks>
    public static double OverWaterPa(double temperatureC) => OverWaterUncheckedPa(Guard.InRange(temperatureC, LowestC, HighestC, "°C"));

    /// <summary>Saturation pressure over ice: the curve of frost.</summary>
    /// <param name="temperatureC">Temperature θ, °C, -60 to 0.</param>
    /// <returns>Pressure, Pa; within 0.5 % of the handbook table from -20 to 0 °C, 5 % at -60 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>p = 610.5·exp(21.875·θ/(265.5 + θ)). Source: ISO-13788, annex E, equation for θ &lt; 0.</remarks>
    public static double OverIcePa(double temperatureC) => OverIceUncheckedPa(Guard.InRange(temperatureC, LowestC, 0, "°C"));

    /// <summary>Saturation pressure over what settles on a surface: water from 0 °C upwards, ice below.</summary>
    /// <param name="temperatureC">Temperature θ, °C, -60 to 100.</param>
    /// <returns>Pressure, Pa; continuous at 0 °C, where both curves give 610.5 Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>Source: ISO-13788, annex E, both equations.</remarks>
    public static double PairPa(double temperatureC) => PairUncheckedPa(Guard.InRange(temperatureC, LowestC, HighestC, "°C"));

    internal static double OverWaterUncheckedPa(double temperatureC) =>
        AtZeroPa * Math.Exp(WaterFactor * temperatureC / (WaterOffsetC + temperatureC));

    internal static double OverIceUncheckedPa(double temperatureC) =>
        AtZeroPa * Math.Exp(IceFactor * temperatureC / (IceOffsetC + temperatureC));

    internal static double PairUncheckedPa(double temperatureC) =>
        AtZeroPa * Math.Exp(temperatureC >= 0
            ? WaterFactor * temperatureC / (WaterOffsetC + temperatureC)
            : IceFactor * temperatureC / (IceOffsetC + temperatureC));
}
