namespace Thermal.Ventilation;

/// <summary>Free areas of fixed vents that inspection bodies quote for leisure vehicles.</summary>
/// <param name="HighM2">High up, m².</param>
/// <param name="LowM2">Low down, m².</param>
public sealed record SafetyVents(double HighM2, double LowM2)
{
    /// <summary>The figures for one vehicle.</summary>
    /// <param name="floorAreaM2">Floor area, m², 0.1 to 100.</param>
    /// <param name="burnsRoomAir">True with a cooker or heater that takes its air from the room.</param>
    /// <remarks>
    /// Roof openings are assumed for the case without such appliances (15 cm²; 30 cm² elsewhere). Above 10 m² from memory.
    /// Source: EN-721, as quoted from an inspection leaflet; the standard's own text was not at hand.
    /// </remarks>
    public static SafetyVents For(double floorAreaM2, bool burnsRoomAir)
    {
        Guard.InRange(floorAreaM2, 0.1, 100, "m²");
        if (!burnsRoomAir) return new(15e-4, 5e-4);
        return floorAreaM2 switch
        {
            <= 5 => new(75e-4, 10e-4),
            <= 10 => new(100e-4, 15e-4),
            <= 15 => new(125e-4, 20e-4),
            <= 20 => new(150e-4, 30e-4),
            _ => new(200e-4, 50e-4),
        };
    }
}
