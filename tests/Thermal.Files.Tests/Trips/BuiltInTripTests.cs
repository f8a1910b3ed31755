using Thermal.Files.Tests.Vehicles;
using Thermal.Trips;

namespace Thermal.Files.Tests.Trips;

/// <summary>The built-in trips are read without a problem and survive being written.</summary>
public sealed class BuiltInTripTests
{
    public static TheoryData<string> Names => [.. TripLibrary.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_built_in_trip_is_read_without_a_problem_and_names_a_built_in_vehicle(string name)
    {
        Reading<TripRequest> reading = TripFile.Read(TripLibrary.Text(name)!, name);
        Assert.Empty(reading.Problems);
        Assert.Contains(reading.Value!.Vehicle, VehicleLibrary.Names);
    }

    [Theory, MemberData(nameof(Names))]
    public void Written_then_read_gives_the_same_trip(string name)
    {
        TripRequest first = TripLibrary.Find(name)!;
        string text = TripFile.Write(first);
        Reading<TripRequest> again = TripFile.Read(text, name);
        Assert.Empty(again.Problems);
        Assert.Equal(Described.Of(first), Described.Of(again.Value!));
        Assert.Equal(text, TripFile.Write(again.Value!));
    }

    /// <summary>What the files say in words, counted by hand.</summary>
    [Fact]
    public void The_ski_week_lasts_six_days_and_seven_hours_with_three_people_drives_at_both_ends_and_has_one_night_on_a_site()
    {
        Trip trip = TripLibrary.Find("ski-week")!.Trip;
        Assert.Equal((new DateTime(2026, 2, 7, 9, 0, 0), new DateTime(2026, 2, 13, 16, 0, 0)), (trip.StartLocal, trip.EndLocal));
        Assert.Equal([true, false, false, false, true], trip.Legs.Select(leg => leg.IsDriving));
        Assert.Equal([null, null, 2300, null, null], trip.Legs.Select(leg => leg.ShoreW));
        Assert.Equal(70 / 3.6, trip.Legs[0].SpeedMPerS!.Value, 1e-12); // rounding of one division
        Assert.Equal((3, 22.0, 7.5, 180.0), (trip.Habits.PeopleCount, trip.Habits.BedtimeH, trip.Habits.MealsAtH[0], trip.Legs[1].HeadingDeg));
    }

    /// <summary>The grade asks for a soak of at least ten hours at −15 °C and four hours to reach 20 °C.</summary>
    [Fact]
    public void The_cold_chamber_soaks_and_heats_as_the_grade_asks()
    {
        Trip trip = TripLibrary.Find("cold-chamber")!.Trip;
        Assert.True(trip.Legs[0].EndLocal - trip.Legs[0].StartLocal >= TimeSpan.FromHours(10));
        Assert.Equal(TimeSpan.FromHours(4), trip.Legs[1].EndLocal - trip.Legs[1].StartLocal);
        Assert.All(trip.Legs.SelectMany(leg => leg.Weather.AirC), airC => Assert.Equal(-15, airC));
        Assert.Equal((0, -15.0, null, 20.0), (trip.Habits.PeopleCount, trip.StartC, trip.Habits.DayC, trip.Legs[1].Habits!.NightC));
    }

    [Fact]
    public void A_misspelt_name_is_offered_the_nearest() =>
        Assert.Contains("did you mean ski-week?", Assert.Single(TripLibrary.Open("sky-week").Problems).What);
}
