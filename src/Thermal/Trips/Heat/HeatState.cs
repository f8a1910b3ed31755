namespace Thermal.Trips.Heat;

/// <summary>Temperatures of a body at one moment. Owned and changed by <see cref="HeatStepper"/>; others read.</summary>
internal sealed class HeatState
{
    /// <summary>Air of each room, °C.</summary>
    internal required double[] AirC { get; init; }
    /// <summary>Mean radiant temperature of each room, °C.</summary>
    internal required double[] RadiantC { get; init; }
    /// <summary>Furnishings of each room, °C.</summary>
    internal required double[] FurnishingC { get; init; }
    /// <summary>Inner face of each part, °C (of the glass itself behind an inside cover, where room air that gets past the cover settles).</summary>
    internal required double[] InnerFaceC { get; init; }
    /// <summary>Outer face of each part, °C.</summary>
    internal required double[] OuterFaceC { get; init; }
    /// <summary>Coldest inner line of each tie, °C; NaN where not known.</summary>
    internal required double[] TieColdestC { get; init; }
    /// <summary>Faces between the layers of each part that has layers, inside to outside (n + 1 of them), °C; empty otherwise.</summary>
    internal required double[][] LayerFacesC { get; init; }

    /// <summary>Operative temperature of a room, °C: mean of air and radiant.</summary>
    internal double OperativeC(int zone) => (AirC[zone] + RadiantC[zone]) / 2;
}
