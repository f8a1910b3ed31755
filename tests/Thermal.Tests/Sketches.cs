using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Zones;

namespace Thermal.Tests;

/// <summary>Materials, sheets and bare vehicles drawn with a few strokes, so that a test shows only the numbers it is about.</summary>
internal static class Sketches
{
    internal static Bounded Exactly(double value) => Bounded.Stated(value);

    internal static Bounded Around(double value, double share) => new(value * (1 - share), value, value * (1 + share), "OURS", "drawn for a test");

    internal static Material Of(double conductivityWPerMK, MaterialGroup group = MaterialGroup.Foam, double emissivityFraction = 0.9, double spanShare = 0) => new()
    {
        Key = "drawn",
        Name = "drawn for a test",
        Group = group,
        ConductivityWPerMK = Around(conductivityWPerMK, spanShare),
        DensityKgPerM3 = Exactly(100),
        SpecificHeatJPerKgK = Exactly(1000),
        VapourResistanceFactor = Exactly(group == MaterialGroup.Metal ? 1e6 : 50),
        EmissivityFraction = Exactly(emissivityFraction),
    };

    internal static SolidLayer Sheet(double thicknessM, double conductivityWPerMK, string name = "sheet") =>
        new() { Name = name, ThicknessM = thicknessM, Material = Of(conductivityWPerMK) };

    /// <summary>A sheet of a given resistance, of λ 0.1 so that it stays thinner than a metre.</summary>
    internal static SolidLayer Resisting(double resistanceM2KPerW, string name = "sheet") => Sheet(resistanceM2KPerW * 0.1, 0.1, name);

    internal static Surface Panel(string name, double areaM2, string zone, Stack stack, double tiltDeg = 90, OuterSide outside = OuterSide.Air, string? otherZone = null) => new()
    {
        Name = name,
        Place = tiltDeg < 60 ? SurfacePlace.Roof : tiltDeg > 120 ? SurfacePlace.Floor : SurfacePlace.Left,
        TiltDeg = tiltDeg,
        AreaM2 = areaM2,
        Zone = zone,
        Outside = outside,
        OtherZone = otherZone,
        Stack = stack,
        AirBehindLiningM3PerM2H = Exactly(0),
        LiningFit = LiningFit.Bonded,
    };

    internal static Zone Room(string name, ZoneKind kind, double volumeM3, double? airChangesPerH = null, double leakM2 = 0) => new()
    {
        Name = name, Kind = kind, VolumeM3 = volumeM3, FloorAreaM2 = volumeM3 / 2, HeightM = 1.8, LeakEachM2 = Exactly(leakM2), AirChangesPerH = airChangesPerH,
    };

    internal static Vehicle Body(IReadOnlyList<Zone> zones, IReadOnlyList<Surface> surfaces, IReadOnlyList<ZoneLink>? links = null) =>
        new() { Name = "drawn", Zones = zones, Surfaces = surfaces, Links = links ?? [] };

    /// <summary>A night without wind and under a covered sky, at sea level.</summary>
    internal static ZoneInputs Still(double outsideC, double outsidePa, double livingC = 20, double vapourKgPerS = 0) => new()
    {
        OutsideC = outsideC, OutsidePa = outsidePa, AirPressurePa = 101_325, WindMPerS = 0, SkyBelowAirK = 0, LivingC = livingC, VapourKgPerS = vapourKgPerS,
    };

    /// <summary>Dry air that one cubic metre of outside air carries, kg: written anew here, so that the balances' own is checked.</summary>
    internal static double DryAirKgPerM3(double outsideC, double outsidePa) => (101_325 - outsidePa) / (287.042 * (outsideC + 273.15));

    internal static double RatioKgPerKg(double vapourPa) => 0.621945 * vapourPa / (101_325 - vapourPa);
}
