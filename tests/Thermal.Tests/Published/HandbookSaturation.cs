namespace Thermal.Tests.Published;

/// <summary>The handbook's own saturation pressure, needed only inside its examples: the job uses another pair of curves.</summary>
/// <remarks>Source: ASHRAE-F (2017), chapter 1, eq. 5 over ice and eq. 6 over water; T in kelvin, result in pascal.</remarks>
internal static class HandbookSaturation
{
    private const double C1 = -5.6745359E+03, C2 = 6.3925247, C3 = -9.6778430E-03, C4 = 6.2215701E-07, C5 = 2.0747825E-09, C6 = -9.4840240E-13, C7 = 4.1635019;
    private const double C8 = -5.8002206E+03, C9 = 1.3914993, C10 = -4.8640239E-02, C11 = 4.1764768E-05, C12 = -1.4452093E-08, C13 = 6.5459673;

    internal static double PressurePa(double temperatureC)
    {
        double t = temperatureC + 273.15;
        return temperatureC < 0
            ? Math.Exp(C1 / t + C2 + t * (C3 + t * (C4 + t * (C5 + t * C6))) + C7 * Math.Log(t))
            : Math.Exp(C8 / t + C9 + t * (C10 + t * (C11 + t * C12)) + C13 * Math.Log(t));
    }
}
