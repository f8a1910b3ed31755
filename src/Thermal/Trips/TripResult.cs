using Thermal.Assessments;

namespace Thermal.Trips;

/// <summary>Everything the tool has to say of one trip. The one result that all faces show. Immutable.</summary>
public sealed record TripResult
{
    /// <summary>What was asked, with its details solved.</summary>
    public required TripCase Asked { get; init; }
    /// <summary>The hours.</summary>
    public required TripHours Hours { get; init; }
    /// <summary>The days by the calendar, in order.</summary>
    public required IReadOnlyList<TripDay> Days { get; init; }
    /// <summary>Where heat came from and went.</summary>
    public required HeatBook Heat { get; init; }
    /// <summary>Where water came from and went.</summary>
    public required WaterBook Water { get; init; }
    /// <summary>Fuel, current and charge.</summary>
    public required TripEnergy Energy { get; init; }
    /// <summary>Inner surfaces and cold sides that got wet or frosty, most water first; dry ones left out.</summary>
    public required IReadOnlyList<WetPlace> Wet { get; init; }
    /// <summary>Water inside each build-up towards the outside.</summary>
    public required IReadOnlyList<BuildUpTrip> BuildUps { get; init; }
    /// <summary>Mould index of inner surfaces and critical interfaces, highest first.</summary>
    public required IReadOnlyList<MouldTrip> Mould { get; init; }
    /// <summary>Hours of wetness on metal skins and ribs, most first.</summary>
    public required IReadOnlyList<WetMetal> Metal { get; init; }
    /// <summary>Tanks.</summary>
    public required IReadOnlyList<TankTrip> Tanks { get; init; }
    /// <summary>Pipes with standing water.</summary>
    public required IReadOnlyList<PipeTrip> Pipes { get; init; }
    /// <summary>Comfort and air.</summary>
    public required TripComfort Comfort { get; init; }
    /// <summary>What other headings of the legs with an unknown one would change; null where every heading is known or none matters.</summary>
    public HeadingSpan? OtherHeadings { get; init; }
    /// <summary>What a person should know, worst first.</summary>
    public required IReadOnlyList<TripFinding> Findings { get; init; }
}
