using Thermal.Files.Keys;
using Thermal.Materials;
using Thermal.Power;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>What charges the battery.</summary>
/// <param name="AlternatorA">While driving, A.</param>
/// <param name="ShoreA">On shore power, A.</param>
/// <param name="Panels">Solar panels.</param>
internal sealed record Charging(double AlternatorA, double ShoreA, IReadOnlyList<SolarPanel> Panels);

/// <summary>Battery, what charges it and what draws from it.</summary>
internal static class PowerKeys
{
    private static readonly QuantityNode ChargeCurrent = new(Dimensions.Current, "A", 0, 300) { Typical = "30 A" };

    private static readonly Field<Battery, double> Usable = new("usable", "Usable capacity at 12.8 V.", new QuantityNode(Dimensions.Charge, "Ah", 1, 5000), battery => battery.UsableAh) { IsRequired = true };
    private static readonly Field<Battery, Enum> Kind = new("kind", "Lithium (iron phosphate, not charged below 0 °C) or lead.", Kinds.Words(typeof(Chemistry)), battery => battery.Chemistry) { Default = Chemistry.Lithium };
    private static readonly Field<Battery, string> BatteryZone = new("zone", "The room it stands in; left out where it is slung under the floor in the open.", new ZoneReferenceNode(), battery => battery.Zone);
    private static readonly Field<Battery, double> Insulation = new("insulation", "Resistance of its insulation, without films.", Kinds.Resistance, battery => battery.InsulationM2KPerW) { Default = 0 };
    private static readonly Field<Battery, double> Pad = new("pad", "Heating pad that warms it before it is charged.", new QuantityNode(Dimensions.Power, "W", 0, 500), battery => battery.PadW) { Default = 0 };

    internal static Map<Battery> BatteryMap { get; } = new("the battery", [Usable, Kind, BatteryZone, Insulation, Pad], values => new Battery
    {
        UsableAh = values.Of(Usable),
        Chemistry = (Chemistry)values.Of(Kind)!,
        Zone = values.Of(BatteryZone),
        InsulationM2KPerW = values.Of(Insulation),
        PadW = values.Of(Pad),
    });

    private static readonly Bounded UsualShare = new(0.65, 0.75, 0.85, "PRACTICE", "wiring, dirt, controller, flat mounting; from memory"); // as SolarPanel has it

    private static readonly Field<SolarPanel, string> PanelName = new("name", "What you call it.", Kinds.Name, panel => panel.Name) { IsRequired = true };
    private static readonly Field<SolarPanel, double> Peak = new("peak", "Power on its label.", new QuantityNode(Dimensions.Power, "W", 1, 5000) { Typical = "200 W" }, panel => panel.PeakW) { IsRequired = true };
    private static readonly Field<SolarPanel, double> Tilt = new("tilt", "How far its face leans from straight up; 0° flat on the roof.", new QuantityNode(Dimensions.Angle, "°", 0, 90), panel => panel.TiltDeg) { Default = 0 };
    private static readonly Field<SolarPanel, double> Facing = new("facing", "Where a tilted face looks, clockwise from the vehicle's nose.", new QuantityNode(Dimensions.Angle, "°", 0, 360), panel => panel.FacingDeg) { Default = 0 };
    private static readonly Field<SolarPanel, Bounded> Share = new("share", "Share that reaches the battery after wiring, dirt and controller.", Kinds.Span(new QuantityNode(Dimensions.Fraction, "", 0.1, 1, "%")), panel => panel.SystemFraction) { Default = UsualShare };
    private static readonly Map<SolarPanel> PanelMap = new("a solar panel", [PanelName, Peak, Tilt, Facing, Share], values => new SolarPanel
    {
        Name = values.Of(PanelName)!,
        PeakW = values.Of(Peak),
        TiltDeg = values.Of(Tilt),
        FacingDeg = values.Of(Facing),
        SystemFraction = values.Of(Share)!,
    }) { IsShort = true };

    private static readonly Field<Charging, double> Alternator = new("alternator", "Charge current while driving, at 12.8 V.", ChargeCurrent, charging => charging.AlternatorA) { Default = 0 };
    private static readonly Field<Charging, double> Shore = new("shore", "Charge current on shore power, at 12.8 V.", ChargeCurrent, charging => charging.ShoreA) { Default = 0 };
    private static readonly Field<Charging, IReadOnlyList<SolarPanel>> Solar = new("solar", "Solar panels.", new ListOf<SolarPanel>("panel", PanelMap, 0, 20, panel => panel.Name), charging => Kinds.UnlessEmpty(charging.Panels)) { Default = [] };

    internal static Map<Charging> ChargingMap { get; } = new("what charges the battery", [Alternator, Shore, Solar], values => new Charging(values.Of(Alternator), values.Of(Shore), values.Of(Solar)!));

    private static readonly Field<Load, string> LoadName = new("name", "What you call it.", Kinds.Name, load => load.Name) { IsRequired = true };
    private static readonly Field<Load, double> Draw = new("power", "Power while it runs; of a fridge with its compressor running.", new QuantityNode(Dimensions.Power, "W", 0.1, 5000) { Typical = "45 W" }, load => load.PowerW) { IsRequired = true };
    private static readonly Field<Load, Enum> When = new("when", "Always, in the evenings before bedtime, or as a compressor fridge does.", Kinds.Words(typeof(LoadRhythm)), load => load.Rhythm) { Default = LoadRhythm.Always };
    private static readonly Field<Load, double> Hours = new("hours", "Hours a day it runs; in the evenings those before bedtime.", Kinds.Hours(0, 24), load => load.HoursPerDay) { Default = 24 };
    private static readonly Field<Load, string> LoadZone = new("zone", "The room its heat stays in; left out where it goes outside.", new ZoneReferenceNode(), load => load.Zone);

    internal static ListOf<Load> Loads { get; } = new("load", new Map<Load>("a load", [LoadName, Draw, When, Hours, LoadZone], LoadOf) { IsShort = true }, 0, 40, load => load.Name);

    private static Load? LoadOf(Values<Load> values)
    {
        LoadRhythm rhythm = (LoadRhythm)values.Of(When)!;
        if (rhythm == LoadRhythm.Evenings && !values.Has(Hours))
            values.Problem(When, "hours is missing; write how long before bedtime it runs, such as 4 h");
        if (rhythm == LoadRhythm.Fridge && values.Has(Hours) && values.Of(Hours) != 24)
            values.Problem(Hours, "a fridge runs by the room's temperature; take hours away");
        return new Load { Name = values.Of(LoadName)!, PowerW = values.Of(Draw), Rhythm = rhythm, HoursPerDay = values.Of(Hours), Zone = values.Of(LoadZone) };
    }
}
