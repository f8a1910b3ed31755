using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>Ribs and what they forbid are shown where there are any.</summary>
public class ThicknessCurveTests
{
    [Fact]
    public void U_with_ribs_stands_beside_U_between_them_only_where_they_differ()
    {
        Assert.Contains(Drawn.Words(ThicknessCurve.Draw(Samples.RibThicknesses, Palette.Light, UnitSet.Metric)), word => word.Text == "with ribs");
        Assert.DoesNotContain(Drawn.Words(ThicknessCurve.Draw(Samples.Thicknesses, Palette.Light, UnitSet.Metric)), word => word.Text == "with ribs");
    }

    [Fact]
    public void Thicknesses_that_a_rib_does_not_fit_are_named()
    {
        Assert.Contains("Left out are 10 mm, 20 mm: roof bows would not fit.", ThicknessCurve.Draw(Samples.RibThicknesses, Palette.Light, UnitSet.Metric).Caption);
        Assert.DoesNotContain("Left out", ThicknessCurve.Draw(Samples.Thicknesses, Palette.Light, UnitSet.Metric).Caption);
    }
}
