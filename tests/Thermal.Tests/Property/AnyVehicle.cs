using CsCheck;
using Thermal.Air;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using Thermal.Zones;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Property;

/// <summary>Generators of build-ups, of whole vehicles with living space, cab and hold, and of nights.</summary>
internal static class AnyVehicle
{
    /// <summary>Plain sheets from felt to metal, λ with a span.</summary>
    internal static readonly Gen<SolidLayer> Layer = Gen.Select(Gen.Double[-4, -0.5], Gen.Double[-1.7, 2.3], Gen.Double[0, 0.3], (d, k, span) =>
        Sheet(Math.Pow(10, d), 1) with { Material = Of(Math.Pow(10, k), spanShare: span) });

    /// <summary>Plain and battened sheets.</summary>
    internal static readonly Gen<SolidLayer> AnyLayer = Gen.Select(Layer, Gen.Double[-1.5, 0.5], Gen.Double[-0.3, 0.4], (layer, k, share) =>
        share < 0.002 ? layer : layer with { Battens = new(Of(Math.Pow(10, k)), share) });

    internal static readonly Gen<FlowDirection> Direction = Gen.Int[0, 2].Select(i => (FlowDirection)i);

    /// <summary>A frosty to mild night; vapour up to a family that cooks.</summary>
    internal static readonly Gen<ZoneInputs> AnyNight = Gen.Select(Gen.Double[-30, 12], Gen.Double[0.3, 1], Gen.Double[0, 10], Gen.Double[0, 25], Gen.Double[0, 400], Gen.Double[-60, 60])
        .Select((outsideC, humidity, wind, sky, vapour, fan) => new ZoneInputs
        {
            OutsideC = outsideC,
            OutsidePa = humidity * SaturationPressure.OverWaterPa(outsideC),
            AirPressurePa = 95_000,
            WindMPerS = wind,
            SkyBelowAirK = sky,
            LivingC = 18,
            VapourKgPerS = vapour / 3.6e6,
            FanM3PerH = Math.Max(0, fan),
            HeaterFreshAirM3PerH = fan < -30 ? 40 : 0,
        });

    /// <summary>A vehicle of three zones drawn from 80 numbers between 0 and 1.</summary>
    internal static readonly Gen<Vehicle> AnyBody = Gen.Double[0, 1].Array[80].Select(Draw);

    /// <summary>The same with a hat of any depth that fits in its side, solved in a wind of 3 m/s.</summary>
    internal static readonly Gen<Vehicle> AnyDescribedBody = Gen.Select(AnyBody, Gen.Double[0.35, 1], Gen.Double[0.01, 0.06]).Select((vehicle, share, crownM) => SolvedVehicle.Of(vehicle with
    {
        Surfaces = [.. vehicle.Surfaces.Select(surface => surface.Name == "side" ? surface with { Ribs = [Hat(surface.Ribs[0], share * (surface.Stack.ThicknessM - 0.001), crownM)] } : surface)],
    }, 3, new BridgeCache()));

    private static LinearBridge Hat(LinearBridge rib, double depthM, double crownM) => rib with
    {
        Detail = new Rib { Shape = RibShape.Hat, Material = Of(50, MaterialGroup.Metal), SheetM = 0.0008, DepthM = Math.Max(0.003, depthM), CrownM = crownM, FootM = 0.01 },
        PsiWPerMK = null,
        ColdestFactor = null,
    };

    internal static Shell ShellIn(this Vehicle vehicle, ZoneInputs night) => Shell.Of(vehicle, night.WindMPerS, MoistAir.DryAirDensityKgPerM3(night.LivingC, 0, night.AirPressurePa));

    internal static ZoneState StateIn(this Vehicle vehicle, ZoneInputs night) => ZoneBalance.Solve(vehicle.ShellIn(night), night);

    private static Vehicle Draw(double[] dice)
    {
        int next = 0;
        double Between(double low, double high) => low + (high - low) * dice[next++];
        bool Toss() => dice[next++] < 0.5;

        Stack Wall() => new(
        [
            Sheet(Between(0.002, 0.012), 0.13, "lining") with { Material = Of(0.13, MaterialGroup.Wood, spanShare: 0.1) },
            Sheet(Between(0.005, 0.06), 0.036, "foam") with { Material = Of(Between(0.02, 0.045), spanShare: 0.15), Battens = Toss() ? new(Of(0.13), 0.1) : null },
            Sheet(0.001, 50, "skin") with { Material = Of(50, MaterialGroup.Metal) },
        ]);
        Surface Side(string name, double areaM2, double tiltDeg, string zone = "living", OuterSide outside = OuterSide.Air) => Panel(name, areaM2, zone, Wall(), tiltDeg, outside) with
        {
            Ribs = [new() { Name = "ribs", PsiWPerMK = Around(Between(0, 0.3), 0.3), LengthM = Between(0, 15), ColdestFactor = Between(0.2, 0.8) }],
            Bolts = [new() { Name = "bolts", ChiWPerK = Around(0.01, 0.5), Count = 7 }],
            LiningFit = LiningFit.Loose,
            AirBehindLiningM3PerM2H = Around(Between(0, 0.3), 0.5),
            Against = Toss() ? [new() { Name = "locker", AddedResistanceM2KPerW = Between(0.2, 2.5), AreaFraction = Between(0.1, 0.6) }] : [],
        };
        Opening Window(string name) => new()
        {
            Name = name,
            WidthM = Between(0.3, 1),
            HeightM = 0.6,
            Glazing = new([new() { Material = Of(1, MaterialGroup.Pane), ThicknessM = 0.004 }], []),
            FrameFraction = Between(0, 0.3),
            FrameUWPerM2K = Between(2, 7.5),
            EdgePsiWPerMK = Between(0, 0.2),
            Coverings =
            [
                new() { Name = "blind", Side = CoveringSide.Inside, AddedResistanceM2KPerW = Around(Between(0.05, 0.4), 0.3), EdgeLeakM3PerM2H = Between(0, 10) },
                new() { Name = "screen", Side = CoveringSide.Outside, AddedResistanceM2KPerW = Around(0.3, 0.3) },
            ],
            CoverAtNight = Between(0, 3) switch { < 1 => "blind", < 2 => "screen", _ => null },
        };
        return Body(
            [
                Room("cab", ZoneKind.Cab, 3.5, Toss() ? Between(0.2, 3) : null, Between(0, 0.01)),
                Room("living", ZoneKind.Living, 11, null, Between(0.0005, 0.01)) with { Vents = [new("roof vent", 20e-4, true), new("floor vent", 10e-4, false)] },
                Room("hold", ZoneKind.Hold, 2, null, Between(0.0001, 0.005)),
            ],
            [
                Side("roof", Between(4, 12), 0),
                Side("side", Between(10, 25), 90) with { Openings = [Window("window")] },
                Side("floor", 7, 180, outside: OuterSide.Road),
                Panel("bed base", 3, "hold", Wall(), 0, OuterSide.OtherZone, "living"),
                Side("hold wall", Between(3, 8), 90, "hold"),
                Panel("cab skin", 6, "cab", new([Sheet(0.003, 0.2), Sheet(0.001, 50)]), 90) with { Openings = [Window("windscreen")] },
            ],
            [
                Toss()
                    ? new() { From = "living", To = "cab", AreaM2 = 2, State = LinkState.Open, AirM3PerM2H = ZoneLink.OpenAirM3PerM2H }
                    : new() { From = "cab", To = "living", AreaM2 = 2, State = LinkState.Closed, AirM3PerM2H = ZoneLink.CurtainAirM3PerM2H },
                new() { From = "hold", To = "living", AreaM2 = 0.5, State = LinkState.Closed, AirM3PerM2H = Around(Between(0, 10), 0.5) },
            ]);
    }
}
