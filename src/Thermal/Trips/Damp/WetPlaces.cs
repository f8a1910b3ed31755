namespace Thermal.Trips.Damp;

/// <summary>Places where water settles from the air of a room or dries off, in one stage.</summary>
internal sealed class WetPlaces(int count)
{
    /// <summary>Room whose air gets there, index.</summary>
    internal int[] Room { get; } = new int[count];
    /// <summary>Water carried per unit of humidity ratio, kg/s.</summary>
    internal double[] CarryKgPerS { get; } = new double[count];
    /// <summary>Humidity ratio at saturation there, kg/kg.</summary>
    internal double[] SaturatedKgPerKg { get; } = new double[count];
    /// <summary>Most that can dry off, kg/s: all that is there within the weight of the stage.</summary>
    internal double[] DriesAtMostKgPerS { get; } = new double[count];
    /// <summary>What settles (+) or dries off (−), kg/s.</summary>
    internal double[] RateKgPerS { get; } = new double[count];
    /// <summary>True where that follows the air; false where all there is dries off, and where dry stays dry.</summary>
    internal bool[] Follows { get; } = new bool[count];

    /// <summary>Number of places.</summary>
    internal int Count => count;
}
