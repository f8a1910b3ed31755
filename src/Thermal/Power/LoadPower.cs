namespace Thermal.Power;

/// <summary>Mean power of a load by its rhythm; all of it becomes heat where the load's heat stays.</summary>
public static class LoadPower
{
    /// <summary>Share of the time a fridge's compressor runs at 15 °C, fraction. Source: PRACTICE, a compressor fridge of 40 to 90 L, from memory.</summary>
    public const double FridgeAt15Fraction = 0.25;
    /// <summary>How much that rises for each kelvin of the room, ratio. Source: PRACTICE, 0.35 at 25 °C, from memory.</summary>
    public const double FridgePerKelvinRatio = 0.01;
    /// <summary>Least a fridge runs, fraction; the most is all the time. Source: OURS.</summary>
    public const double FridgeLeastFraction = 0.1;

    /// <summary>Mean power over a step.</summary>
    /// <param name="load">The load.</param>
    /// <param name="clockH">Begin of the step, clock hour, 0 to 24.</param>
    /// <param name="stepH">Length of the step, h, 0.001 to 24.</param>
    /// <param name="bedtimeH">Bedtime, clock hour, 0 to 24.</param>
    /// <param name="roomC">Air round it, °C, -60 to 80; only matters to a fridge.</param>
    /// <returns>W. Without evenings, hours a day are spread evenly over day and night; a fridge has no hours.</returns>
    public static double MeanW(Load load, double clockH, double stepH, double bedtimeH, double roomC) => load.PowerW * (load.Rhythm switch
    {
        LoadRhythm.Evenings => EveningFraction(load.HoursPerDay, Guard.InRange(clockH, 0, 24, "h"), Guard.InRange(stepH, 0.001, 24, "h"), Guard.InRange(bedtimeH, 0, 24, "h")),
        LoadRhythm.Fridge => FridgeFraction(roomC),
        _ => load.HoursPerDay / 24,
    });

    /// <summary>Share of the time a compressor fridge runs.</summary>
    /// <param name="roomC">Air round it, °C, -60 to 80.</param>
    /// <returns>Fraction: 0.25 at 15 °C and 0.01 more for each kelvin, from 0.1 (a fridge in the cold still starts now and then) to 1 (it cannot run more).</returns>
    public static double FridgeFraction(double roomC) =>
        Math.Clamp(FridgeAt15Fraction + FridgePerKelvinRatio * (Guard.InRange(roomC, -60, 80, "°C") - 15), FridgeLeastFraction, 1);

    private static double EveningFraction(double lastsH, double clockH, double stepH, double bedtimeH)
    {
        double sharedH = 0;
        for (int day = -1; day <= 2; day++) // an evening may reach over midnight, and so may the step
        {
            double endH = bedtimeH + 24 * day;
            sharedH += Math.Max(0, Math.Min(clockH + stepH, endH) - Math.Max(clockH, endH - lastsH));
        }
        return sharedH / stepH;
    }
}
