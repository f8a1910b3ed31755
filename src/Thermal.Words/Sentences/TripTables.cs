using System.Globalization;
using Thermal.Assessments;
using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>The tables of a trip: legs, days, and where heat, charge and the cold of tanks went.</summary>
public static class TripTables
{
    /// <summary>A day as people name it, such as "Sat 24 Jan".</summary>
    public static string Day(DateOnly date) => date.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    /// <summary>A moment as people name it, such as "Sat 24 Jan 06:00", local standard time.</summary>
    public static string Moment(DateTime local) => local.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The legs in their order.</summary>
    /// <param name="trip">The journey.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Legs(Trip trip, Figures figures) => new("Legs of the trip; clock times are local standard time",
        ["Leg", "from", "until", "weather", "how"],
        [.. trip.Legs.Select(leg => (IReadOnlyList<string>)[leg.Name, Moment(leg.StartLocal), Moment(leg.EndLocal), leg.Weather.Name, How(leg, figures)])]);

    /// <summary>The days by the calendar.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Days(TripResult found, Figures figures)
    {
        Case asked = found.Asked.Case;
        Shown fuel = Amounts.ShownOf(asked.Heater.Fuel);
        bool hasBattery = asked.Power is not null, hasTanks = found.Tanks.Count > 0;
        string degrees = figures.Unit(Shown.Temperature);
        List<string> columns = ["Day", $">outside {degrees}", $">coolest inside {degrees}", ">most humid", ">water on surfaces", $">heat {figures.Unit(Shown.Energy)}", $">fuel {figures.Unit(fuel)}"];
        if (hasBattery) columns.AddRange([">drawn Ah", ">charged Ah", ">lowest charge"]);
        if (hasTanks) columns.Add($">coldest tank {degrees}");
        return new("Day by day; coolest inside is with people in, water on surfaces is the most at once", columns, [.. found.Days.Select(Row)]);

        IReadOnlyList<string> Row(TripDay day)
        {
            List<string> row =
            [
                Day(day.Date), $"{figures.Number(Shown.Temperature, day.OutsideLowC)} … {figures.Number(Shown.Temperature, day.OutsideHighC)}",
                day.OperativeLowC is { } low ? figures.Number(Shown.Temperature, low) : "", figures.Percent(day.HumidityHighFraction), figures.Grams(day.WettestG),
                figures.Number(Shown.Energy, day.HeaterWh * 3600), figures.Number(fuel, Amounts.Si(asked.Heater.Fuel, day.FuelAmount)),
            ];
            if (hasBattery) row.AddRange([AhNumber(day.DrawnAh), AhNumber(day.ChargedAh), day.ChargeLowFraction is { } charge ? figures.Percent(charge) : ""]);
            if (hasTanks) row.Add(day.TankLowC is { } tank ? figures.Number(Shown.Temperature, tank) : "");
            return row;
        }

        string AhNumber(double chargeAh) => figures.Number(Shown.Charge, chargeAh * 3600);
    }

    /// <summary>Where heat came from and went.</summary>
    /// <param name="heat">The heat of the trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Heat(HeatBook heat, Figures figures)
    {
        return new("Where the heat came from and went over the trip", ["What", $">{figures.Unit(Shown.Energy)}"],
        [
            Line("in: heater", heat.HeaterWh), Line("in: people, cooking, lamps and loads", heat.PeopleWh), Line("in: engine", heat.EngineWh), Line("in: sun on paint and through glass", heat.SunWh),
            Line("in: water that settled, less what dried", heat.WaterWh), .. heat.Out.Select(part => Line($"out: {part.Name}", part.Wh)), Line("still stored at the end, above the start", heat.StoredWh),
        ]);

        IReadOnlyList<string> Line(string what, double heatWh) => [what, figures.Number(Shown.Energy, heatWh * 3600)];
    }

    /// <summary>What drew from the battery and what charged it.</summary>
    /// <param name="energy">The trip's energy.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Charge(TripEnergy energy, Figures figures) => new("What drew from the battery and what charged it", ["What", ">Ah"],
    [
        .. energy.Draws.Select(draw => AhLine($"drew: {draw.Name}", draw.Ah, figures)), AhLine("charged: sun", energy.SunAh, figures), AhLine("charged: engine while driving", energy.AlternatorAh, figures),
        AhLine("charged: shore", energy.ShoreAh, figures), AhLine("offered below freezing and refused", energy.RefusedAh, figures),
    ]);

    /// <summary>Tanks and standing pipes.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    public static WordTable Water(TripResult found, Figures figures) => new("Tanks and standing pipes", ["What", ">coldest", "ice from", ">most ice", $">its pad {figures.Unit(Shown.Energy)}", ">power to hold it"],
    [
        .. found.Tanks.Select(tank => (IReadOnlyList<string>)
        [
            tank.Name, figures.Temperature(tank.LowestC), Ice(tank.FreezesAtLocal), figures.Percent(tank.MostIceFraction),
            tank.PadWh > 0 ? figures.Number(Shown.Energy, tank.PadWh * 3600) : "", figures.Write(Shown.ElectricPower, tank.HoldW),
        ]),
        .. found.Pipes.Select(pipe => (IReadOnlyList<string>)[pipe.Name, figures.Temperature(pipe.LowestC), Ice(pipe.FreezesAtLocal), figures.Percent(pipe.MostIceFraction), "", ""]),
    ]);

    private static string How(Leg leg, Figures figures) => string.Join(", ", ((string?[])
    [
        leg.SpeedMPerS is { } speed ? $"driving at {figures.Write(Shown.DrivingSpeed, speed)}" : "parked",
        leg.IsDriving ? null : leg.HeadingDeg is { } heading ? $"nose at {figures.Write(Shown.Angle, heading)} from north" : "heading not known",
        leg.HorizonDeg > 0 ? $"horizon {figures.Write(Shown.Angle, leg.HorizonDeg)}" : null,
        leg.Snow ? "snow lies" : null,
        leg.ShoreW is { } shore ? $"shore power {figures.Write(Shown.ElectricPower, shore)}" : null,
    ]).OfType<string>());

    private static string Ice(DateTime? at) => at is { } moment ? Moment(moment) : "never";

    private static IReadOnlyList<string> AhLine(string what, double chargeAh, Figures figures) => [what, figures.Number(Shown.Charge, chargeAh * 3600)];
}
