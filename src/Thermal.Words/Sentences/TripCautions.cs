using Thermal.Assessments;
using Thermal.Materials;
using Thermal.Power;
using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>What can hurt someone on a trip like this one: the cautions of the vehicle and those of the journey.</summary>
public static class TripCautions
{
    /// <summary>The cautions that this trip calls for, those of the vehicle first.</summary>
    /// <param name="found">The trip.</param>
    public static IReadOnlyList<string> Of(TripResult found)
    {
        TripCase asked = found.Asked;
        Case vehicle = asked.Case;
        List<string> cautions = [.. Cautions.Of(vehicle)];
        int last = cautions.Count - 1;
        List<string> onTheWay = [];
        if (asked.Trip.Legs.Any(leg => leg.Snow))
            onTheWay.Add("Snow closes vents, flues and exhausts: clear roof and sides before sleep and again in the morning, and look at the alarm when you do.");
        if (vehicle.Heater.Fuel is Fuel.Propane or Fuel.Butane && asked.Trip.Legs.Any(leg => leg.IsDriving && Habits(asked.Trip, leg).DrivingC is not null))
            onTheWay.Add("Gas burnt while driving needs what the law of the country asks for, often a shut-off that acts in a crash; tunnels and ferries forbid it, and every flame goes out before refuelling.");
        if (asked.Trip.Legs.Any(leg => leg.ShoreW is not null))
            onTheWay.Add("Shore power is mains voltage: an earth-leakage breaker at the inlet, a cable for outdoor use unrolled to its end, and work on it by a licensed electrician where the law asks for one.");
        if (vehicle.Power is { Battery: { Chemistry: Chemistry.Lithium } } && found.Hours.OutsideC.Any(outsideC => outsideC < 0))
            onTheWay.Add("This trip has frost: the figures count on a battery that refuses charge below freezing by itself. One that does not is damaged for good and can catch fire later.");
        cautions.InsertRange(last, onTheWay);
        return cautions;
    }

    private static TripHabits Habits(Trip trip, Leg leg) => leg.Habits ?? trip.Habits;
}
