using CsCheck;
using Thermal.Climates;

namespace Thermal.Tests.Property;

/// <summary>What holds for a parked vehicle wherever it stands.</summary>
public sealed class SunOnVehicleLaws
{
    private static readonly Place Somewhere = new()
    {
        Name = "Somewhere",
        Country = "Nowhere",
        LatitudeDeg = 47,
        LongitudeDeg = 8,
        AltitudeM = 500,
        Design = new() { TemperatureC = -12, Kind = DesignKind.Stated, PlusMinusK = 0, Note = "invented" },
        Source = "invented",
        Period = "none",
        Licence = "none",
        Months = [.. Enumerable.Range(0, 12).Select(month => new MonthNormals { MeanC = month - 3, MinC = month - 7, MaxC = month + 2, RelativeHumidityFraction = 0.8, GlobalIrradianceWPerM2 = 60 + 10 * month })],
    };

    private static readonly Weather Year = GeneratedWeather.Typical(Somewhere);

    private static readonly Gen<double> AnyHeading = Gen.Double[0, 360];

    [Fact]
    public void No_side_of_any_heading_leaves_the_span_from_darkest_to_sunniest_by_much() => AnyHeading.Sample(headingDeg =>
        SunOnVehicle.Months(Year, headingDeg, 0, GroundCover.EvenFraction(0.2)).Zip(SunOnVehicle.AnyHeading(Year, 0, GroundCover.EvenFraction(0.2))).All(pair =>
            // Directions are tried every 15°: the best lies at most 7.5° off one of them, and cos 7.5° is 0.991.
            new[] { pair.First.FrontWPerM2, pair.First.RearWPerM2, pair.First.LeftWPerM2, pair.First.RightWPerM2 }
                .All(sideWPerM2 => sideWPerM2 >= pair.Second.LeastWPerM2 * 0.98 && sideWPerM2 <= pair.Second.MostWPerM2 * 1.01)), iter: 10);

    [Fact]
    public void Brighter_ground_never_takes_from_a_side_and_never_changes_the_roof() => AnyHeading.Sample(headingDeg =>
        SunOnVehicle.Months(Year, headingDeg, 0, GroundCover.EvenFraction(0.2)).Zip(SunOnVehicle.Months(Year, headingDeg, 0, GroundCover.EvenFraction(0.7))).All(pair =>
            pair.First.RoofWPerM2 == pair.Second.RoofWPerM2 && pair.First.FrontWPerM2 < pair.Second.FrontWPerM2 && pair.First.RearWPerM2 < pair.Second.RearWPerM2), iter: 5);

    /// <summary>An upright face sees half the ground: 0.5·0.5·G more by raising the albedo by a half.</summary>
    [Fact]
    public void A_side_gets_half_of_what_the_ground_throws_back()
    {
        IReadOnlyList<SunOnVehicleMonth> dark = SunOnVehicle.Months(Year, 90, 0, GroundCover.EvenFraction(0.2)), bright = SunOnVehicle.Months(Year, 90, 0, GroundCover.EvenFraction(0.7));
        for (int m = 0; m < 12; m++)
            Assert.Equal(0.25 * Somewhere.Months[m].GlobalIrradianceWPerM2!.Value, bright[m].FrontWPerM2 - dark[m].FrontWPerM2, 1e-6);
    }

    [Fact]
    public void At_the_equinox_the_day_has_twelve_hours_everywhere() => Gen.Double[-60, 60].Sample(latitudeDeg =>
        // A quarter of an hour is left for the drift of the declination through the day.
        Math.Abs(SunPath.Of(latitudeDeg, 10, new DateOnly(2025, 3, 20)).AboveH(0) - 12) < 0.25);

    [Fact]
    public void A_higher_horizon_never_lengthens_the_day() => Gen.Select(Gen.Double[-70, 70], Gen.Double[0, 40], Gen.Double[0, 40]).Sample((latitudeDeg, one, more) =>
    {
        SunPath path = SunPath.Of(latitudeDeg, 10, new DateOnly(2025, 6, 21));
        return path.AboveH(one + more) <= path.AboveH(one) + 1e-12;
    });

    /// <summary>Noon: 90° less latitude plus declination, 23.44° at the solstice.</summary>
    [Theory, InlineData(47, 12, 19.56), InlineData(47, 6, 66.44), InlineData(60, 12, 6.56), InlineData(-45, 6, 21.56)]
    public void The_sun_is_highest_where_latitude_and_declination_say(double latitudeDeg, int month, double highestDeg) =>
        Assert.Equal(highestDeg, SunPath.Of(latitudeDeg, 10, new DateOnly(2025, month, 21)).HighestDeg, 0.05); // ten minutes off noon are 0.01° low, the day off the solstice less

    [Fact]
    public void Cold_hours_are_counted_below_the_limit_and_not_at_it()
    {
        Weather weather = Year with { AirC = [-5.0, -5.1, 0, 3], StepS = 1800 };
        Assert.Equal(0.5, ColdHours.BelowH(weather, -5));
        Assert.Equal(1.0, ColdHours.BelowH(weather, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ColdHours.BelowH(weather, double.NaN));
    }

    [Fact]
    public void Weather_without_sun_is_refused() =>
        Assert.Throws<ArgumentException>(() => SunOnVehicle.Months(Year with { GlobalWPerM2 = null }, 0, 0, GroundCover.EvenFraction(0.2)));

    [Fact]
    public void Snow_lies_in_months_up_to_freezing() => Assert.Equal(
        [0.7, 0.7, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.7], GroundCover.SnowInFrostFraction([-3, 0, 0.1, 5, 9, 14, 16, 15, 11, 7, 2, -1]));
}
