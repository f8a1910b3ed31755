using Thermal.Envelope;

namespace Thermal.Tests.Published;

/// <summary>Two handbook examples of convection at a plate.</summary>
public class PlateConvectionTests
{
    public static IEnumerable<object[]> Examples => PublishedTable.Rows("plate-convection.csv");

    [Theory, MemberData(nameof(Examples))]
    public void Convection_at_a_plate_comes_back(string quantity, double value, double relative)
    {
        double forced = PlateConvection.ForcedNusseltRatio(4 * 10 / 13.52e-6, 0.72), free = PlateConvection.FreeNusseltRatio(6.048e9, 0.71);
        double computed = quantity switch
        {
            "forced_nusselt" => forced,
            "forced_w_per_m2k" => PlateConvection.CoefficientWPerM2K(forced, 0.0242, 10),
            "free_nusselt" => free,
            _ => PlateConvection.CoefficientWPerM2K(free, 0.0257, 2.7),
        };
        Assert.InRange(computed / value, 1 - relative, 1 + relative);
    }

    /// <summary>The rules of thumb of the same chapter, 6.4·w^0.8·l^−0.2 = 12.2 and 1.6·3^0.3 = 2.2: within 10 %, since both are fits.</summary>
    [Fact]
    public void The_rules_of_thumb_are_not_far_off()
    {
        Assert.InRange(PlateConvection.CoefficientWPerM2K(PlateConvection.ForcedNusseltRatio(2_958_580, 0.72), 0.0242, 10) / 12.2, 0.9, 1.1);
        Assert.InRange(PlateConvection.CoefficientWPerM2K(PlateConvection.FreeNusseltRatio(6.048e9, 0.71), 0.0257, 2.7) / 2.2, 0.9, 1.1);
    }
}
