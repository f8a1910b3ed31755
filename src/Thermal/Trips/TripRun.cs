using Thermal.Air;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Trips.Books;
using Thermal.Trips.Course;
using Thermal.Trips.Heat;

namespace Thermal.Trips;

/// <summary>Reckons a trip hour by hour.</summary>
public static class TripRun
{
    /// <summary>Wind for which described ribs, bolts and edges are solved, m/s: that of the steady nights. Their ψ hardly depends on it.</summary>
    private const double DetailWindMPerS = NightConditions.UsualWindMPerS;
    private static readonly double[] OtherHeadingsDeg = [0, 90, 270];

    /// <summary>Runs the whole trip.</summary>
    /// <param name="asked">Vehicle and journey.</param>
    /// <param name="cache">Solved ribs, bolts and edges; null for a cache of its own.</param>
    /// <param name="progress">Told the share done, fraction, now and then; null for nobody.</param>
    /// <param name="cancel">Stops it between hours.</param>
    /// <returns>Hours, days, and what they add up to.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">Weather that does not cover a leg; a zone that does not exist.</exception>
    public static TripResult Of(TripCase asked, BridgeCache? cache = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        TripCase solved = Solved(asked, cache ?? new());
        bool tries = solved.Trip.Legs.Any(leg => leg.HeadingDeg is null && HasSun(leg.Weather));
        int runs = tries ? 1 + OtherHeadingsDeg.Length : 1;
        TripResult found = OneHeading(solved, TripCourse.UsualHeadingDeg, share => progress?.Report(share / runs), cancel);
        if (!tries) return found;
        List<(double HeadingDeg, TripResult Result)> all = [(TripCourse.UsualHeadingDeg, found)];
        foreach (double headingDeg in OtherHeadingsDeg)
            all.Add((headingDeg, OneHeading(solved, headingDeg, share => progress?.Report((all.Count + share) / runs), cancel)));
        return found with { OtherHeadings = Span(all) };
    }

    /// <summary>The trip with one heading where it is unknown.</summary>
    internal static TripResult OneHeading(TripCase solved, double headingDeg, Action<double>? progress, CancellationToken cancel)
    {
        Body body = Body.Of(solved.Case.Vehicle, FilmRule.Separate, Atmosphere.PressurePa(solved.Trip.Legs[0].Weather.AltitudeM));
        TripCourse course = new(solved, body, headingDeg);
        course.Run(progress, cancel);
        return Close(solved, course);
    }

    /// <summary>The case with its details solved.</summary>
    internal static TripCase Solved(TripCase asked, BridgeCache cache)
    {
        Vehicle vehicle = SolvedVehicle.Of(asked.Case.Vehicle, DetailWindMPerS, cache);
        return ReferenceEquals(vehicle, asked.Case.Vehicle) ? asked : asked with { Case = asked.Case with { Vehicle = vehicle } };
    }

    private static TripResult Close(TripCase solved, TripCourse course)
    {
        StepFacts facts = course.Facts;
        TripHours hours = course.Hours.Hours();
        double lastHourS = (solved.Trip.EndLocal - solved.Trip.StartLocal.AddHours(hours.Count - 1)).TotalSeconds;
        TripResult found = new()
        {
            Asked = solved,
            Hours = hours,
            Days = TripDays.Of(hours, course.Hours.CoolestHomeC, facts.Living, lastHourS),
            Heat = course.Sums.Heat(facts),
            Water = course.Sums.Water(facts),
            Energy = course.Energy.Close(facts.Board),
            Wet = course.Wet.Places(facts),
            BuildUps = course.Insides.BuildUps(solved.Trip.StartLocal),
            Mould = course.Mould.Mould(),
            Metal = course.Metal.Metal(),
            Tanks = course.Energy.Tanks(solved.Case.Tanks),
            Pipes = course.Energy.Pipes(solved.Case.Pipes),
            Comfort = course.Comfort.Close(),
            Findings = [],
        };
        return found with { Findings = TripFindings.Of(found) };
    }

    private static bool HasSun(Weather weather) => weather.GlobalWPerM2 is { } global && weather.Kind != WeatherKind.Steady && global.Any(sun => sun > 0);

    private static HeadingSpan Span(List<(double HeadingDeg, TripResult Result)> all) => new(
        all.Min(run => run.Result.Energy.LowestChargeFraction),
        all.Max(run => run.Result.Energy.LowestChargeFraction),
        all.Max(run => run.Result.Energy.HeatingFuelAmount),
        all.Min(run => run.Result.Energy.HeatingFuelAmount),
        all.Max(run => run.Result.Comfort.HottestC),
        all.MaxBy(run => run.Result.Energy.HeatingFuelAmount).HeadingDeg);
}
