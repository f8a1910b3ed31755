using Thermal.Climates;
using Thermal.Power;
using Thermal.Trips;
using Thermal.Water;

namespace Thermal.Tests.Refusals;

/// <summary>Trips that cannot be are refused by name; ones that fail on the way say so as findings.</summary>
public class TripRefusalTests
{
    private static TripCase With(Weather weather, double hours) => new(TripSketch.Van, new() { Name = "trip", Legs = [TripSketch.Parked(weather, hours)], Habits = TripSketch.Habits });

    [Fact]
    public void Measured_weather_that_ends_before_the_leg_is_refused_with_both_dates()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => TripSketch.Run(With(TripSketch.Steady(0, 10) with { Kind = WeatherKind.Real }, 12)));
        Assert.Contains("parked lasts from 2026-01-10 16:00 to 2026-01-11 04:00, but the weather of steady air from 2026-01-10 16:00 to 2026-01-11 02:00", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Measured_weather_that_begins_after_the_leg_is_refused() =>
        Assert.Throws<ArgumentException>(() => TripSketch.Run(With(TripSketch.Steady(0, 48) with { Kind = WeatherKind.Real, StartUtc = new(2026, 1, 10, 17, 0, 0, DateTimeKind.Utc) }, 12)));

    [Fact]
    public void Measured_weather_that_just_covers_the_leg_is_taken() => Assert.Equal(12, TripSketch.Run(With(TripSketch.Steady(0, 12) with { Kind = WeatherKind.Real }, 12)).Hours.Count);

    [Fact]
    public void A_tank_a_battery_or_a_load_in_a_zone_that_does_not_exist_is_refused_by_name()
    {
        Tank lost = new() { Name = "lost tank", WaterL = 10, AreaM2 = 0.3, Zone = "attic" };
        ArgumentException refused = Assert.Throws<ArgumentException>(() => TripSketch.Run(TripSketch.In(0, 2, van: TripSketch.Van with { Tanks = [lost] })));
        Assert.Contains("attic", refused.Message, StringComparison.Ordinal);
        Assert.Contains("lost tank", refused.Message, StringComparison.Ordinal);
        BoardPower power = TripSketch.Van.Power! with { Battery = new() { UsableAh = 50, Zone = "attic" } };
        Assert.Throws<ArgumentException>(() => TripSketch.Run(TripSketch.In(0, 2, van: TripSketch.Van with { Power = power })));
    }

    [Fact]
    public void Legs_that_overlap_are_refused()
    {
        Leg first = TripSketch.Parked(TripSketch.Steady(0, 48), 12);
        Assert.Throws<ArgumentException>(() => new Trip { Name = "trip", Legs = [first, first with { StartLocal = first.EndLocal.AddMinutes(-1), EndLocal = first.EndLocal.AddHours(2) }], Habits = TripSketch.Habits });
    }

    [Fact]
    public void A_heater_that_never_fits_is_a_finding()
    {
        TripResult found = TripSketch.Run(TripSketch.In(-15, 24, van: TripSketch.Van with { Heater = TripSketch.Van.Heater with { HighestW = 900, LowestW = 800 } }));
        Assert.Contains(found.Findings, finding => finding.Kind == TripFindingKind.HeaterShort && finding.FigureInItsUnit > 10);
    }

    /// <summary>An electric heater is off without shore power, and no stronger than the site.</summary>
    [Fact]
    public void An_electric_heater_lives_from_shore_alone()
    {
        TripCase off = TripSketch.In(0, 6, van: TripSketch.Van with { Heater = Heating.HeaterLibrary.Find("electric_2kw")! });
        Assert.Equal(0, TripSketch.Run(off).Heat.HeaterWh);
        TripCase on = off with { Trip = off.Trip with { Legs = [off.Trip.Legs[0] with { ShoreW = 700 }] } };
        TripResult found = TripSketch.Run(on);
        Assert.InRange(found.Hours.HeaterW.Max(), 600, 700);
    }
}
