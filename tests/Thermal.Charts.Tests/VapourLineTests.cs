using Thermal.Air;

namespace Thermal.Charts.Tests;

/// <summary>The line of vapour pressure keeps below saturation and lies against it where it is wet.</summary>
public class VapourLineTests
{
    // Equal pressures differ only by rounding of the interpolation.
    private const double Rounding = 1e-9;

    [Fact]
    public void Vapour_pressure_never_exceeds_saturation_between_the_faces() => Assert.All(
        VapourLine.Of(Samples.TwelveLayers(Attitude.Roof)),
        sample => Assert.True(sample.PressurePa <= sample.SaturationPa * (1 + Rounding)));

    [Fact]
    public void Where_nothing_settles_the_line_is_straight_within_each_layer()
    {
        BuildUpCut cut = Samples.MildRoof;
        foreach (VapourSample sample in VapourLine.Of(cut))
        {
            double straightPa = cut.VapourPressuresAtFacesPa[sample.Layer] * (1 - sample.Part) + cut.VapourPressuresAtFacesPa[sample.Layer + 1] * sample.Part;
            Assert.Equal(straightPa, sample.PressurePa, straightPa * Rounding);
            Assert.False(sample.IsWet);
        }
    }

    [Fact]
    public void A_wet_face_is_named_and_marked()
    {
        double[] temperaturesC = [16, 15, 0, -11, -11.1];
        BuildUpCut cut = Samples.Roof with
        {
            TemperaturesAtFacesC = temperaturesC,
            // Dry enough beyond the wool that only its cold face is saturated.
            VapourPressuresAtFacesPa = [1190, 1180, SaturationPressure.PairPa(0), 50, 40],
            SettlesByDiffusionGPerM2 = 5,
        };
        IReadOnlyList<VapourSample> samples = VapourLine.Of(cut);
        Assert.Contains(samples, sample => sample is { Layer: 1, Part: 1, IsWet: true });
        Assert.Equal("at the face between sheep's wool and closed-cell foam", VapourLine.WetPlaces(cut, samples)[^1]);
    }

    [Fact]
    public void Tight_layers_are_shortened_and_open_ones_keep_their_proportion()
    {
        double[] faces = DiffusionScale.Faces(Samples.Roof.Layers);
        // Ply 1.2 m and wool 0.03 m share what the two tight layers leave: 1 − 2·0.16.
        Assert.Equal(0.68 * 1.2 / 1.23, faces[1], 1e-12); // rounding
        Assert.Equal(0.68, faces[2], 1e-12); // rounding
        Assert.Equal([false, false, true, true], DiffusionScale.IsShortened(Samples.Roof.Layers));
    }
}
