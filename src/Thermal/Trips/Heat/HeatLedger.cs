namespace Thermal.Trips.Heat;

/// <summary>Heat that has flowed since the start, J; in − out − stored stays at rounding.</summary>
internal sealed class HeatLedger
{
    /// <summary>From the heater, J.</summary>
    internal double HeaterJ;
    /// <summary>Given to air and faces by the caller (people, cooking, loads, engine), J.</summary>
    internal double GivenJ;
    /// <summary>Sun taken up outside and inside, J.</summary>
    internal double SunJ;
    /// <summary>Heat of water settling less drying off, J.</summary>
    internal double LatentJ;
    /// <summary>Out through each part: films and longwave together, J.</summary>
    internal required double[] PartsOutJ { get; init; }
    /// <summary>Out through each tie, J.</summary>
    internal required double[] TiesOutJ { get; init; }
    /// <summary>Carried out by air of each room, J.</summary>
    internal required double[] AirOutJ { get; init; }
    /// <summary>More stored than at the start, J.</summary>
    internal double StoredJ;
    /// <summary>In − out − stored, J.</summary>
    internal double ClosureJ => HeaterJ + GivenJ + SunJ + LatentJ - PartsOutJ.Sum() - TiesOutJ.Sum() - AirOutJ.Sum() - StoredJ;
}
