namespace Thermal.Trips;

/// <summary>A trip hour by hour: entry i is the mean over hour i, or its end where it says so. Columns have one length.</summary>
public sealed record TripHours
{
    /// <summary>Begin of the first hour, local standard time.</summary>
    public required DateTime StartLocal { get; init; }
    /// <summary>Leg of each hour, index (that at its begin).</summary>
    public required IReadOnlyList<int> Legs { get; init; }
    /// <summary>Rooms, in the vehicle's order.</summary>
    public required IReadOnlyList<RoomHours> Rooms { get; init; }
    /// <summary>Outside air, °C.</summary>
    public required IReadOnlyList<double> OutsideC { get; init; }
    /// <summary>Radiant temperature of the sky, °C.</summary>
    public required IReadOnlyList<double> SkyC { get; init; }
    /// <summary>Air past the vehicle: wind or driving, m/s.</summary>
    public required IReadOnlyList<double> AirPastMPerS { get; init; }
    /// <summary>Sun and sky light on the flat, W/m².</summary>
    public required IReadOnlyList<double> SunOnFlatWPerM2 { get; init; }
    /// <summary>Wanted in the living space, °C; NaN while the heater is off.</summary>
    public required IReadOnlyList<double> WantedC { get; init; }
    /// <summary>Operative temperature of the living space, °C.</summary>
    public required IReadOnlyList<double> OperativeC { get; init; }
    /// <summary>Carbon dioxide in the living space, ppm.</summary>
    public required IReadOnlyList<double> CarbonDioxidePpm { get; init; }
    /// <summary>Heat from the heater, W.</summary>
    public required IReadOnlyList<double> HeaterW { get; init; }
    /// <summary>Starts of the heater in the hour.</summary>
    public required IReadOnlyList<double> StartsCount { get; init; }
    /// <summary>Fuel of heater and hot water burnt, in its unit (L, kg or kWh).</summary>
    public required IReadOnlyList<double> FuelAmount { get; init; }
    /// <summary>Current drawn by everything on board, A at 12.8 V.</summary>
    public required IReadOnlyList<double> DrawnA { get; init; }
    /// <summary>Current charged from sun, alternator and shore, A at 12.8 V.</summary>
    public required IReadOnlyList<double> ChargedA { get; init; }
    /// <summary>Charge at the end of the hour, fraction of usable; empty without a battery.</summary>
    public required IReadOnlyList<double> ChargeFraction { get; init; }
    /// <summary>The battery, °C; empty without one.</summary>
    public required IReadOnlyList<double> BatteryC { get; init; }
    /// <summary>Water or frost on glass and frames at the end of the hour, all rooms, g.</summary>
    public required IReadOnlyList<double> OnGlassG { get; init; }
    /// <summary>Of that, frost, g.</summary>
    public required IReadOnlyList<double> FrostOnGlassG { get; init; }
    /// <summary>Water on linings, leaves and ribs at the end of the hour, g.</summary>
    public required IReadOnlyList<double> OnLiningsG { get; init; }
    /// <summary>Water inside the build-ups at the end of the hour, g.</summary>
    public required IReadOnlyList<double> InBuildUpsG { get; init; }
    /// <summary>Panels: inner faces, in the order of the vehicle.</summary>
    public required IReadOnlyList<PanelHours> Panels { get; init; }
    /// <summary>Tanks, in the order of the case.</summary>
    public required IReadOnlyList<TankHours> Tanks { get; init; }

    /// <summary>Number of hours.</summary>
    public int Count => OutsideC.Count;
}

/// <summary>One room by the hour.</summary>
/// <param name="Zone">Its name.</param>
/// <param name="AirC">Air, °C.</param>
/// <param name="HumidityFraction">Relative humidity over water, fraction.</param>
/// <param name="VapourPa">Vapour pressure, Pa.</param>
/// <param name="OutsideAirM3PerH">Outside air that comes in, m³/h.</param>
/// <param name="ColdestC">Coldest inner surface or rib, °C.</param>
public sealed record RoomHours(string Zone, IReadOnlyList<double> AirC, IReadOnlyList<double> HumidityFraction, IReadOnlyList<double> VapourPa,
    IReadOnlyList<double> OutsideAirM3PerH, IReadOnlyList<double> ColdestC);

/// <summary>One panel by the hour.</summary>
/// <param name="Panel">Its name.</param>
/// <param name="InnerC">Inner face of the bare lining, °C.</param>
/// <param name="OuterC">Outer face of the skin, °C.</param>
public sealed record PanelHours(string Panel, IReadOnlyList<double> InnerC, IReadOnlyList<double> OuterC);

/// <summary>One tank by the hour.</summary>
/// <param name="Name">Its name.</param>
/// <param name="WaterC">Its water, °C.</param>
/// <param name="IceFraction">Share that is ice, fraction.</param>
/// <param name="PadW">Its pad, W.</param>
public sealed record TankHours(string Name, IReadOnlyList<double> WaterC, IReadOnlyList<double> IceFraction, IReadOnlyList<double> PadW);
