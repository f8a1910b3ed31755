namespace Thermal.Zones;

/// <summary>What a steady balance is asked for: the outside, and what happens in the living space.</summary>
public sealed record ZoneInputs
{
    /// <summary>Outside air, °C.</summary>
    public required double OutsideC { get; init; }
    /// <summary>Vapour pressure outside, Pa.</summary>
    public required double OutsidePa { get; init; }
    /// <summary>Air pressure, Pa.</summary>
    public required double AirPressurePa { get; init; }
    /// <summary>Wind, m/s.</summary>
    public required double WindMPerS { get; init; }
    /// <summary>Sky below the air, K.</summary>
    public required double SkyBelowAirK { get; init; }
    /// <summary>Operative temperature kept in the living space, °C.</summary>
    public required double LivingC { get; init; }
    /// <summary>Outside air a fan draws through the living space, m³/h.</summary>
    public double FanM3PerH { get; init; }
    /// <summary>Outside air a heater blows in, m³/h; adds as it is.</summary>
    public double HeaterFreshAirM3PerH { get; init; }
    /// <summary>Vapour given off in the living space, kg/s.</summary>
    public double VapourKgPerS { get; init; }
    /// <summary>Vapour pressure held in the living space, Pa; null to balance it.</summary>
    public double? HeldVapourPa { get; init; }
}
