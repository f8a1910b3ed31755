namespace Thermal.Moisture;

/// <summary>How much more vapour is indoors than outdoors, by use: five classes.</summary>
/// <remarks>
/// 1 stores; 2 dry offices; 3 homes lived in by few; 4 homes lived in by many, kitchens; 5 laundries, pools. A lived-in van is mostly 4 or 5.
/// Source: ISO-13788, annex on humidity classes, from memory; the graph in BYG601G agrees.
/// </remarks>
public static class HumidityClass
{
    /// <summary>Excess of one class at and below 0 °C outside, Pa. Source: ISO-13788, annex on humidity classes, from memory.</summary>
    public const double StepPa = 270;

    /// <summary>Outside temperature from which nothing is added, °C. Source: ISO-13788, annex on humidity classes, from memory.</summary>
    public const double NoExcessFromC = 20;

    /// <summary>Vapour pressure inside less that outside, at the upper limit of a class.</summary>
    /// <param name="humidityClass">Class, 1 to 5.</param>
    /// <param name="outsideC">Monthly mean outside, °C, -60 to 60.</param>
    /// <returns>Excess Δp, Pa: 270 a class up to 0 °C, falling in a straight line to nothing at 20 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, or NaN.</exception>
    /// <remarks>
    /// The source leaves class 5 open upwards; one more step is chosen by us (1350 Pa).
    /// Source: ISO-13788, annex on humidity classes, from memory.
    /// </remarks>
    public static double ExcessPa(int humidityClass, double outsideC)
    {
        double stepsPa = StepPa * Guard.InRange(humidityClass, 1, 5, "(class)");
        return Guard.InRange(outsideC, -60, 60, "°C") switch
        {
            <= 0 => stepsPa,
            >= NoExcessFromC => 0,
            double mildC => stepsPa * (1 - mildC / NoExcessFromC),
        };
    }
}
