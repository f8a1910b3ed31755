using Thermal.Air;
using Thermal.Envelope;

namespace Thermal.Water;

/// <summary>A tank through time: temperature, ice, what its pad takes and what heat it gives to what is round it.</summary>
/// <remarks>One well-mixed temperature; the film as in the steady answers, the wall of the tank left out. See <see cref="ColdWater"/>.</remarks>
internal sealed class TankRun
{
    /// <summary>Share of its warmth above the tank that warm air led past it gives off, fraction. Source: OURS: air along one side, half of what a perfect exchange would take.</summary>
    internal const double WarmAirFraction = 0.5;

    private readonly Tank tank;
    private readonly ColdWater water;

    /// <param name="tank">The tank.</param>
    /// <param name="startC">Its water at the start, °C.</param>
    internal TankRun(Tank tank, double startC)
    {
        this.tank = tank;
        water = new(tank.WaterL, startC, Tank.PadOnC); // a litre of water as a kilogram
    }

    /// <summary>Its water, °C.</summary>
    internal double WaterC => water.TemperatureC;
    /// <summary>Share that is ice, fraction.</summary>
    internal double IceFraction => water.IceFraction;
    /// <summary>Taken by the pad in the last step, Wh.</summary>
    internal double PadWh { get; private set; }
    /// <summary>Given to the air round it (its zone, or outside) in the last step, J; negative where it took heat up.</summary>
    internal double GivenJ { get; private set; }
    /// <summary>Taken from the warm air of the living space in the last step, J.</summary>
    internal double FromWarmAirJ { get; private set; }
    /// <summary>Power that would have held +3 °C in the last step's surroundings, warm air counted, W.</summary>
    internal double HoldW { get; private set; }

    /// <summary>Goes through one step.</summary>
    /// <param name="stepS">Length, s.</param>
    /// <param name="roundC">Air of its zone, or outside, °C.</param>
    /// <param name="drivingMPerS">Driving speed, m/s; null parked. Only matters where it hangs in the open.</param>
    /// <param name="livingC">Air of the living space, °C.</param>
    /// <param name="airPressurePa">Air pressure, Pa.</param>
    /// <param name="hasPower">True where its pad has power.</param>
    internal void Step(double stepS, double roundC, double? drivingMPerS, double livingC, double airPressurePa, bool hasPower)
    {
        double film = tank.Zone is null ? SurfaceResistance.UnderFloorM2KPerW(drivingMPerS) : SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal);
        double lossWPerK = tank.AreaM2 / (tank.InsulationM2KPerW + film), airWPerK = 0;
        if (tank.WarmAirM3PerH > 0)
            airWPerK = WarmAirFraction * tank.WarmAirM3PerH / 3600 * MoistAir.DryAirDensityKgPerM3(livingC, 0, airPressurePa) * MoistAir.DryAirSpecificHeatJPerKgK;
        double allWPerK = lossWPerK + airWPerK, allC = (lossWPerK * roundC + airWPerK * livingC) / allWPerK, beforeJ = water.ContentJ;
        double padJ = water.Step(stepS, allWPerK, allC, hasPower ? tank.PadW : 0);
        // What it gave in all follows from its content; from that its mean difference, and so each part.
        double meanC = allC - (water.ContentJ - beforeJ - padJ) / stepS / allWPerK;
        PadWh = padJ / 3600;
        GivenJ = lossWPerK * (meanC - roundC) * stepS;
        FromWarmAirJ = airWPerK * (livingC - meanC) * stepS;
        HoldW = Math.Max(0, allWPerK * (Tank.PadOnC - allC));
    }
}
