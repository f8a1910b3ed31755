using UnitsNet;
using UnitsNet.Units;

namespace Thermal.Words.Units;

/// <summary>Every dimension a person writes or reads, with the spellings of its units: the one table between text and UnitsNet.</summary>
/// <remarks>
/// UnitsNet has no linear transmittance, point transmittance, capacity per area or air through an area. They borrow the quantity of equal
/// unit arithmetic: W/(m·K) from conductivity, W/K from power, J/(m²·K) from entropy, m³/(m²·h) from speed.
/// </remarks>
public static class Dimensions
{
    /// <summary>A length, m.</summary>
    public static Dimension Length { get; } = new("a length", "40 mm", (v, a, b) => UnitsNet.Length.From(v, (LengthUnit)a).As((LengthUnit)b),
        U("m", LengthUnit.Meter), U("mm", LengthUnit.Millimeter), U("cm", LengthUnit.Centimeter), U("µm", LengthUnit.Micrometer, "um"),
        U("km", LengthUnit.Kilometer), U("in", LengthUnit.Inch, "inch", "inches", "\"", "″"), U("ft", LengthUnit.Foot, "feet", "foot", "'", "′"));

    /// <summary>An area, m².</summary>
    public static Dimension Area { get; } = new("an area", "0.35 m²", (v, a, b) => UnitsNet.Area.From(v, (AreaUnit)a).As((AreaUnit)b),
        U("m²", AreaUnit.SquareMeter, "sqm"), U("cm²", AreaUnit.SquareCentimeter), U("mm²", AreaUnit.SquareMillimeter),
        U("ft²", AreaUnit.SquareFoot, "sq ft", "sqft"), U("in²", AreaUnit.SquareInch, "sq in"));

    /// <summary>A volume, m³.</summary>
    public static Dimension Volume { get; } = new("a volume", "70 L", (v, a, b) => UnitsNet.Volume.From(v, (VolumeUnit)a).As((VolumeUnit)b),
        U("m³", VolumeUnit.CubicMeter), U("L", VolumeUnit.Liter, "l", "litre", "litres", "liter", "liters"), U("ml", VolumeUnit.Milliliter, "mL"),
        U("gal", VolumeUnit.UsGallon, "US gal", "gallon", "gallons"), U("ft³", VolumeUnit.CubicFoot, "cu ft"));

    /// <summary>A temperature on the scale, °C.</summary>
    public static Dimension Temperature { get; } = new("a temperature", "-10 °C", (v, a, b) => UnitsNet.Temperature.From(v, (TemperatureUnit)a).As((TemperatureUnit)b),
        U("°C", TemperatureUnit.DegreeCelsius, "C", "degC", "℃"), U("°F", TemperatureUnit.DegreeFahrenheit, "F", "degF", "℉"), U("K", TemperatureUnit.Kelvin));

    /// <summary>A difference between temperatures, K.</summary>
    public static Dimension Difference { get; } = new("a temperature difference", "20 K",
        (v, a, b) => TemperatureDelta.From(v, (TemperatureDeltaUnit)a).As((TemperatureDeltaUnit)b),
        U("K", TemperatureDeltaUnit.Kelvin), U("°C", TemperatureDeltaUnit.DegreeCelsius, "C"), U("°F", TemperatureDeltaUnit.DegreeFahrenheit, "F"));

    /// <summary>A conductivity λ, W/(m·K).</summary>
    public static Dimension Conductivity { get; } = new("a conductivity", "0.036 W/mK", Conduct,
        U("W/(m·K)", ThermalConductivityUnit.WattPerMeterKelvin, "W/m/K"), U("Btu/(h·ft·°F)", ThermalConductivityUnit.BtuPerHourFootFahrenheit, "Btu/hftF", "Btu/hrft°F"));

    /// <summary>A linear transmittance ψ, W/(m·K).</summary>
    public static Dimension LinearTransmittance { get; } = new("a linear transmittance", "0.12 W/mK", Conduct,
        U("W/(m·K)", ThermalConductivityUnit.WattPerMeterKelvin, "W/m/K"), U("Btu/(h·ft·°F)", ThermalConductivityUnit.BtuPerHourFootFahrenheit, "Btu/hftF", "Btu/hrft°F"));

    /// <summary>A loss per kelvin, χ or a whole vehicle's, W/K.</summary>
    public static Dimension PointTransmittance { get; } = new("a loss per kelvin", "0.02 W/K", Watts, U("W/K", PowerUnit.Watt));

    /// <summary>A transmittance U, W/(m²·K).</summary>
    public static Dimension Transmittance { get; } = new("a U-value", "5.7 W/m²K",
        (v, a, b) => HeatTransferCoefficient.From(v, (HeatTransferCoefficientUnit)a).As((HeatTransferCoefficientUnit)b),
        U("W/(m²·K)", HeatTransferCoefficientUnit.WattPerSquareMeterKelvin, "W/m2/K"),
        U("Btu/(h·ft²·°F)", HeatTransferCoefficientUnit.BtuPerHourSquareFootDegreeFahrenheit, "Btu/hft2F", "Btu/hrft2°F"));

    /// <summary>A thermal resistance of an area, m²·K/W. UnitsNet calls this area-based quantity ThermalResistance.</summary>
    public static Dimension Resistance { get; } = new("a thermal resistance", "0.5 m²K/W",
        (v, a, b) => ThermalResistance.From(v, (ThermalResistanceUnit)a).As((ThermalResistanceUnit)b),
        U("m²·K/W", ThermalResistanceUnit.SquareMeterKelvinPerWatt), U("h·ft²·°F/Btu", ThermalResistanceUnit.HourSquareFeetDegreeFahrenheitPerBtu, "hft2F/Btu", "ft2hF/Btu", "ft2h°F/Btu"));

    /// <summary>A density, kg/m³.</summary>
    public static Dimension Density { get; } = new("a density", "30 kg/m³", (v, a, b) => UnitsNet.Density.From(v, (DensityUnit)a).As((DensityUnit)b),
        U("kg/m³", DensityUnit.KilogramPerCubicMeter), U("g/m³", DensityUnit.GramPerCubicMeter), U("kg/L", DensityUnit.KilogramPerLiter, "kg/l"), U("lb/ft³", DensityUnit.PoundPerCubicFoot));

    /// <summary>A specific heat, J/(kg·K).</summary>
    public static Dimension SpecificHeat { get; } = new("a specific heat", "1450 J/kgK", (v, a, b) => SpecificEntropy.From(v, (SpecificEntropyUnit)a).As((SpecificEntropyUnit)b),
        U("J/(kg·K)", SpecificEntropyUnit.JoulePerKilogramKelvin), U("kJ/(kg·K)", SpecificEntropyUnit.KilojoulePerKilogramKelvin), U("Btu/(lb·°F)", SpecificEntropyUnit.BtuPerPoundFahrenheit, "Btu/lbF"));

    /// <summary>A heat capacity, J/K.</summary>
    public static Dimension HeatCapacity { get; } = new("a heat capacity", "120 kJ/K", Capacity, U("J/K", EntropyUnit.JoulePerKelvin), U("kJ/K", EntropyUnit.KilojoulePerKelvin));

    /// <summary>A heat capacity of an area, J/(m²·K).</summary>
    public static Dimension CapacityPerArea { get; } = new("a heat capacity per area", "25 kJ/m²K", Capacity, U("J/(m²·K)", EntropyUnit.JoulePerKelvin), U("kJ/(m²·K)", EntropyUnit.KilojoulePerKelvin));

    /// <summary>A pressure, Pa.</summary>
    public static Dimension Pressure { get; } = new("a pressure", "850 hPa", (v, a, b) => UnitsNet.Pressure.From(v, (PressureUnit)a).As((PressureUnit)b),
        U("Pa", PressureUnit.Pascal), U("hPa", PressureUnit.Hectopascal), U("kPa", PressureUnit.Kilopascal), U("mbar", PressureUnit.Millibar), U("bar", PressureUnit.Bar),
        U("psi", PressureUnit.PoundForcePerSquareInch), U("inHg", PressureUnit.InchOfMercury));

    /// <summary>A mass, kg.</summary>
    public static Dimension Mass { get; } = new("a mass", "12 kg", (v, a, b) => UnitsNet.Mass.From(v, (MassUnit)a).As((MassUnit)b),
        U("kg", MassUnit.Kilogram), U("g", MassUnit.Gram), U("t", MassUnit.Tonne), U("lb", MassUnit.Pound, "lbs"), U("oz", MassUnit.Ounce));

    /// <summary>A power, W.</summary>
    public static Dimension Power { get; } = new("a power", "2 kW", Watts, U("W", PowerUnit.Watt), U("kW", PowerUnit.Kilowatt), U("Btu/h", PowerUnit.BritishThermalUnitPerHour, "Btu/hr", "BTU/h", "BTU/hr", "BTUH"));

    /// <summary>An energy, J.</summary>
    public static Dimension Energy { get; } = new("an energy", "80 Wh", (v, a, b) => UnitsNet.Energy.From(v, (EnergyUnit)a).As((EnergyUnit)b),
        U("J", EnergyUnit.Joule), U("kJ", EnergyUnit.Kilojoule), U("MJ", EnergyUnit.Megajoule), U("Wh", EnergyUnit.WattHour), U("kWh", EnergyUnit.KilowattHour), U("Btu", EnergyUnit.BritishThermalUnit, "BTU"));

    /// <summary>Sun on an area, J/m².</summary>
    public static Dimension SunPerArea { get; } = new("sun on an area", "2.5 kWh/m²", (v, a, b) => Irradiation.From(v, (IrradiationUnit)a).As((IrradiationUnit)b),
        U("J/m²", IrradiationUnit.JoulePerSquareMeter), U("kWh/m²", IrradiationUnit.KilowattHourPerSquareMeter), U("Wh/m²", IrradiationUnit.WattHourPerSquareMeter));

    /// <summary>A charge, C.</summary>
    public static Dimension Charge { get; } = new("a charge", "100 Ah", (v, a, b) => ElectricCharge.From(v, (ElectricChargeUnit)a).As((ElectricChargeUnit)b),
        U("C", ElectricChargeUnit.Coulomb), U("Ah", ElectricChargeUnit.AmpereHour), U("mAh", ElectricChargeUnit.MilliampereHour));

    /// <summary>A voltage, V.</summary>
    public static Dimension Voltage { get; } = new("a voltage", "12.8 V", (v, a, b) => ElectricPotential.From(v, (ElectricPotentialUnit)a).As((ElectricPotentialUnit)b), U("V", ElectricPotentialUnit.Volt));

    /// <summary>A current, A.</summary>
    public static Dimension Current { get; } = new("a current", "1.5 A", (v, a, b) => ElectricCurrent.From(v, (ElectricCurrentUnit)a).As((ElectricCurrentUnit)b),
        U("A", ElectricCurrentUnit.Ampere), U("mA", ElectricCurrentUnit.Milliampere));

    /// <summary>A heat value, J/kg.</summary>
    public static Dimension HeatValue { get; } = new("a heat value", "42.8 MJ/kg", (v, a, b) => SpecificEnergy.From(v, (SpecificEnergyUnit)a).As((SpecificEnergyUnit)b),
        U("J/kg", SpecificEnergyUnit.JoulePerKilogram), U("MJ/kg", SpecificEnergyUnit.MegajoulePerKilogram), U("kWh/kg", SpecificEnergyUnit.KilowattHourPerKilogram));

    /// <summary>A speed, m/s.</summary>
    public static Dimension Speed { get; } = new("a speed", "3 m/s", Velocity, U("m/s", SpeedUnit.MeterPerSecond), U("km/h", SpeedUnit.KilometerPerHour, "kph"),
        U("mph", SpeedUnit.MilePerHour, "mi/h"), U("kn", SpeedUnit.Knot, "kt"));

    /// <summary>Air through an area, m³/(m²·s).</summary>
    public static Dimension AirPerArea { get; } = new("an air flow per area", "0.1 m³/m²h", Velocity, U("m³/(m²·s)", SpeedUnit.MeterPerSecond), U("m³/(m²·h)", SpeedUnit.MeterPerHour));

    /// <summary>A flow of air or liquid, m³/s.</summary>
    public static Dimension VolumeFlow { get; } = new("a volume flow", "20 m³/h", (v, a, b) => UnitsNet.VolumeFlow.From(v, (VolumeFlowUnit)a).As((VolumeFlowUnit)b),
        U("m³/s", VolumeFlowUnit.CubicMeterPerSecond), U("m³/h", VolumeFlowUnit.CubicMeterPerHour), U("L/s", VolumeFlowUnit.LiterPerSecond, "l/s"),
        U("L/min", VolumeFlowUnit.LiterPerMinute, "l/min"), U("L/h", VolumeFlowUnit.LiterPerHour, "l/h"), U("L/day", VolumeFlowUnit.LiterPerDay, "l/day", "L/d"),
        U("cfm", VolumeFlowUnit.CubicFootPerMinute, "ft3/min"), U("gal/h", VolumeFlowUnit.UsGallonPerHour), U("gal/day", VolumeFlowUnit.UsGallonPerDay));

    /// <summary>A flow of mass, kg/s.</summary>
    public static Dimension MassFlow { get; } = new("a mass flow", "40 g/h", (v, a, b) => UnitsNet.MassFlow.From(v, (MassFlowUnit)a).As((MassFlowUnit)b),
        U("kg/s", MassFlowUnit.KilogramPerSecond), U("g/h", MassFlowUnit.GramPerHour), U("kg/h", MassFlowUnit.KilogramPerHour), U("g/day", MassFlowUnit.GramPerDay, "g/d"),
        U("kg/day", MassFlowUnit.KilogramPerDay, "kg/d"), U("lb/h", MassFlowUnit.PoundPerHour), U("lb/day", MassFlowUnit.PoundPerDay));

    /// <summary>Mass on an area, kg/m².</summary>
    public static Dimension MassPerArea { get; } = new("a mass per area", "50 g/m²", (v, a, b) => AreaDensity.From(v, (AreaDensityUnit)a).As((AreaDensityUnit)b),
        U("kg/m²", AreaDensityUnit.KilogramPerSquareMeter), U("g/m²", AreaDensityUnit.GramPerSquareMeter));

    /// <summary>A time, s.</summary>
    public static Dimension Duration { get; } = new("a time", "8 h", (v, a, b) => UnitsNet.Duration.From(v, (DurationUnit)a).As((DurationUnit)b),
        U("s", DurationUnit.Second), U("min", DurationUnit.Minute), U("h", DurationUnit.Hour, "hr", "hours", "hour"), U("days", DurationUnit.Day, "day", "d"));

    /// <summary>An angle, degrees.</summary>
    public static Dimension Angle { get; } = new("an angle", "90°", (v, a, b) => UnitsNet.Angle.From(v, (AngleUnit)a).As((AngleUnit)b), U("°", AngleUnit.Degree, "deg", "degrees"));

    /// <summary>An air change, 1/h.</summary>
    public static Dimension AirChange { get; } = new("an air change", "0.8 1/h", (v, a, b) => Frequency.From(v, (FrequencyUnit)a).As((FrequencyUnit)b), U("1/h", FrequencyUnit.CyclePerHour, "/h", "per h", "ach"));

    /// <summary>A share, from 0 to 1 or in per cent.</summary>
    public static Dimension Fraction { get; } = new("a share", "60 %", Share, U("", RatioUnit.DecimalFraction), U("%", RatioUnit.Percent));

    /// <summary>A plain number: a count, a ratio, a factor.</summary>
    public static Dimension Number { get; } = new("a number", "2", Share, U("", RatioUnit.DecimalFraction));

    /// <summary>A content of a gas in air, by volume: 1 is all of it.</summary>
    public static Dimension GasFraction { get; } = new("a share of a gas", "420 ppm", Share, U("", RatioUnit.DecimalFraction), U("ppm", RatioUnit.PartPerMillion), U("%", RatioUnit.Percent));

    /// <summary>All dimensions, those met most often first; used to say what a misplaced unit measures.</summary>
    public static IReadOnlyList<Dimension> All { get; } =
    [
        Length, Temperature, Power, Area, Volume, Mass, Duration, Conductivity, Transmittance, Resistance, Density, SpecificHeat, Pressure, Energy, Charge, Voltage,
        Current, Speed, VolumeFlow, MassFlow, MassPerArea, HeatCapacity, CapacityPerArea, HeatValue, PointTransmittance, AirPerArea, Angle, AirChange, Difference,
        LinearTransmittance, SunPerArea, GasFraction, Fraction, Number,
    ];

    private static Unit U(string spelling, Enum converter, params string[] alsoWritten) => new(spelling, alsoWritten, converter);
    private static double Conduct(double v, Enum a, Enum b) => ThermalConductivity.From(v, (ThermalConductivityUnit)a).As((ThermalConductivityUnit)b);
    private static double Watts(double v, Enum a, Enum b) => (double)UnitsNet.Power.From(v, (PowerUnit)a).As((PowerUnit)b);
    private static double Capacity(double v, Enum a, Enum b) => Entropy.From(v, (EntropyUnit)a).As((EntropyUnit)b);
    private static double Velocity(double v, Enum a, Enum b) => UnitsNet.Speed.From(v, (SpeedUnit)a).As((SpeedUnit)b);
    private static double Share(double v, Enum a, Enum b) => Ratio.From(v, (RatioUnit)a).As((RatioUnit)b);
}
