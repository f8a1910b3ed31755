using Thermal.Files.Keys;
using Thermal.Water;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>Tanks and pipes.</summary>
internal static class WaterKeys
{
    private static readonly Field<Tank, string> Name = new("name", "What you call it.", Kinds.Name, tank => tank.Name) { IsRequired = true };
    private static readonly Field<Tank, double> Water = new("water", "Water in it.", Kinds.Litres(1, 1000), tank => tank.WaterL) { IsRequired = true };
    private static readonly Field<Tank, double> Area = new("area", "Its outer area.", Kinds.Area(0.05, 20), tank => tank.AreaM2) { IsRequired = true };
    private static readonly Field<Tank, double> Insulation = new("insulation", "Resistance of its insulation, without films.", Kinds.Resistance, tank => tank.InsulationM2KPerW) { Default = 0 };
    private static readonly Field<Tank, string> Zone = new("zone", "The room it stands in; left out where it is slung under the floor in the open.", new ZoneReferenceNode(), tank => tank.Zone);
    private static readonly Field<Tank, double> WarmAir = new("warm_air", "Warm room air led past it; only for a tank outside the living space.", new QuantityNode(Dimensions.VolumeFlow, "m³/h", 0, 100), tank => tank.WarmAirM3PerH) { Default = 0 };
    private static readonly Field<Tank, double> Pad = new("pad", "Heating pad.", new QuantityNode(Dimensions.Power, "W", 0, 1000), tank => tank.PadW) { Default = 0 };

    internal static ListOf<Tank> Tanks { get; } = new("tank", new Map<Tank>("a tank", [Name, Water, Area, Insulation, Zone, WarmAir, Pad], values => new Tank
    {
        Name = values.Of(Name)!,
        WaterL = values.Of(Water),
        AreaM2 = values.Of(Area),
        InsulationM2KPerW = values.Of(Insulation),
        Zone = values.Of(Zone),
        WarmAirM3PerH = values.Of(WarmAir),
        PadW = values.Of(Pad),
    }), 0, 10, tank => tank.Name);

    private static readonly Field<Pipe, string> PipeName = new("name", "What you call it.", Kinds.Name, pipe => pipe.Name) { IsRequired = true };
    private static readonly Field<Pipe, double> Bore = new("bore", "Its bore.", Kinds.Millimetres(0.004, 0.1, "10 mm"), pipe => pipe.BoreM) { IsRequired = true };
    private static readonly Field<Pipe, double> Outer = new("outer", "Its outer diameter, without insulation.", Kinds.Millimetres(0.004, 0.12, "15 mm"), pipe => pipe.OuterM) { IsRequired = true };
    private static readonly Field<Pipe, double> Length = new("length", "Its length.", Kinds.Metres(0.1, 50), pipe => pipe.LengthM) { Default = 1 };
    private static readonly Field<Pipe, double> Lagging = new("insulation", "Thickness of the insulation round it.", Kinds.Millimetres(0, 0.1, "13 mm"), pipe => pipe.InsulationM) { Default = 0 };
    private static readonly Field<Pipe, double> Conductivity = new("conductivity", "Conductivity of that insulation.", new QuantityNode(Dimensions.Conductivity, "W/(m·K)", 0.01, 1), pipe => pipe.InsulationWPerMK) { Default = 0.04 };
    private static readonly Field<Pipe, string> PipeZone = new("zone", "The room it runs in; left out where it is in the open under the floor.", new ZoneReferenceNode(), pipe => pipe.Zone);

    internal static ListOf<Pipe> Pipes { get; } = new("pipe", new Map<Pipe>("a pipe", [PipeName, Bore, Outer, Length, Lagging, Conductivity, PipeZone], PipeOf), 0, 20, pipe => pipe.Name);

    private static Pipe? PipeOf(Values<Pipe> values)
    {
        if (!(values.Of(Outer) > values.Of(Bore)))
        {
            values.Problem(Outer, "the pipe has no wall; write an outer diameter larger than the bore");
            return null;
        }
        return new Pipe
        {
            Name = values.Of(PipeName)!,
            BoreM = values.Of(Bore),
            OuterM = values.Of(Outer),
            LengthM = values.Of(Length),
            InsulationM = values.Of(Lagging),
            InsulationWPerMK = values.Of(Conductivity),
            Zone = values.Of(PipeZone),
        };
    }
}
