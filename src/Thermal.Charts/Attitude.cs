namespace Thermal.Charts;

/// <summary>How a build-up stands in the vehicle, and so how its cut is turned.</summary>
public enum Attitude
{
    /// <summary>A roof: sky above, room below.</summary>
    Roof,
    /// <summary>A floor: room above, road below.</summary>
    Floor,
    /// <summary>A side whose outside is at the left.</summary>
    OutsideLeft,
    /// <summary>A side whose outside is at the right.</summary>
    OutsideRight,
}
