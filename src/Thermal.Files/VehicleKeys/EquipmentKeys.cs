using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.Ventilation;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>The heater and how it is used.</summary>
/// <param name="Class">Its class.</param>
/// <param name="IsOnFreshAir">True where it takes its air from outside.</param>
/// <param name="WarmUpH">Time to warm the cold vehicle, h.</param>
internal sealed record FittedHeater(HeaterClass Class, bool IsOnFreshAir, double WarmUpH);

/// <summary>Heater, roof fan and paint.</summary>
internal static class EquipmentKeys
{
    private static readonly ChoiceNode<HeaterClass> Classes = new([.. HeaterLibrary.All.Select(heater => heater.Key)], [.. HeaterLibrary.All]);
    private static readonly ChoiceNode<bool> AirWords = new(["room", "outside"], [false, true]);

    private static readonly Field<FittedHeater, HeaterClass> Class = new("class", "A generic class of heater.", Classes, heater => heater.Class) { IsRequired = true };
    private static readonly Field<FittedHeater, bool> Air = new("warms_air_from", "The room's air again and again, or fresh air from outside.", AirWords, heater => heater.IsOnFreshAir) { Default = false };
    private static readonly Field<FittedHeater, double> WarmUp = new("warm_up", "Time in which the cold vehicle must get warm.", Kinds.Hours(0.25, 24), heater => heater.WarmUpH) { Default = 2 };

    internal static Map<FittedHeater> Heater { get; } = new("the heater", [Class, Air, WarmUp], values => new FittedHeater(values.Of(Class), values.Of(Air), values.Of(WarmUp)));

    private static readonly Field<RoofFan, double> Flow = new("flow", "Air it draws out at the speed used.", new QuantityNode(Dimensions.VolumeFlow, "m³/h", 5, 2000) { Typical = "150 m³/h" }, fan => fan.FlowM3PerH) { IsRequired = true };
    private static readonly Field<RoofFan, double> Draw = new("current", "Its current at that speed, at 12.8 V.", new QuantityNode(Dimensions.Current, "A", 0, 20), fan => fan.CurrentA) { IsRequired = true };

    internal static Map<RoofFan> Fan { get; } = new("the roof fan", [Flow, Draw], values => new RoofFan { FlowM3PerH = values.Of(Flow), CurrentA = values.Of(Draw) }) { IsShort = true };

    /// <summary>How light the paint is, or the share of the sun it takes up.</summary>
    internal static WordOrNode<Bounded> Paint { get; } = new(
        new ChoiceNode<Bounded>(["white", "light", "middle", "dark"], [PaintDefaults.WhiteSunFraction, PaintDefaults.LightSunFraction, PaintDefaults.MiddleSunFraction, PaintDefaults.DarkSunFraction]),
        Kinds.Span(new QuantityNode(Dimensions.Fraction, "", 0.05, 0.98, "%")));
}
