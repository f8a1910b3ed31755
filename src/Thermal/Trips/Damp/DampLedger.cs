namespace Thermal.Trips.Damp;

/// <summary>Water that has flowed since the start, kg; sources − out − left stays at rounding.</summary>
internal sealed class DampLedger
{
    /// <summary>Given off in the rooms, kg.</summary>
    internal double SourceKg;
    /// <summary>Carried out by air, net, kg.</summary>
    internal double AiredKg;
    /// <summary>Out through build-ups, kg.</summary>
    internal double ThroughSkinKg;
    /// <summary>Run off, kg.</summary>
    internal double RunOffKg;
    /// <summary>More on faces than at the start, kg.</summary>
    internal double OnFacesKg;
    /// <summary>More inside build-ups than at the start, kg.</summary>
    internal double InBuildUpsKg;
    /// <summary>More in textiles and linings than at the start, kg.</summary>
    internal double InTextilesKg;
    /// <summary>More in the air than at the start, kg.</summary>
    internal double InAirKg;
    /// <summary>What is left over, kg.</summary>
    internal double ClosureKg => SourceKg - AiredKg - ThroughSkinKg - RunOffKg - OnFacesKg - InBuildUpsKg - InTextilesKg - InAirKg;
}
