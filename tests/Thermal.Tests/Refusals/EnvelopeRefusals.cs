using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Zones;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Refusals;

/// <summary>Nonsense about build-ups, openings, zones and vehicles is refused by name: negative, zero, a thousand times too large, NaN, infinite, missing.</summary>
public class EnvelopeRefusals
{
    private static readonly Stack Wall = new([Sheet(0.03, 0.04)]);

    private static void Refused(string parameter, Func<object> make) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(() => { make(); }).ParamName);

    private static Opening Window => new() { Name = "window", WidthM = 0.8, HeightM = 0.5, Leaf = Wall };

    [Theory, InlineData(double.NaN), InlineData(-0.04), InlineData(0), InlineData(40), InlineData(double.PositiveInfinity)]
    public void A_thickness_is_in_metres_and_not_nothing(double thicknessM)
    {
        Refused("ThicknessM", () => Sheet(thicknessM, 0.04));
        Refused("ThicknessM", () => new AirLayer { Name = "air", ThicknessM = thicknessM });
        Refused("ThicknessM", () => Wall.WithThicknessM(0, thicknessM));
        Refused("thicknessM", () => AirLayerResistance.ClosedM2KPerW(thicknessM, FlowDirection.Up));
        Refused("ThicknessM", () => new Pane { Material = Of(1), ThicknessM = thicknessM });
        Refused("ThicknessM", () => new GlazingGap { ThicknessM = thicknessM });
        Refused("layerThicknessM", () => Transmittance.FastenerCorrectionWPerM2K(0.8, 50, 1e-5, 4, thicknessM, 2, 3));
    }

    [Theory, InlineData(double.NaN), InlineData(-0.1), InlineData(130), InlineData(double.NegativeInfinity)]
    public void A_film_is_a_small_resistance(double film)
    {
        Refused("insideFilmM2KPerW", () => Transmittance.Of(Wall, FlowDirection.Up, film, 0.04));
        Refused("outsideFilmM2KPerW", () => Transmittance.Of(Wall, FlowDirection.Up, 0.1, film));
        Refused("surfaceResistanceM2KPerW", () => Transmittance.OfStackWPerM2K([], film));
    }

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(181), InlineData(90_000)]
    public void A_tilt_is_in_degrees_from_roof_to_floor(double tiltDeg)
    {
        Refused("TiltDeg", () => Panel("wall", 1, "living", Wall) with { TiltDeg = tiltDeg });
        Refused("tiltDeg", () => SurfaceResistance.DirectionOf(tiltDeg));
        Refused("tiltDeg", () => SurfaceResistance.SkyChillK(3, tiltDeg, 20));
        Refused("tiltDeg", () => GlazingTransmittance.CoreM2KPerW(new([new() { Material = Of(1), ThicknessM = 0.004 }], []), tiltDeg));
    }

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(3000)]
    public void Wind_is_in_metres_per_second(double windMPerS)
    {
        Refused("windMPerS", () => SurfaceResistance.OutsideM2KPerW(windMPerS));
        Refused("windMPerS", () => Shell.Of(Body([Room("living", ZoneKind.Living, 10)], [Panel("wall", 1, "living", Wall)]), windMPerS, 1.2));
    }

    [Theory, InlineData(double.NaN), InlineData(-0.1), InlineData(1.5), InlineData(90)]
    public void A_share_is_a_fraction_and_not_a_percentage(double fraction)
    {
        Refused("areaFraction", () => new Battens(Of(0.13), fraction));
        Refused("AreaFraction", () => new Against { Name = "locker", AddedResistanceM2KPerW = 0.5, AreaFraction = fraction });
        Refused("FrameFraction", () => Window with { FrameFraction = fraction });
        Refused("InnerEmissivityFraction", () => new AirLayer { Name = "air", ThicknessM = 0.02, InnerEmissivityFraction = fraction });
        Refused("OuterEmissivityFraction", () => new AirLayer { Name = "air", ThicknessM = 0.02, OuterEmissivityFraction = fraction });
        Refused("innerEmissivityFraction", () => AirLayerResistance.ClosedM2KPerW(0.02, FlowDirection.Up, fraction));
        Refused("GasFraction", () => new GlazingGap { ThicknessM = 0.016, GasFraction = fraction });
        Refused("OuterEmissivityFraction", () => new Pane { Material = Of(1), ThicknessM = 0.004, OuterEmissivityFraction = fraction });
        Refused("ColdestFactor", () => new LinearBridge { Name = "rib", PsiWPerMK = Exactly(0.1), LengthM = 1, ColdestFactor = fraction });
    }

    [Fact]
    public void Metal_battens_are_refused_by_name_and_told_what_to_give_instead()
    {
        Material steel = MaterialLibrary.Find("steel_sheet")!;
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => new Battens(steel, 0.1));
        Assert.Contains(steel.Name, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("linear transmittance", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, InlineData(double.NaN), InlineData(-2), InlineData(200)]
    public void A_bridge_s_transmittance_is_a_plausible_one(double value)
    {
        Refused("PsiWPerMK", () => new LinearBridge { Name = "rib", PsiWPerMK = Exactly(value), LengthM = 1 });
        Refused("ChiWPerK", () => new PointBridge { Name = "bolt", ChiWPerK = Exactly(value), Count = 1 });
        Refused("PsiWPerMK", () => new LinearBridge { Name = "rib", PsiWPerMK = new(0, 0.1, value, "OURS", ""), LengthM = 1 });
        Refused("EdgePsiWPerMK", () => Window with { EdgePsiWPerMK = value });
    }

    [Theory, InlineData(double.NaN), InlineData(-0.1), InlineData(1.1)]
    public void A_temperature_factor_of_an_edge_lies_between_none_and_one(double value)
    {
        Refused("EdgeColdestFactor", () => Window with { EdgeColdestFactor = value });
        Refused("EdgeMouldFactor", () => Window with { EdgeMouldFactor = value });
    }

    [Theory, InlineData(0.3, 0.2, 0.4), InlineData(0.1, 0.2, 0.15), InlineData(0.3, 0.2, 0.1)]
    public void A_span_that_does_not_hold_its_value_is_refused(double low, double value, double high) =>
        Refused("PsiWPerMK", () => new LinearBridge { Name = "rib", PsiWPerMK = new(low, value, high, "OURS", ""), LengthM = 1 });

    [Theory, InlineData(double.NaN), InlineData(-1), InlineData(5000)]
    public void Lengths_and_areas_are_those_of_a_vehicle(double value)
    {
        Refused("LengthM", () => new LinearBridge { Name = "rib", PsiWPerMK = Exactly(0.1), LengthM = value });
        Refused("AreaM2", () => Panel("wall", value, "living", Wall));
        Refused("WidthM", () => Window with { WidthM = value });
        Refused("HeightM", () => Window with { HeightM = value });
        Refused("VolumeM3", () => Room("living", ZoneKind.Living, 10) with { VolumeM3 = value });
        Refused("FloorAreaM2", () => Room("living", ZoneKind.Living, 10) with { FloorAreaM2 = value });
        Refused("HeightM", () => Room("living", ZoneKind.Living, 10) with { HeightM = value });
        Refused("AreaM2", () => new ZoneLink { From = "a", To = "b", AreaM2 = value, State = LinkState.Open, AirM3PerM2H = Exactly(10) });
        Refused("LeakEachM2", () => Room("living", ZoneKind.Living, 10, leakM2: value));
        Refused("FreeAreaM2", () => new Vent("vent", value, true));
        Refused("FreeAreaM2", () => new Vent("vent", 0.001, true) with { FreeAreaM2 = value });
        Refused("AirChangesPerH", () => Room("living", ZoneKind.Living, 10, value));
        Refused("AirM3PerM2H", () => new ZoneLink { From = "a", To = "b", AreaM2 = 1, State = LinkState.Open, AirM3PerM2H = Exactly(value) });
        Refused("AirBehindLiningM3PerM2H", () => Panel("wall", 1, "living", Wall) with { AirBehindLiningM3PerM2H = Exactly(value) });
        Refused("AddedResistanceM2KPerW", () => new Covering { Name = "cover", Side = CoveringSide.Inside, AddedResistanceM2KPerW = Exactly(value) });
        Refused("EdgeLeakM3PerM2H", () => new Covering { Name = "cover", Side = CoveringSide.Inside, AddedResistanceM2KPerW = Exactly(0.1), EdgeLeakM3PerM2H = value });
        Refused("AddedResistanceM2KPerW", () => new Against { Name = "locker", AddedResistanceM2KPerW = value, AreaFraction = 0.5 });
        Refused("WindPressureFactor", () => Body([], []) with { WindPressureFactor = Exactly(value) });
        Refused("ownM2KPerW", () => ShutterResistance.AddedM2KPerW(value, ShutterEdges.Close));
    }

    [Theory, InlineData(double.NaN), InlineData(0), InlineData(8), InlineData(5000)]
    public void A_frame_loses_less_than_its_inside_film_lets_through(double u) => Refused("FrameUWPerM2K", () => Window with { FrameUWPerM2K = u });

    [Theory, InlineData(-1), InlineData(0), InlineData(51)]
    public void There_is_at_least_one_opening_and_not_a_crowd(int count) => Refused("Count", () => Window with { Count = count });

    [Theory, InlineData(-1), InlineData(3)]
    public void A_gap_level_is_nought_one_or_two(int level) => Assert.Throws<ArgumentOutOfRangeException>(() => new Stack(Wall.Layers) { GapLevel = level });

    [Fact]
    public void A_build_up_has_layers_and_a_glazing_fits_its_gaps()
    {
        Assert.Throws<ArgumentException>(() => new Stack([]));
        Assert.Throws<ArgumentException>(() => new Stack([.. Enumerable.Repeat(Wall.Layers[0], 41)]));
        Pane pane = new() { Material = Of(1), ThicknessM = 0.004 };
        Assert.Throws<ArgumentException>(() => new Glazing([], []));
        Assert.Throws<ArgumentException>(() => new Glazing([pane, pane], []));
    }

    [Fact]
    public void A_stated_fit_of_the_lining_brings_its_own_figure() => Refused("fit", () => LiningDefaults.AirBehindM3PerM2H(LiningFit.Stated));

    [Fact]
    public void A_zone_that_is_not_there_is_named()
    {
        Surface stray = Panel("wall", 1, "garage", Wall);
        Assert.Contains("garage", Assert.Throws<ArgumentException>(() => Shell.Of(Body([Room("living", ZoneKind.Living, 10)], [stray]), 0, 1.2)).Message, StringComparison.Ordinal);
        Surface partition = Panel("wall", 1, "living", Wall, outside: OuterSide.OtherZone, otherZone: "attic");
        Assert.Contains("attic", Assert.Throws<ArgumentException>(() => Shell.Of(Body([Room("living", ZoneKind.Living, 10)], [partition]), 0, 1.2)).Message, StringComparison.Ordinal);
        Assert.Contains("wall", Assert.Throws<ArgumentException>(() => Shell.Of(Body([Room("living", ZoneKind.Living, 10)], [partition with { OtherZone = null }]), 0, 1.2)).Message, StringComparison.Ordinal);
        ZoneLink link = new() { From = "living", To = "cellar", AreaM2 = 1, State = LinkState.Open, AirM3PerM2H = Exactly(10) };
        Vehicle linked = Body([Room("living", ZoneKind.Living, 10), Room("cab", ZoneKind.Cab, 3)], [Panel("wall", 1, "living", Wall), Panel("skin", 1, "cab", Wall)], [link]);
        Assert.Contains("cellar", Assert.Throws<ArgumentException>(() => ZoneBalance.Solve(Shell.Of(linked, 0, 1.2), Still(0, 500))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_vehicle_without_a_living_space_is_refused() =>
        Assert.Throws<ArgumentException>(() => ZoneBalance.Solve(Shell.Of(Body([Room("cab", ZoneKind.Cab, 3)], [Panel("skin", 1, "cab", Wall)]), 0, 1.2), Still(0, 500)));

    [Fact]
    public void Openings_larger_than_their_panel_are_refused_by_the_panel_s_name()
    {
        Surface wall = Panel("left side", 0.3, "living", Wall) with { Openings = [Window] };
        Assert.Contains("left side", Assert.Throws<ArgumentException>(() => Shell.Of(Body([Room("living", ZoneKind.Living, 10)], [wall]), 0, 1.2)).Message, StringComparison.Ordinal);
    }

    [Theory, InlineData(double.NaN), InlineData(0), InlineData(-3), InlineData(1e9)]
    public void A_flow_s_numbers_are_plausible(double value)
    {
        Refused("reynoldsRatio", () => PlateConvection.ForcedNusseltRatio(value, 0.71));
        Refused("prandtlRatio", () => PlateConvection.FreeNusseltRatio(1e9, value));
        Refused("lengthM", () => PlateConvection.CoefficientWPerM2K(100, 0.025, value));
    }
}
