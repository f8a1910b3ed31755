using Thermal.Files.Keys;
using Thermal.Heating;
using Thermal.Power;
using Thermal.Water;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>The heater and how it is used.</summary>
/// <param name="Class">Its class.</param>
/// <param name="IsOnFreshAir">True where it takes its air from outside.</param>
/// <param name="WarmUpH">Time to warm the cold vehicle, h.</param>
internal sealed record FittedHeater(HeaterClass Class, bool IsOnFreshAir, double WarmUpH);

/// <summary>Heater, battery and tanks.</summary>
internal static class EquipmentKeys
{
    private static readonly ChoiceNode<HeaterClass> Classes = new([.. HeaterLibrary.All.Select(heater => heater.Key)], [.. HeaterLibrary.All]);
    private static readonly ChoiceNode<bool> AirWords = new(["room", "outside"], [false, true]);

    private static readonly Field<FittedHeater, HeaterClass> Class = new("class", "A generic class of heater.", Classes, heater => heater.Class) { IsRequired = true };
    private static readonly Field<FittedHeater, bool> Air = new("warms_air_from", "The room's air again and again, or fresh air from outside.", AirWords, heater => heater.IsOnFreshAir) { Default = false };
    private static readonly Field<FittedHeater, double> WarmUp = new("warm_up", "Time in which the cold vehicle must get warm.", Kinds.Hours(0.25, 24), heater => heater.WarmUpH) { Default = 2 };

    internal static Map<FittedHeater> Heater { get; } = new("the heater", [Class, Air, WarmUp], values => new FittedHeater(values.Of(Class), values.Of(Air), values.Of(WarmUp)));

    private static readonly Field<Battery, double> Usable = new("usable", "Usable capacity at 12.8 V.", new QuantityNode(Dimensions.Charge, "Ah", 1, 5000), battery => battery.UsableAh) { IsRequired = true };

    internal static Map<Battery> BatteryMap { get; } = new("the battery", [Usable], values => new Battery { UsableAh = values.Of(Usable) });

    private static readonly Field<Tank, string> Name = new("name", "What you call it.", Kinds.Name, tank => tank.Name) { IsRequired = true };
    private static readonly Field<Tank, double> Water = new("water", "Water in it.", Kinds.Litres(1, 1000), tank => tank.WaterL) { IsRequired = true };
    private static readonly Field<Tank, double> Area = new("area", "Its outer area.", Kinds.Area(0.05, 20), tank => tank.AreaM2) { IsRequired = true };
    private static readonly Field<Tank, double> Insulation = new("insulation", "Resistance of its insulation, without films.", Kinds.Resistance, tank => tank.InsulationM2KPerW) { Default = 0 };
    private static readonly Field<Tank, string> Zone = new("zone", "The room it stands in; left out where it is slung under the floor in the open.", new ZoneReferenceNode(), tank => tank.Zone);
    private static readonly Field<Tank, double> Pad = new("pad", "Heating pad.", new QuantityNode(Dimensions.Power, "W", 0, 1000), tank => tank.PadW) { Default = 0 };

    internal static ListOf<Tank> Tanks { get; } = new("tank", new Map<Tank>("a tank", [Name, Water, Area, Insulation, Zone, Pad], values => new Tank
    {
        Name = values.Of(Name),
        WaterL = values.Of(Water),
        AreaM2 = values.Of(Area),
        InsulationM2KPerW = values.Of(Insulation),
        Zone = values.Of(Zone),
        PadW = values.Of(Pad),
    }), 0, 10, tank => tank.Name);
}
