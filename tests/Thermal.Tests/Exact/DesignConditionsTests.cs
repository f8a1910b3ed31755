using Thermal.Climates;

namespace Thermal.Tests.Exact;

/// <summary>Design conditions of hours whose order is known.</summary>
public sealed class DesignConditionsTests
{
    private static Weather Of(IReadOnlyList<double> air, double stepS = 3600) => new()
    {
        Name = "drawn", LatitudeDeg = 60, LongitudeDeg = 0, AltitudeM = 0, UtcOffsetH = 0, Kind = WeatherKind.Real, Source = "drawn for a test",
        StartUtc = new(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc), StepS = stepS, AirC = air, VapourPa = air, WindMPerS = air,
    };

    /// <summary>0, 1 … 1000: the share u of the ordered values is 1000·u exactly.</summary>
    [Fact]
    public void Percentiles_of_a_ramp_lie_on_it()
    {
        DesignConditions found = DesignConditions.Of(Of([.. Enumerable.Range(0, 1001).Select(i => (double)((i * 379) % 1001))]));
        Assert.Equal(4, found.HoursAt996C, 1e-9);
        Assert.Equal(10, found.HoursAt99C, 1e-9);
        Assert.Equal(0, found.ColdestC);
    }

    /// <summary>Ten days at 0 °C with one day at −10 within: running means are −10, −5 and −10/3.</summary>
    [Theory, InlineData(3600, 24), InlineData(900, 96), InlineData(10_800, 8)]
    public void The_coldest_means_are_found_at_any_step(double stepS, int ofDay)
    {
        double[] air = new double[10 * ofDay];
        Array.Fill(air, -10, 4 * ofDay, ofDay);
        DesignConditions found = DesignConditions.Of(Of(air, stepS));
        Assert.Equal(-10, found.ColdestDayC, 1e-9);
        Assert.Equal(-5, found.ColdestTwoDaysC, 1e-9);
        Assert.Equal(-10.0 / 3, found.ColdestThreeDaysC, 1e-9);
        // Every window of 72 h that holds the cold day is as cold; the first begins two days before it.
        Assert.Equal(new DateTime(2025, 1, 4, 12, 0, 0, DateTimeKind.Utc), found.ColdestThreeDaysUtc);
        Assert.Equal(10 / 365.25, found.YearsRatio, 1e-9);
    }

    [Fact]
    public void Less_than_three_days_are_refused() => Assert.Throws<ArgumentException>(() => DesignConditions.Of(Of(new double[71])));
}
