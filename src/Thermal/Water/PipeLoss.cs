namespace Thermal.Water;

/// <summary>What a pipe holds and loses, and how long it keeps from freezing.</summary>
public static class PipeLoss
{
    // Cold water to 0.03 %. Source: ISO-10456, table 3, from memory.
    private const double WaterKgPerM3 = 1000;

    /// <summary>Water in a metre of it, kg/m.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pipe is not wider outside than inside.</exception>
    public static double WaterKgPerM(Pipe pipe)
    {
        Guard.InRange(pipe.OuterM, pipe.BoreM, 0.12, "m", nameof(pipe.OuterM));
        return WaterKgPerM3 * Math.PI * pipe.BoreM * pipe.BoreM / 4;
    }

    /// <summary>Loss of a metre of it for each kelvin.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="filmM2KPerW">Resistance between its outer face and the air, m²·K/W, 0.001 to 1.</param>
    /// <returns>W/(m·K); the pipe's own wall left out.</returns>
    /// <remarks>1/(ln(D/d)/(2πλ) + R/(πD)). The films of flat faces are used; round a thin pipe exchange is up to half as much again, so a bare pipe freezes a little sooner. Source: ISO-12241, cylinders (from memory).</remarks>
    public static double WPerMK(Pipe pipe, double filmM2KPerW)
    {
        double outerM = pipe.OuterM + 2 * pipe.InsulationM;
        return 1 / (Math.Log(outerM / pipe.OuterM) / (2 * Math.PI * pipe.InsulationWPerMK) + Guard.InRange(filmM2KPerW, 0.001, 1, "m²·K/W") / (Math.PI * outerM));
    }
}
