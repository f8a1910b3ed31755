namespace Thermal.Air;

/// <summary>State of moist air, taken as a mixture of two ideal gases. Ratios and enthalpies are per kilogram of dry air.</summary>
/// <remarks>Real air holds up to 0.6 % more water at saturation below 50 °C than the ideal gases here. Source: ASHRAE-F, chapter 1.</remarks>
public static class MoistAir
{
    /// <summary>Molar mass of water over that of dry air. Source: ASHRAE-F, chapter 1, eq. 20.</summary>
    public const double MolarMassRatio = 0.621945;

    /// <summary>Gas constant of dry air, J/(kg·K). Source: ASHRAE-F, chapter 1, eq. 26.</summary>
    public const double DryAirGasConstantJPerKgK = 287.042;

    /// <summary>Gas constant of water vapour, J/(kg·K), as rounded by the source. Source: ISO-13788, clause on vapour concentration, from memory.</summary>
    public const double VapourGasConstantJPerKgK = 461.5;

    /// <summary>Specific heat capacity of dry air, J/(kg·K). Source: ASHRAE-F, chapter 1, eq. 30.</summary>
    public const double DryAirSpecificHeatJPerKgK = 1006;

    /// <summary>Specific heat capacity of water vapour, J/(kg·K). Source: ASHRAE-F, chapter 1, eq. 30.</summary>
    public const double VapourSpecificHeatJPerKgK = 1860;

    /// <summary>Heat taken up when water evaporates at 0 °C, J/kg. Source: ASHRAE-F, chapter 1, eq. 30.</summary>
    public const double EvaporationHeatJPerKg = 2_501_000;

    /// <summary>The zero of the Celsius scale, K; exact, by definition.</summary>
    public const double ZeroCelsiusK = 273.15;

    /// <summary>Lowest air pressure taken, Pa; limit chosen by us (about 9000 m).</summary>
    public const double LowestPressurePa = 30_000;

    /// <summary>Highest air pressure taken, Pa; limit chosen by us.</summary>
    public const double HighestPressurePa = 120_000;

    /// <summary>Water per kilogram of dry air, w.</summary>
    /// <param name="vapourPressurePa">Vapour pressure p, Pa, 0 to 0.9 of the air pressure.</param>
    /// <param name="airPressurePa">Air pressure P, Pa, 30 000 to 120 000.</param>
    /// <returns>Humidity ratio, kg of water per kg of dry air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>w = 0.621945·p/(P − p). Source: ASHRAE-F, chapter 1, eq. 20.</remarks>
    public static double HumidityRatioKgPerKg(double vapourPressurePa, double airPressurePa) =>
        HumidityRatioUncheckedKgPerKg(Vapour(vapourPressurePa, airPressurePa), airPressurePa);

    /// <summary>Vapour pressure of air that carries a given humidity ratio.</summary>
    /// <param name="humidityRatioKgPerKg">Humidity ratio w, kg of water per kg of dry air, 0 to 5.</param>
    /// <param name="airPressurePa">Air pressure P, Pa, 30 000 to 120 000.</param>
    /// <returns>Vapour pressure, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: ASHRAE-F, chapter 1, eq. 20 solved for the vapour pressure.</remarks>
    public static double VapourPressurePa(double humidityRatioKgPerKg, double airPressurePa)
    {
        double w = Guard.InRange(humidityRatioKgPerKg, 0, 5, "kg/kg");
        return Air(airPressurePa) * w / (MolarMassRatio + w);
    }

    /// <summary>Enthalpy of moist air, zero for dry air at 0 °C and liquid water at 0 °C.</summary>
    /// <param name="temperatureC">Air temperature, °C, -60 to 100.</param>
    /// <param name="humidityRatioKgPerKg">Humidity ratio w, kg of water per kg of dry air, 0 to 5.</param>
    /// <returns>Enthalpy, J per kg of dry air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: ASHRAE-F, chapter 1, eq. 30.</remarks>
    public static double EnthalpyJPerKg(double temperatureC, double humidityRatioKgPerKg)
    {
        double t = Guard.InRange(temperatureC, SaturationPressure.LowestC, SaturationPressure.HighestC, "°C");
        double w = Guard.InRange(humidityRatioKgPerKg, 0, 5, "kg/kg");
        return DryAirSpecificHeatJPerKgK * t + w * (EvaporationHeatJPerKg + VapourSpecificHeatJPerKgK * t);
    }

    /// <summary>Volume of the moist air that holds one kilogram of dry air.</summary>
    /// <param name="temperatureC">Air temperature, °C, -60 to 100.</param>
    /// <param name="humidityRatioKgPerKg">Humidity ratio w, kg of water per kg of dry air, 0 to 5.</param>
    /// <param name="airPressurePa">Air pressure P, Pa, 30 000 to 120 000.</param>
    /// <returns>Specific volume, m³ per kg of dry air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: ASHRAE-F, chapter 1, eq. 26.</remarks>
    public static double SpecificVolumeM3PerKg(double temperatureC, double humidityRatioKgPerKg, double airPressurePa)
    {
        double w = Guard.InRange(humidityRatioKgPerKg, 0, 5, "kg/kg");
        return DryAirGasConstantJPerKgK * Kelvin(temperatureC) * (1 + w / MolarMassRatio) / Air(airPressurePa);
    }

    /// <summary>Density of moist air: dry air and vapour together.</summary>
    /// <param name="temperatureC">Air temperature, °C, -60 to 100.</param>
    /// <param name="vapourPressurePa">Vapour pressure p, Pa, 0 to 0.9 of the air pressure.</param>
    /// <param name="airPressurePa">Air pressure P, Pa, 30 000 to 120 000.</param>
    /// <returns>Density, kg/m³; damp air is lighter than dry air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: ASHRAE-F, chapter 1, eq. 26 and 27.</remarks>
    public static double DensityKgPerM3(double temperatureC, double vapourPressurePa, double airPressurePa) =>
        (airPressurePa - (1 - MolarMassRatio) * Vapour(vapourPressurePa, airPressurePa)) / (DryAirGasConstantJPerKgK * Kelvin(temperatureC));

    /// <summary>Dry air in a cubic metre of moist air: what a ventilation flow in m³ carries.</summary>
    /// <param name="temperatureC">Air temperature, °C, -60 to 100.</param>
    /// <param name="vapourPressurePa">Vapour pressure p, Pa, 0 to 0.9 of the air pressure.</param>
    /// <param name="airPressurePa">Air pressure P, Pa, 30 000 to 120 000.</param>
    /// <returns>Mass of dry air per volume, kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>Source: ASHRAE-F, chapter 1, eq. 26.</remarks>
    public static double DryAirDensityKgPerM3(double temperatureC, double vapourPressurePa, double airPressurePa) =>
        (airPressurePa - Vapour(vapourPressurePa, airPressurePa)) / (DryAirGasConstantJPerKgK * Kelvin(temperatureC));

    /// <summary>Water vapour in a cubic metre of air.</summary>
    /// <param name="temperatureC">Air temperature, °C, -60 to 100.</param>
    /// <param name="vapourPressurePa">Vapour pressure p, Pa, 0 to 108 000.</param>
    /// <returns>Vapour concentration, kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>p/(461.5·T). Source: ISO-13788, clause on vapour concentration, from memory.</remarks>
    public static double VapourConcentrationKgPerM3(double temperatureC, double vapourPressurePa) =>
        Guard.InRange(vapourPressurePa, 0, 0.9 * HighestPressurePa, "Pa") / (VapourGasConstantJPerKgK * Kelvin(temperatureC));

    internal static double HumidityRatioUncheckedKgPerKg(double vapourPressurePa, double airPressurePa) =>
        MolarMassRatio * vapourPressurePa / (airPressurePa - vapourPressurePa);

    private static double Kelvin(double temperatureC) =>
        Guard.InRange(temperatureC, SaturationPressure.LowestC, SaturationPressure.HighestC, "°C") + ZeroCelsiusK;

    private static double Air(double airPressurePa) => Guard.InRange(airPressurePa, LowestPressurePa, HighestPressurePa, "Pa");

    private static double Vapour(double vapourPressurePa, double airPressurePa) =>
        Guard.InRange(vapourPressurePa, 0, 0.9 * Air(airPressurePa), "Pa");
}
