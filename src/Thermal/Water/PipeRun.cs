using Thermal.Envelope;

namespace Thermal.Water;

/// <summary>A pipe of standing water through time.</summary>
/// <remarks>The pipe's own wall is left out, water runs its whole length; what it gives to its zone is too little to count. See <see cref="ColdWater"/>.</remarks>
internal sealed class PipeRun
{
    private readonly Pipe pipe;
    private readonly ColdWater water;

    /// <param name="pipe">The pipe.</param>
    /// <param name="startC">Its water at the start, °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pipe is not wider outside than inside.</exception>
    internal PipeRun(Pipe pipe, double startC)
    {
        this.pipe = pipe;
        water = new(PipeLoss.WaterKgPerM(pipe) * pipe.LengthM, startC, Tank.PadOnC);
    }

    /// <summary>Its water, °C.</summary>
    internal double WaterC => water.TemperatureC;
    /// <summary>Share that is ice, fraction.</summary>
    internal double IceFraction => water.IceFraction;

    /// <summary>Goes through one step.</summary>
    /// <param name="stepS">Length, s.</param>
    /// <param name="roundC">Air of its zone, or outside, °C.</param>
    /// <param name="drivingMPerS">Driving speed, m/s; null parked. Only matters where it runs in the open.</param>
    internal void Step(double stepS, double roundC, double? drivingMPerS)
    {
        double film = pipe.Zone is null ? SurfaceResistance.UnderFloorM2KPerW(drivingMPerS) : SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal);
        water.Step(stepS, PipeLoss.WPerMK(pipe, film) * pipe.LengthM, roundC, 0);
    }
}
