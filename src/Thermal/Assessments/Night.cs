using Thermal.Climates;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>One steady night: temperatures and humidity of every zone, where the heat goes, where it gets wet.</summary>
public sealed record Night
{
    /// <summary>Outside.</summary>
    public required NightConditions Conditions { get; init; }
    /// <summary>Rooms, the living space first.</summary>
    public required IReadOnlyList<ZoneNight> Zones { get; init; }
    /// <summary>Heat to the outside part by part; they add up to <see cref="LossW"/>.</summary>
    public required IReadOnlyList<LossPart> Losses { get; init; }
    /// <summary>Heat the living space needs to hold its set-point, people's heat not counted, W.</summary>
    public required double LossW { get; init; }
    /// <summary>The same with its all-low and all-high runs, W.</summary>
    public required Between LossRangeW { get; init; }
    /// <summary>Relative humidity of the living space with its runs of least and most damp, fraction.</summary>
    public required Between HumidityRangeFraction { get; init; }
    /// <summary>Coldest inner surface of the living space with the covers in use, °C; low is the coldest run.</summary>
    public required Between ColdestRangeC { get; init; }
    /// <summary>Vapour given off inside, averaged over the hours at home, g/h.</summary>
    public required double VapourSourceGPerH { get; init; }
    /// <summary>Every inner surface: bare, behind things, glass in each state of its covers, at ribs.</summary>
    public required IReadOnlyList<SurfaceNight> Surfaces { get; init; }
    /// <summary>Carbon dioxide at dawn in the living space, ppm.</summary>
    public required double CarbonDioxideAtDawnPpm { get; init; }
}

/// <summary>One room on one night.</summary>
public sealed record ZoneNight
{
    /// <summary>Name.</summary>
    public required string Zone { get; init; }
    /// <summary>Operative temperature, °C.</summary>
    public required double TemperatureC { get; init; }
    /// <summary>Relative humidity by the ISO 13788 pair, fraction, not above 1 except as a stated excess.</summary>
    public required double RelativeHumidityFraction { get; init; }
    /// <summary>Vapour pressure, Pa.</summary>
    public required double VapourPressurePa { get; init; }
    /// <summary>Dew point (frost point below zero), °C.</summary>
    public required double DewPointC { get; init; }
    /// <summary>Air exchanged with the outside, m³/h.</summary>
    public required double OutsideAirM3PerH { get; init; }
    /// <summary>The same as air changes per hour.</summary>
    public required double AirChangesPerH { get; init; }
    /// <summary>Water settling on its cold surfaces and behind its linings, g/h.</summary>
    public required double SettlingGPerH { get; init; }
}

/// <summary>One part of the heat lost.</summary>
public sealed record LossPart
{
    /// <summary>Panel, opening, bridge or air exchange, in the builder's words.</summary>
    public required string Name { get; init; }
    /// <summary>The panel it belongs to; null for air.</summary>
    public string? Panel { get; init; }
    /// <summary>Kind of part.</summary>
    public required LossKind Kind { get; init; }
    /// <summary>Zone whose heat it is.</summary>
    public required string Zone { get; init; }
    /// <summary>Area, m²; 0 for bridges and air.</summary>
    public required double AreaM2 { get; init; }
    /// <summary>Heat lost per kelvin, W/K.</summary>
    public required double CoefficientWPerK { get; init; }
    /// <summary>Temperature difference that drives it, sky included, K.</summary>
    public required double DifferenceK { get; init; }
    /// <summary>Heat lost, W.</summary>
    public double LossW => CoefficientWPerK * DifferenceK;
}

/// <summary>Kinds of loss.</summary>
public enum LossKind
{
    /// <summary>Opaque panel between ribs.</summary>
    Panel,
    /// <summary>Window, roof light, door.</summary>
    Opening,
    /// <summary>Ribs, edges, bolts.</summary>
    Bridge,
    /// <summary>Air exchange with the outside.</summary>
    Air,
}

/// <summary>One inner surface on one night.</summary>
public sealed record SurfaceNight
{
    /// <summary>Where, in the builder's words, such as "left side, behind the clothes locker".</summary>
    public required string Name { get; init; }
    /// <summary>The panel it belongs to.</summary>
    public required string Panel { get; init; }
    /// <summary>Opening it belongs to; null for opaque.</summary>
    public string? Opening { get; init; }
    /// <summary>Kind of place.</summary>
    public required SurfaceKind Kind { get; init; }
    /// <summary>Name of the cover in place; null for none.</summary>
    public string? Cover { get; init; }
    /// <summary>False for a state of covers that is shown for comparison but not used on this night.</summary>
    public required bool InUse { get; init; }
    /// <summary>Zone whose air meets it.</summary>
    public required string Zone { get; init; }
    /// <summary>Area, m²; 0 where a rib's coldest line is meant.</summary>
    public required double AreaM2 { get; init; }
    /// <summary>Temperature with loss films, °C.</summary>
    public required double TemperatureC { get; init; }
    /// <summary>Relative humidity of the room's air cooled to that temperature, fraction; above 1 it gets wet.</summary>
    public required double SurfaceHumidityRatio { get; init; }
    /// <summary>Degrees to spare before it gets wet: temperature minus dew point, K; negative when wet.</summary>
    public required double ToSpareK { get; init; }
    /// <summary>Water settling, g/h over its whole area; 0 where dry and for lines.</summary>
    public required double SettlingGPerH { get; init; }
    /// <summary>True where what settles is frost.</summary>
    public required bool IsFrost { get; init; }
    /// <summary>Water settled in the night, g.</summary>
    public required double SettledG { get; init; }
}
