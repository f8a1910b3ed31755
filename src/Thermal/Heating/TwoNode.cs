namespace Thermal.Heating;

/// <summary>A room as two heat stores: its air, and everything that warms slowly. Closed form for constant heat.</summary>
/// <param name="AirJPerK">Heat stored by the air and what follows it at once, J/K, over 0.</param>
/// <param name="MassJPerK">Heat stored by furniture and linings, J/K, over 0.</param>
/// <param name="AirToMassWPerK">Exchange between both, W/K, over 0.</param>
/// <param name="AirToOutsideWPerK">Air exchange and glass, W/K, 0 or more.</param>
/// <param name="MassToOutsideWPerK">Through the build-ups, W/K, 0 or more; both losses together over 0.</param>
/// <remarks>Linear second-order system with constant coefficients; eigenvalues are real and negative for any positive data.</remarks>
public sealed record TwoNode(double AirJPerK, double MassJPerK, double AirToMassWPerK, double AirToOutsideWPerK, double MassToOutsideWPerK)
{
    /// <summary>Heat lost per kelvin in the long run, W/K.</summary>
    public double SteadyWPerK => AirToOutsideWPerK + 1 / (1 / AirToMassWPerK + (MassToOutsideWPerK > 0 ? 1 / MassToOutsideWPerK : double.PositiveInfinity));

    /// <summary>Air and mass above the outside after some time, starting from given values, with constant heat into the air.</summary>
    /// <param name="hours">Time, h, 0 or more.</param>
    /// <param name="heatW">Heat into the air, W.</param>
    /// <param name="airStartK">Air above outside at the start, K.</param>
    /// <param name="massStartK">Mass above outside at the start, K.</param>
    /// <returns>Air and mass above the outside, K.</returns>
    public (double AirK, double MassK) After(double hours, double heatW, double airStartK = 0, double massStartK = 0)
    {
        double airSteady = heatW / SteadyWPerK;
        double massSteady = airSteady * AirToMassWPerK / (AirToMassWPerK + MassToOutsideWPerK);
        double a = -(AirToMassWPerK + AirToOutsideWPerK) / AirJPerK, b = AirToMassWPerK / AirJPerK;
        double c = AirToMassWPerK / MassJPerK, d = -(AirToMassWPerK + MassToOutsideWPerK) / MassJPerK;
        double root = Math.Sqrt((a - d) * (a - d) + 4 * b * c);
        // The slow root as determinant over the fast one: free of cancellation when both are far apart.
        double fast = (a + d - root) / 2, slow = (a * d - b * c) / fast;
        double air = airStartK - airSteady, mass = massStartK - massSteady;
        double seconds = Guard.InRange(hours, 0, 1e6, "h") * 3600, ef = Math.Exp(fast * seconds), es = Math.Exp(slow * seconds);
        // exp(At) = [ (A − slow)·e^fast − (A − fast)·e^slow ] / (fast − slow), Sylvester's formula for two distinct roots.
        double f = ef / (fast - slow), s = es / (fast - slow);
        return (airSteady + f * ((a - slow) * air + b * mass) - s * ((a - fast) * air + b * mass),
            massSteady + f * (c * air + (d - slow) * mass) - s * (c * air + (d - fast) * mass));
    }

    /// <summary>Heat that lifts the air by a difference in a given time from a cold start.</summary>
    /// <param name="differenceK">Difference to the outside, K, 0 to 100.</param>
    /// <param name="hours">Time, h, 0.01 to 1000.</param>
    /// <returns>W; always more than the steady loss.</returns>
    public double WarmUpW(double differenceK, double hours) =>
        Guard.InRange(differenceK, 0, 100, "K") / After(Guard.InRange(hours, 0.01, 1000, "h"), 1).AirK;

    /// <summary>Time a constant heat takes to lift the air by a difference from a cold start.</summary>
    /// <param name="differenceK">Difference to the outside, K, 0 to 100.</param>
    /// <param name="heatW">Heat, W, 0 to 1e6.</param>
    /// <returns>h; null when it never gets there, or not within 1000 h.</returns>
    public double? WarmUpH(double differenceK, double heatW)
    {
        double low = 0, high = 1000;
        Guard.InRange(differenceK, 0, 100, "K");
        Guard.InRange(heatW, 0, 1e6, "W");
        if (After(high, heatW).AirK < differenceK) return null;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (After(middle, heatW).AirK < differenceK) low = middle; else high = middle;
        }
        return high;
    }
}
