using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Files;
using Thermal.Trips;

namespace Thermal.Benchmarks;

/// <summary>October to April in the library van at Davos: everything a trip is asked, at steps of ten minutes.</summary>
internal sealed class HeatingSeason
{
    private readonly TripCase _asked;

    internal HeatingSeason()
    {
        Case van = VehicleLibrary.Find(VehicleLibrary.UsualName)!;
        Weather year = GeneratedWeather.Typical(PlaceLibrary.BuiltIn.Find("Davos")!);
        _asked = new(van, new()
        {
            Name = "heating season",
            Habits = new() { PeopleCount = van.Habits.SleepersCount },
            Legs = [new() { Name = "winter base", StartLocal = new(2025, 10, 1), EndLocal = new(2026, 5, 1), Weather = year, HeadingDeg = 180, Snow = true }],
        });
    }

    /// <summary>Runs it, nothing solved before; returns the heat of the heater, Wh.</summary>
    internal double Run() => TripRun.Of(_asked).Heat.HeaterWh;
}
