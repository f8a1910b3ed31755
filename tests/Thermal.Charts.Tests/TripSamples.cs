using Thermal.Files;
using Thermal.Trips;

namespace Thermal.Charts.Tests;

/// <summary>Made-up trips with the shapes of real ones; no physics stands behind them.</summary>
internal static class TripSamples
{
    private static readonly TripCase Asked = AskedOf("ski-week");
    private static readonly DateTime Start = new(2026, 2, 7, 9, 0, 0);

    internal static TripResult SkiWeek { get; } = Of("ski week", ("drive there", 6), ("car park by the lifts", 138), ("drive home", 7));

    internal static TripResult Weekend { get; } = Of("weekend", ("drive", 3), ("lake shore with a very long name that nobody reads", 40));

    internal static TripResult Season { get; } = Of("winter in the valley", ("autumn on the road", 24 * 60), ("valley", 24 * 120), ("spring", 24 * 32));

    internal static TripResult OneHour { get; } = Of("one hour", ("an hour", 1));

    /// <summary>No battery, no tanks, no heat wanted, and nothing got wet.</summary>
    internal static TripResult Bare { get; } = WithoutAll(Of("heat day", ("meadow", 48)));

    /// <summary>Many short legs, and a battery that runs flat.</summary>
    internal static TripResult Flat { get; } = WithFlat(Of("round trip", [.. Enumerable.Range(1, 9).Select(i => ($"stage {i} over the pass", 10))]));

    private static TripCase AskedOf(string name)
    {
        TripRequest request = TripLibrary.Find(name)!;
        return new(VehicleLibrary.Find(request.Vehicle!)!, request.Trip);
    }

    private static TripResult Of(string name, params (string Name, int Hours)[] legs)
    {
        List<Leg> parts = [];
        foreach ((string leg, int hours) in legs)
        {
            DateTime from = parts.Count == 0 ? Start : parts[^1].EndLocal;
            parts.Add(Asked.Trip.Legs[1] with { Name = leg, StartLocal = from, EndLocal = from.AddHours(hours) });
        }
        TripHours found = Hours(legs.Sum(leg => leg.Hours));
        return new()
        {
            Asked = Asked with { Trip = Asked.Trip with { Name = name, Legs = parts } },
            Hours = found,
            Days = [],
            Heat = new(0, 0, 0, 0, 0, [], 0, 0),
            Water = new(5200, 900, 1200, 1500, 6900, 120, 640, 380, 520, 210, 30, 0),
            Energy = new(9.3, 0.8, 0, 41, 180, [], 42, 30, 0, 0, 0.31, null, 0, 0),
            Wet = [],
            BuildUps = [],
            Mould = [],
            Metal = [],
            Tanks = [new("fresh water", 3.1, null, 0, 210, 40), new("waste water", -4.2, Start.AddHours(30), 0.63, 0, 120)],
            Pipes = [],
            Comfort = new(100, 4, 13.2, 0, 20.1, 1.4, 1900, 0, 22, -3, "windscreen glass"),
            Findings = [],
        };
    }

    private static TripHours Hours(int count)
    {
        // A day's swing over a slow one of nine days.
        double Swing(int i, double day, double slow) => day * Math.Sin(i * Math.PI / 12) + slow * Math.Sin(i * 2 * Math.PI / 216);
        IReadOnlyList<double> Each(Func<int, double> of) => [.. Enumerable.Range(0, count).Select(of)];
        int Clock(int i) => (i + Start.Hour) % 24;
        bool IsNight(int i) => Clock(i) is < 8 or >= 18;
        IReadOnlyList<double> outside = Each(i => -7 + Swing(i, 5, 6)), glass = Each(i => IsNight(i) ? 40 * ((Clock(i) + 6) % 24) : 0);
        return new()
        {
            StartLocal = Start,
            Legs = [.. Enumerable.Repeat(0, count)],
            Rooms = [new(Asked.Case.Vehicle.Living.Name, Each(i => 18), Each(i => 0.55 + Swing(i, 0.15, 0.1)), Each(i => 900), Each(i => 20), Each(i => -2 + Swing(i, 4, 5)))],
            OutsideC = outside,
            SkyC = outside,
            AirPastMPerS = Each(i => 2),
            SunOnFlatWPerM2 = Each(i => IsNight(i) ? 0 : 120),
            WantedC = Each(i => i < 6 ? double.NaN : IsNight(i) ? 14 : 19),
            OperativeC = Each(i => 16.5 + Swing(i, 2, 1)),
            CarbonDioxidePpm = Each(i => 900),
            HeaterW = Each(i => IsNight(i) ? 1400 + Swing(i, 100, 300) : 0),
            StartsCount = Each(i => 1),
            FuelAmount = Each(i => 0.12),
            DrawnA = Each(i => 3),
            ChargedA = Each(i => IsNight(i) ? 0 : 6),
            ChargeFraction = Each(i => 0.65 + Swing(i, 0.15, 0.18)),
            BatteryC = Each(i => 6),
            OnGlassG = glass,
            FrostOnGlassG = Each(i => glass[i] * 0.7),
            OnLiningsG = Each(i => 60 + Swing(i, 30, 25)),
            InBuildUpsG = Each(i => i),
            Panels = [new("Roof", Each(i => 14 + Swing(i, 3, 2)), Each(i => -9))],
            Tanks = [new("fresh water", Each(i => 5 + Swing(i, 1, 1)), Each(i => 0), Each(i => 0)), new("waste water", Each(i => Math.Min(2, -1 + Swing(i, 2, 2))), Each(i => 0.3 + Swing(i, 0.1, 0.2)), Each(i => 0))],
        };
    }

    private static TripResult WithoutAll(TripResult found)
    {
        IReadOnlyList<double> none = [.. Enumerable.Repeat(0.0, found.Hours.Count)];
        return found with
        {
            Hours = found.Hours with { ChargeFraction = [], BatteryC = [], Tanks = [], HeaterW = none, OnGlassG = none, FrostOnGlassG = none, OnLiningsG = none, WantedC = [.. none.Select(_ => double.NaN)] },
            Tanks = [],
            Energy = found.Energy with { LowestChargeFraction = null },
            Water = new(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
        };
    }

    private static TripResult WithFlat(TripResult found) => found with
    {
        Hours = found.Hours with { ChargeFraction = [.. Enumerable.Range(0, found.Hours.Count).Select(i => Math.Max(0, 1 - i / 60.0))] },
        Energy = found.Energy with { LowestChargeFraction = 0, FlatAtLocal = Start.AddHours(60), FlatHoursCount = 30 },
        Water = new(5200, 900, 1200, 1500, -900, -40, 8640, 380, 520, 190, 10, 0),
    };
}
