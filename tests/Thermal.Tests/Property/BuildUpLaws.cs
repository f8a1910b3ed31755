using CsCheck;
using Thermal.Envelope;
using Thermal.Materials;
using static Thermal.Tests.Property.AnyVehicle;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Property;

/// <summary>Laws of build-ups, air layers, glazing and covers.</summary>
public class BuildUpLaws
{
    private static double U(FlowDirection direction, params StackLayer[] layers) => Transmittance.Of(new(layers), direction, 0.13, 0.04).UWPerM2K;

    [Fact]
    public void One_more_layer_never_lets_more_heat_through() => Gen.Select(AnyLayer.Array[1, 8], AnyLayer, Gen.Int[0, 8], Direction).Sample((stack, extra, at, direction) =>
        U(direction, [.. stack.Take(at), extra, .. stack.Skip(at)]) < U(direction, stack));

    [Fact]
    public void The_order_of_layers_does_not_change_the_U_value() => Gen.Select(AnyLayer.Array[1, 8], Direction).Sample((stack, direction) =>
        Math.Abs(U(direction, [.. stack.Reverse()]) / U(direction, stack) - 1) < 1e-12);

    /// <summary>Heat flows more freely than in any parallel path alone and no more than with each layer mixed: the mean lies between the limits, and both between the pure sections.</summary>
    [Fact]
    public void The_combined_method_lies_between_its_limits() => AnyLayer.Array[1, 5].Sample(stack =>
    {
        StackTransmittance found = Transmittance.Of(new(stack), FlowDirection.Horizontal, 0.13, 0.04);
        return found.LowerLimitM2KPerW <= found.UpperLimitM2KPerW * (1 + 1e-12)
            && found.TotalM2KPerW >= found.LowerLimitM2KPerW * (1 - 1e-12) && found.TotalM2KPerW <= found.UpperLimitM2KPerW * (1 + 1e-12);
    });

    [Fact]
    public void Battens_of_the_layer_s_own_material_change_nothing() => Gen.Select(Layer.Array[1, 6], Gen.Double[0.01, 0.5]).Sample((stack, share) =>
        Math.Abs(U(FlowDirection.Up, [.. stack.Select(layer => layer with { Battens = new(layer.Material, share) })]) / U(FlowDirection.Up, stack) - 1) < 1e-12);

    [Fact]
    public void Faces_lie_between_inside_and_outside_and_fall_outwards() => Gen.Select(AnyLayer.Array[1, 8], Gen.Double[-40, 40], Gen.Double[-40, 40]).Sample((stack, insideC, outsideC) =>
    {
        double[] faces = FaceTemperatures.AtFacesC(Transmittance.Of(new(stack), FlowDirection.Up, 0.1, 0.04), insideC, outsideC), all = [insideC, .. faces, outsideC];
        double sign = Math.Sign(insideC - outsideC);
        return faces.Length == stack.Length + 1 && all.Zip(all.Skip(1)).All(pair => sign * (pair.First - pair.Second) >= -1e-10);
    });

    [Fact]
    public void Gaps_in_the_insulation_never_help() => Gen.Select(AnyLayer.Array[1, 6], Gen.Int[0, 1]).Sample((stack, level) =>
        Transmittance.Of(new(stack) { GapLevel = level }, FlowDirection.Up, 0.1, 0.04).UWPerM2K < Transmittance.Of(new(stack) { GapLevel = level + 1 }, FlowDirection.Up, 0.1, 0.04).UWPerM2K);

    /// <summary>Where what stands outside the layer resists at least as much as the film that takes its place.</summary>
    [Fact]
    public void More_openings_never_help() => Gen.Select(AnyLayer.Array[1, 4], Gen.Double[0, 1600], Gen.Double[0, 1600]).Sample((stack, one, other) =>
    {
        double With(double openings) => U(FlowDirection.Horizontal, [.. stack, new AirLayer { Name = "air", ThicknessM = 0.02, OpeningsMm2 = openings }, Resisting(0.1)]);
        return With(Math.Min(one, other)) <= With(Math.Max(one, other)) * (1 + 1e-12);
    });

    [Fact]
    public void A_shinier_face_never_weakens_an_air_layer() => Gen.Select(Gen.Double[0.001, 0.3], Gen.Double[0.02, 0.9], Gen.Double[0.02, 0.9], Direction).Sample((thickness, one, other, direction) =>
        AirLayerResistance.ClosedM2KPerW(thickness, direction, Math.Min(one, other)) >= AirLayerResistance.ClosedM2KPerW(thickness, direction, Math.Max(one, other)));

    [Fact]
    public void One_more_pane_never_lets_more_heat_through() => Gen.Select(Gen.Double[0.003, 0.05], Gen.Double[0, 180], Gen.Int[1, 3]).Sample((gap, tilt, panes) =>
    {
        double Core(int count) => GlazingTransmittance.CoreM2KPerW(new([.. Enumerable.Repeat(new Pane { Material = Of(0.2, MaterialGroup.Pane), ThicknessM = 0.003 }, count)],
            [.. Enumerable.Repeat(new GlazingGap { ThicknessM = gap }, count - 1)]), tilt);
        return Core(panes + 1) > Core(panes);
    });

    [Fact]
    public void A_cover_saves_heat_and_cools_the_glass_only_from_inside() => Gen.Select(Gen.Double[0, 0.4], Gen.Double[0.3, 7.5], Gen.Double[0.02, 1], Gen.Double[0.1, 0.25]).Sample((frame, frameU, added, film) =>
    {
        Opening window = new()
        {
            Name = "window", WidthM = 0.8, HeightM = 0.5, FrameFraction = frame, FrameUWPerM2K = frameU,
            Glazing = new([new() { Material = Of(0.18, MaterialGroup.Pane), ThicknessM = 0.004 }], []),
        };
        OpeningTransmittance With(CoveringSide? side) => OpeningTransmittance.Of(window,
            side is { } at ? new() { Name = "cover", Side = at, AddedResistanceM2KPerW = Exactly(added) } : null, 90, film, 0.05);
        OpeningTransmittance bare = With(null), inside = With(CoveringSide.Inside), outside = With(CoveringSide.Outside);
        return inside.MeanUWPerM2K < bare.MeanUWPerM2K && inside.MeanUWPerM2K == outside.MeanUWPerM2K
            && Ordered(inside.BodyInsideShareFraction, bare.BodyInsideShareFraction, outside.BodyInsideShareFraction)
            && Ordered(inside.FrameInsideShareFraction, bare.FrameInsideShareFraction, outside.FrameInsideShareFraction);

        static bool Ordered(double low, double middle, double high) => low >= 0 && low < middle && middle < high && high <= 1;
    });

    [Fact]
    public void A_face_hidden_from_the_room_is_colder_the_better_it_is_hidden() => Gen.Select(AnyLayer.Array[1, 4], Gen.Double[0, 3], Gen.Double[0, 3]).Sample((stack, one, other) =>
    {
        double Share(double added)
        {
            StackTransmittance found = Transmittance.Of(new(stack), FlowDirection.Horizontal, 0.13 + added, 0.04);
            return 1 - found.UWPerM2K * found.InsideFilmM2KPerW;
        }
        return Share(Math.Max(one, other)) <= Share(Math.Min(one, other)) + 1e-12;
    });
}
