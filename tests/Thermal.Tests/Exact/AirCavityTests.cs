using Thermal.Bridges;
using Thermal.Envelope;

namespace Thermal.Tests.Exact;

/// <summary>The limits between which a small air space lies.</summary>
public class AirCavityTests
{
    [Theory, InlineData(FlowDirection.Up), InlineData(FlowDirection.Horizontal), InlineData(FlowDirection.Down)]
    public void A_space_without_ends_is_an_air_layer(FlowDirection direction)
    {
        double layer = 0.03 / AirLayerResistance.ClosedM2KPerW(0.03, direction, 0.9, 0.2, 5);
        Assert.Equal(layer, AirCavity.ConductivityWPerMK(0.03, double.PositiveInfinity, direction, 0.9, 0.2, 5), 12);
        Assert.InRange(AirCavity.ConductivityWPerMK(0.03, 30, direction, 0.9, 0.2, 5) / layer, 0.998, 1);
    }

    /// <summary>Between black ends at the bottom of a well, half the radiation arrives directly or by the walls: h_r = 2σT³; what the air carries, 1.25, comes on top.</summary>
    [Fact]
    public void In_a_deep_shaft_half_the_radiation_arrives()
    {
        double black = 4 * 5.670374419e-8 * Math.Pow(283.15, 3);
        Assert.InRange(AirCavity.ConductivityWPerMK(1, 0.001, FlowDirection.Horizontal, 1, 1), 1.25 + black / 2, 1.25 + black * 0.5003);
    }

    /// <summary>A square space between black ends: F = √2/2, by the definition of the view factor with walls that pass on what they get.</summary>
    [Fact]
    public void In_a_square_space_seven_tenths_arrive()
    {
        double black = 4 * 5.670374419e-8 * Math.Pow(283.15, 3);
        Assert.Equal(0.04 * (1.25 + black * Math.Sqrt(2) / 2), AirCavity.ConductivityWPerMK(0.04, 0.04, FlowDirection.Horizontal, 1, 1), 12);
    }

    [Fact]
    public void A_narrow_slit_holds_still_air()
    {
        double bright = AirCavity.ConductivityWPerMK(0.002, 0.5, FlowDirection.Horizontal, 0.01, 0.01);
        Assert.InRange(bright, 0.025, 0.0252);
    }
}
