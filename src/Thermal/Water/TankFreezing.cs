namespace Thermal.Water;

/// <summary>How long a tank keeps from freezing, and what holds it.</summary>
public static class TankFreezing
{
    /// <summary>Specific heat of water, J/(kg·K). Source: ISO-10456, table 3, from memory.</summary>
    public const double WaterJPerKgK = 4190;

    /// <summary>Heat of freezing, J/kg. Source: ISO-12241, freezing times, from memory.</summary>
    public const double FreezingJPerKg = 334_000;

    /// <summary>Time from one water temperature to 0 °C, well mixed.</summary>
    /// <param name="waterKg">Water, kg, 0.1 to 5000.</param>
    /// <param name="lossWPerK">Loss coefficient U·A, W/K, 0.001 to 1000.</param>
    /// <param name="startC">Water at the start, °C, 0 to 60.</param>
    /// <param name="airC">Air round it, °C, -60 to 60.</param>
    /// <returns>h; null where the air is not below zero.</returns>
    /// <remarks>t = m·c/(U·A)·ln((θ0 − θa)/(0 − θa)). Source: ISO-12241, cooling times (from memory).</remarks>
    public static double? HoursToZeroH(double waterKg, double lossWPerK, double startC, double airC)
    {
        Check(waterKg, lossWPerK, airC);
        return airC >= 0 ? null : waterKg * WaterJPerKgK / lossWPerK * Math.Log((Guard.InRange(startC, 0, 60, "°C") - airC) / -airC) / 3600;
    }

    /// <summary>Further time until a share of it is ice.</summary>
    /// <param name="waterKg">Water, kg.</param>
    /// <param name="lossWPerK">Loss coefficient, W/K.</param>
    /// <param name="airC">Air round it, °C.</param>
    /// <param name="iceFraction">Share that freezes, fraction, 0 to 1.</param>
    /// <returns>h; null where the air is not below zero.</returns>
    /// <remarks>The growing ice's own resistance is left out, so the real time is longer. Source: ISO-12241, freezing times (from memory).</remarks>
    public static double? HoursToIceH(double waterKg, double lossWPerK, double airC, double iceFraction)
    {
        Check(waterKg, lossWPerK, airC);
        return airC >= 0 ? null : Guard.InRange(iceFraction, 0, 1, "(fraction)") * waterKg * FreezingJPerKg / (lossWPerK * -airC) / 3600;
    }

    private static void Check(double waterKg, double lossWPerK, double airC)
    {
        Guard.InRange(waterKg, 0.1, 5000, "kg");
        Guard.InRange(lossWPerK, 0.001, 1000, "W/K");
        Guard.InRange(airC, -60, 60, "°C");
    }
}
