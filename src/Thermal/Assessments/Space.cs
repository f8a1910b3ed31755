namespace Thermal.Assessments;

/// <summary>Room left and weight added.</summary>
/// <param name="HeadroomM">Bare height minus floor and roof build-ups inside the skin, m; null where the vehicle has no dimensions.</param>
/// <param name="InnerWidthM">Bare width minus both sides' build-ups, m; null where it has none.</param>
/// <param name="BuildUpMassKg">Mass of all build-ups, skins included, kg.</param>
/// <param name="LiningMassKg">Mass of what is added inside the skins, kg.</param>
public sealed record Space(double? HeadroomM, double? InnerWidthM, double BuildUpMassKg, double LiningMassKg);

/// <summary>Mean transmittance of the body.</summary>
/// <param name="MeanKWPerM2K">K = W/(S·ΔT) without air exchange, cab included, W/(m²·K).</param>
/// <param name="MeanAreaM2">S = √(S_i·S_e), m².</param>
/// <remarks>Source: ATP, annex 1, appendix 2. Marks of insulated bodies: 0.70 normally, 0.40 heavily insulated; not a camper's target.</remarks>
public sealed record MeanK(double MeanKWPerM2K, double MeanAreaM2);

/// <summary>Air that keeps the wanted humidity.</summary>
/// <param name="AirM3PerH">Outside air needed, m³/h; null when no amount does it.</param>
/// <param name="HeatW">Heat that air costs, W; null with it.</param>
/// <param name="NowM3PerH">Outside air the living space has now, m³/h.</param>
/// <param name="AimFraction">Humidity aimed at, fraction.</param>
public sealed record AirNeeded(double? AirM3PerH, double? HeatW, double NowM3PerH, double AimFraction);

/// <summary>One tank on the cold night.</summary>
/// <param name="Name">The tank.</param>
/// <param name="SurroundingsC">Air round it, °C.</param>
/// <param name="HoursToZeroH">Hours from 10 °C to 0 °C; null when it never gets there.</param>
/// <param name="HoursToTenPercentIceH">Further hours until a tenth is ice; null when never.</param>
/// <param name="HoldW">Power that holds +3 °C, W.</param>
/// <param name="PadIsEnough">True where the pad gives that power, or none is needed.</param>
public sealed record TankAnswer(string Name, double SurroundingsC, double? HoursToZeroH, double? HoursToTenPercentIceH, double HoldW, bool PadIsEnough);

/// <summary>Something a person should know; the sentence is made by the words.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Where">Panel, opening, layer or zone in the builder's words.</param>
/// <param name="FigureInItsUnit">The figure that goes with it, in the unit the kind says; 0 where none does.</param>
public sealed record Finding(FindingKind Kind, string Where, double FigureInItsUnit = 0);

/// <summary>Kinds of finding, worst first.</summary>
public enum FindingKind
{
    /// <summary>The heater does not hold the set-point; the figure is the missing power, W.</summary>
    HeaterTooSmall,
    /// <summary>Carbon dioxide at dawn above 2000 ppm; the figure is ppm.</summary>
    StaleAir,
    /// <summary>Fixed vents smaller than the usual safety figures; the figure is the missing area, m².</summary>
    VentsTooSmall,
    /// <summary>A build-up stays wet; the figure is the peak, g/m².</summary>
    StaysWet,
    /// <summary>Water is trapped between two tight planes that air can reach.</summary>
    WaterTrapped,
    /// <summary>A described detail was not solved as closely as asked; the figure is how much its flow changed when every cell was halved, fraction.</summary>
    DetailNotConverged,
    /// <summary>A given ψ or χ belongs to another build-up.</summary>
    StaleBridge,
    /// <summary>A given ψ or χ does not say which build-up it belongs to.</summary>
    BridgeWithoutBuildUp,
    /// <summary>Frost at a rib or bolt on the cold night; the figure is how far its coldest inner point is below the frost point, K.</summary>
    BridgeFrosts,
    /// <summary>Dew at a rib or bolt on the cold night; the figure is how far its coldest inner point is below the dew point, K.</summary>
    BridgeDrips,
    /// <summary>Mould: a surface above 80 % by the month's mean; the figure is that humidity, fraction.</summary>
    Mould,
    /// <summary>No air exchange keeps the humidity wanted on the mild night.</summary>
    NotByVentilating,
    /// <summary>A tank freezes in the night; the figure is hours to 0 °C.</summary>
    TankFreezes,
    /// <summary>Diesel may wax at this temperature; the figure is °C.</summary>
    DieselWaxes,
    /// <summary>Butane gives no gas at this temperature; the figure is °C.</summary>
    ButaneDoesNotBoil,
    /// <summary>The battery does not last the night; the figure is the charge drawn, Ah.</summary>
    BatteryTooSmall,
    /// <summary>The heater cycles on the mild night; the figure is starts a night.</summary>
    HeaterCycles,
    /// <summary>Upper and lower limit of the combined method lie more than a factor 1.5 apart; the figure is the factor.</summary>
    LimitsFarApart,
    /// <summary>A panel is given by area alone.</summary>
    AreaAlone,
    /// <summary>The design temperature is an estimate; the figure is ± K.</summary>
    DesignEstimated,
    /// <summary>Months' humidity is an estimate.</summary>
    HumidityEstimated,
}
