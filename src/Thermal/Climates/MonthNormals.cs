using Thermal.Air;

namespace Thermal.Climates;

/// <summary>The mean weather of one calendar month at one place. Immutable.</summary>
/// <remarks>
/// Relative humidity is over liquid water at every temperature, also below 0 °C: the convention of weather services.
/// What the source does not give is null, except mean and humidity, which are estimated and then marked.
/// </remarks>
public sealed record MonthNormals
{
    /// <summary>Lowest temperature taken, °C: the end of the saturation curve over water. Limit chosen by us.</summary>
    public const double LowestC = -60;

    /// <summary>Highest temperature taken, °C. Limit chosen by us.</summary>
    public const double HighestC = 50;

    /// <summary>Lowest monthly relative humidity taken, fraction. Limit chosen by us; a percent figure divided twice falls below it.</summary>
    public const double LowestRelativeHumidityFraction = 0.05;

    /// <summary>Lowest monthly mean vapour pressure taken, Pa. Limit chosen by us; hectopascals in its place mostly fall below it.</summary>
    public const double LowestVapourPressurePa = 16;

    /// <summary>Highest monthly mean vapour pressure taken, Pa. Limit chosen by us.</summary>
    public const double HighestVapourPressurePa = 4500;

    /// <summary>Highest monthly mean wind taken, m/s. Limit chosen by us.</summary>
    public const double HighestWindMPerS = 25;

    /// <summary>Highest daily mean sun on the flat taken, W/m² (10 kWh/m² a day). Limit chosen by us.</summary>
    public const double HighestGlobalIrradianceWPerM2 = 10000.0 / 24;

    /// <summary>Largest spread of day means taken, K. Limit chosen by us.</summary>
    public const double HighestDayMeanSdK = 20;

    /// <summary>Mean air temperature, °C, −60 to 50.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double MeanC { get; init => field = Guard.InRange(value, LowestC, HighestC, "°C", nameof(MeanC)); }

    /// <summary>True where the source gave no mean and (highest + lowest)/2 stands in.</summary>
    public bool MeanIsEstimated { get; init; }

    /// <summary>Mean of the daily lowest temperatures, °C, −60 to 50; null where the source has none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public double? MinC { get; init => field = InRange(value, LowestC, HighestC, "°C", nameof(MinC)); }

    /// <summary>Mean of the daily highest temperatures, °C, −60 to 50; null where the source has none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public double? MaxC { get; init => field = InRange(value, LowestC, HighestC, "°C", nameof(MaxC)); }

    /// <summary>Mean relative humidity over water, fraction, 0.05 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double RelativeHumidityFraction { get; init => field = Guard.InRange(value, LowestRelativeHumidityFraction, 1, "(a fraction)", nameof(RelativeHumidityFraction)); }

    /// <summary>True where the source gave no humidity and <see cref="HumidityEstimate"/> stands in.</summary>
    public bool HumidityIsEstimated { get; init; }

    /// <summary>Mean of the hourly or daily vapour pressures, Pa, 16 to 4500; null where the source has none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public double? MeasuredVapourPressurePa { get; init => field = InRange(value, LowestVapourPressurePa, HighestVapourPressurePa, "Pa", nameof(MeasuredVapourPressurePa)); }

    /// <summary>Mean wind at 10 m in the open, m/s, 0 to 25; a parked vehicle sees less. Null where the source has none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public double? WindMPerS { get; init => field = InRange(value, 0, HighestWindMPerS, "m/s", nameof(WindMPerS)); }

    /// <summary>Sun and sky light on a flat surface, mean over day and night, W/m², 0 to 417; null where the source has none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public double? GlobalIrradianceWPerM2 { get; init => field = InRange(value, 0, HighestGlobalIrradianceWPerM2, "W/m²", nameof(GlobalIrradianceWPerM2)); }

    /// <summary>Standard deviation of the day means within the month, K, 0 to 20; null where the source has none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public double? DayMeanSdK { get; init => field = InRange(value, 0, HighestDayMeanSdK, "K", nameof(DayMeanSdK)); }

    /// <summary>Mean vapour pressure of the outside air: the measured one, else relative humidity times saturation over water at the mean.</summary>
    /// <remarks>
    /// Over water also below 0 °C, the convention of weather services; the ice curve would make it 9 % too small at −10 °C.
    /// Without a measured value it is a few per cent off: in 72 station-months the true mean was 0.88 to 1.30 times this, above
    /// 1 in cold changeable months. Source: ISO-13788, annex E for the curve.
    /// </remarks>
    public double VapourPressurePa => MeasuredVapourPressurePa ?? RelativeHumidityFraction * SaturationPressure.OverWaterPa(MeanC);

    private static double? InRange(double? value, double min, double max, string unit, string name) =>
        value is double given ? Guard.InRange(given, min, max, unit, name) : null;
}
