using Thermal.Climates;

namespace Thermal.Trips;

/// <summary>One part of a trip: parked at a place, or driving. Immutable.</summary>
public sealed record Leg
{
    /// <summary>What people call it.</summary>
    public required string Name { get; init; }
    /// <summary>Begin, local standard time, whole minutes.</summary>
    public required DateTime StartLocal { get; init; }
    /// <summary>End, local standard time, later than the begin.</summary>
    public required DateTime EndLocal { get; init; }
    /// <summary>Weather of the place: covers the whole leg, or repeats by the calendar where it is a typical or generated year.</summary>
    public required Weather Weather { get; init; }
    /// <summary>Driving speed, m/s, 1 to 40; null parked.</summary>
    public double? SpeedMPerS { get; init => field = value is { } speed ? Guard.InRange(speed, 1, 40, "m/s", nameof(SpeedMPerS)) : null; }
    /// <summary>Where the nose points, degrees clockwise from north, 0 to 360; null unknown: the trip is reckoned for the worst and the best.</summary>
    public double? HeadingDeg { get; init => field = value is { } heading ? Guard.InRange(heading, 0, 360, "°", nameof(HeadingDeg)) : null; }
    /// <summary>Height of hills, trees or houses all round, degrees, 0 to 80.</summary>
    public double HorizonDeg { get; init => field = Guard.InRange(value, 0, 80, "°", nameof(HorizonDeg)); }
    /// <summary>Wind beside the parked vehicle as a share of the wind at 10 m in the open, fraction, 0 to 1.5.</summary>
    /// <remarks>Source: OURS, 0.6: at 2 m over open ground about 0.75 of it, less among trees and vehicles.</remarks>
    public double WindShareFraction { get; init => field = Guard.InRange(value, 0, 1.5, "(fraction)", nameof(WindShareFraction)); } = 0.6;
    /// <summary>True where snow lies: it throws sun back.</summary>
    public bool Snow { get; init; }
    /// <summary>Power the site gives, W, 0 to 7400; null without shore power.</summary>
    public double? ShoreW { get; init => field = value is { } shore ? Guard.InRange(shore, 1, 7400, "W", nameof(ShoreW)) : null; }
    /// <summary>How people live on this leg; null as on the whole trip.</summary>
    public TripHabits? Habits { get; init; }

    /// <summary>True while driving.</summary>
    public bool IsDriving => SpeedMPerS is not null;
}
