using Thermal.Materials;
using Thermal.Moisture;

namespace Thermal.Tests.Exact;

/// <summary>The mould index in steady climates, where the source gives times in closed form, and in dry hours.</summary>
public class MouldIndexTests
{
    /// <summary>Hours until an index is reached, one hour at a time.</summary>
    private static double ReachedH(double index, double surfaceC, double humidityFraction, MouldClass material = MouldClass.VerySensitive)
    {
        MouldState state = default;
        double hours = 0;
        for (; state.IndexFactor < index && hours < 1e5; hours++) state = MouldIndex.Next(state, surfaceC, humidityFraction, 1, material);
        return hours;
    }

    /// <summary>The curve of the source is 80 % at 20 °C, 80 above; its own polynomial at 5 °C is 88 %, at 0 °C 100 %. 0.1 %: it joins at 80.04.</summary>
    [Theory, InlineData(20, 0.80), InlineData(30, 0.80), InlineData(5, 0.880), InlineData(10, 0.820), InlineData(0, 1)]
    public void Critical_humidity_is_that_of_the_curve(double surfaceC, double humidity) => Assert.Equal(humidity, MouldIndex.CriticalHumidityFraction(surfaceC), 0.001);

    [Fact]
    public void Mineral_wool_needs_at_least_85_percent() => Assert.Equal(0.85, MouldIndex.CriticalHumidityFraction(25, MouldClass.MediumResistant));

    /// <summary>exp(−0.68·ln 20 − 13.9·ln 97 + 66.02) = 1.484 weeks and 2.983 weeks, reckoned by hand; half a percent for the digits.</summary>
    [Fact]
    public void Times_of_growth_at_20_degrees_and_97_percent_are_one_and_a_half_and_three_weeks()
    {
        Assert.Equal(1.484, MouldIndex.FirstGrowthH(20, 0.97) / 168, 0.008);
        Assert.Equal(2.983, MouldIndex.VisibleGrowthH(20, 0.97) / 168, 0.016);
        Assert.Equal(Math.Exp(0.14), MouldIndex.FirstGrowthH(20, 0.97, isSpruce: true) / MouldIndex.FirstGrowthH(20, 0.97), 1e-12);
        Assert.Equal(Math.Exp(-0.33), MouldIndex.FirstGrowthH(20, 0.97, isKilnDried: true) / MouldIndex.FirstGrowthH(20, 0.97), 1e-12);
    }

    /// <summary>The run of the index must agree with the two times in closed form; 1 % while the highest index lies far above, as it does in so damp air.</summary>
    [Theory, InlineData(20, 0.97), InlineData(10, 0.98), InlineData(5, 0.99), InlineData(30, 0.96)]
    public void A_steady_climate_reaches_index_1_and_3_when_the_closed_forms_say(double surfaceC, double humidity)
    {
        Assert.Equal(1, ReachedH(1, surfaceC, humidity) / (168 * Math.Exp(-0.68 * Math.Log(surfaceC) - 13.9 * Math.Log(100 * humidity) + 66.02)), 0.01);
        Assert.Equal(1, ReachedH(3, surfaceC, humidity) / (168 * Math.Exp(-0.74 * Math.Log(surfaceC) - 12.72 * Math.Log(100 * humidity) + 61.50)), 0.03);
    }

    /// <summary>1 + 7·x − 2·x² with x the way from 80 to 100 %: at 90 % 1 + 3.5 − 0.5 = 4. At 20 °C the curve ends at 80.04 %: 0.01.</summary>
    [Fact]
    public void A_steady_climate_stops_at_its_highest_index()
    {
        Assert.Equal(4, MouldIndex.HighestFactor(25, 0.9), 1e-12);
        MouldState state = default;
        for (int hour = 0; hour < 30_000; hour++) state = MouldIndex.Next(state, 25, 0.9, 1, MouldClass.VerySensitive);
        Assert.Equal(4, state.IndexFactor, 0.01);
        Assert.Equal(6, MouldIndex.HighestFactor(25, 1), 1e-12);
    }

    /// <summary>0.00133 an hour for six hours, nothing until 24, 0.000667 an hour after.</summary>
    [Theory, InlineData(3, 0.00399), InlineData(6, 0.00798), InlineData(20, 0.00798), InlineData(24, 0.00798), InlineData(48, 0.023988)]
    public void Dry_hours_take_back_what_the_source_says(int hours, double drop)
    {
        MouldState state = new(2, 0);
        for (int hour = 0; hour < hours; hour++) state = MouldIndex.Next(state, 15, 0.5, 1, MouldClass.VerySensitive);
        Assert.Equal(2 - drop, state.IndexFactor, 1e-9);
        Assert.Equal(hours, state.DryH);
    }

    [Fact]
    public void In_frost_it_stands_still() => Assert.Equal(new MouldState(2, 7), MouldIndex.Next(new(2, 7), -1, 0.99, 1, MouldClass.Sensitive));

    [Fact]
    public void It_never_falls_below_nothing() => Assert.Equal(0, MouldIndex.Next(new(0.0001, 0), 15, 0.4, 6, MouldClass.Sensitive).IndexFactor);

    [Fact]
    public void A_more_resistant_class_takes_longer()
    {
        double[] hours = [.. Enum.GetValues<MouldClass>().Select(material => ReachedH(0.5, 22, 0.97, material))];
        for (int i = 1; i < hours.Length; i++) Assert.True(hours[i] > 1.2 * hours[i - 1], $"{hours[i - 1]} h, {hours[i]} h");
    }

    [Theory]
    [InlineData(5, 0.81, true)]
    [InlineData(5, 0.80, false)]
    [InlineData(0, 0.99, false)]
    [InlineData(0.1, 0.99, true)]
    [InlineData(-10, 1, false)]
    public void Metal_is_wet_above_80_percent_and_above_zero(double metalC, double humidity, bool wet) => Assert.Equal(wet, WetnessHours.IsWet(metalC, humidity));

    [Fact]
    public void Ten_hours_in_a_hundred_are_876_a_year() => Assert.Equal(876, WetnessHours.PerYearH(10, 100), 1e-12);
}
