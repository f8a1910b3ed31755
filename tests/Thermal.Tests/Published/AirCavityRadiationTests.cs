using Thermal.Bridges;
using Thermal.Envelope;

namespace Thermal.Tests.Published;

/// <summary>The small space of air against its radiosity, and against the ordinary air layer it widens into.</summary>
public class AirCavityRadiationTests
{
    private const double DepthM = 0.04, MeanK = 283.15;

    public static IEnumerable<object[]> Spaces => PublishedTable.Rows("air-cavity-radiosity.csv");

    /// <summary>Share of 4σT³ that radiation carries: what is left when still air, 1.25 W/(m²·K) sideways, is taken away.</summary>
    private static double RadiativeShare(double widthM, double emissivity) =>
        (AirCavity.ConductivityWPerMK(DepthM, widthM, FlowDirection.Horizontal, emissivity, emissivity) / DepthM - 1.25) / (4 * 5.670374e-8 * MeanK * MeanK * MeanK);

    [Theory, MemberData(nameof(Spaces))]
    public void Radiation_in_a_small_space_differs_from_its_radiosity_by_the_recorded_error_of_the_method(double widthOverDepth, double emissivity,
        double adiabatic, double linearWarm, double linearMiddle, double formulaOverAdiabatic, double tolerance)
    {
        double computed = RadiativeShare(widthOverDepth * DepthM, emissivity);
        Assert.Equal(formulaOverAdiabatic, computed / adiabatic, tolerance);
        Assert.InRange(linearWarm, 0, 1.001 * computed); // walls that conduct take heat of their own: the warm face alone gives less,
        if (widthOverDepth >= 0.5) Assert.InRange(linearMiddle, computed, 2 * computed); // and more passes the middle
    }

    /// <summary>1e-3: at a thousand times its depth the ends see each other but for half a thousandth.</summary>
    [Fact]
    public void A_space_far_wider_than_deep_is_an_air_layer()
    {
        double layer = DepthM / AirLayerResistance.ClosedM2KPerW(DepthM, FlowDirection.Horizontal);
        Assert.Equal(1, AirCavity.ConductivityWPerMK(DepthM, 1000 * DepthM, FlowDirection.Horizontal) / layer, 1e-3);
        Assert.Equal(layer, AirCavity.ConductivityWPerMK(DepthM, double.PositiveInfinity, FlowDirection.Horizontal), 1e-9);
    }
}
