using CsCheck;
using Thermal.Materials;

namespace Thermal.Charts.Tests.Property;

/// <summary>Layers are drawn to scale, or at their least width and marked.</summary>
public class DepthScaleTests
{
    // From a foil to a thick mattress, m.
    private static readonly Gen<CutLayer[]> Stacks =
        Gen.Double[0.0001, 0.2].Select(thicknessM => new CutLayer("any", thicknessM, 1, MaterialGroup.Foam)).Array[1, 12];

    private const double LengthPx = 500, LeastPx = 25, RoundingPx = 1e-9;

    [Fact]
    public void Widths_add_up_to_the_length() =>
        Stacks.Sample(stack => Math.Abs(new DepthScale(stack, LengthPx, LeastPx).LengthPx - LengthPx) < RoundingPx * LengthPx);

    [Fact]
    public void No_layer_is_narrower_than_the_least() =>
        Stacks.Sample(stack =>
        {
            var scale = new DepthScale(stack, LengthPx, LeastPx);
            return Enumerable.Range(0, stack.Length).All(i => scale.FacePx(i + 1) - scale.FacePx(i) >= LeastPx - RoundingPx);
        });

    [Fact]
    public void Layers_not_marked_are_to_scale() =>
        Stacks.Sample(stack =>
        {
            var scale = new DepthScale(stack, LengthPx, LeastPx);
            return Enumerable.Range(0, stack.Length).All(i =>
                scale.IsStretched[i] || Math.Abs(scale.FacePx(i + 1) - scale.FacePx(i) - stack[i].ThicknessM * scale.PxPerM) < RoundingPx * LengthPx);
        });
}
