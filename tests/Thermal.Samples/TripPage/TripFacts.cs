using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Materials;
using Thermal.Trips;
using Thermal.Water;

namespace Thermal.Samples.TripPage;

/// <summary>The tables of the page: the model in the conditions of a fact, and the fact beside it.</summary>
internal static class TripFacts
{
    private const double CoveredK = 3, ClearK = 20;

    internal static IReadOnlyDictionary<string, Func<string>> All { get; } = new Dictionary<string, Func<string>>
    {
        ["fuel"] = Fuel,
        ["charge"] = Charge,
        ["tanks"] = Tanks,
        ["undercooling"] = Undercooling,
        ["unheated"] = Unheated,
        ["films"] = Films,
        ["grade"] = Grade,
    };

    // A battery that no steady run empties: a flat one would put the heater out.
    private static Case Van { get; } = VehicleLibrary.Find(VehicleLibrary.UsualName)! with { Power = new() { Battery = new() { UsableAh = 5000, Zone = "living" } } };

    /// <summary>Litres an hour, the last of three days held at 20 °C with two people, covered sky.</summary>
    private static string Fuel()
    {
        var table = new MarkdownTable("outside °C", "model, heat kW", "model, L/h", "fact, L/h");
        foreach ((double outsideC, string fact) in new[] { (-23.0, "0.34 to 0.38"), (-14, "0.34 to 0.38"), (-7, "0.21 to 0.25"), (4, "0.21 to 0.25") })
        {
            TripHours hours = SteadyTrip.Run(Van, SteadyTrip.HeldAt(20, 2), outsideC, CoveredK, 3, days: 3, startC: 10).Hours;
            table.Row(N(outsideC, 0), N(hours.HeaterW.TakeLast(24).Average() / 1000, 2), N(hours.FuelAmount.TakeLast(24).Average(), 2), fact);
        }
        return table.Text;
    }

    /// <summary>Ampere-hours of the heater, starts included, over the last eight hours of three days held at 16 °C.</summary>
    private static string Charge()
    {
        var table = new MarkdownTable("outside °C", "model, heat kW", "model, starts in 8 h", "model, heater alone, Ah in 8 h", "fact, Ah in a night of 8 h");
        foreach (double outsideC in new[] { -15.0, -5, 5 })
        {
            TripResult three = SteadyTrip.Run(Van, SteadyTrip.HeldAt(16, 2), outsideC, CoveredK, 3, days: 3), four = SteadyTrip.Run(Van, SteadyTrip.HeldAt(16, 2), outsideC, CoveredK, 3, days: 4);
            table.Row(N(outsideC, 0), N(four.Hours.HeaterW.TakeLast(24).Average() / 1000, 2), N(four.Hours.StartsCount.TakeLast(24).Sum() / 3, 1), N((OfHeater(four) - OfHeater(three)) / 3, 1), "4 to 17");
        }
        return table.Text;

        static double OfHeater(TripResult found) => found.Energy.Draws.Where(draw => draw.Name.Contains("heater", StringComparison.OrdinalIgnoreCase)).Sum(draw => draw.Ah);
    }

    /// <summary>A full tank of 100 L slung under the floor: hours from 10 °C to the first ice.</summary>
    private static string Tanks()
    {
        var table = new MarkdownTable("100 L under the floor, wind 5 m/s", "outside °C", "model, h to ice", "fact, h from 10 °C to 0 °C");
        foreach ((string name, double insulation, double outsideC, string fact) in new (string, double, double, string)[]
        {
            ("bare", 0, -5, "4.4"), ("bare", 0, -10, "2.8"), ("bare", 0, -20, "1.6"),
            ("20 mm foam", 0.56, -5, "49"), ("20 mm foam", 0.56, -10, "31"), ("20 mm foam", 0.56, -20, "18"),
            ("40 mm foam", 1.11, -5, "93"), ("40 mm foam", 1.11, -10, "59"), ("40 mm foam", 1.11, -20, "34"),
        })
        {
            Case asked = Van with { Tanks = [new Tank { Name = "tank", WaterL = 100, AreaM2 = 1.6, InsulationM2KPerW = insulation }], Pipes = [] };
            TripResult found = SteadyTrip.Run(asked, SteadyTrip.Empty, outsideC, CoveredK, 5, days: 5);
            table.Row(name, N(outsideC, 0), found.Tanks[0].FreezesAtLocal is { } at ? N((at - found.Hours.StartLocal).TotalHours, 0) : "not in five days", fact);
        }
        return table.Text;
    }

    /// <summary>How far skins are below the air before dawn on a clear night.</summary>
    private static string Undercooling()
    {
        var table = new MarkdownTable("roof skin on a clear night at 0 °C", "wind at it, m/s", "model, K below the air", "fact, K");
        Case bare = WithRoof(Van, new Stack([Sheet("steel_sheet", 0.0008)]));
        foreach (double windMPerS in new[] { 0.5, 1.0, 2, 4 })
            table.Row("bare plate over an unheated van", N(windMPerS, 1), N(Below(bare, SteadyTrip.Empty, windMPerS), 1), "3 to 8");
        foreach (double windMPerS in new[] { 0.5, 1.0, 2, 4 })
            table.Row("60 mm of wool over a van at 18 °C", N(windMPerS, 1), N(Below(Van, SteadyTrip.HeldAt(18, 2), windMPerS), 1), "2 to 7, less than a bare plate");
        return table.Text;

        static double Below(Case asked, TripHabits habits, double windMPerS)
        {
            TripHours hours = SteadyTrip.Run(asked, habits, 0, ClearK, windMPerS, days: 2).Hours;
            return hours.OutsideC[^1] - hours.Panels.Single(panel => panel.Panel == "roof").OuterC[^1];
        }
    }

    /// <summary>An unheated van with 50 mm of XPS on walls and roof and one sleeper, at four in the morning.</summary>
    private static string Unheated()
    {
        var table = new MarkdownTable("sleepers", "heater", "sky", "model at 04:00, K above outside", "fact, K");
        Case lined = Van with { Vehicle = Van.Vehicle with { Surfaces = [.. Van.Vehicle.Surfaces.Select(Lined)] } };
        foreach ((int people, bool evening, string sky, double belowK) in new[] { (0, false, "covered", CoveredK), (1, false, "covered", CoveredK), (1, false, "clear", ClearK), (1, true, "covered", CoveredK), (1, true, "clear", ClearK) })
        {
            TripHours hours = SteadyTrip.Run(lined, SteadyTrip.Empty with { PeopleCount = people, DayC = evening ? 18 : null }, 0, belowK, 2, days: 3).Hours;
            int four = hours.Count - 20;
            table.Row(N(people, 0), evening ? "18 °C until bedtime" : "off", sky, N(hours.OperativeC[four] - hours.OutsideC[four], 1), people == 1 ? "8" : "");
        }
        return table.Text;

        static Surface Lined(Surface surface) => surface.Zone == "living" && surface.Place is SurfacePlace.Roof or SurfacePlace.Left or SurfacePlace.Right or SurfacePlace.Rear
            ? surface with { Stack = new([Sheet("birch_plywood", 0.0065), Sheet("xps", 0.05), Sheet("steel_sheet", 0.001)]), Ribs = [] }
            : surface;
    }

    /// <summary>Heat that leaves at rest: one lumped film as in the steady answers, and convection and radiation apart.</summary>
    private static string Films()
    {
        NightConditions night = new() { OutsideC = -10, RelativeHumidityFraction = NightConditions.DesignRelativeHumidityFraction, WindMPerS = 3, SkyBelowAirK = 0, AltitudeM = 0 };
        // With nobody asleep a trip leaves the curtain to the cab drawn back: so do both here.
        Case open = Van with { ColdNight = night, Vehicle = Van.Vehicle with { Links = [.. Van.Vehicle.Links.Select(link => link with { State = LinkState.Open, AirM3PerM2H = ZoneLink.OpenAirM3PerM2H })] } };
        Assessment steady = Assess.Of(open);
        TripResult four = Moving(4), five = Moving(5); // what the fifth day adds is free of the warm-up
        var table = new MarkdownTable("part", "steady answers, W", "trip at rest, W", "gap");
        // A trip's book tells a panel as one; the steady answers tell apart what stands against it.
        foreach ((string name, double lossW) in steady.ColdNight.Losses.GroupBy(part => part.Kind == LossKind.Panel ? part.Panel! : part.Name, (name, parts) => (name, parts.Sum(part => part.LossW))).OrderByDescending(part => part.Item2).Take(12))
            if (five.Heat.Out.Any(one => one.Name == name))
                Row(name, lossW, (Wh(five, name) - Wh(four, name)) / 24);
        Row("all, from the heater", steady.ColdNight.LossW, (five.Heat.HeaterWh - four.Heat.HeaterWh) / 24);
        return table.Text;

        void Row(string name, double steadyW, double movingW) => table.Row(name, N(steadyW, 0), N(movingW, 0), N(100 * (movingW / steadyW - 1), 0) + " %");

        TripResult Moving(int days) => SteadyTrip.Run(open, SteadyTrip.HeldAt(Van.Habits.SetPointC, 0) with { MealsAtH = [], Covers = CoverUse.Always }, -10, 0, 3, days);

        static double Wh(TripResult found, string name) => found.Heat.Out.Where(one => one.Name == name).Sum(one => one.Wh);
    }

    /// <summary>The built-in trip after heating grade 3, with each built-in vehicle.</summary>
    private static string Grade()
    {
        Trip chamber = TripLibrary.Find("cold-chamber")!.Trip;
        DateTime heats = chamber.Legs[1].StartLocal;
        var table = new MarkdownTable("vehicle", "heater, kW at most", "20 °C after, h", "steady answer, h", "asked for, h");
        foreach (string name in VehicleLibrary.Names)
        {
            Case asked = VehicleLibrary.Find(name)!;
            TripHours hours = TripRun.Of(new(asked, chamber)).Hours;
            int first = Enumerable.Range(0, hours.Count).FirstOrDefault(i => hours.StartLocal.AddHours(i) >= heats && hours.OperativeC[i] >= 19.5, -1);
            ChamberGrade grade = Assess.Of(asked).Heating.Grades.Single(one => one.Grade == 3);
            table.Row(name, N(asked.Heater.HighestW / 1000, 1), first < 0 ? "not in twelve" : "hour " + N((hours.StartLocal.AddHours(first) - heats).TotalHours + 1, 0),
                grade.ReachedAfterH is { } after ? N(after, 1) : "never", N(grade.LimitH, 0));
        }
        return table.Text;
    }

    private static SolidLayer Sheet(string key, double thicknessM) => new() { Name = key, Material = MaterialLibrary.Find(key)!, ThicknessM = thicknessM };

    private static Case WithRoof(Case asked, Stack stack) => asked with
    {
        Vehicle = asked.Vehicle with { Surfaces = [.. asked.Vehicle.Surfaces.Select(surface => surface.Name == "roof" ? surface with { Stack = stack, Ribs = [], Bolts = [], Openings = [], Against = [] } : surface)] },
    };

    private static string N(double value, int decimals) => MarkdownTable.Number(value, decimals);
}
