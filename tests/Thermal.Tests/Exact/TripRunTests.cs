using Thermal.Assessments;
using Thermal.Trips;
using Thermal.Trips.Course;

namespace Thermal.Tests.Exact;

/// <summary>A trip as a whole: its hours, its ends, its step, its stop.</summary>
public class TripRunTests
{
    private static readonly TripHabits Nobody = new() { PeopleCount = 0, AwayC = null };

    [Fact]
    public void A_trip_that_ends_between_hours_has_a_short_last_hour_whose_mean_is_of_what_there_is()
    {
        TripCase asked = TripSketch.In(-5, 10, startC: 10);
        TripResult found = TripSketch.Run(asked with { Trip = asked.Trip with { Legs = [asked.Trip.Legs[0] with { EndLocal = TripSketch.Start.AddHours(5.5) }] } });
        Assert.Equal(6, found.Hours.Count);
        Assert.Equal(-5, found.Hours.OutsideC[5], 1e-12);
        Assert.Equal(found.Heat.HeaterWh, found.Hours.HeaterW.Take(5).Sum() + found.Hours.HeaterW[5] / 2, 1e-6);
    }

    [Fact]
    public void Days_are_those_of_the_calendar()
    {
        TripResult found = TripSketch.Run(TripSketch.In(0, 40));
        Assert.Equal([new(2026, 1, 10), new(2026, 1, 11), new(2026, 1, 12)], found.Days.Select(day => day.Date));
        Assert.Equal([8, 24, 8], found.Days.Select(day => day.HoursCount)); // from 16:00
    }

    /// <summary>An empty cold van in air as cold as itself stays as it is: nothing flows, whatever the step.</summary>
    [Fact]
    public void Where_nothing_differs_nothing_flows()
    {
        TripResult found = TripSketch.Run(TripSketch.In(-5, 12, Nobody, van: TripSketch.Van with { Power = null, Tanks = [] }));
        Assert.All(found.Hours.OperativeC, operativeC => Assert.Equal(-5, operativeC, 1e-9));
        Assert.Equal((0, 0), (found.Heat.HeaterWh, found.Water.PeopleG));
        Assert.Empty(found.Findings);
    }

    /// <summary>
    /// A warm empty van cools down. Heat is of order two, but air flow by warmth is that of the begin of each step, so the whole is of order one
    /// at least: against steps of a minute the error falls to (450 − 60)/(900 − 60) = 0.46 of itself or less.
    /// </summary>
    [Fact]
    public void Halving_the_step_shrinks_the_error()
    {
        double exact = AfterC(60), coarse = AfterC(900), fine = AfterC(450);
        Assert.InRange(Math.Abs(fine - exact) / Math.Abs(coarse - exact), 0, 0.52);
        Assert.InRange(Math.Abs(coarse - exact), 1e-5, 0.2);

        double AfterC(double stepS) => TripSketch.Run(TripSketch.In(-10, 4, Nobody, stepS, 20, TripSketch.Van with { Power = null, Tanks = [] })).Hours.OperativeC[2];
    }

    [Fact]
    public void A_cancelled_trip_stops() =>
        Assert.Throws<OperationCanceledException>(() => TripRun.Of(TripSketch.In(0, 40), cancel: new CancellationToken(canceled: true)));

    [Fact]
    public void A_trip_is_stopped_on_its_way()
    {
        using CancellationTokenSource source = new();
        int told = 0;
        Assert.Throws<OperationCanceledException>(() => TripRun.Of(TripSketch.In(0, 240), progress: new Told(_ => { if (++told == 2) source.Cancel(); }), cancel: source.Token));
        Assert.Equal(2, told);
    }

    [Fact]
    public void Progress_rises_to_the_whole()
    {
        List<double> told = [];
        TripRun.Of(TripSketch.In(0, 72), progress: new Told(told.Add), cancel: TestContext.Current.CancellationToken);
        Assert.Equal([1 / 3.0, 2 / 3.0, 1, 1], told);
    }

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }

    /// <summary>Known heading: no other ones are tried; unknown without sun: nor then.</summary>
    [Fact]
    public void Other_headings_are_told_only_where_one_is_unknown_and_there_is_sun()
    {
        TripCase asked = TripSketch.In(0, 4);
        Assert.Null(TripSketch.Run(asked).OtherHeadings);
        Assert.Null(TripSketch.Run(asked with { Trip = asked.Trip with { Legs = [asked.Trip.Legs[0] with { HeadingDeg = null }] } }).OtherHeadings);
    }

    /// <summary>A step of a long trip takes no memory: a tenfold trip takes the memory of its columns more, some 1.3 kB an hour, not of its steps.</summary>
    [Fact]
    public void Steps_take_no_memory()
    {
        TripCase minutes = TripSketch.In(0, 48, stepS: 60), quarters = TripSketch.In(0, 48, stepS: 900);
        Run(quarters);
        long few = Taken(quarters), many = Taken(minutes);
        Assert.InRange(many - few, -20_000, 20_000); // 2700 more steps; a single box each would be 65 kB

        static long Taken(TripCase asked)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            Run(asked);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        static void Run(TripCase asked) => TripRun.OneHeading(asked, TripCourse.UsualHeadingDeg, null, TestContext.Current.CancellationToken);
    }

    /// <summary>
    /// Grade 3 of EN 1646-1: soaked at −15 °C, full heater, nobody in. 4 kW into a van of 11 m³ that loses about 70 W/K with its cab: from the two
    /// stores of the steady job between half an hour and four; here within a factor of 1.6 of them, since linings and furniture warm along other ways.
    /// </summary>
    [Fact]
    public void A_soaked_van_warms_up_about_as_the_two_stores_say()
    {
        TripHabits full = Nobody with { AwayC = 30 };
        Case alone = PlausibleVan.Case with { Tanks = [], Vehicle = PlausibleVan.Vehicle with { Links = [] } };
        TripResult found = TripSketch.Run(TripSketch.In(-15, 8, full, stepS: 60, van: alone));
        double reachedH = Enumerable.Range(0, found.Hours.Count).First(i => found.Hours.OperativeC[i] >= 20) + 0.5;
        double twoStoresH = Assess.UsualOf(alone).Heating.Grades[1].ReachedAfterH!.Value;
        Assert.InRange(reachedH / twoStoresH, 1 / 1.6, 1.6);
    }
}
