using Thermal.Air;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;

namespace Thermal.Tests;

/// <summary>What tests of moving water share: whole steps of heat and water, and rooms whose temperatures are held by hand.</summary>
internal static class MovingDamp
{
    /// <summary>Air pressure of the bodies cut at sea level, Pa.</summary>
    internal const double SeaPa = 101_325;

    /// <summary>Heat and water in step, an hour closed each time one is full.</summary>
    internal static void Run(HeatStepper heat, DampStepper damp, Drive drive, DampDrive vapour, int steps, double stepS, Action? after = null)
    {
        double passedS = 0;
        for (int i = 0; i < steps; i++)
        {
            for (int stage = 0; stage < 2; stage++)
            {
                heat.Stage(stage, stepS, drive);
                damp.Stage(stage, stepS, heat.State, drive, vapour);
            }
            passedS += stepS;
            if (passedS >= 3600)
            {
                damp.CloseHour();
                passedS = 0;
            }
            after?.Invoke();
        }
    }

    /// <summary>Water alone, at temperatures that stay as they are.</summary>
    internal static DampStepper Run(this DampStepper damp, HeatState held, Drive drive, DampDrive vapour, int steps, double stepS)
    {
        for (int i = 0; i < steps; i++)
            for (int stage = 0; stage < 2; stage++) damp.Stage(stage, stepS, held, drive, vapour);
        return damp;
    }

    /// <summary>Outside air of a given vapour pressure.</summary>
    internal static DampDrive Outside(Body body, double vapourPa, double airPressurePa = SeaPa) => new(body.Rooms.Length)
    {
        OutsidePa = vapourPa,
        OutsideRatioKgPerKg = MoistAir.HumidityRatioKgPerKg(vapourPa, airPressurePa),
        AirPressurePa = airPressurePa,
    };

    /// <summary>Dry air of a room, kg: the gas law at 10 °C, written anew here.</summary>
    internal static double DryAirKg(double volumeM3) => volumeM3 * SeaPa / (287.042 * 283.15);

    /// <summary>A sheet that takes up water.</summary>
    internal static SolidLayer Sorbing(double thicknessM, double resistanceFactor = 50, double densityKgPerM3 = 500, double at80Fraction = 0.12) => Sketches.Sheet(thicknessM, 0.13, "wood") with
    {
        Material = Sketches.Of(0.13, MaterialGroup.Wood) with
        {
            DensityKgPerM3 = Sketches.Exactly(densityKgPerM3),
            VapourResistanceFactor = Sketches.Exactly(resistanceFactor),
            SorptionAt80Fraction = Sketches.Exactly(at80Fraction),
        },
    };

    /// <summary>A sheet of steel.</summary>
    internal static SolidLayer Steel => Sketches.Sheet(0.001, 50, "steel") with { Material = Sketches.Of(50, MaterialGroup.Metal) with { DensityKgPerM3 = Sketches.Exactly(7800), SpecificHeatJPerKgK = Sketches.Exactly(450) } };
}
