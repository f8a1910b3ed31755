using Thermal.Air;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Trips;
using Thermal.Trips.Course;
using Thermal.Trips.Heat;
using Thermal.Trips.Outdoors;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Carbon dioxide, weather and sun of a trip against closed forms and hand arithmetic.</summary>
public class TripAirTests
{
    private static Body OneRoom(double volumeM3) => Thermal.Trips.Heat.Body.Of(
        Sketches.Body([Room("living", ZoneKind.Living, volumeM3)], [Panel("wall", 10, "living", new([Sheet(0.02, 0.1)]))]), FilmRule.Separate, 101_325);

    /// <summary>c(t) = c_e + G/Q·(1 − e^(−Q·t/V)): 26 L/h of two sleepers in 10 m³ at 8 m³/h; exact whatever the step.</summary>
    [Theory, InlineData(60), InlineData(600), InlineData(900)]
    public void Carbon_dioxide_of_one_room_is_the_closed_form_of_a_well_mixed_one(double stepS)
    {
        CarbonDioxide gas = new(OneRoom(10));
        int steps = (int)(8 * 3600 / stepS);
        for (int i = 0; i < steps; i++) gas.Step(stepS, 0, 0.026 / 3600, [8], []);
        Assert.Equal(420 + 26_000.0 / 8 * (1 - Math.Exp(-0.8 * 8)), gas.Ppm[0], 1e-6);
    }

    [Fact]
    public void In_a_sealed_room_carbon_dioxide_rises_by_what_is_given_off()
    {
        CarbonDioxide gas = new(OneRoom(10));
        for (int i = 0; i < 6; i++) gas.Step(600, 0, 0.02 / 3600, [0], []);
        Assert.Equal(420 + 2000, gas.Ppm[0], 1e-6); // 20 L in 10 m³
    }

    private static Weather Ramp(WeatherKind kind, DateTime startUtc, int hours) => new()
    {
        Name = "ramp",
        LatitudeDeg = 47,
        LongitudeDeg = 10,
        AltitudeM = 0,
        UtcOffsetH = 1,
        Kind = kind,
        Source = "drawn for a test",
        StartUtc = startUtc,
        StepS = 3600,
        AirC = [.. Enumerable.Range(0, hours).Select(i => 0.001 * i)],
        VapourPa = [.. Enumerable.Repeat(500.0, hours)],
        WindMPerS = [.. Enumerable.Repeat(3.0, hours)],
        SkyC = [.. Enumerable.Repeat(-10.0, hours)],
    };

    private static double AirAt(Weather weather, DateTime local)
    {
        OutdoorsNow now = new();
        new WeatherTrack(new() { Name = "leg", StartLocal = local, EndLocal = local.AddHours(1), Weather = weather }).Fill(local, now);
        return now.AirC;
    }

    /// <summary>Local time is an hour ahead; the value of hour i stands at its middle.</summary>
    [Theory, InlineData(10, 30, 0.009), InlineData(11, 0, 0.0095), InlineData(11, 15, 0.00975)]
    public void Measured_air_is_drawn_straight_between_the_middles_of_its_hours(int hour, int minute, double airC) =>
        Assert.Equal(airC, AirAt(Ramp(WeatherKind.Real, new(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc), 48), new(2026, 1, 1, hour, minute, 0)), 1e-12);

    /// <summary>Hour 1416 of a common year begins on 1 March; local midnight of the year is 23:00 UTC of the day before.</summary>
    [Theory, InlineData(2026), InlineData(2028), InlineData(2024)]
    public void A_typical_year_repeats_by_the_calendar_in_leap_years_too(int year) =>
        Assert.Equal(1.416, AirAt(Ramp(WeatherKind.TypicalYear, new(2024, 12, 31, 23, 0, 0, DateTimeKind.Utc), 8760), new(year, 3, 1, 0, 30, 0)), 1e-12);

    /// <summary>31 + 27 days and 9 hours are 1401 hours; values stand at the middles, so 1400.5.</summary>
    [Theory, InlineData(28), InlineData(29)]
    public void The_29th_of_February_is_lived_as_the_28th(int day) =>
        Assert.Equal(1.4005, AirAt(Ramp(WeatherKind.TypicalYear, new(2024, 12, 31, 23, 0, 0, DateTimeKind.Utc), 8760), new(2028, 2, day, 9, 0, 0)), 1e-12);

    /// <summary>f = 1 − (1 − c)³; of light from all round 2∫c·f dc = 0.9.</summary>
    [Fact]
    public void What_glass_lets_pass_from_all_round_is_the_integral_of_what_it_lets_pass_at_each_angle()
    {
        const int n = 100_000;
        double sum = 0;
        for (int i = 0; i < n; i++)
        {
            double c = (i + 0.5) / n;
            sum += 2 * c * SunTrack.ThroughFactor(c) / n;
        }
        Assert.Equal(SunTrack.DiffuseThroughFraction, sum, 1e-8);
        Assert.Equal((0, 0.875, 1), (SunTrack.ThroughFactor(0), SunTrack.ThroughFactor(0.5), SunTrack.ThroughFactor(1)));
    }
}
