namespace Thermal.Trips.Living;

/// <summary>What people do in one step, as means over it. One object is refilled again and again: the caller owns it.</summary>
internal sealed class Doings
{
    /// <summary>True where people are in, in the middle of the step.</summary>
    internal bool IsHome;
    /// <summary>True where they are asleep then.</summary>
    internal bool IsAsleep;
    /// <summary>True while driving.</summary>
    internal bool IsDriving;
    /// <summary>True from dusk, once people are in, to getting up.</summary>
    internal bool IsShut;
    /// <summary>True where covers are on.</summary>
    internal bool CoversOn;
    /// <summary>True while cooking and showering, and half an hour after.</summary>
    internal bool IsWetWork;
    /// <summary>Wanted in the living space, °C; NaN: heater off.</summary>
    internal double WantedC;
    /// <summary>Sensible heat of people, W.</summary>
    internal double PeopleW;
    /// <summary>Vapour of people and pets, kg/s.</summary>
    internal double PeopleKgPerS;
    /// <summary>Carbon dioxide of people and flame, m³/s.</summary>
    internal double CarbonDioxideM3PerS;
    /// <summary>Heat of cooking left for the air, W: what boils the steam goes with it.</summary>
    internal double CookingW;
    /// <summary>Heat of the flame, or of an electric cooker, W.</summary>
    internal double FlameW;
    /// <summary>Vapour of pans and flame, kg/s.</summary>
    internal double CookingKgPerS;
    /// <summary>Vapour of showers, kg/s.</summary>
    internal double ShowersKgPerS;
    /// <summary>Warm water drawn, L/s.</summary>
    internal double WarmWaterLPerS;
    /// <summary>Vapour of things hung up to dry, kg/s.</summary>
    internal double DryingKgPerS;

    /// <summary>All vapour, kg/s.</summary>
    internal double VapourKgPerS => PeopleKgPerS + CookingKgPerS + ShowersKgPerS + DryingKgPerS;
}
