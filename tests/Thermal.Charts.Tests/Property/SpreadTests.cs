using CsCheck;

namespace Thermal.Charts.Tests.Property;

/// <summary>Labels keep their order and never overlap.</summary>
public class SpreadTests
{
    // Widths and places of labels as they occur, px; a thousandth of a pixel is rounding of single precision.
    private static readonly Gen<(float Wanted, float Size)[]> Labels = Gen.Select(Gen.Float[0, 600], Gen.Float[10, 80]).Array[1, 14];
    private const float RoundingPx = 0.001f;

    [Fact]
    public void Labels_never_overlap_and_keep_their_order() => Labels.Sample(labels =>
    {
        (float[] wanted, float[] sizes) = Ordered(labels);
        float[] middles = Spread.Apart(wanted, sizes, 0, 600);
        return Enumerable.Range(1, wanted.Length - 1).All(i => middles[i] - middles[i - 1] >= (sizes[i] + sizes[i - 1]) / 2 - RoundingPx);
    });

    [Fact]
    public void Labels_stay_within_their_line_where_they_fit() => Labels.Where(labels => labels.Sum(label => label.Size) <= 600).Sample(labels =>
    {
        (float[] wanted, float[] sizes) = Ordered(labels);
        float[] middles = Spread.Apart(wanted, sizes, 0, 600);
        return middles[0] - sizes[0] / 2 >= -RoundingPx && middles[^1] + sizes[^1] / 2 <= 600 + RoundingPx;
    });

    [Fact]
    public void Labels_that_do_not_meet_are_left_alone() =>
        Assert.Equal([50f, 200f, 400f], Spread.Apart([50, 200, 400], [40, 40, 40], 0, 600));

    private static (float[] Wanted, float[] Sizes) Ordered((float Wanted, float Size)[] labels)
    {
        var ordered = labels.OrderBy(label => label.Wanted).ToArray();
        return ([.. ordered.Select(label => label.Wanted)], [.. ordered.Select(label => label.Size)]);
    }
}
