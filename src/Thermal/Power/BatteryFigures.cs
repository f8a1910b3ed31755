namespace Thermal.Power;

/// <summary>What a battery of a chemistry does in the cold and when charged.</summary>
public static class BatteryFigures
{
    /// <summary>Lithium is not charged below this, °C. Source: PRACTICE, makers' limit: metal plates out and ruins the cells.</summary>
    public const double LithiumChargeFromC = 0;
    /// <summary>Lithium gives nothing below this, °C. Source: PRACTICE, makers' limit for drawing.</summary>
    public const double LithiumDrawFromC = -20;

    /// <summary>Share of the capacity at 20 °C that can be drawn.</summary>
    /// <param name="chemistry">What it is made of.</param>
    /// <param name="batteryC">The battery itself, °C, -60 to 80.</param>
    /// <returns>Fraction; 1 from 20 °C up. What the cold holds back comes back with warmth.</returns>
    /// <remarks>
    /// Straight lines between: lithium 0.80 at 0 °C, 0.70 at −20 °C, nothing below. Lead 0.85 at 0 °C and 0.60 at −20 °C, the last slope
    /// going on down to nothing. Source: PRACTICE, lithium from makers' statements, lead from memory.
    /// </remarks>
    public static double CapacityFraction(Chemistry chemistry, double batteryC)
    {
        (double atZero, double atTwentyBelow) = chemistry == Chemistry.Lithium ? (0.80, 0.70) : (0.85, 0.60);
        if (Guard.InRange(batteryC, -60, 80, "°C") >= 20) return 1;
        if (batteryC >= 0) return atZero + (1 - atZero) * batteryC / 20;
        if (chemistry == Chemistry.Lithium && batteryC < LithiumDrawFromC) return 0;
        return Math.Max(0, atZero + (atZero - atTwentyBelow) * batteryC / 20);
    }

    /// <summary>Of what is charged, what can be drawn again, fraction. Source: PRACTICE, lithium 0.95 to 0.98, lead 0.8 to 0.9, from memory.</summary>
    public static double ChargeFraction(Chemistry chemistry) => chemistry == Chemistry.Lithium ? 0.96 : 0.85;

    /// <summary>Most current it takes, as a ratio of its usable capacity, 1/h. Source: PRACTICE, from memory: lithium half its capacity; lead a fifth of its nominal one, of which half is usable.</summary>
    public static double MostChargePerHRatio(Chemistry chemistry) => chemistry == Chemistry.Lithium ? 0.5 : 0.4;

    /// <summary>Time in which what is missing would be filled at the current it takes when nearly full, h. Source: OURS: lithium takes all up to the last twentieth, lead falls off where a fifth of its nominal capacity is missing.</summary>
    public static double TaperH(Chemistry chemistry) => chemistry == Chemistry.Lithium ? 0.1 : 1;

    /// <summary>Mass for each usable ampere-hour, kg/Ah. Source: PRACTICE, lithium 10 to 12 kg for 100 Ah; lead 27 kg for 100 Ah nominal, half of it usable; from memory.</summary>
    public static double MassKgPerAh(Chemistry chemistry) => chemistry == Chemistry.Lithium ? 0.11 : 0.54;

    /// <summary>Specific heat, J/(kg·K). Source: PRACTICE, both about 1000, from memory.</summary>
    public const double SpecificHeatJPerKgK = 1000;

    /// <summary>Outer area.</summary>
    /// <param name="battery">The battery.</param>
    /// <returns>m²: 0.33 for 100 Ah of lithium (a block of 33 × 17 × 22 cm), 0.62 for lead of as much usable charge; growing with the two-thirds power of its capacity. Source: PRACTICE, from memory.</returns>
    public static double AreaM2(Battery battery) =>
        (battery.Chemistry == Chemistry.Lithium ? 0.33 : 0.62) * Math.Pow(battery.UsableAh / 100, 2.0 / 3);
}
