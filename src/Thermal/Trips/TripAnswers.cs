using Thermal.Zones;

namespace Thermal.Trips;

/// <summary>One day of a trip by the calendar.</summary>
/// <param name="Date">The day.</param>
/// <param name="HoursCount">Hours of it that belong to the trip.</param>
/// <param name="OutsideLowC">Lowest outside, °C.</param>
/// <param name="OutsideHighC">Highest outside, °C.</param>
/// <param name="OperativeLowC">Coolest in the living space with people in, °C; null with nobody in.</param>
/// <param name="HumidityHighFraction">Highest hourly humidity of the living space, fraction.</param>
/// <param name="WettestG">Most water on surfaces at once, g.</param>
/// <param name="HeaterWh">Heat from the heater, Wh.</param>
/// <param name="FuelAmount">Fuel of heater and hot water, in its unit.</param>
/// <param name="DrawnAh">Drawn from the battery, Ah.</param>
/// <param name="ChargedAh">Charged, Ah.</param>
/// <param name="ChargeLowFraction">Lowest charge, fraction; null without a battery.</param>
/// <param name="TankLowC">Coldest tank, °C; null without tanks.</param>
public sealed record TripDay(DateOnly Date, int HoursCount, double OutsideLowC, double OutsideHighC, double? OperativeLowC, double HumidityHighFraction,
    double WettestG, double HeaterWh, double FuelAmount, double DrawnAh, double ChargedAh, double? ChargeLowFraction, double? TankLowC);

/// <summary>Heat of the whole trip, Wh; in and stored and out add up.</summary>
/// <param name="HeaterWh">From the heater.</param>
/// <param name="PeopleWh">From people, cooking, lamps and loads.</param>
/// <param name="EngineWh">From the engine.</param>
/// <param name="SunWh">Sun taken up by paint and through glass.</param>
/// <param name="WaterWh">Heat of water that settled less that of water that dried off, tanks included.</param>
/// <param name="Out">Heat that left, part by part, largest first.</param>
/// <param name="StoredWh">More stored at the end than at the start.</param>
/// <param name="ClosureWh">What is left over: in − out − stored. Rounding only.</param>
public sealed record HeatBook(double HeaterWh, double PeopleWh, double EngineWh, double SunWh, double WaterWh, IReadOnlyList<NamedHeat> Out, double StoredWh, double ClosureWh);

/// <summary>Heat by name.</summary>
/// <param name="Name">Panel, opening, ribs or air exchange, in the builder's words.</param>
/// <param name="Wh">Heat, Wh.</param>
public sealed record NamedHeat(string Name, double Wh);

/// <summary>Water of the whole trip, g; sources = gone out + still on board + run off.</summary>
/// <param name="PeopleG">From people and pets.</param>
/// <param name="CookingG">From cooking with its flame.</param>
/// <param name="ShowersG">From showers.</param>
/// <param name="DryingG">From things hung up to dry.</param>
/// <param name="AiredG">Carried out by air exchange, net.</param>
/// <param name="ThroughSkinG">Out through build-ups.</param>
/// <param name="RunOffG">Ran off glass and skin: to be wiped, or in the sill.</param>
/// <param name="OnSurfacesG">Left on surfaces at the end, above the start.</param>
/// <param name="InBuildUpsG">Left inside build-ups at the end, above the start.</param>
/// <param name="InTextilesG">Left in linings, bedding and wood at the end, above the start.</param>
/// <param name="InAirG">Left in the air at the end, above the start.</param>
/// <param name="ClosureG">What is left over. Rounding only.</param>
public sealed record WaterBook(double PeopleG, double CookingG, double ShowersG, double DryingG, double AiredG, double ThroughSkinG, double RunOffG,
    double OnSurfacesG, double InBuildUpsG, double InTextilesG, double InAirG, double ClosureG);

/// <summary>Fuel, current and charge of the whole trip.</summary>
/// <param name="HeatingFuelAmount">Burnt to heat, in the heater's unit.</param>
/// <param name="HotWaterFuelAmount">Burnt to heat water, in the heater's unit.</param>
/// <param name="CookingFuelAmount">Burnt by the cooker, in its unit.</param>
/// <param name="StartsCount">Starts of the heater.</param>
/// <param name="DrawnAh">Drawn by everything on board.</param>
/// <param name="Draws">The same by what drew it, largest first.</param>
/// <param name="SunAh">Charged by the sun.</param>
/// <param name="AlternatorAh">Charged while driving.</param>
/// <param name="ShoreAh">Charged from shore.</param>
/// <param name="RefusedAh">Charge offered to a battery below 0 °C and not taken.</param>
/// <param name="LowestChargeFraction">Lowest charge; null without a battery.</param>
/// <param name="FlatAtLocal">First hour it was flat; null never.</param>
/// <param name="FlatHoursCount">Hours it was flat, and heater and fans off for it.</param>
/// <param name="ShortHoursCount">Hours the heater ran at its highest and it stayed over 1 K colder than wanted.</param>
public sealed record TripEnergy(double HeatingFuelAmount, double HotWaterFuelAmount, double CookingFuelAmount, double StartsCount, double DrawnAh, IReadOnlyList<NamedCharge> Draws,
    double SunAh, double AlternatorAh, double ShoreAh, double RefusedAh, double? LowestChargeFraction, DateTime? FlatAtLocal, double FlatHoursCount, double ShortHoursCount);

/// <summary>Charge by name.</summary>
/// <param name="Name">Heater, fan, fridge, pad …</param>
/// <param name="Ah">Charge, Ah at 12.8 V.</param>
public sealed record NamedCharge(string Name, double Ah);

/// <summary>A surface or cold side that got wet.</summary>
/// <param name="Name">Where, in the builder's words.</param>
/// <param name="Panel">Its panel.</param>
/// <param name="Kind">Kind of place.</param>
/// <param name="AreaM2">Area, m².</param>
/// <param name="MostG">Most water and frost on it at once, g.</param>
/// <param name="MostAtLocal">When.</param>
/// <param name="MostFrostG">Most frost at once, g.</param>
/// <param name="MeltedG">Frost that melted on it over the trip, g.</param>
/// <param name="SettledG">All that settled over the trip, g.</param>
/// <param name="RunOffG">Ran off, g.</param>
/// <param name="WetHoursCount">Hours with more than 1 g/m².</param>
/// <param name="AtEndG">Left at the end, g.</param>
/// <param name="LowestC">Coldest it got, °C.</param>
public sealed record WetPlace(string Name, string Panel, SurfaceKind Kind, double AreaM2, double MostG, DateTime MostAtLocal, double MostFrostG, double MeltedG,
    double SettledG, double RunOffG, double WetHoursCount, double AtEndG, double LowestC);

/// <summary>Water inside one build-up over the trip.</summary>
/// <param name="Panel">The panel, or door leaf.</param>
/// <param name="AreaM2">Area, m².</param>
/// <param name="AtFacesGPerM2">Water at each face at the end, g/m², inside to outside; face 0 is the room side.</param>
/// <param name="MostGPerM2">Most at once, all faces together, g/m².</param>
/// <param name="MostAtLocal">When.</param>
/// <param name="MostFace">Face that held most then.</param>
/// <param name="AtEndGPerM2">At the end, g/m².</param>
/// <param name="ByAirGPerM2">Of what came, carried by air behind the lining, g/m².</param>
/// <param name="ByDiffusionGPerM2">Of what came, by diffusion, g/m².</param>
public sealed record BuildUpTrip(string Panel, double AreaM2, IReadOnlyList<double> AtFacesGPerM2, double MostGPerM2, DateTime MostAtLocal, int MostFace,
    double AtEndGPerM2, double ByAirGPerM2, double ByDiffusionGPerM2);

/// <summary>Mould index over the trip.</summary>
/// <param name="Name">Surface or interface, in the builder's words.</param>
/// <param name="Panel">Its panel.</param>
/// <param name="Class">Sensitivity of its material.</param>
/// <param name="HighestFactor">Highest index M, 0 nothing to 6 all over.</param>
/// <param name="AtEndFactor">Index at the end.</param>
/// <param name="MeanHumidityFraction">Mean humidity there.</param>
public sealed record MouldTrip(string Name, string Panel, Materials.MouldClass Class, double HighestFactor, double AtEndFactor, double MeanHumidityFraction);

/// <summary>Metal that stood wet.</summary>
/// <param name="Name">Skin or rib, in the builder's words.</param>
/// <param name="Panel">Its panel.</param>
/// <param name="WetHoursCount">Hours above 0 °C with more than 80 % at it.</param>
/// <param name="PerYearH">The same, scaled to a year of such trips, h.</param>
public sealed record WetMetal(string Name, string Panel, double WetHoursCount, double PerYearH);

/// <summary>A tank over the trip.</summary>
/// <param name="Name">Its name.</param>
/// <param name="LowestC">Coldest, °C.</param>
/// <param name="FreezesAtLocal">First hour at 0 °C with ice; null never.</param>
/// <param name="MostIceFraction">Most ice, fraction.</param>
/// <param name="PadWh">Used by its pad, Wh.</param>
/// <param name="HoldW">Power that would have held it at +3 °C in its hardest hour, W.</param>
public sealed record TankTrip(string Name, double LowestC, DateTime? FreezesAtLocal, double MostIceFraction, double PadWh, double HoldW);

/// <summary>A standing pipe over the trip.</summary>
/// <param name="Name">Its name.</param>
/// <param name="LowestC">Coldest water, °C.</param>
/// <param name="FreezesAtLocal">First hour with ice; null never.</param>
/// <param name="MostIceFraction">Most ice, fraction.</param>
public sealed record PipeTrip(string Name, double LowestC, DateTime? FreezesAtLocal, double MostIceFraction);

/// <summary>Comfort and air of the living space with people in.</summary>
/// <param name="HomeHoursCount">Hours with people in.</param>
/// <param name="ColdHoursCount">Of them, over 1 K below what they want (heater on or off, not while they have switched it off).</param>
/// <param name="CoolestC">Coolest operative temperature with people in, °C; null with nobody in.</param>
/// <param name="HotHoursCount">Hours above the stated warmth.</param>
/// <param name="HottestC">Hottest operative temperature with people in, °C.</param>
/// <param name="WarmUpH">Longest time from coming home to within 1 K of what they want, h; null never or no return.</param>
/// <param name="HighestCarbonDioxidePpm">Highest hour, ppm.</param>
/// <param name="StuffyHoursCount">Hours above 2000 ppm.</param>
/// <param name="HumidHoursCount">Hours above 70 %.</param>
/// <param name="ColdestSurfaceC">Coldest inner surface with people in, °C; null with nobody in.</param>
/// <param name="ColdestSurface">Where; null with nobody in.</param>
public sealed record TripComfort(double HomeHoursCount, double ColdHoursCount, double? CoolestC, double HotHoursCount, double? HottestC, double? WarmUpH,
    double HighestCarbonDioxidePpm, double StuffyHoursCount, double HumidHoursCount, double? ColdestSurfaceC, string? ColdestSurface);

/// <summary>What other headings change on legs where it is unknown; the trip itself is reckoned with the nose south.</summary>
/// <param name="WorstChargeFraction">Lowest charge with the worst heading; null without battery.</param>
/// <param name="BestChargeFraction">With the best.</param>
/// <param name="MostFuelAmount">Most fuel for heating.</param>
/// <param name="LeastFuelAmount">Least.</param>
/// <param name="HottestC">Hottest operative temperature of all headings, °C.</param>
/// <param name="WorstHeadingDeg">Heading with most fuel, degrees.</param>
public sealed record HeadingSpan(double? WorstChargeFraction, double? BestChargeFraction, double MostFuelAmount, double LeastFuelAmount, double? HottestC, double WorstHeadingDeg);

/// <summary>Something a person should know of a trip.</summary>
/// <param name="Kind">What.</param>
/// <param name="About">Whom or what it is about, in the builder's words.</param>
/// <param name="FigureInItsUnit">Its figure, in the unit of its kind.</param>
/// <param name="AtLocal">When first; null where no one time.</param>
public sealed record TripFinding(TripFindingKind Kind, string About, double FigureInItsUnit, DateTime? AtLocal = null);

/// <summary>Kinds of finding, with the unit of their figure.</summary>
public enum TripFindingKind
{
    /// <summary>It stayed colder than wanted: hours.</summary>
    TooCold,
    /// <summary>Heater at its highest and not enough: hours.</summary>
    HeaterShort,
    /// <summary>Battery flat: hours.</summary>
    BatteryFlat,
    /// <summary>Charge refused below 0 °C: Ah.</summary>
    ChargeRefused,
    /// <summary>A tank freezes: share of ice.</summary>
    TankFreezes,
    /// <summary>A pipe freezes: share of ice.</summary>
    PipeFreezes,
    /// <summary>Glass wet or frosty: most at once, g.</summary>
    WetGlass,
    /// <summary>A lining, leaf or rib gets wet: most at once, g/m² (g for lines).</summary>
    WetLining,
    /// <summary>Water builds up inside: g/m² at the end.</summary>
    WetInside,
    /// <summary>Water ran off: g.</summary>
    RunOff,
    /// <summary>Mould index above 1: index.</summary>
    Mould,
    /// <summary>Carbon dioxide above 2000 ppm: ppm.</summary>
    Stuffy,
    /// <summary>Too hot: hours.</summary>
    TooHot,
    /// <summary>Humidity above 70 % with people in: hours.</summary>
    Humid,
    /// <summary>The heater started very often: starts a day.</summary>
    ManyStarts,
}
