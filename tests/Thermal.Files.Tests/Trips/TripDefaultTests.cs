using Thermal.Climates;
using Thermal.Files.Tests.Vehicles;
using Thermal.Trips;

namespace Thermal.Files.Tests.Trips;

/// <summary>A few lines make a trip; what they leave out has the default of its record, so that the two cannot drift apart.</summary>
public sealed class TripDefaultTests
{
    private const string Least = """
        format: 1
        name: one night
        start: 2026-02-07 16:00
        habits: {people: 2}
        legs:
          - {name: car park, lasts: 17 h, place: davos}
        """;

    private static readonly TripRequest Read = Assert.IsType<TripRequest>(TripFile.Read(Least, "least.yaml").Value);

    [Fact]
    public void People_live_as_usual() => Assert.Equal(Described.Of(new TripHabits { PeopleCount = 2 }), Described.Of(Read.Trip.Habits));

    [Fact]
    public void Trip_and_leg_have_the_usual_figures()
    {
        Weather weather = Read.Trip.Legs[0].Weather;
        Leg leg = new() { Name = "car park", StartLocal = new(2026, 2, 7, 16, 0, 0), EndLocal = new(2026, 2, 8, 9, 0, 0), Weather = weather };
        Assert.Equal(Described.Of(new Trip { Name = "one night", Legs = [leg], Habits = Read.Trip.Habits }), Described.Of(Read.Trip));
        Assert.Null(Read.Vehicle);
    }

    /// <summary>Of a place the ordinary year of the start's own calendar year.</summary>
    [Fact]
    public void The_weather_is_the_ordinary_year_of_the_place()
    {
        Weather usual = GeneratedWeather.Typical(PlaceLibrary.BuiltIn.Find("Davos")!, GeneratedWeather.UsualSeed, 2026);
        Assert.Equal(usual.AirC, Read.Trip.Legs[0].Weather.AirC);
        Assert.Equal(usual.StartUtc, Read.Trip.Legs[0].Weather.StartUtc);
    }

    [Fact]
    public void Steady_air_has_the_same_hours_all_through_without_sun_and_walls_as_warm_as_the_air()
    {
        Weather air = TripFile.Read(Least.Replace("place: davos", "steady: {temperature: -15 °C}", StringComparison.Ordinal), "x").Value!.Trip.Legs[0].Weather;
        Assert.Equal(17, air.Count);
        Assert.All(air.AirC, airC => Assert.Equal(-15, airC));
        Assert.Equal((-15.0, 0.0, 0.0, WeatherKind.Steady), (air.SkyC![3], air.GlobalWPerM2![3], air.WindMPerS[3], air.Kind));
        Assert.InRange(air.VapourPa[0] / 191, 0.79, 0.81); // 80 % of 191 Pa over water at −15 °C, printed tables
    }

    /// <summary>−8 °C at Sion stands in its file, and the date is that of the leg.</summary>
    [Fact]
    public void A_cold_spell_reaches_the_design_temperature_on_the_dates_of_the_leg()
    {
        Weather cold = TripFile.Read(Least.Replace("place: davos", "place: sion, cold_spell: true", StringComparison.Ordinal), "x").Value!.Trip.Legs[0].Weather;
        Assert.Equal((WeatherKind.ColdSpell, new DateTime(2026, 2, 7), 48), (cold.Kind, cold.StartUtc.AddHours(cold.UtcOffsetH), cold.Count));
        Assert.InRange(cold.AirC.Min(), -8, -7.6); // hours at their middle may miss the coldest moment
    }

    [Fact]
    public void A_leg_keeps_the_habits_it_does_not_change()
    {
        Trip trip = TripFile.Read(Least.Replace("place: davos", "place: davos, habits: {night: off, covers: always}", StringComparison.Ordinal), "x").Value!.Trip;
        Assert.Equal(Described.Of(trip.Habits with { NightC = null, Covers = CoverUse.Always }), Described.Of(trip.Legs[0].Habits));
        Assert.Equal(16, trip.Habits.NightC);
    }

    [Theory]
    [InlineData("north", 0.0)]
    [InlineData("north_east", 45.0)]
    [InlineData("west", 270.0)]
    [InlineData("225°", 225.0)]
    [InlineData("unknown", null)]
    public void A_heading_is_a_compass_point_or_degrees_or_unknown(string written, double? deg) =>
        Assert.Equal(deg, TripFile.Read(Least.Replace("place: davos", $"place: davos, heading: {written}", StringComparison.Ordinal), "x").Value!.Trip.Legs[0].HeadingDeg);

    [Theory]
    [InlineData("7:05", 7 + 5 / 60.0)]
    [InlineData("07:05", 7 + 5 / 60.0)]
    [InlineData("0:00", 0.0)]
    [InlineData("24:00", 24.0)]
    public void Times_are_hours_and_minutes(string written, double hours) =>
        Assert.Equal(hours, TripFile.Read(Least.Replace("people: 2", $"people: 2, home_to: {written}", StringComparison.Ordinal), "x").Value!.Trip.Habits.HomeToH);

    /// <summary>Every minute of the day survives being written.</summary>
    [Fact]
    public void Every_minute_of_the_day_is_written_as_it_was_read()
    {
        for (int minute = 0; minute < 1440; minute += 7)
        {
            TripRequest one = Read with { Trip = Read.Trip with { Habits = Read.Trip.Habits with { DryingFromH = minute / 60 + minute % 60 / 60.0 } } };
            Assert.Equal(one.Trip.Habits.DryingFromH, TripFile.Read(TripFile.Write(one), "x").Value!.Trip.Habits.DryingFromH);
        }
    }
}
