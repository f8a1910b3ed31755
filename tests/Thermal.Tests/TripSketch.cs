using Thermal.Assessments;
using Thermal.Climates;
using Thermal.People;
using Thermal.Power;
using Thermal.Trips;

namespace Thermal.Tests;

/// <summary>Trips of the plausible van that tests share.</summary>
internal static class TripSketch
{
    internal static readonly DateTime Start = new(2026, 1, 10, 16, 0, 0);

    /// <summary>The van with a battery of 100 Ah, a panel, a lamp and a fridge; its wall and ribs have given ψ.</summary>
    internal static Case Van { get; } = PlausibleVan.Case with
    {
        Power = new()
        {
            Battery = new() { UsableAh = 100, Zone = "living" },
            Panels = [new() { Name = "panel", PeakW = 150 }],
            AlternatorA = 30,
            Loads = [new() { Name = "lamp", PowerW = 10, Rhythm = LoadRhythm.Evenings, HoursPerDay = 4, Zone = "living" }, new() { Name = "fridge", PowerW = 45, Rhythm = LoadRhythm.Fridge, Zone = "living" }],
        },
    };

    internal static TripHabits Habits { get; } = new() { PeopleCount = 2, ShowersAtH = [18], DryingPerDayG = 300 };

    /// <summary>Steady air for a number of hours from the usual start.</summary>
    internal static Weather Steady(double airC, int hours, double humidityFraction = 0.8, double windMPerS = 3) => SteadyWeather.Of("steady air", Start, hours, airC, humidityFraction, windMPerS);

    /// <summary>Parked in one weather, nose south.</summary>
    internal static Leg Parked(Weather weather, double hours) => new() { Name = "parked", StartLocal = Start, EndLocal = Start.AddHours(hours), Weather = weather, HeadingDeg = 180 };

    /// <summary>One leg in steady air.</summary>
    internal static TripCase In(double airC, int hours, TripHabits? habits = null, double stepS = 600, double? startC = null, Case? van = null) => new(van ?? Van, new()
    {
        Name = "in steady air",
        Legs = [Parked(Steady(airC, hours), hours)],
        Habits = habits ?? Habits,
        StepS = stepS,
        StartC = startC,
    });

    /// <summary>Runs it until the test is stopped.</summary>
    internal static TripResult Run(TripCase asked) => TripRun.Of(asked, cancel: TestContext.Current.CancellationToken);
}
