using Thermal.Trips;

namespace Thermal.Files.TripKeys;

/// <summary>A leg as written: its times and weather are found when the legs before it are known.</summary>
internal sealed record LegDraft
{
    internal required string Name { get; init; }
    internal DateTime? From { get; init; }
    internal DateTime? Until { get; init; }
    internal double? LastsH { get; init; }
    internal required LegAir Air { get; init; }
    internal double? SpeedMPerS { get; init; }
    internal Heading Heading { get; init; } = new(null);
    internal double HorizonDeg { get; init; }
    internal double WindShareFraction { get; init; }
    internal bool Snow { get; init; }
    internal double? ShoreW { get; init; }
    internal LegHabits? Habits { get; init; }

    /// <summary>The leg as the file would give it.</summary>
    internal static LegDraft Of(Leg leg, LegAir air, TripHabits usual) => new()
    {
        Name = leg.Name,
        Until = leg.EndLocal,
        Air = air,
        SpeedMPerS = leg.SpeedMPerS,
        Heading = new(leg.HeadingDeg),
        HorizonDeg = leg.HorizonDeg,
        WindShareFraction = leg.WindShareFraction,
        Snow = leg.Snow,
        ShoreW = leg.ShoreW,
        Habits = leg.Habits is { } habits ? new(habits, usual) : null,
    };
}

/// <summary>Where the nose points, degrees clockwise from north; null unknown.</summary>
internal sealed record Heading(double? Deg);

/// <summary>How people live on a leg, and on the whole trip.</summary>
internal sealed record LegHabits(TripHabits OnLeg, TripHabits Usual);
