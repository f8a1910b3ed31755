using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>The picture says whether the heater is enough and whether it cycles.</summary>
public class HeaterOutputTests
{
    [Fact]
    public void Enough_and_cycling_are_said() => Assert.Equal(
        "On the cold night 2.9 kW are needed and the heater gives 4.0 kW: enough. On the mild night 0.69 kW are below its lowest output of 0.90 kW: it starts and stops.",
        HeaterOutput.Draw(Samples.Need, Palette.Light, UnitSet.Metric).Caption);

    [Fact]
    public void Missing_power_is_said() =>
        Assert.Contains("0.90 kW are missing", HeaterOutput.Draw(Samples.TooSmall, Palette.Light, UnitSet.Metric).Caption);

    [Fact]
    public void Both_nights_and_the_warm_up_are_marked()
    {
        string[] words = [.. Drawn.Words(HeaterOutput.Draw(Samples.Need, Palette.Light, UnitSet.Metric)).Select(word => word.Text)];
        Assert.Contains("cold night: 2.3 kW", words);
        Assert.Contains("mild night: 0.69 kW", words);
        Assert.Contains("to warm up: 2.9 kW", words);
    }
}
