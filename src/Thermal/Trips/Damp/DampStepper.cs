using Thermal.Trips.Heat;

namespace Thermal.Trips.Damp;

/// <summary>Water in the air of the rooms, on their faces, in textiles and linings, and inside the build-ups, in step with the heat.</summary>
/// <remarks>
/// Same scheme and stages as <see cref="HeatStepper"/>; a stage is done after that of the heat, with its temperatures. Water settles where
/// the room's humidity ratio is above that of saturation at the face (over ice below 0 °C), dries off while there is any; no more dries than is
/// there. Inside the build-ups an account at rest is taken once an hour with the temperatures of the hour. Nothing is allocated in a stage.
/// </remarks>
internal sealed class DampStepper
{
    /// <param name="body">The body.</param>
    /// <param name="startRatioKgPerKg">Humidity ratio of all rooms at the start, kg/kg; textiles are in balance with it.</param>
    /// <param name="startC">Temperature of everything at the start, °C.</param>
    /// <param name="airPressurePa">Air pressure, Pa.</param>
    internal DampStepper(Body body, double startRatioKgPerKg, double startC, double airPressurePa) => throw new NotImplementedException();

    /// <summary>Does one stage and sets the heat of water in the drive for the next.</summary>
    internal void Stage(int stage, double stepS, HeatState heat, Drive drive, DampDrive damp) => throw new NotImplementedException();

    /// <summary>Closes an hour: wetting and drying inside the build-ups with the mean temperatures and vapour of the hour.</summary>
    internal void CloseHour() => throw new NotImplementedException();

    /// <summary>Humidity ratio of each room, kg/kg.</summary>
    internal double[] RatioKgPerKg => throw new NotImplementedException();
    /// <summary>Liquid water on the inner face of each part, kg.</summary>
    internal double[] LiquidKg => throw new NotImplementedException();
    /// <summary>Frost on it, kg.</summary>
    internal double[] FrostKg => throw new NotImplementedException();
    /// <summary>What has flowed since the start.</summary>
    internal DampLedger Ledger => throw new NotImplementedException();
}
