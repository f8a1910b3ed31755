using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Materials;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>Passages between rooms: open, or with a curtain or door across at night.</summary>
internal static class PassageKeys
{
    private static readonly Bounded UsualCurtain = new(0.03, 0.08, 0.2, "OURS", "curtain across the cab"); // as ZoneLink has it

    private static readonly Field<ZoneLink, string> From = new("from", "One room.", new ZoneReferenceNode(), link => link.From) { IsRequired = true };
    private static readonly Field<ZoneLink, string> To = new("to", "The other room.", new ZoneReferenceNode(), link => link.To) { IsRequired = true };
    private static readonly Field<ZoneLink, double> Area = new("area", "Area of the passage.", Kinds.Area(0.01, 20), link => link.AreaM2) { IsRequired = true };
    private static readonly Field<ZoneLink, Enum> AtNight = new("at_night", "Open, or closed by a curtain, blind or door.", Kinds.Words(typeof(LinkState)), link => link.State) { IsRequired = true };
    private static readonly Field<ZoneLink, Bounded> Resistance = new("resistance", "Resistance of curtain or door, without films.", Kinds.Span(new QuantityNode(Dimensions.Resistance, "m²·K/W", 0.001, 5)), link => link.ResistanceM2KPerW) { Default = UsualCurtain };
    private static readonly Field<ZoneLink, Bounded> Air = new("air", "Air exchanged through it; an open passage 300, a curtain 10 m³/m²h where left out.", Kinds.Span(Kinds.AirThrough(2000)), AirUnlessUsual);

    private static readonly Map<ZoneLink> Map = new("a passage", [From, To, Area, AtNight, Resistance, Air], Build);

    internal static ListOf<ZoneLink> List { get; } = new("passage", Map, 0, 20);

    private static ZoneLink? Build(Values<ZoneLink> values)
    {
        if (values.Of(From) == values.Of(To))
        {
            values.Problem(To, "a passage joins two different rooms; write the other one");
            return null;
        }
        return new ZoneLink
        {
            From = values.Of(From),
            To = values.Of(To),
            AreaM2 = values.Of(Area),
            State = (LinkState)values.Of(AtNight)!,
            ResistanceM2KPerW = values.Of(Resistance),
            AirM3PerM2H = values.Has(Air) ? values.Of(Air) : UsualAir((LinkState)values.Of(AtNight)!),
        };
    }

    private static Bounded UsualAir(LinkState state) => state == LinkState.Open ? ZoneLink.OpenAirM3PerM2H : ZoneLink.CurtainAirM3PerM2H;

    private static Bounded? AirUnlessUsual(ZoneLink link) => link.AirM3PerM2H == UsualAir(link.State) ? null : link.AirM3PerM2H;
}
