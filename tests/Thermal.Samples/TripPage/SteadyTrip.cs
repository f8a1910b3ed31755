using Thermal.Air;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Climates;
using Thermal.Trips;

namespace Thermal.Samples.TripPage;

/// <summary>Trips in weather that does not change: what a fact of the trade is told for.</summary>
internal static class SteadyTrip
{
    // Ribs are the same in all these runs: solved once.
    private static readonly BridgeCache Solved = new();
    private static readonly DateTime Start = new(2025, 1, 10, 0, 0, 0, DateTimeKind.Unspecified);

    /// <summary>Hours that are all alike, by day and night, without sun.</summary>
    /// <param name="outsideC">Outside, °C.</param>
    /// <param name="skyBelowAirK">How far the sky is below the air, K.</param>
    /// <param name="windMPerS">Wind, m/s.</param>
    /// <param name="hours">How many.</param>
    internal static Weather Weather(double outsideC, double skyBelowAirK, double windMPerS, int hours) => new()
    {
        Name = "steady weather",
        LatitudeDeg = 47,
        LongitudeDeg = 0,
        AltitudeM = 0,
        UtcOffsetH = 0,
        Kind = WeatherKind.Real,
        Source = "made for this page",
        StartUtc = DateTime.SpecifyKind(Start, DateTimeKind.Utc),
        StepS = 3600,
        AirC = Even(outsideC, hours),
        VapourPa = Even(NightConditions.DesignRelativeHumidityFraction * SaturationPressure.OverWaterPa(outsideC), hours),
        WindMPerS = Even(windMPerS, hours),
        GlobalWPerM2 = Even(0, hours),
        BeamNormalWPerM2 = Even(0, hours),
        DiffuseWPerM2 = Even(0, hours),
        SkyC = Even(outsideC - skyBelowAirK, hours),
    };

    /// <summary>Days in a vehicle parked in such weather, the wind at the vehicle as stated.</summary>
    internal static TripResult Run(Case asked, TripHabits habits, double outsideC, double skyBelowAirK, double windMPerS, int days, double? startC = null) => TripRun.Of(new(asked, new()
    {
        Name = "steady",
        Habits = habits,
        StartC = startC,
        StepS = Trip.LongestStepS,
        Legs =
        [
            new() { Name = "parked", StartLocal = Start, EndLocal = Start.AddDays(days), Weather = Weather(outsideC, skyBelowAirK, windMPerS, 24 * days), HeadingDeg = 180, WindShareFraction = 1 },
        ],
    }), Solved);

    /// <summary>Nobody at home, nothing on.</summary>
    internal static TripHabits Empty { get; } = new() { PeopleCount = 0, DayC = null, NightC = null, AwayC = null, Fan = FanUse.Off, MealsAtH = [] };

    /// <summary>Held at one temperature day and night.</summary>
    internal static TripHabits HeldAt(double wantedC, int people) => new() { PeopleCount = people, DayC = wantedC, NightC = wantedC, AwayC = wantedC };

    private static double[] Even(double value, int count)
    {
        double[] values = new double[count];
        Array.Fill(values, value);
        return values;
    }
}
