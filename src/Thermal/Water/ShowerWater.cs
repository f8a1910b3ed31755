namespace Thermal.Water;

/// <summary>Heat in the warm water of showers.</summary>
public static class ShowerWater
{
    /// <summary>Water of a shower, °C. Source: PRACTICE, 37 to 40 °C.</summary>
    public const double WarmC = 38;
    /// <summary>Water as it comes from a tank, where the tank is not followed, °C. Source: OURS.</summary>
    public const double ColdC = 8;

    /// <summary>Heat that warms it.</summary>
    /// <param name="waterL">Water, L, 0 to 10 000.</param>
    /// <param name="coldC">The tank's water, °C, 0 to 100; already as warm as a shower it takes none.</param>
    /// <returns>kWh; without what stays in pipes and boiler.</returns>
    public static double HeatKWh(double waterL, double coldC) =>
        Guard.InRange(waterL, 0, 10_000, "L") * TankFreezing.WaterJPerKgK * Math.Max(0, WarmC - Guard.InRange(coldC, 0, 100, "°C")) / 3.6e6;
}
