using Thermal.Materials;
using Thermal.Moisture;

namespace Thermal.Tests.Refusals;

/// <summary>Nonsense about mould and wet metal is refused by name, NaN included.</summary>
public class MouldRefusals
{
    private static void Refused(string parameter, Action call) => Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(call).ParamName);

    [Theory, InlineData(double.NaN), InlineData(293.15), InlineData(-200)]
    public void A_surface_out_of_range_is_refused(double surfaceC)
    {
        Refused("surfaceC", () => MouldIndex.CriticalHumidityFraction(surfaceC));
        Refused("surfaceC", () => MouldIndex.FirstGrowthH(surfaceC, 0.9));
        Refused("surfaceC", () => MouldIndex.VisibleGrowthH(surfaceC, 0.9));
        Refused("surfaceC", () => MouldIndex.Next(default, surfaceC, 0.9, 1, MouldClass.Sensitive));
        Refused("metalC", () => WetnessHours.IsWet(surfaceC, 0.9));
    }

    [Theory, InlineData(double.NaN), InlineData(80), InlineData(-0.1)]
    public void A_humidity_that_is_no_fraction_is_refused(double humidityFraction)
    {
        Refused("humidityFraction", () => MouldIndex.FirstGrowthH(20, humidityFraction));
        Refused("humidityFraction", () => MouldIndex.VisibleGrowthH(20, humidityFraction));
        Refused("humidityFraction", () => MouldIndex.HighestFactor(20, humidityFraction));
        Refused("humidityFraction", () => MouldIndex.Next(default, 20, humidityFraction, 1, MouldClass.Sensitive));
        Refused("humidityFraction", () => WetnessHours.IsWet(20, humidityFraction));
    }

    [Fact]
    public void Other_nonsense_is_refused()
    {
        Refused("hours", () => MouldIndex.Next(default, 20, 0.9, 168, MouldClass.Sensitive));
        Assert.Throws<ArgumentOutOfRangeException>(() => MouldIndex.Next(new(double.NaN, 0), 20, 0.9, 1, MouldClass.Sensitive));
        Assert.Throws<ArgumentOutOfRangeException>(() => MouldIndex.CriticalHumidityFraction(20, (MouldClass)9));
        Refused("wetH", () => WetnessHours.PerYearH(11, 10));
        Refused("countedH", () => WetnessHours.PerYearH(0, double.NaN));
    }
}
