namespace Thermal.Trips.Damp;

/// <summary>What acts on the water at one stage, beside the <see cref="Heat.Drive"/>.</summary>
internal sealed class DampDrive(int roomCount)
{
    /// <summary>Humidity ratio outside, kg/kg.</summary>
    internal double OutsideRatioKgPerKg;
    /// <summary>Vapour pressure outside, Pa.</summary>
    internal double OutsidePa;
    /// <summary>Air pressure, Pa.</summary>
    internal double AirPressurePa;
    /// <summary>Vapour given off in each room, kg/s.</summary>
    internal double[] SourceKgPerS = new double[roomCount];
}
