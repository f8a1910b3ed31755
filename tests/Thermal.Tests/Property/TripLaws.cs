using CsCheck;
using Thermal.Climates;
using Thermal.Trips;
using Thermal.Trips.Course;

namespace Thermal.Tests.Property;

/// <summary>Laws of whole trips.</summary>
public class TripLaws
{
    private const long Iterations = 12; // a day of the van takes some milliseconds

    private static readonly Gen<TripHabits> AnyHabits = Gen.Select(Gen.Int[0, 5], Gen.Double[0, 24].Array[8], Gen.Int[0, 2], Gen.Int[0, 3], Gen.Double[0, 2000], Gen.Bool).Select((people, clock, covers, fan, drying, off) => new TripHabits
    {
        PeopleCount = people, HomeFromH = clock[0], HomeToH = clock[1], BedtimeH = clock[2], RisingH = clock[3], MealsAtH = [clock[4], clock[5]], ShowersAtH = [clock[6]],
        DryingFromH = clock[7], DryingPerDayG = drying, Covers = (CoverUse)covers, Fan = (FanUse)fan, AwayC = off ? null : 8, DrivingC = off ? 18 : null,
    });

    private static readonly Weather Winter = GeneratedWeather.Typical(PlausibleVan.Place with { Months = [.. PlausibleVan.Place.Months.Select(month => month with { MinC = month.MeanC - 4, MaxC = month.MeanC + 4 })] });

    /// <summary>A day and a half parked and two hours on the road in any month, with any habits, step and start.</summary>
    private static readonly Gen<TripCase> AnyTrip = Gen.Select(AnyHabits, Gen.Int[0, 364], Gen.Double[60, 900], Gen.Double[-20, 30], Gen.Int[0, 59]).Select((habits, day, stepS, startC, minute) =>
    {
        DateTime start = new DateTime(2026, 1, 1, 7, minute, 0).AddDays(day);
        return new TripCase(TripSketch.Van with { Fan = new() { FlowM3PerH = 60, CurrentA = 0.4 } }, new()
        {
            Name = "any",
            Legs =
            [
                new() { Name = "parked", StartLocal = start, EndLocal = start.AddHours(30.5), Weather = Winter, HeadingDeg = 90 },
                new() { Name = "road", StartLocal = start.AddHours(30.5), EndLocal = start.AddHours(32.25), Weather = Winter, HeadingDeg = 0, SpeedMPerS = 22 },
            ],
            Habits = habits,
            StepS = stepS,
            StartC = startC,
        });
    });

    private static TripResult Run(TripCase asked) => TripRun.OneHeading(asked, TripCourse.UsualHeadingDeg, null, TestContext.Current.CancellationToken);

    [Fact]
    public void The_books_of_heat_and_water_close() => AnyTrip.Sample(asked =>
    {
        TripResult found = Run(asked);
        HeatBook heat = found.Heat;
        WaterBook water = found.Water;
        double turned = heat.HeaterWh + heat.PeopleWh + heat.EngineWh + heat.SunWh + Math.Abs(heat.WaterWh) + 1;
        Assert.InRange(Math.Abs(heat.ClosureWh) / turned, 0, 1e-9); // rounding of some thousand sums
        Assert.InRange(Math.Abs(water.ClosureG), 0, 1e-6); // a millionth of a gram: rounding of some thousand sums
        Assert.Equal(found.Hours.Count, found.Days.Sum(day => day.HoursCount));
        Assert.Equal(found.Hours.FuelAmount.Sum(), found.Energy.HeatingFuelAmount + found.Energy.HotWaterFuelAmount, 1e-9);
        Assert.Equal(found.Energy.DrawnAh, found.Energy.Draws.Sum(draw => draw.Ah), 1e-9 * (1 + found.Energy.DrawnAh));
    }, iter: Iterations, threads: 1);

    [Fact]
    public void The_same_trip_gives_the_same_bits() => AnyTrip.Sample(asked =>
    {
        TripResult one = Run(asked), two = Run(asked);
        Assert.Equal(one.Hours.OperativeC.Select(BitConverter.DoubleToInt64Bits), two.Hours.OperativeC.Select(BitConverter.DoubleToInt64Bits));
        Assert.Equal(one.Water, two.Water);
        Assert.Equal(one.Findings, two.Findings);
    }, iter: 3, threads: 1);

    /// <summary>Steady air, heater on day and night; the battery on shore power so that it does not decide.</summary>
    [Fact]
    public void Colder_outside_never_uses_less_fuel() => Gen.Select(Gen.Double[-25, 8], Gen.Double[0.5, 10]).Sample((airC, colderK) =>
        Fuel(airC - colderK) >= Fuel(airC), iter: Iterations, threads: 1);

    private static double Fuel(double airC) => Run(TripSketch.In(airC, 30, startC: 15, van: TripSketch.Van with { Power = null })).Energy.HeatingFuelAmount;

    [Fact]
    public void One_more_person_never_dries_the_air() => Gen.Double[-10, 10].Sample(airC =>
    {
        double two = Humidity(2), three = Humidity(3);
        return three > two;

        double Humidity(int people) => Run(TripSketch.In(airC, 24, TripSketch.Habits with { PeopleCount = people }, van: TripSketch.Van with { Power = null })).Hours.Rooms[0].VapourPa.Average();
    }, iter: Iterations, threads: 1);

    private static TripCase Sunny(TripHabits habits, double? headingDeg, int month) => new(TripSketch.Van with { Power = TripSketch.Van.Power! with { Battery = new() { UsableAh = 400, Zone = "living" }, Panels = [new() { Name = "side panel", PeakW = 100, TiltDeg = 90, FacingDeg = 90 }] } }, new()
    {
        Name = "sunny",
        Legs = [new() { Name = "field", StartLocal = new(2026, month, 20), EndLocal = new(2026, month, 24), Weather = Winter, HeadingDeg = headingDeg }],
        Habits = habits,
        StartC = 18,
    });

    /// <summary>A panel on one side: how full the battery stays depends on the heading, and the span holds the run told.</summary>
    [Fact]
    public void Other_headings_span_the_one_told()
    {
        TripResult found = TripSketch.Run(Sunny(TripSketch.Habits, null, month: 3));
        HeadingSpan span = found.OtherHeadings!;
        Assert.InRange(found.Energy.LowestChargeFraction!.Value, span.WorstChargeFraction!.Value, span.BestChargeFraction!.Value);
        Assert.InRange(found.Energy.HeatingFuelAmount, span.LeastFuelAmount, span.MostFuelAmount);
        Assert.True(span.HottestC >= found.Comfort.HottestC);
        Assert.True(span.BestChargeFraction > span.WorstChargeFraction);
    }

    [Fact]
    public void Covers_all_day_keep_the_sun_out()
    {
        TripResult bare = TripSketch.Run(Sunny(TripSketch.Habits with { Covers = CoverUse.Never }, 180, month: 6)), covered = TripSketch.Run(Sunny(TripSketch.Habits with { Covers = CoverUse.Always }, 180, month: 6));
        Assert.True(covered.Heat.SunWh < bare.Heat.SunWh);
        Assert.True(covered.Hours.OperativeC.Max() < bare.Hours.OperativeC.Max());
    }
}
