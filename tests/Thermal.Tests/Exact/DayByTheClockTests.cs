using Thermal.Materials;
using Thermal.People;
using Thermal.Trips;
using Thermal.Trips.Living;

namespace Thermal.Tests.Exact;

/// <summary>People, meals, showers and wet things by the clock: sums by plain arithmetic, whatever the step and wherever midnight falls.</summary>
public class DayByTheClockTests
{
    private static readonly Habits Figures = new()
    {
        SleepersCount = 3, PetsGPerH = 17, SteamPerMealG = Bounded.Stated(150), FlamePerMealKWh = 0.5, VapourPerShowerG = Bounded.Stated(220), WaterPerShowerL = 12,
    };

    /// <summary>In from 17 to 9, asleep from 22.5 to 7: 16 h at home, of them 8.5 asleep and 7.5 awake.</summary>
    private static readonly TripHabits Usual = new() { PeopleCount = 3, MealsAtH = [8, 19], ShowersAtH = [17.25, 23.95], DryingPerDayG = 600, DryingFromH = 18 };

    private static readonly Leg Parked = TripSketch.Parked(TripSketch.Steady(0, 240), 240);

    private sealed record Sums(double PeopleG, double CookingG, double ShowersG, double DryingG, double WarmWaterL, double CarbonDioxideL, double HeatWh, double FlameWh);

    /// <summary>Goes through days from midnight and adds up the last of them.</summary>
    private static Sums LastDay(Leg leg, TripHabits habits, double stepH, int days = 1)
    {
        LegLife life = new(leg, habits, Figures);
        Drying drying = new();
        Doings now = new();
        double people = 0, cooking = 0, showers = 0, wet = 0, water = 0, gas = 0, heat = 0, flame = 0;
        int steps = (int)Math.Round(24 / stepH);
        for (int i = 0; i < steps * days; i++)
        {
            life.Fill(i % steps * stepH, stepH, true, drying, now);
            if (i < steps * (days - 1)) continue;
            double s = stepH * 3600;
            people += s * now.PeopleKgPerS;
            cooking += s * now.CookingKgPerS;
            showers += s * now.ShowersKgPerS;
            wet += s * now.DryingKgPerS;
            water += s * now.WarmWaterLPerS;
            gas += s * now.CarbonDioxideM3PerS;
            heat += stepH * now.PeopleW;
            flame += stepH * now.FlameW;
        }
        return new(1000 * people, 1000 * cooking, 1000 * showers, 1000 * wet, water, 1000 * gas, heat, flame);
    }

    /// <summary>Rounding only: the sums are exact for any step.</summary>
    [Theory, InlineData(1.0 / 60), InlineData(1.0 / 6), InlineData(0.25), InlineData(0.24)]
    public void A_day_of_three_people_gives_off_what_hours_times_figures_say(double stepH)
    {
        Sums day = LastDay(Parked, Usual, stepH);
        Assert.Equal(3 * (8.5 * 40 + 7.5 * 55) + 16 * 17, day.PeopleG, 1e-6);
        Assert.Equal(3 * (8.5 * 46 + 7.5 * 70), day.HeatWh, 1e-6);
        // Propane: 1.634 kg of water and 2.994 kg of gas of 1.84 kg/m³ for each 12.875 kWh.
        Assert.Equal(2 * (150 + 0.5 * 1634 / 12.875), day.CookingG, 1e-2);
        Assert.Equal(2 * 500, day.FlameWh, 1e-6);
        Assert.Equal(3 * (8.5 * 13 + 7.5 * 20) + 2 * 0.5 * 2994 / 12.875 / 1.84, day.CarbonDioxideL, 0.01);
        Assert.Equal(2 * 220, day.ShowersG, 1e-6);
        Assert.Equal(2 * 12, day.WarmWaterL, 1e-9);
    }

    [Theory, InlineData(1.0 / 6), InlineData(0.25)]
    public void After_days_as_much_dries_as_is_hung_up(double stepH) => Assert.Equal(600, LastDay(Parked, Usual, stepH, days: 8).DryingG, 0.001); // e^(−24·7/4) of a day is left

    /// <summary>Six hours after 18: 1 − e^(−6/4) of 600 g.</summary>
    [Fact]
    public void On_the_first_day_six_hours_of_drying_are_told() => Assert.Equal(600 * (1 - Math.Exp(-1.5)), LastDay(Parked, Usual, 1.0 / 6).DryingG, 1e-9);

    [Fact]
    public void On_the_road_all_are_awake_day_and_night_and_nobody_cooks_showers_or_hangs_things_up()
    {
        Sums day = LastDay(Parked with { SpeedMPerS = 25 }, Usual, 0.25);
        Assert.Equal(3 * 24 * 55 + 24 * 17, day.PeopleG, 1e-6);
        Assert.Equal((0, 0, 0, 0), (day.CookingG, day.ShowersG, day.DryingG, day.WarmWaterL));
    }

    [Fact]
    public void A_meal_at_an_hour_when_nobody_is_in_is_not_cooked_inside() =>
        Assert.Equal(500, LastDay(Parked, Usual with { MealsAtH = [8, 13] }, 0.25).FlameWh, 1e-9);

    [Fact]
    public void Nights_are_spent_in_it_even_where_the_hours_at_home_do_not_hold_them() =>
        Assert.Equal(3 * (8.5 * 40 + 2 * 55) + 10.5 * 17, LastDay(Parked, Usual with { HomeFromH = 18, HomeToH = 20 }, 0.25).PeopleG, 1e-6);

    [Fact]
    public void Equal_hours_mean_at_home_all_day() =>
        Assert.Equal(3 * (8.5 * 40 + 15.5 * 55) + 24 * 17, LastDay(Parked, Usual with { HomeFromH = 9, HomeToH = 9 }, 0.25).PeopleG, 1e-6);

    [Fact]
    public void With_nobody_on_board_nothing_happens() => Assert.Equal(new(0, 0, 0, 0, 0, 0, 0, 0), LastDay(Parked, Usual with { PeopleCount = 0 }, 0.25));

    [Theory]
    [InlineData(22.5, 7, 23, 2, 2)]
    [InlineData(22.5, 7, 6, 2, 1)]
    [InlineData(22.5, 7, 22, 10, 8.5)]
    [InlineData(1, 3, 23, 6, 2)]
    [InlineData(5, 5, 0, 24, 0)]
    [InlineData(0, 24, 3, 5, 5)]
    [InlineData(23.5, 0, 23, 2, 0.5)]
    public void A_span_of_the_clock_shares_what_fingers_count(double fromH, double toH, double clockH, double hours, double sharedH) =>
        Assert.Equal(sharedH, new ClockSpan(fromH, toH).SharedH(clockH, hours), 1e-12);

    [Theory, InlineData(23.99, true), InlineData(0, true), InlineData(6.99, true), InlineData(7, false), InlineData(22.49, false), InlineData(22.5, true)]
    public void A_night_holds_the_hours_on_both_sides_of_midnight(double clockH, bool holds) => Assert.Equal(holds, new ClockSpan(22.5, 7).Holds(clockH));

    private static Doings At(double clockH, bool isSunDown, TripHabits? habits = null, double? speedMPerS = null)
    {
        Doings now = new();
        new LegLife(Parked with { SpeedMPerS = speedMPerS }, habits ?? Usual, Figures).Fill(clockH, 1.0 / 6, isSunDown, new(), now);
        return now;
    }

    /// <summary>Covers of the night: from dusk once somebody is in, until they get up; never before, never on the road.</summary>
    [Theory]
    [InlineData(16.5, true, false)]
    [InlineData(17.5, false, false)]
    [InlineData(17.5, true, true)]
    [InlineData(3, true, true)]
    [InlineData(6.5, false, true)]
    [InlineData(7.5, true, false)]
    public void Covers_go_on_at_dusk_and_off_at_getting_up(double clockH, bool isSunDown, bool on) => Assert.Equal(on, At(clockH, isSunDown).CoversOn);

    [Fact]
    public void Covers_follow_their_rule()
    {
        Assert.True(At(12, false, Usual with { Covers = CoverUse.Always }).CoversOn);
        Assert.False(At(3, true, Usual with { Covers = CoverUse.Never }).CoversOn);
        Assert.False(At(3, true, Usual with { Covers = CoverUse.Always }, speedMPerS: 20).CoversOn);
    }

    [Fact]
    public void What_is_wanted_follows_the_hour()
    {
        TripHabits habits = Usual with { DayC = 21, NightC = 15, AwayC = 7, DrivingC = 18 };
        Assert.Equal((21, 15, 7, 18), (At(18, true, habits).WantedC, At(2, true, habits).WantedC, At(12, false, habits).WantedC, At(2, true, habits, speedMPerS: 20).WantedC));
        Assert.True(double.IsNaN(At(2, true, habits with { NightC = null }).WantedC));
    }
}
