namespace Thermal.Words;

/// <summary>Every kind of figure a person is shown; the unit Thermal computes in stands behind each.</summary>
public enum Shown
{
    /// <summary>Thickness of a layer, from m: mm or in.</summary>
    Thickness,
    /// <summary>Length, width, height, from m: m or ft.</summary>
    Length,
    /// <summary>Height above sea, from m: m or ft.</summary>
    Altitude,
    /// <summary>Diffusion-equivalent air layer thickness s_d, from m: m in both sets, as membranes are sold by it.</summary>
    DiffusionThickness,
    /// <summary>Area, from m²: m² or ft².</summary>
    Area,
    /// <summary>Free area of a vent, from m²: cm² or in².</summary>
    VentArea,
    /// <summary>Volume of air, from m³: m³ or ft³.</summary>
    AirVolume,
    /// <summary>Volume of fuel or water, from m³: L or gal.</summary>
    LiquidVolume,
    /// <summary>Temperature, from °C: °C or °F.</summary>
    Temperature,
    /// <summary>Difference of temperatures, from K: K or °F.</summary>
    Difference,
    /// <summary>Heat per time, from W: W or Btu/h.</summary>
    Power,
    /// <summary>Heater size, from W: kW or Btu/h.</summary>
    HeaterPower,
    /// <summary>Electric power, from W: W in both sets.</summary>
    ElectricPower,
    /// <summary>Energy, from J: kWh in both sets.</summary>
    Energy,
    /// <summary>Charge, from C: Ah in both sets.</summary>
    Charge,
    /// <summary>Transmittance U, from W/(m²·K).</summary>
    Transmittance,
    /// <summary>Resistance R, from m²·K/W.</summary>
    Resistance,
    /// <summary>Conductivity λ, from W/(m·K).</summary>
    Conductivity,
    /// <summary>Linear transmittance ψ, from W/(m·K).</summary>
    LinearTransmittance,
    /// <summary>Loss per kelvin, from W/K: W/K in both sets.</summary>
    LossPerKelvin,
    /// <summary>Mass of a build-up or a vehicle part, from kg: kg or lb.</summary>
    Mass,
    /// <summary>Mass of gas burnt, from kg: kg or lb.</summary>
    FuelMass,
    /// <summary>Mass of water that settles, from kg: g in both sets.</summary>
    WaterMass,
    /// <summary>Water on an area, from kg/m²: g/m² in both sets.</summary>
    WaterPerArea,
    /// <summary>Water per time, from kg/s: g/h in both sets.</summary>
    WaterFlow,
    /// <summary>Density, from kg/m³: kg/m³ or lb/ft³.</summary>
    Density,
    /// <summary>Specific heat, from J/(kg·K).</summary>
    SpecificHeat,
    /// <summary>Heat capacity, from J/K: kJ/K in both sets.</summary>
    HeatCapacity,
    /// <summary>Vapour pressure, from Pa: Pa in both sets.</summary>
    VapourPressure,
    /// <summary>Air pressure, from Pa: hPa or inHg.</summary>
    AirPressure,
    /// <summary>Flow of air, from m³/s: m³/h or cfm.</summary>
    AirFlow,
    /// <summary>Wind, from m/s: m/s or mph.</summary>
    WindSpeed,
    /// <summary>Driving speed, from m/s: km/h or mph.</summary>
    DrivingSpeed,
    /// <summary>Time, from s: h.</summary>
    Hours,
    /// <summary>Short time, from s: min.</summary>
    Minutes,
    /// <summary>Air changes, from 1/h.</summary>
    AirChange,
    /// <summary>A share, from a fraction: %.</summary>
    Percent,
    /// <summary>Gas content, from a fraction: ppm.</summary>
    Gas,
    /// <summary>Angle, from degrees.</summary>
    Angle,
    /// <summary>A bare factor or ratio.</summary>
    Factor,
    /// <summary>Point transmittance χ, from W/K: W/K in both sets.</summary>
    PointTransmittance,
    /// <summary>Heat per time where single watts count, from W: W or Btu/h.</summary>
    FinePower,
    /// <summary>A small share, from a fraction: %.</summary>
    FinePercent,
    /// <summary>Sun on an area, from J/m²: kWh/m² in both sets, as panels are sold by it.</summary>
    SunPerArea,
}
