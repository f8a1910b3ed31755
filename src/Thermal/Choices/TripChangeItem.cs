using Thermal.Trips;

namespace Thermal.Choices;

/// <summary>One change that was tried on a whole trip; figures are what it takes away, negative where it adds.</summary>
/// <param name="Change">What was changed.</param>
/// <param name="Where">Panels, tanks, openings or the zone it is about, in the builder's words.</param>
/// <param name="FuelAmount">Fuel for heating saved, in the heater's unit.</param>
/// <param name="MostWaterG">Off the most water on surfaces at once, g.</param>
/// <param name="RunOffG">Off what runs off, g.</param>
/// <param name="WetInsideG">Off the water inside build-ups at the end, g.</param>
/// <param name="ColdHoursCount">Cold hours fewer.</param>
/// <param name="FlatHoursCount">Hours of a flat battery fewer.</param>
/// <param name="IceFraction">Off the most ice in any tank or pipe, fraction.</param>
/// <param name="HotHoursCount">Hot hours fewer.</param>
/// <param name="HelpsFraction">Off the figure of the trip's worst finding, as a share of it: 1 takes it all away, fraction.</param>
public sealed record TripChangeItem(TripChange Change, string Where, double FuelAmount, double MostWaterG, double RunOffG, double WetInsideG,
    double ColdHoursCount, double FlatHoursCount, double IceFraction, double HotHoursCount, double HelpsFraction);

/// <summary>What trying changes on a trip found.</summary>
/// <param name="Items">Every change that makes a difference, the one that helps most against the worst finding first.</param>
/// <param name="WorstFinding">The finding it is judged by; null where the trip has none: then by fuel.</param>
/// <param name="Best">The one change that helps most; null where none takes away a twentieth of the worst finding.</param>
public sealed record TripAdvice(IReadOnlyList<TripChangeItem> Items, TripFinding? WorstFinding, TripChangeItem? Best);

/// <summary>The stated list of changes.</summary>
public enum TripChange
{
    /// <summary>Outside covers over all glass that has none at night.</summary>
    CoverOutside,
    /// <summary>Covers on as long as the vehicle is parked.</summary>
    CoversAlways,
    /// <summary>Curtain or door closed to the cab at night.</summary>
    CloseCurtain,
    /// <summary>Nights 2 K cooler.</summary>
    CoolerNights,
    /// <summary>Roof fan on above 60 % humidity; a small one where there is none.</summary>
    RunFan,
    /// <summary>Wet clothes dried elsewhere.</summary>
    DryElsewhere,
    /// <summary>20 mm more of the layer that insulates most in the roof.</summary>
    MoreInRoof,
    /// <summary>20 mm more in the walls.</summary>
    MoreInWalls,
    /// <summary>Double acrylic panes for single panes of the living space.</summary>
    DoubleGlazing,
    /// <summary>35 mm of foam round tanks outside the living space.</summary>
    WrapTanks,
    /// <summary>Heating pads of 60 W on tanks outside the living space without one.</summary>
    PadTanks,
    /// <summary>100 W more of solar panels, flat on the roof.</summary>
    MoreSun,
    /// <summary>100 Ah more of the same battery.</summary>
    MoreBattery,
    /// <summary>The battery moved into the living space.</summary>
    BatteryInside,
    /// <summary>The next smaller heater of its kind.</summary>
    SmallerHeater,
    /// <summary>The next larger heater of its kind.</summary>
    LargerHeater,
}
