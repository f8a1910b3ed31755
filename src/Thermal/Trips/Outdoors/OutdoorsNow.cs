namespace Thermal.Trips.Outdoors;

/// <summary>The outside at one moment. One object is refilled again and again: the caller owns it.</summary>
internal sealed class OutdoorsNow
{
    /// <summary>Air, °C.</summary>
    internal double AirC;
    /// <summary>Vapour pressure, Pa.</summary>
    internal double VapourPa;
    /// <summary>Wind at 10 m in the open, m/s.</summary>
    internal double WindMPerS;
    /// <summary>Radiant temperature of the sky, °C.</summary>
    internal double SkyC;
    /// <summary>Air pressure, Pa.</summary>
    internal double PressurePa;
    /// <summary>Step of the weather that it lies in, index: sun is the mean over it.</summary>
    internal int WeatherStep;
}
